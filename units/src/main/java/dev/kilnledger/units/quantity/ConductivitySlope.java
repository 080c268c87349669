package dev.kilnledger.units.quantity;

import javax.measure.Quantity;

/**
 * Change of thermal conductivity with temperature, in watt per metre and kelvin squared; negative
 * where a material conducts less the hotter it is.
 */
public interface ConductivitySlope extends Quantity<ConductivitySlope> {}
