package dev.kilnledger.units.quantity;

import javax.measure.Quantity;

/** Heat that warms a unit of mass by one kelvin, in joule per kilogram and kelvin. */
public interface SpecificHeatCapacity extends Quantity<SpecificHeatCapacity> {}
