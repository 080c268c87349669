package dev.kilnledger.thermal.densification;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.part.LinearShrinkage;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.io.Serializable;
import java.util.List;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;

/** The relative density over a whole history, ready to draw. */
@Value.Immutable
@ValueStyle
public interface DensityForecast extends Serializable {
  /**
   * {@return the series: every point of the history, and between them steps of at most 1 K and 5
   * min, no more than a thousand to a line}
   */
  @Value.Parameter
  List<DensityPoint> points();

  /** {@return what it stands on, and whether that reaches so far} */
  @Value.Parameter
  List<Finding> findings();

  /** {@return the relative density at the end, with its band} */
  default Estimate<VolumeFraction> density() {
    return points().get(points().size() - 1).density();
  }

  /**
   * The shrinkage that goes with the density at the end, alike along all axes: {@code Y = 1 -
   * (metal share / rho)^(1/3)}.
   *
   * @param metalInGreen the share of the green volume that metal fills: solids loading times one
   *     less the voids between strands
   * @return the shrinkage, its band from that of the density
   * @throws IllegalArgumentException if the share is not above 0 and up to 1
   */
  default LinearShrinkage shrinkage(Amount<VolumeFraction> metalInGreen) {
    new Problems("shrinkage")
        .require(
            metalInGreen.si() > 0 && metalInGreen.si() <= 1,
            "the metal's share is " + metalInGreen + "; accepted is above 0 and up to 1")
        .refuseIfAny();
    Estimate<VolumeFraction> density = density();
    return LinearShrinkage.uniform(
        Estimate.of(
            shrinkage(metalInGreen, density.span().low()),
            shrinkage(metalInGreen, density.expected()),
            shrinkage(metalInGreen, density.span().high())));
  }

  private static Amount<Dimensionless> shrinkage(
      Amount<VolumeFraction> metalInGreen, Amount<VolumeFraction> density) {
    return Amounts.ratio(1 - Math.cbrt(metalInGreen.si() / density.si()));
  }
}
