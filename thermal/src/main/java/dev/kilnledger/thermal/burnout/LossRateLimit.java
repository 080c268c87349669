package dev.kilnledger.thermal.burnout;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;

/** How fast the binder may leave: by the wall's thickness, or by the gas pressure in its pores. */
public sealed interface LossRateLimit extends Serializable
    permits WallRateLimit, PorePressureLimit {
  /**
   * The highest rate of conversion.
   *
   * @param temperature the temperature of the part
   * @return d alpha / dt, in 1/s, above zero
   */
  Amount<Frequency> allowedAt(Amount<Temperature> temperature);

  /**
   * Whether the limit is used where it is known to hold.
   *
   * @param subject what the finding is about
   * @return passed, or undetermined
   */
  Finding range(String subject);

  /**
   * This limit carried over to another wall.
   *
   * @param wall the thickness of the wall, above zero
   * @return the limit there
   */
  LossRateLimit forWall(Amount<Length> wall);

  /** {@return what it stands on} */
  Source source();

  /** {@return the code of the finding on it} */
  BurnOutFinding code();

  /**
   * What the binder's leaving means at one point, for people.
   *
   * @param point a point of the burn-out
   * @return a clause such as {@code "binder leaves at 12.0 %/h where 10.0 %/h is allowed"}
   */
  String tell(BurnOutPoint point);
}
