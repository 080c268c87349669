package dev.kilnledger.thermal.design;

import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.thermal.profile.Segment;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.Relations;
import dev.kilnledger.units.TradeUnits;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;

/**
 * Careful programmes to search from, in several degrees of care: slower, longer, hotter. What they
 * are built of are the facts of the materials; whether they pass is for the check to say.
 */
final class FirstGuess {
  /** Where nothing is known to happen, K/h. */
  private static final double PLAIN_RATE = 100;

  /** Through the range of the binder, K/h. */
  private static final double DEBINDING_RATE = 30;

  /** Times as slow as that, and how far beyond the range of the binder, K. */
  private static final double[][] CARE = {{1, 0}, {4, 40}, {16, 0}, {64, 0}, {1, 80}};

  /** In the upper part of sintering, K/h. */
  private static final double SINTERING_RATE = 60;

  /** From cold to the peak, where that must be slower still, K/h. */
  private static final double SLOW_RATE = 15;

  /** Where the powder begins to sinter, of the peak in °C. */
  private static final double SINTERS_FROM = 0.7;

  private static final double HOLD = 60; // minutes

  /** So that a guess stands when what goes before is changed a little. */
  private static final double COOLING_SLACK = 1.02;

  private static final double ROUNDING = 1e-9;

  private final DesignTask task;
  private final FiringSetup setup;

  FirstGuess(DesignTask task) {
    this.task = task;
    this.setup = task.setup();
  }

  /** The user's own programme as the controller takes it, cooling as fast as the kiln cools. */
  Programme own(FiringStage stage) {
    List<Segment> heating = stage.profile().segmentsBeforeFinalCooling();
    return heating.isEmpty()
        ? Programme.nearest(task.form(), stage.profile())
        : cooled(stage, Programme.nearest(task.form(), Profile.of(heating)));
  }

  /** Programmes for a stage, the most likely first, each made when it is asked for. */
  List<Supplier<Programme>> of(FiringStage stage) {
    return stage.purpose() == FiringStage.Purpose.DEBINDING ? debinding(stage) : sintering(stage);
  }

  private List<Supplier<Programme>> debinding(FiringStage stage) {
    Span<Temperature> range = setup.binder().decomposition().value();
    double low = degrees(range.low());
    double high = Math.ceil(degrees(range.high()));
    double hottest =
        Math.min(degrees(sinteringPeaks().get(1)) - 1, degrees(setup.kiln().peakTemperature()));
    List<Supplier<Programme>> guesses = new ArrayList<>();
    for (double[] care : CARE) {
      double top = Math.min(high + care[1] * degreesPerKelvin(), hottest);
      List<Double> corners = new ArrayList<>(List.of(Math.min(low, top - 1)));
      int ramps = ramps(task.debindingRamps());
      double width = (top - corners.get(0)) / (ramps - 1);
      while (corners.size() < ramps) {
        corners.add(corners.get(corners.size() - 1) + width);
      }
      corners.set(corners.size() - 1, top);
      double careful = DEBINDING_RATE / care[0];
      // slower before the binder as well, but never slower than through it
      double plain = Math.min(PLAIN_RATE, Math.max(1, 16 / care[0]) * careful);
      guesses.add(() -> guess(stage, corners, plain, careful, HOLD * care[0]));
    }
    return guesses;
  }

  private List<Supplier<Programme>> sintering(FiringStage stage) {
    Span<Time> usual = setup.alloy().sinteringHold().value();
    double longest = usual.high().in(TradeUnits.MINUTE);
    double shortest = usual.low().in(TradeUnits.MINUTE);
    List<Supplier<Programme>> guesses = new ArrayList<>();
    for (Amount<Temperature> peak : sinteringPeaks()) {
      guesses.add(() -> sintering(stage, peak, PLAIN_RATE, SINTERING_RATE, longest));
      guesses.add(() -> sintering(stage, peak, SLOW_RATE, SLOW_RATE, 5 * longest));
      guesses.add(() -> sintering(stage, peak, PLAIN_RATE, SINTERING_RATE, shortest));
    }
    return guesses;
  }

  private Programme sintering(
      FiringStage stage, Amount<Temperature> peak, double plain, double careful, double minutes) {
    double top = Math.rint(degrees(peak));
    List<Double> corners = new ArrayList<>();
    double start = SINTERS_FROM * top;
    int ramps = ramps(task.sinteringRamps());
    for (int i = 0; i < ramps - 1; i++) {
      corners.add(start + i * (top - start) / (ramps - 1));
    }
    corners.add(top);
    return guess(stage, corners, plain, careful, minutes);
  }

  /** As many ramps as wanted, if the controller takes them and a hold. */
  private int ramps(int wanted) {
    int taken = setup.kiln().programmeSegments().orElse(wanted + 1);
    return Math.max(1, Math.min(wanted, taken - 1));
  }

  /** The middle, the upper and the lower end of where the metal may be sintered in this kiln. */
  private List<Amount<Temperature>> sinteringPeaks() {
    Alloy alloy = setup.alloy();
    Span<Temperature> wanted = task.peak().orElseGet(() -> alloy.sinteringWindow().value());
    Amount<Temperature> low = wanted.low();
    Amount<Temperature> high = wanted.high();
    if (task.peak().isEmpty()) {
      // A degree more than the 15 K that handbooks and thermocouples may be wrong by.
      high = lower(high, Relations.shifted(alloy.solidus().value(), Amounts.kelvinDifference(-16)));
      high = lower(high, setup.kiln().peakTemperature());
    }
    high = high.isLessThan(low) ? low : high;
    Amount<Temperature> middle = Relations.shifted(low, Relations.difference(low, high).divide(2));
    return List.of(middle, high, low);
  }

  private static Amount<Temperature> lower(Amount<Temperature> one, Amount<Temperature> other) {
    return one.isLessThan(other) ? one : other;
  }

  /** Up to the first corner at the plain rate, on at the careful one, a hold, and cooling. */
  private Programme guess(
      FiringStage stage, List<Double> corners, double plain, double careful, double holdMinutes) {
    double fastest =
        setup.kiln().fastestHeating().orElse(Demands.ASSUMED).in(TradeUnits.KELVIN_PER_HOUR);
    Programme programme =
        new Programme(task.form(), (int) Math.round(degrees(task.startAt())), List.<Move>of());
    double rate = Math.min(plain, fastest);
    for (double corner : corners) {
      int target = (int) Math.round(corner);
      if (target > programme.last()) {
        programme = programme.then(target, kelvin(target - programme.last()) / rate * 60);
      }
      rate = Math.min(careful, fastest);
    }
    programme = programme.then(programme.last(), holdMinutes);
    return cooled(stage, programme);
  }

  /**
   * A programme that ends hot, and then, where that is asked for, cooling in straight lines that
   * the kiln can follow.
   */
  Programme cooled(FiringStage stage, Programme hot) {
    double from = kelvin(hot.last() - degrees(task.startAt()));
    double to = Relations.difference(task.startAt(), task.coolTo()).si();
    if (setup.kiln().wall().isEmpty() || task.coolingRamps() == 0 || to >= from) {
      return hot;
    }
    int ramps = Math.min(task.coolingRamps(), segmentsLeft(hot));
    Programme programme = hot;
    for (int i = 1; i <= ramps; i++) {
      // Steps of equal ratio above the room: so a body cools that loses heat in proportion.
      double above = from * Math.pow(to / from, (double) i / ramps);
      int target = (int) Math.ceil(degrees(task.startAt()) + above * degreesPerKelvin() - ROUNDING);
      if (target < programme.last()) {
        double minutes = new NaturalCooling(setup).minutes(stage, programme, target);
        programme = programme.then(target, minutes * COOLING_SLACK);
      }
    }
    return programme;
  }

  /** One segment at least: a controller that has none left cools by itself, and the times stand. */
  private int segmentsLeft(Programme hot) {
    return Math.max(
        1, setup.kiln().programmeSegments().orElse(hot.moves().size()) - hot.moves().size());
  }

  private double degrees(Amount<Temperature> temperature) {
    return temperature.in(task.form().scale().unit());
  }

  private double kelvin(double degrees) {
    return degrees / degreesPerKelvin();
  }

  private double degreesPerKelvin() {
    return task.form().scale().degreesPerHour(Amounts.kelvinPerHour(1));
  }
}
