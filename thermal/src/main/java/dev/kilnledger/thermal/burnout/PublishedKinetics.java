package dev.kilnledger.thermal.burnout;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.material.Binder;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.kinetics.Frequencies;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.HeatingRate;
import dev.kilnledger.units.quantity.MolarEnergy;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import javax.measure.quantity.Temperature;

/**
 * What has been published on the decomposition of polymers. None of it is a fact about a feedstock:
 * laboratories disagree by factors on the very same powder, and metal powder in the polymer changes
 * it again. So there are intervals here, and several sets side by side, and no built-in answer.
 *
 * <p>Example: polylactide, of which 96 to 183.6 kJ/mol are published, and whose fastest loss one
 * run at 10 K/min has at 360 °C, is bracketed by two reactions with these energies, both fastest at
 * 360 °C on that ramp.
 */
public final class PublishedKinetics {
  private static final Source COMPARISON =
      Source.published(
          "MaCFP condensed phase database, poly(methyl methacrylate), thermogravimetry in nitrogen"
              + " by several laboratories");

  private static final List<BinderKinetics> POLY_METHYL_METHACRYLATE =
      List.of(
          set("first set", 191, 2.85e13, COMPARISON),
          set("second set", 133.2, 6.31e8, COMPARISON),
          set("third set", 164, 1.35e11, COMPARISON),
          set("fourth set", 188, 2.43e13, COMPARISON),
          set(
              "fifth set",
              250.49,
              6.003e18,
              Source.recomputed(
                  "Kissinger's method on the peaks of seven runs at 1 to 100 K/min of one"
                      + " laboratory in the MaCFP condensed phase database")));

  private static final Sourced<Span<MolarEnergy>> POLYLACTIDE =
      Sourced.of(
          energies(96, 183.6),
          "inert gas, neat; three methods on one polymer gave 177.5 to 183.6, another work 96, and"
              + " the first third of the loss as little as 21 to 23 kJ/mol",
          Source.published(
              "Zou et al., J. Therm. Anal. Calorim. (2009), doi 10.1007/s10973-009-0121-5;"
                  + " PMC10648464"));
  private static final Sourced<Span<MolarEnergy>> POLYETHYLENE =
      Sourced.of(
          energies(137.4, 250),
          "inert gas, neat; read for high density: 137.4 to 153.2 by three methods, 200 to 250 from"
              + " memory; of first order hardly, as chains break at random",
          Source.fromMemory(
              "polymer handbooks; Westerhout et al., Ind. Eng. Chem. Res. 36 (1997)"));
  private static final Sourced<Span<MolarEnergy>> POLYPROPYLENE =
      Sourced.of(
          energies(200, 250),
          "inert gas, neat; of an order near 0.35 rather than first",
          Source.fromMemory(
              "polymer handbooks; Westerhout et al., Ind. Eng. Chem. Res. 36 (1997)"));
  private static final Sourced<Span<MolarEnergy>> WAX =
      Sourced.of(
          energies(70, 110),
          "mostly evaporates below about 350 °C, so the surface counts as well",
          Source.fromMemory("apparent energies of evaporation of paraffin and fatty acid"));

  private static final Map<String, List<Sourced<Span<MolarEnergy>>>> BY_BINDER =
      Map.of(
          "polylactide", List.of(POLYLACTIDE),
          "polypropylene", List.of(POLYPROPYLENE),
          "low-density polyethylene", List.of(POLYETHYLENE),
          "paraffin wax", List.of(WAX),
          "stearic acid", List.of(WAX),
          "wax and polyolefin, generic", List.of(WAX, POLYPROPYLENE));

  private PublishedKinetics() {}

  /**
   * {@return five sets for poly(methyl methacrylate) in nitrogen, first order, all fitted to
   * thermogravimetry at 1 to 100 K/min: the fastest loss at 10 K/min they put within 14 K, the time
   * to 99 % at 300 °C from 2.8 to 14 h}
   */
  public static List<BinderKinetics> polyMethylMethacrylate() {
    return POLY_METHYL_METHACRYLATE;
  }

  /**
   * The kinetics published for a binder, none of which is known to be that of a filled feedstock.
   *
   * @param binder a binder, found by its name
   * @return the sets; so far those of poly(methyl methacrylate), and empty for every other binder
   */
  public static List<BinderKinetics> of(Binder binder) {
    return binder.name().equals("poly(methyl methacrylate)") ? POLY_METHYL_METHACRYLATE : List.of();
  }

  /**
   * The activation energies published for a binder of the standard library, one interval for each
   * of its parts.
   *
   * @param binder a binder, found by its name
   * @return the intervals with their sources; empty where nothing was found, as for
   *     polyoxymethylene
   */
  public static List<Sourced<Span<MolarEnergy>>> activationEnergies(Binder binder) {
    return BY_BINDER.getOrDefault(binder.name(), List.of());
  }

  /**
   * Two kinetics that bracket a binder whose fastest loss is known from one run and whose
   * activation energy lies somewhere in the interval published: of first order, with the lowest and
   * the highest energy.
   *
   * @param binder a binder of the standard library
   * @param peak the temperature of the fastest loss
   * @param heatingRate the rate at which it was heated, above zero
   * @return two kinetics for {@link BurnOut#forecast}; narrow near that run, wide far from it
   * @throws IllegalArgumentException if nothing is published for the binder, or the rate is not
   *     above zero
   */
  public static List<BinderKinetics> bracket(
      Binder binder, Amount<Temperature> peak, Amount<HeatingRate> heatingRate) {
    List<Sourced<Span<MolarEnergy>>> published = activationEnergies(binder);
    new Problems("published kinetics")
        .require(
            !published.isEmpty(),
            "no activation energy was found for "
                + binder.name()
                + "; accepted are "
                + String.join(", ", BY_BINDER.keySet().stream().sorted().toList())
                + ", or kinetics of your own")
        .refuseIfAny();
    Amount<MolarEnergy> low =
        published.stream()
            .map(fact -> fact.value().low())
            .min(Comparator.naturalOrder())
            .orElseThrow();
    Amount<MolarEnergy> high =
        published.stream()
            .map(fact -> fact.value().high())
            .max(Comparator.naturalOrder())
            .orElseThrow();
    return List.of(
        through(binder, low, peak, heatingRate), through(binder, high, peak, heatingRate));
  }

  private static BinderKinetics through(
      Binder binder,
      Amount<MolarEnergy> energy,
      Amount<Temperature> peak,
      Amount<HeatingRate> heatingRate) {
    return BinderKinetics.builder()
        .name(binder.name() + " at " + energy)
        .addSteps(DecompositionStep.ofPeak(energy, peak, heatingRate))
        .range(binder.decomposition().value())
        .condition("first order through a fastest loss at " + peak + " on a ramp of " + heatingRate)
        .source(Source.recomputed("an end of the interval of published activation energies"))
        .build();
  }

  private static BinderKinetics set(
      String name, double kilojoulesPerMole, double perSecond, Source source) {
    return BinderKinetics.builder()
        .name("poly(methyl methacrylate), " + name)
        .addSteps(
            DecompositionStep.of(
                Amounts.kilojoulesPerMole(kilojoulesPerMole),
                ReactionOrder.first(Frequencies.perSecond(perSecond))))
        .range(Span.of(Amounts.kelvin(560), Amounts.kelvin(710)))
        .condition("neat, nitrogen, thermogravimetry at 1 to 100 K/min")
        .source(source)
        .build();
  }

  private static Span<MolarEnergy> energies(double low, double high) {
    return Span.of(Amounts.kilojoulesPerMole(low), Amounts.kilojoulesPerMole(high));
  }
}
