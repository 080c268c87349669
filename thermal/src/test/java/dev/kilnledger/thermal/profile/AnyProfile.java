package dev.kilnledger.thermal.profile;

import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.minutes;

import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Relations;
import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Temperature;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.DomainContextBase;

/** Firing profiles of one to six segments, in whole degrees and minutes. */
public final class AnyProfile extends DomainContextBase {
  /** Made by the engine. */
  public AnyProfile() {}

  /** A programme as it is keyed in. */
  public record Programme(int start, List<Step> steps) {
    /** The profile. */
    public Profile profile() {
      return profile(0, 1);
    }

    /** The same, so many degrees hotter and so many times as long throughout. */
    public Profile profile(double hotter, double longer) {
      List<Segment> segments = new ArrayList<>();
      double at = start;
      for (Step step : steps) {
        segments.add(
            Segment.of(
                celsius(at + hotter), celsius(step.target + hotter), minutes(step.took * longer)));
        at = step.target;
      }
      return Profile.of(segments);
    }

    /** The same with one segment cut in two, at a share of its time. */
    public Profile cut(int which, double share) {
      List<Segment> segments = new ArrayList<>(profile().segments());
      Segment whole = segments.remove(which % segments.size());
      Amount<Temperature> middle =
          Relations.shifted(
              whole.start(), Relations.difference(whole.start(), whole.end()).multiply(share));
      int at = which % (segments.size() + 1);
      segments.add(at, Segment.of(whole.start(), middle, whole.duration().multiply(share)));
      segments.add(at + 1, Segment.of(middle, whole.end(), whole.duration().multiply(1 - share)));
      return Profile.of(segments);
    }

    @Override
    public String toString() {
      return start + " °C " + steps;
    }
  }

  /** To a temperature in degrees Celsius, within minutes. */
  public record Step(int target, int took) {
    @Override
    public String toString() {
      return "to " + target + " °C in " + took + " min";
    }
  }

  @Provide
  Arbitrary<Programme> programme() {
    Arbitrary<Step> step =
        Combinators.combine(
                Arbitraries.integers().between(20, 1100), Arbitraries.integers().between(10, 600))
            .as(Step::new);
    return Combinators.combine(
            Arbitraries.integers().between(20, 100), step.list().ofMinSize(1).ofMaxSize(6))
        .as(Programme::new);
  }
}
