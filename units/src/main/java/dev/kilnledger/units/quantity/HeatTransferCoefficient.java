package dev.kilnledger.units.quantity;

import javax.measure.Quantity;

/** Heat flow from a surface per unit of area and kelvin, in watt per square metre and kelvin. */
public interface HeatTransferCoefficient extends Quantity<HeatTransferCoefficient> {}
