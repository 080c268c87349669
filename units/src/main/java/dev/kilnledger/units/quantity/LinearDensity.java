package dev.kilnledger.units.quantity;

import javax.measure.Quantity;

/** Mass per length, such as the metal in a metre of filament, in kilogram per metre. */
public interface LinearDensity extends Quantity<LinearDensity> {}
