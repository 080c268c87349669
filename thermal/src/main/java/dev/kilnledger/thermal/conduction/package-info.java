/**
 * How heat gets through packing and part: what the core really feels of the programme. {@link
 * dev.kilnledger.thermal.conduction.PackedCharge} makes a {@link
 * dev.kilnledger.thermal.conduction.Charge} of crucible, powder and metal; {@link
 * dev.kilnledger.thermal.conduction.EigenmodeConduction}, exact for constant properties, or {@link
 * dev.kilnledger.thermal.conduction.EnthalpyConduction}, for curves, layers and radiation, make a
 * {@link dev.kilnledger.thermal.conduction.CoreHistory} of it. {@link
 * dev.kilnledger.thermal.conduction.SoakHold} finds the hold that gives the core its soak.
 */
@NullMarked
package dev.kilnledger.thermal.conduction;

import org.jspecify.annotations.NullMarked;
