package dev.kilnledger.units.quantity;

import javax.measure.Quantity;

/**
 * How far apart two temperatures lie, in kelvin. Unlike a {@link
 * javax.measure.quantity.Temperature}, which is a point on a scale, differences add up and scale.
 */
public interface TemperatureDifference extends Quantity<TemperatureDifference> {}
