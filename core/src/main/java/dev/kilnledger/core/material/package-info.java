/**
 * Alloys, binders and the feedstock made of them, packing powders, getters, crucible and nozzle
 * materials, every figure a {@code Sourced} with its condition. Start with {@link
 * dev.kilnledger.core.material.MaterialLibrary#standard()}, which holds what is built in, and with
 * {@link dev.kilnledger.core.material.Feedstock}: state the metal's mass fraction of your own
 * spool, and density and solids loading follow. Feedstocks in the library are generic. {@link
 * dev.kilnledger.core.material.MixtureRule} checks a density against its composition.
 */
@NullMarked
package dev.kilnledger.core.material;

import org.jspecify.annotations.NullMarked;
