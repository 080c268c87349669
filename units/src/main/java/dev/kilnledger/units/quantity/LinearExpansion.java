package dev.kilnledger.units.quantity;

import javax.measure.Quantity;

/** Relative change of length per kelvin, in reciprocal kelvin. */
public interface LinearExpansion extends Quantity<LinearExpansion> {}
