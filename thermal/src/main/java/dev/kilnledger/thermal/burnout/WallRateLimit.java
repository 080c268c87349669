package dev.kilnledger.thermal.burnout;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.kinetics.Frequencies;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import java.io.Serializable;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.immutables.value.Value;

/**
 * A rate of loss that a wall of one thickness is known to stand, carried over to another: {@code
 * rate (known wall / wall)^m}. For what moves through the wall by diffusion, flow or wicking m is 2
 * (German 1987, from memory); where heat or oxygen has to get to it, as may be in air, 1 (quoted in
 * public research notes).
 *
 * <p>No rate is built in: it is what the user's own parts came through.
 *
 * <p>Example: a wall of 3 mm is known to stand 20 %/h; for 6 mm 5 %/h are allowed by the square of
 * the thickness, 10 %/h by the thickness itself.
 */
@Value.Immutable
@ValueStyle
public non-sealed interface WallRateLimit extends LossRateLimit, Serializable {
  /** How many times thicker or thinner a wall may be than the known one. */
  double WIDEST = 3;

  /** What that stands on. */
  Source SCALING_BASIS =
      Source.commonPractice(
          "the exponent of the thickness is known no better than between 1 and 2, a factor of 3 at"
              + " three times the wall");

  /** How the allowed rate falls as the wall gets thicker. */
  enum Scaling {
    /** With the square of the thickness. */
    SQUARE(2),
    /** With the thickness itself. */
    LINEAR(1);

    private final int power;

    Scaling(int power) {
      this.power = power;
    }

    /** {@return the power of the thickness} */
    public int power() {
      return power;
    }
  }

  /** {@return the wall it is for, above zero} */
  Amount<Length> wall();

  /** {@return the wall whose limit is known, above zero} */
  Amount<Length> knownWall();

  /** {@return the highest rate of conversion known to be harmless there, above zero} */
  Amount<Frequency> knownRate();

  /** {@return how the rate falls with the thickness; with its square by default} */
  @Value.Default
  default Scaling scaling() {
    return Scaling.SQUARE;
  }

  @Override
  default Amount<Frequency> allowedAt(Amount<Temperature> temperature) {
    return knownRate().multiply(Math.pow(knownWall().ratio(wall()), scaling().power()));
  }

  /**
   * {@inheritDoc}
   *
   * <p>The scaling is taken to hold from a third of the known wall to three times it (common
   * practice: the exponent itself is not surer than between 1 and 2, which then is a factor of 3).
   */
  @Override
  default Finding range(String subject) {
    double ratio = wall().ratio(knownWall());
    boolean near = ratio <= WIDEST && ratio >= 1 / WIDEST;
    return BurnOutFinding.LIMIT_RANGE
        .about(subject)
        .severity(near ? Severity.PASSED : Severity.UNDETERMINED)
        .measured(Amounts.ratio(ratio))
        .limit(Amounts.ratio(ratio < 1 ? 1 / WIDEST : WIDEST))
        .message(
            "the allowed rate is carried over from a wall of "
                + knownWall().format(TradeUnits.MILLIMETRE, 1)
                + " to one of "
                + wall().format(TradeUnits.MILLIMETRE, 1)
                + (near ? "" : ": too far, try a part of your own"))
        .basis(SCALING_BASIS)
        .build();
  }

  @Override
  default WallRateLimit forWall(Amount<Length> wall) {
    return builder().from(this).wall(wall).build();
  }

  @Override
  default BurnOutFinding code() {
    return BurnOutFinding.LOSS_RATE;
  }

  @Override
  default String tell(BurnOutPoint point) {
    return "binder leaves at "
        + Frequencies.percentPerHour(point.rate())
        + " where "
        + Frequencies.percentPerHour(allowedAt(point.temperature()))
        + " is allowed for a wall of "
        + wall().format(TradeUnits.MILLIMETRE, 1);
  }

  /**
   * Starts one.
   *
   * @return a builder; wall, known wall, known rate and source are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link WallRateLimit} values. */
  final class Builder extends ImmutableWallRateLimit.Builder {
    Builder() {}
  }

  /**
   * Refuses walls and rates that are not above zero.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("wall rate limit")
        .positive("wall", wall())
        .positive("known wall", knownWall())
        .positive("known rate", knownRate())
        .refuseIfAny();
  }
}
