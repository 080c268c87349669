/**
 * Typed amounts. {@link dev.kilnledger.units.Amount} is the one value type; {@link
 * dev.kilnledger.units.Amounts} makes amounts that read like speech, {@link
 * dev.kilnledger.units.TradeUnits} names the units, {@link dev.kilnledger.units.Relations} holds
 * the formulas in which one kind of quantity becomes another, and {@link
 * dev.kilnledger.units.UcumText} reads and prints the text form.
 */
@NullMarked
package dev.kilnledger.units;

import org.jspecify.annotations.NullMarked;
