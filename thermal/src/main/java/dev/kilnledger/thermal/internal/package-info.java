/** What packages of this module share and embedders do not see. */
@NullMarked
package dev.kilnledger.thermal.internal;

import org.jspecify.annotations.NullMarked;
