package dev.kilnledger.thermal.atmosphere;

import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import javax.measure.quantity.Temperature;

/**
 * Looks for the temperature above which an oxide needs more oxygen than carbon leaves, by bisection
 * in the range of each account of the oxide; the difference rises with temperature.
 */
final class CrossingSearch {
  private static final int HALVINGS = 40; // from 2000 K to a billionth

  private final Thermochemistry thermochemistry;
  private final Oxide oxide;
  private final DoubleUnaryOperator carbon;

  CrossingSearch(Thermochemistry thermochemistry, Oxide oxide, DoubleUnaryOperator carbon) {
    this.thermochemistry = thermochemistry;
    this.oxide = oxide;
    this.carbon = carbon;
  }

  Reduction find(CarbonAtmosphere.Activity activity) {
    return Reduction.builder()
        .earliest(earliest(activity.low))
        .expected(best(activity.expected))
        .latest(latest(activity.high))
        .build();
  }

  /** The lowest of what the accounts say at their best. */
  private Optional<Amount<Temperature>> earliest(double activity) {
    double lowest = Double.POSITIVE_INFINITY;
    for (OxidationEnergy account : oxide.accounts()) {
      Crossing crossing = crossing(account, activity, account.uncertainty);
      if (crossing != Crossing.ABOVE) {
        lowest = Math.min(lowest, crossing.temperature);
      }
    }
    return temperature(lowest);
  }

  /** What the most trusted account says that has the crossing inside its range. */
  private Optional<Amount<Temperature>> best(double activity) {
    double below = Double.POSITIVE_INFINITY;
    for (OxidationEnergy account : oxide.accounts()) {
      Crossing crossing = crossing(account, activity, 0);
      if (crossing.inside) {
        return temperature(crossing.temperature);
      }
      below = Math.min(below, crossing.temperature);
    }
    return temperature(below);
  }

  /** The highest of what the accounts say at their worst; empty where it may be above them all. */
  private Optional<Amount<Temperature>> latest(double activity) {
    double highest = Double.NEGATIVE_INFINITY;
    double lowestStart = Double.POSITIVE_INFINITY;
    double notUpTo = Double.NEGATIVE_INFINITY;
    for (OxidationEnergy account : oxide.accounts()) {
      Crossing crossing = crossing(account, activity, -account.uncertainty);
      if (crossing.inside) {
        highest = Math.max(highest, crossing.temperature);
      } else if (crossing == Crossing.ABOVE) {
        notUpTo = Math.max(notUpTo, account.to);
      } else {
        lowestStart = Math.min(lowestStart, crossing.temperature);
      }
    }
    if (highest == Double.NEGATIVE_INFINITY) {
      return notUpTo == Double.NEGATIVE_INFINITY ? temperature(lowestStart) : Optional.empty();
    }
    return highest < notUpTo ? Optional.empty() : temperature(highest);
  }

  private static Optional<Amount<Temperature>> temperature(double kelvin) {
    return Double.isInfinite(kelvin) ? Optional.empty() : Optional.of(Amounts.kelvin(kelvin));
  }

  private Crossing crossing(OxidationEnergy account, double activity, double shift) {
    double low = account.from;
    double high = account.to;
    if (excess(account, low, activity, shift) > 0) {
      return new Crossing(low, false);
    }
    if (excess(account, high, activity, shift) < 0) {
      return Crossing.ABOVE;
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (excess(account, middle, activity, shift) > 0) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return new Crossing((low + high) / 2, true);
  }

  /** RT ln of the ratio of the oxygen pressure of the oxide to that over carbon. */
  private double excess(OxidationEnergy account, double t, double activity, double shift) {
    OptionalDouble energy = account.at(thermochemistry, t);
    return energy.orElseThrow()
        + shift
        - oxide.metalPerOxygen() * StandardPolynomial.R * t * Math.log(activity)
        - carbon.applyAsDouble(t);
  }

  /** Where one account has the crossing; not inside means at its low end or below. */
  private static final class Crossing {
    static final Crossing ABOVE = new Crossing(Double.POSITIVE_INFINITY, false);

    final double temperature;
    final boolean inside;

    Crossing(double temperature, boolean inside) {
      this.temperature = temperature;
      this.inside = inside;
    }
  }
}
