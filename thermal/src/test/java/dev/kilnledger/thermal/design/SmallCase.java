package dev.kilnledger.thermal.design;

import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.kelvinPerHour;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.FindingCode;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.Workbench;
import dev.kilnledger.thermal.check.FiringCheck;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.thermal.profile.Segment;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * A firing with limits that are cheap enough to search a grid by brute force, and of the same kinds
 * as the real ones: a first-order binder that may leave only so fast, falling with the square of
 * the wall, and has to be gone; a core that follows the kiln with one time constant and has to be
 * hot for some time; a work of sintering; a rate allowed in the upper part; a window for the peak;
 * the rate of the kiln. All figures are drawn at random from ranges that practice knows.
 */
final class SmallCase {
  private static final double R = 8.314462618;
  private static final double LEFT = 0.01;

  /** What the limits are told by. */
  enum Limit implements FindingCode {
    LOSS,
    BINDER_LEFT,
    KILN_RATE,
    SOAK,
    WORK,
    UPPER_RATE,
    PEAK;

    @Override
    public String code() {
      return "small-" + name();
    }
  }

  final double kilnRate; // K/h
  final double lowest; // of the peak, deg C
  final double highest;
  private final double allowedLoss; // 1/h
  private final double binderEnergy;
  private final double binderFactor; // 1/h
  private final double timeConstant; // h
  private final double soakAt;
  private final double soak; // h
  private final double upperRate;
  private final double upperFrom;
  private final double workEnergy;
  private final double workWanted;
  private final double[] binderIntegral;
  private final double[] workIntegral;

  SmallCase(Random random) {
    double wall = List.of(2.0, 3.0, 4.0, 5.0, 6.0).get(random.nextInt(5));
    allowedLoss = (0.15 + 0.35 * random.nextDouble()) * 9 / (wall * wall);
    binderEnergy = 110e3 + 110e3 * random.nextDouble();
    // Half of it would be gone in an hour somewhere between 280 and 360 deg C.
    double half = 280 + 80 * random.nextDouble() + 273.15;
    binderFactor = Math.log(2) * Math.exp(binderEnergy / (R * half));
    kilnRate = List.of(100, 150, 200, 300).get(random.nextInt(4));
    lowest = 850 + random.nextInt(350);
    highest = lowest + 30 + random.nextInt(90);
    timeConstant = 0.1 + 1.1 * random.nextDouble();
    soakAt = lowest - 5 + random.nextInt(25);
    soak = 0.5 + 2.5 * random.nextDouble();
    upperRate = 40 + 110 * random.nextDouble();
    upperFrom = (0.6 + 0.3 * random.nextDouble()) * lowest;
    workEnergy = 150e3 + 350e3 * random.nextDouble();
    double middle = (lowest + highest) / 2 + 273.15;
    workWanted = (0.5 + 2.5 * random.nextDouble()) / middle * Math.exp(-workEnergy / R / middle);
    binderIntegral = integral(kelvin -> Math.exp(-binderEnergy / (R * kelvin)));
    workIntegral = integral(kelvin -> Math.exp(-workEnergy / (R * kelvin)) / kelvin);
  }

  private interface Kernel {
    double at(double kelvin);
  }

  /** From 0 deg C, degree by degree, by Simpson's rule, whose error over one kelvin is nil here. */
  private static double[] integral(Kernel kernel) {
    double[] sums = new double[1500];
    for (int i = 1; i < sums.length; i++) {
      double a = i - 1 + 273.15;
      sums[i] = sums[i - 1] + (kernel.at(a) + 4 * kernel.at(a + 0.5) + kernel.at(a + 1)) / 6;
    }
    return sums;
  }

  private static double at(double[] integral, double celsius) {
    int i = (int) celsius;
    return integral[i] + (celsius - i) * (integral[i + 1] - integral[i]);
  }

  /**
   * How far each limit of debinding is exceeded, as a ratio: loss, binder left, rate of the kiln.
   */
  private double[] debinding(double[] celsius, double[] hours, boolean quick) {
    double reduced = 0; // integral of A exp(-E/RT) dt
    double loss = 0;
    double fastest = 0;
    for (int i = 1; i < celsius.length; i++) {
      double from = celsius[i - 1];
      double to = celsius[i];
      double rate = (to - from) / hours[i - 1];
      fastest = Math.max(fastest, rate);
      if (rate == 0) {
        // Falls through the hold, so it is highest where the ramp ended.
        reduced += hours[i - 1] * binderFactor * Math.exp(-binderEnergy / (R * (to + 273.15)));
        continue;
      }
      double before = at(binderIntegral, from);
      for (double t = from + 2; t < to + 2; t += 2) {
        double here = Math.min(t, to);
        double now = reduced + binderFactor * (at(binderIntegral, here) - before) / rate;
        double speed = binderFactor * Math.exp(-binderEnergy / (R * (here + 273.15)) - now);
        loss = Math.max(loss, speed);
        if (quick && loss > allowedLoss * 1.001) {
          return new double[] {loss / allowedLoss};
        }
      }
      reduced += binderFactor * (at(binderIntegral, to) - before) / rate;
    }
    return new double[] {loss / allowedLoss, Math.exp(-reduced) / LEFT, fastest / kilnRate};
  }

  /** Whether debinding keeps its limits; ends at the first that it does not. */
  double[] quickDebinding(double[] celsius, double[] hours) {
    return debinding(celsius, hours, true);
  }

  /** The same of sintering: rate, soak, work, upper rate, peak. */
  double[] sintering(double[] celsius, double[] hours) {
    double core = celsius[0];
    double soaked = 0;
    double work = 0;
    double fastest = 0;
    double upper = 0;
    double peak = celsius[0];
    for (int i = 1; i < celsius.length; i++) {
      double from = celsius[i - 1];
      double to = celsius[i];
      double rate = (to - from) / hours[i - 1];
      fastest = Math.max(fastest, rate);
      upper = to > upperFrom ? Math.max(upper, rate) : upper;
      peak = Math.max(peak, to);
      work +=
          rate == 0
              ? hours[i - 1] * Math.exp(-workEnergy / (R * (to + 273.15))) / (to + 273.15)
              : (at(workIntegral, to) - at(workIntegral, from)) / rate;
      double end = core(from, rate, core, hours[i - 1]);
      if (end > soakAt) {
        double low = 0;
        double high = core > soakAt ? 0 : hours[i - 1];
        while (high - low > 1e-6) {
          double middle = (low + high) / 2;
          boolean hot = core(from, rate, core, middle) > soakAt;
          low = hot ? low : middle;
          high = hot ? middle : high;
        }
        soaked += hours[i - 1] - high;
      }
      core = end;
    }
    return new double[] {
      fastest / kilnRate,
      soak / Math.max(1e-9, soaked),
      workWanted / work,
      upper / upperRate,
      peak < lowest ? 2 : peak / highest
    };
  }

  private double core(double from, double rate, double core, double hours) {
    double lag = rate * timeConstant;
    return from + rate * hours - lag + (core - from + lag) * Math.exp(-hours / timeConstant);
  }

  static boolean kept(double[] ratios) {
    for (double ratio : ratios) {
      if (ratio > 1 + 1e-9) {
        return false;
      }
    }
    return true;
  }

  /** The limits as a check, for the designer to take as it takes any other. */
  FiringCheck check() {
    return new FiringCheck(
        List.of(
            forecast -> {
              List<Finding> findings = new ArrayList<>();
              for (FiringStage stage : forecast.setup().route().stages()) {
                boolean debinds = stage.purpose() == FiringStage.Purpose.DEBINDING;
                double[] corners = corners(stage.profile());
                double[] hours = hours(stage.profile());
                double[] ratios =
                    debinds ? debinding(corners, hours, false) : sintering(corners, hours);
                List<Limit> limits =
                    debinds
                        ? List.of(Limit.LOSS, Limit.BINDER_LEFT, Limit.KILN_RATE)
                        : List.of(
                            Limit.KILN_RATE, Limit.SOAK, Limit.WORK, Limit.UPPER_RATE, Limit.PEAK);
                for (int i = 0; i < ratios.length; i++) {
                  findings.add(finding(limits.get(i), stage, ratios[i]));
                }
              }
              return findings;
            }));
  }

  private static Finding finding(Limit limit, FiringStage stage, double ratio) {
    return Finding.builder()
        .code(limit)
        .subject(stage.name())
        .severity(ratio > 1 + 1e-9 ? Severity.WARNING : Severity.PASSED)
        .message(limit + " is at " + ratio)
        .measured(Amounts.ratio(ratio))
        .limit(Amounts.ratio(1))
        .basis(Source.user("invented for the tests"))
        .build();
  }

  private static double[] corners(Profile profile) {
    double[] corners = new double[profile.segments().size() + 1];
    corners[0] = profile.start().in(TradeUnits.CELSIUS);
    for (int i = 1; i < corners.length; i++) {
      corners[i] = profile.segments().get(i - 1).end().in(TradeUnits.CELSIUS);
    }
    return corners;
  }

  private static double[] hours(Profile profile) {
    return profile.segments().stream()
        .map(Segment::duration)
        .mapToDouble(time -> time.in(TradeUnits.HOUR))
        .toArray();
  }

  /** A firing that the designer may start from; its own profiles break most limits. */
  FiringSetup setup() {
    return Workbench.setup(Workbench.stainless(), 1260)
        .kiln(Workbench.kiln(1300).wall(List.of()).fastestHeating(kelvinPerHour(kilnRate)).build())
        .build();
  }

  DesignTask task() {
    return DesignTask.builder()
        .setup(setup())
        .debindingRamps(2)
        .sinteringRamps(2)
        .peak(Span.of(celsius(lowest), celsius(highest)))
        .build();
  }
}
