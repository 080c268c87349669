/**
 * How sure a firing is: {@link dev.kilnledger.thermal.chance.UncertainFiring} says what is not
 * known exactly and how likely which value of it is ({@link dev.kilnledger.thermal.chance.Spread}),
 * {@link dev.kilnledger.thermal.chance.ChanceForecast} draws thousands of such firings, and {@link
 * dev.kilnledger.thermal.chance.FiringChances} tells how many of them come out, and which input
 * matters most.
 */
@NullMarked
package dev.kilnledger.thermal.chance;

import org.jspecify.annotations.NullMarked;
