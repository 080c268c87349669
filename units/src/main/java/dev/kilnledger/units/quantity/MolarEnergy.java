package dev.kilnledger.units.quantity;

import javax.measure.Quantity;

/** Energy per amount of substance, such as an activation energy, in joule per mole. */
public interface MolarEnergy extends Quantity<MolarEnergy> {}
