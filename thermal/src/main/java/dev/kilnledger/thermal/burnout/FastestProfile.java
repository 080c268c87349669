package dev.kilnledger.thermal.burnout;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.thermal.burnout.DebindingProposal.SetBy;
import dev.kilnledger.thermal.kinetics.Frequencies;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.thermal.profile.ProfileBuilder;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import javax.measure.quantity.Temperature;

/**
 * Finds the fastest profile of a few ramps that keeps a limit on the rate of loss.
 *
 * <p>Each ramp goes as fast as kiln and limit let it, up to the temperature at which the next one
 * takes over. Those temperatures are added one by one where they gain most, all of them moved by
 * halving steps after each, until the ramps asked for are used up or one more gains less than 0.5
 * %. A hold at the end converts what the ramps have not. What is found is a local optimum; how far
 * from the best of all profiles tells {@link DebindingProposal#floor()}. The part follows the
 * programme without lag.
 *
 * <p>Example: 150 kJ/mol, 1e9 1/s, first order, from 300 K to 720 K in one ramp where 1.0203 of the
 * binder an hour may leave: that is the fastest loss at 60 K/h, and the ramp goes at 59.9 K/h.
 */
public final class FastestProfile {
  /**
   * What is kept of each rate found, so that the limit is kept between the samples as well, which
   * lie at most 2 K apart.
   */
  private static final double KEPT = 0.999;

  private static final int GRID = 40;
  private static final double FINEST_KELVIN = 0.25;

  /** A ramp more must make the profile shorter than this share of what it was. */
  private static final double WORTH_A_RAMP = 0.995;

  private static final FastestProfile STANDARD = new FastestProfile();

  private FastestProfile() {}

  /** {@return the calculator} */
  public static FastestProfile standard() {
    return STANDARD;
  }

  /**
   * The fastest profile for a task.
   *
   * @param task what it is to do
   * @return the profile, what sets each segment, and how it keeps the limit
   * @throws IllegalArgumentException if the binder leaves too fast already where the profile
   *     starts, or is gone there
   */
  public DebindingProposal of(DebindingTask task) {
    Search search = new Search(task);
    Course best = search.best();
    ProfileBuilder profile = Profile.from(task.start());
    List<SetBy> setBy = new ArrayList<>();
    for (int i = 0; i < best.rates.length; i++) {
      boolean last = i == best.rates.length - 1;
      Amount<Temperature> target =
          last ? task.end() : Amounts.kelvin(best.corners[i]).to(task.start().getUnit());
      profile.rampTo(target, Amounts.kelvinPerHour(best.rates[i] * 3600));
      setBy.add(best.rates[i] < search.fastest ? SetBy.LOSS_RATE : SetBy.KILN);
    }
    if (best.hold > 0) {
      profile.hold(Amounts.seconds(best.hold).to(TradeUnits.HOUR));
      setBy.add(SetBy.CONVERSION);
    }
    Profile built = profile.build();
    return ImmutableDebindingProposal.of(
        built,
        setBy,
        BurnOut.standard().check(task.kinetics(), built, task.limit()),
        Amounts.seconds(search.floor()).to(TradeUnits.HOUR));
  }

  /** Ramps between corners, and the hold after them; K, s. */
  private static final class Course {
    private final double[] corners;
    private final double[] rates;
    private final double hold;
    private final double seconds;

    Course(double[] corners, double[] rates, double hold, double seconds) {
      this.corners = corners;
      this.rates = rates;
      this.hold = hold;
      this.seconds = seconds;
    }
  }

  /** The search for one task. */
  private static final class Search {
    private final DebindingTask task;
    private final RampState first;
    private final double start;
    private final double end;
    private final double fastest;

    Search(DebindingTask task) {
      this.task = task;
      start = task.start().si();
      end = task.end().si();
      fastest = task.fastestHeating().si();
      first = new RampState(task.kinetics(), task.limit(), start);
      new Problems("fastest profile")
          .require(
              first.use() <= 1,
              "at the start at "
                  + task.start()
                  + " the binder would leave "
                  + String.format(Locale.ROOT, "%.3g", first.use())
                  + " times as fast as the "
                  + Frequencies.percentPerHour(task.limit().allowedAt(task.start()))
                  + " allowed; accepted is a colder start")
          .refuseIfAny();
    }

    Course best() {
      Course best = course(new double[0]);
      double spacing = (end - start) / GRID;
      while (best.rates.length < task.ramps()) {
        Course more = best;
        for (int i = 1; i < GRID; i++) {
          double[] corners = Arrays.copyOf(best.corners, best.corners.length + 1);
          corners[corners.length - 1] = start + i * spacing;
          Arrays.sort(corners);
          if (ascends(corners)) {
            more = faster(more, course(corners));
          }
        }
        for (double step = spacing; step > FINEST_KELVIN; step /= 2) {
          more = descend(more, step);
        }
        if (more.seconds > best.seconds * WORTH_A_RAMP) {
          return best;
        }
        best = more;
      }
      return best;
    }

    private Course descend(Course from, double step) {
      Course best = from;
      boolean moved;
      do {
        moved = false;
        for (int i = 0; i < best.corners.length; i++) {
          for (double way : new double[] {-step, step}) {
            double[] corners = best.corners.clone();
            corners[i] += way;
            if (ascends(corners)) {
              Course tried = course(corners);
              moved |= tried.seconds < best.seconds;
              best = faster(best, tried);
            }
          }
        }
      } while (moved);
      return best;
    }

    private boolean ascends(double[] corners) {
      double before = start;
      for (double corner : corners) {
        if (corner <= before) {
          return false;
        }
        before = corner;
      }
      return before < end;
    }

    private static Course faster(Course a, Course b) {
      return b.seconds < a.seconds ? b : a;
    }

    private Course course(double[] corners) {
      double[] rates = new double[corners.length + 1];
      RampState state = first;
      double seconds = 0;
      for (int i = 0; i < rates.length; i++) {
        RampState.Ramp ramp = state.rampTo(i == corners.length ? end : corners[i]);
        double highest = ramp.fastest(fastest);
        rates[i] = highest == fastest ? fastest : KEPT * highest;
        if (rates[i] == 0) {
          return new Course(corners, rates, 0, Double.POSITIVE_INFINITY);
        }
        seconds += ramp.kelvin() / rates[i];
        state = ramp.end(rates[i]);
      }
      double hold = state.holdUntil(1 - task.conversion().si());
      return new Course(corners, rates, hold, seconds + hold);
    }

    double floor() {
      double highest = 0;
      for (double at = start; at < end; at += 1) {
        highest = Math.max(highest, allowed(at));
      }
      highest = Math.max(highest, allowed(end));
      return Math.max(task.conversion().si() / highest, (end - start) / fastest);
    }

    private double allowed(double kelvin) {
      return task.limit().allowedAt(Amounts.kelvin(kelvin)).si();
    }
  }
}
