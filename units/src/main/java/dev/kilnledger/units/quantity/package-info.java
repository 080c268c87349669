/**
 * The kinds of quantity the trade measures and that JSR 385 and its SI companion do not name, such
 * as {@link dev.kilnledger.units.quantity.HeatingRate}, {@link
 * dev.kilnledger.units.quantity.TemperatureDifference} and the two fractions, {@link
 * dev.kilnledger.units.quantity.MassFraction} and {@link
 * dev.kilnledger.units.quantity.VolumeFraction}. They are type arguments only: an {@code
 * Amount<HeatingRate>} cannot be taken for another kind. Nothing implements them; {@link
 * dev.kilnledger.units.Amounts} makes the amounts.
 */
@NullMarked
package dev.kilnledger.units.quantity;

import org.jspecify.annotations.NullMarked;
