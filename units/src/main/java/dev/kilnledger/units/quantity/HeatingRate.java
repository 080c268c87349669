package dev.kilnledger.units.quantity;

import javax.measure.Quantity;

/** Change of temperature over time, in kelvin per second; negative when cooling. */
public interface HeatingRate extends Quantity<HeatingRate> {}
