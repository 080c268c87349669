package dev.kilnledger.units.quantity;

import javax.measure.Quantity;

/** Conductivity over density and specific heat capacity, in square metre per second. */
public interface ThermalDiffusivity extends Quantity<ThermalDiffusivity> {}
