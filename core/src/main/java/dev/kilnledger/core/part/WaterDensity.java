package dev.kilnledger.core.part;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import javax.measure.quantity.Temperature;
import si.uom.quantity.Density;

/**
 * The density of pure, air-free water at one atmosphere, for weighing in water.
 *
 * <p>{@code rho = 999.97495 kg/m3 (1 - (t - 3.983035)^2 (t + 301.797) / (522528.9 (t + 69.34881)))}
 * with t in °C from 0 to 40: Tanaka et al., Metrologia 38 (2001) 301, as quoted in public source
 * code. Air dissolved in the water lowers it by less than 0.005 kg/m3, which no weighing here
 * shows.
 */
public final class WaterDensity {
  private static final Amount<Temperature> COLDEST = Amounts.celsius(0);
  private static final Amount<Temperature> WARMEST = Amounts.celsius(40);
  private static final WaterDensity STANDARD = new WaterDensity();

  private WaterDensity() {}

  /** {@return the formula} */
  public static WaterDensity standard() {
    return STANDARD;
  }

  /**
   * The density of water at a temperature.
   *
   * @param temperature from 0 to 40 °C
   * @return the density
   * @throws IllegalArgumentException if the temperature lies outside
   */
  public Amount<Density> at(Amount<Temperature> temperature) {
    new Problems("water").within("temperature", temperature, COLDEST, WARMEST).refuseIfAny();
    double t = temperature.in(TradeUnits.CELSIUS);
    double fromDensest = t - 3.983035;
    return Amounts.kilogramsPerCubicMetre(
        999.97495 * (1 - fromDensest * fromDensest * (t + 301.797) / (522528.9 * (t + 69.34881))));
  }
}
