/**
 * Alloys, binders and the feedstock made of them, packing powders, getters and crucible materials.
 */
@NullMarked
package dev.kilnledger.core.material;

import org.jspecify.annotations.NullMarked;
