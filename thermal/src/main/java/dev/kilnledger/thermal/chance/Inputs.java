package dev.kilnledger.thermal.chance;

import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.thermal.chance.FiringInput.BINDER_ENERGY;
import static dev.kilnledger.thermal.chance.FiringInput.CURVE_LOCATION;
import static dev.kilnledger.thermal.chance.FiringInput.CURVE_WIDTH;
import static dev.kilnledger.thermal.chance.FiringInput.DENSITY_SCATTER;
import static dev.kilnledger.thermal.chance.FiringInput.DRIFT;
import static dev.kilnledger.thermal.chance.FiringInput.INITIAL_DENSITY;
import static dev.kilnledger.thermal.chance.FiringInput.KILN_OFFSET;
import static dev.kilnledger.thermal.chance.FiringInput.KINETICS;
import static dev.kilnledger.thermal.chance.FiringInput.METAL_SHARE;
import static dev.kilnledger.thermal.chance.FiringInput.PACKING_CONDUCTIVITY;
import static dev.kilnledger.thermal.chance.FiringInput.SINTERING_ENERGY;
import static dev.kilnledger.thermal.chance.FiringInput.THERMOCOUPLE;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.densification.FittedSinteringCurve;
import dev.kilnledger.thermal.densification.SinteringEnergies;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.TemperatureDifference;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import javax.measure.quantity.Dimensionless;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.GammaDistribution;
import org.apache.commons.statistics.distribution.TDistribution;
import org.jspecify.annotations.Nullable;

/**
 * The laws of all inputs. Those of a fitted sintering curve follow Student's t together: normal
 * numbers over the root of one common chi squared, as the scatter that scales all of them is itself
 * estimated.
 */
final class Inputs {
  /** The highest share whose quantile the quick model has to reach. */
  static final Amount<Dimensionless> HIGHEST = Amounts.ratio(1 - 1e-5);

  private static final Set<FiringInput> OF_CURVE =
      Set.of(SINTERING_ENERGY, CURVE_LOCATION, CURVE_WIDTH, INITIAL_DENSITY, DENSITY_SCATTER);
  private static final Spread<TemperatureDifference> OFFSET =
      Spread.rectangular(
          Amounts.kelvinDifference(-10),
          Amounts.kelvinDifference(10),
          Source.commonPractice("10 K either way in a small kiln that nobody has surveyed"));
  private static final Spread<Dimensionless> ENERGY =
      Spread.rectangular(
          Amounts.ratio(0.88),
          Amounts.ratio(1.12),
          Source.recomputed(
              "one powder gave 197 to 250 kJ/mol in three laboratories by one method (MaCFP"
                  + " condensed phase database)"));

  private final Map<FiringInput, DoubleUnaryOperator> laws = new EnumMap<>(FiringInput.class);
  private final @Nullable FittedSinteringCurve curve;
  private final List<Finding> assumed = new ArrayList<>();

  Inputs(UncertainFiring firing, FiringForecast forecast) {
    FiringSetup setup = firing.setup();
    curve = setup.sinteringCurve().orElse(null);
    for (FiringInput input : FiringInput.values()) {
      laws.put(input, exactly(0));
    }
    set(KILN_OFFSET, firing.kilnOffset().orElseGet(() -> assume(KILN_OFFSET, OFFSET)));
    set(THERMOCOUPLE, firing.thermocoupleError());
    firing.drift().ifPresent(drift -> set(DRIFT, drift));
    set(PACKING_CONDUCTIVITY, firing.packingConductivity().orElseGet(() -> conductivity(forecast)));
    laws.put(METAL_SHARE, exactly(setup.feedstock().metalMassFraction().si()));
    firing.metalShare().ifPresent(share -> set(METAL_SHARE, share));
    int kinetics = forecast.candidates().size();
    laws.put(KINETICS, share -> Math.min(kinetics - 1, Math.floor(share * kinetics)));
    laws.put(BINDER_ENERGY, exactly(1));
    if (firing.binderEnergy().isPresent()) {
      set(BINDER_ENERGY, firing.binderEnergy().get());
    } else if (!setup.kinetics().isEmpty()) {
      set(BINDER_ENERGY, assume(BINDER_ENERGY, ENERGY));
    }
    if (curve != null) {
      TDistribution t = TDistribution.of(curve.degreesOfFreedom());
      OF_CURVE.forEach(input -> laws.put(input, t::inverseCumulativeProbability));
    } else {
      firing
          .sinteringEnergy()
          .or(
              () ->
                  SinteringEnergies.rangeOf(setup.alloy())
                      .map(
                          range ->
                              Spread.rectangular(
                                  range.low(),
                                  range.high(),
                                  SinteringEnergies.of(setup.alloy()).get(0).source())))
          .ifPresent(energy -> set(SINTERING_ENERGY, energy));
    }
    sensor(setup);
  }

  /** Whether the setup's activation energy of sintering is known at least as an interval. */
  boolean knowsSinteringEnergy() {
    return law(SINTERING_ENERGY).applyAsDouble(0.5) > 0;
  }

  private static Spread<Dimensionless> conductivity(FiringForecast forecast) {
    double factor =
        forecast.setup().packingConductivity().isPresent()
            ? 1
            : PackingLayer.of(forecast.hottest()).material().conductivityFactor().si();
    return Spread.logRectangular(
        Amounts.ratio(1 / factor),
        Amounts.ratio(factor),
        PackingLayer.of(forecast.hottest()).material().source());
  }

  private void sensor(FiringSetup setup) {
    Finding.Builder finding =
        ChanceFinding.INPUT_ASSUMED.about(THERMOCOUPLE.words()).severity(UNDETERMINED);
    if (setup.thermocouple().isEmpty()) {
      assumed.add(
          finding
              .message("the type of the thermocouple is not stated: it is taken to read right")
              .basis(Source.user("the thermocouple, as entered with the kiln"))
              .build());
    } else if (setup.thermocouple().get().tolerance(setup.route().peak()).isEmpty()) {
      assumed.add(
          finding
              .message(
                  "no tolerance is stated for type "
                      + setup.thermocouple().get()
                      + " so hot: that at the end of its range stands in, and it may be worse")
              .basis(setup.thermocouple().get().finding(setup.route().peak()).basis())
              .build());
    }
  }

  private <T extends Spread<?>> T assume(FiringInput input, T spread) {
    assumed.add(
        ChanceFinding.INPUT_ASSUMED
            .about(input.words())
            .severity(NOTE)
            .message(
                input.words()
                    + " is not stated: taken as "
                    + spread.form().words()
                    + " from "
                    + spread.span().low()
                    + " to "
                    + spread.span().high())
            .basis(spread.source())
            .build());
    return spread;
  }

  private void set(FiringInput input, Spread<?> spread) {
    laws.put(input, Law.of(spread));
  }

  private static DoubleUnaryOperator exactly(double value) {
    return share -> value;
  }

  static void positive(String name, Spread<?> spread, Problems problems) {
    Amount<?> least = spread.quantile(Amounts.ratio(1 - HIGHEST.si()));
    problems.require(least.si() > 0, name + " goes down to " + least + "; accepted is above zero");
  }

  /** What was assumed for lack of anything better. */
  List<Finding> assumed() {
    return assumed;
  }

  private DoubleUnaryOperator law(FiringInput input) {
    return Objects.requireNonNull(laws.get(input));
  }

  double at(FiringInput input, double share) {
    return law(input).applyAsDouble(share);
  }

  /** The least value that the quick model has to reach. */
  double least(FiringInput input) {
    return at(input, 1 - HIGHEST.si());
  }

  /** The largest value that the quick model has to reach. */
  double most(FiringInput input) {
    return at(input, HIGHEST.si());
  }

  boolean varies(FiringInput input) {
    return least(input) != most(input);
  }

  boolean anythingVaries() {
    return Arrays.stream(FiringInput.values()).anyMatch(this::varies);
  }

  /** Every input at its median. */
  Draw medians() {
    return Draw.of(input -> at(input, 0.5));
  }

  /** What draws one firing after another from a stream of random numbers. */
  Drawing drawing(UniformRandomProvider random) {
    return new Drawing(random);
  }

  /** A stream of draws. */
  final class Drawing {
    private final UniformRandomProvider random;
    private final Optional<ContinuousDistribution.Sampler> chiSquared;

    private Drawing(UniformRandomProvider random) {
      this.random = random;
      // chi squared of n degrees of freedom is a gamma law of shape n / 2 and scale 2
      chiSquared =
          Optional.ofNullable(curve)
              .map(c -> GammaDistribution.of(c.degreesOfFreedom() / 2.0, 2).createSampler(random));
    }

    Draw next() {
      double widening =
          curve == null
              ? 1
              : Math.sqrt(curve.degreesOfFreedom() / chiSquared.orElseThrow().sample());
      return Draw.of(input -> next(input, widening));
    }

    private double next(FiringInput input, double widening) {
      // between 0 and 1, without either
      double share = ((random.nextLong() >>> 12) + 0.5) * 0x1p-52;
      return curve != null && OF_CURVE.contains(input)
          ? widening * Law.NORMAL.inverseCumulativeProbability(share)
          : at(input, share);
    }
  }
}
