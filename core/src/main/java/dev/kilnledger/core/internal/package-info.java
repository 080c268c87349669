/** What the library modules share and embedders may not touch. */
@NullMarked
package dev.kilnledger.core.internal;

import org.jspecify.annotations.NullMarked;
