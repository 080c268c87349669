/**
 * Forms: each tells once how a value stands in a JSON document, and reading, writing and the schema
 * follow from it.
 */
@NullMarked
package dev.kilnledger.core.document.internal;

import org.jspecify.annotations.NullMarked;
