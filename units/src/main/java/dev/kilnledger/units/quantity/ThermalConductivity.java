package dev.kilnledger.units.quantity;

import javax.measure.Quantity;

/** Heat flow through a unit of thickness and area per kelvin, in watt per metre and kelvin. */
public interface ThermalConductivity extends Quantity<ThermalConductivity> {}
