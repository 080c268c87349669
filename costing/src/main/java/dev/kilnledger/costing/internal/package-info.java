/** What packages of this module share and embedders may not touch. */
@NullMarked
package dev.kilnledger.costing.internal;

import org.jspecify.annotations.NullMarked;
