package dev.kilnledger.thermal.kiln;

import static dev.kilnledger.units.TradeUnits.HOUR;

import dev.kilnledger.core.finding.Caution;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.thermal.energy.EnergyBalance;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.thermal.profile.Segment;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/** What a kiln really does with a programme. */
@Value.Immutable
@ValueStyle
public interface KilnRun extends Serializable {
  /** {@return the curves, from the start to the end of the programme} */
  List<KilnPoint> points();

  /**
   * {@return the curves from the end of the programme, power off, until the kiln may be opened: the
   * last point of the programme first, and nothing else if it is cold by then; nothing is
   * programmed any more, so that the programmed temperature is the actual one}
   */
  List<KilnPoint> coolingPoints();

  /**
   * {@return the programme as it ran: each segment with the time it took, waiting included; the
   * programme itself where the controller goes by the clock}
   */
  Profile programmeAsRun();

  /** {@return the energy from the mains and where it was when the elements went off for good} */
  EnergyBalance energy();

  /** {@return what the elements gave, summed over the steps; the balance's lines must equal it} */
  Amount<Energy> energySupplied();

  /** {@return how long a controller with guaranteed soak waited, zero by the clock} */
  Amount<Time> waited();

  /** {@return from the end of the programme, power off, until the kiln may be opened} */
  Amount<Time> coolingToOpening();

  /** {@return what was found about the kiln and the programme} */
  List<Finding> findings();

  /** {@return the hazards that go with it} */
  Set<Caution> cautions();

  /** {@return the highest temperature of chamber and charge} */
  default Amount<Temperature> peak() {
    return points().stream().map(KilnPoint::actual).max(Comparator.naturalOrder()).orElseThrow();
  }

  /** {@return how long the programme took, waiting included} */
  default Amount<Time> duration() {
    return points().get(points().size() - 1).time();
  }

  /** {@return from the start until the kiln may be opened} */
  default Amount<Time> untilOpening() {
    return duration().add(coolingToOpening()).to(HOUR);
  }

  /** {@return the actual temperatures as a profile, for whatever takes one} */
  default Profile actualProfile() {
    List<Segment> segments = new ArrayList<>();
    for (int i = 1; i < points().size(); i++) {
      KilnPoint before = points().get(i - 1);
      KilnPoint after = points().get(i);
      segments.add(
          Segment.of(
              before.actual(),
              after.actual(),
              Amounts.seconds(after.time().si() - before.time().si())));
    }
    return Profile.of(segments);
  }

  /**
   * Starts one.
   *
   * @return an empty builder
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link KilnRun} values. */
  final class Builder extends ImmutableKilnRun.Builder {
    Builder() {}
  }
}
