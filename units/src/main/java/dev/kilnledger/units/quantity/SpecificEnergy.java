package dev.kilnledger.units.quantity;

import javax.measure.Quantity;

/** Energy per mass, in joule per kilogram. */
public interface SpecificEnergy extends Quantity<SpecificEnergy> {}
