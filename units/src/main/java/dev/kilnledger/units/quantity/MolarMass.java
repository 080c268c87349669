package dev.kilnledger.units.quantity;

import javax.measure.Quantity;

/** Mass per amount of substance, in kilogram per mole. */
public interface MolarMass extends Quantity<MolarMass> {}
