package dev.kilnledger.thermal.atmosphere;

import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.units.TradeUnits.CELSIUS;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.core.material.Element;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.MolarEnergy;
import dev.kilnledger.units.quantity.TemperatureDifference;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;

/**
 * The gas over hot carbon in equilibrium, and which oxides it undoes:
 *
 * <pre>
 * C + CO2 = 2 CO          x = (sqrt(K2 + 4 K P) - K) / (2 P), P = p(CO) + p(CO2) in bar
 * 2 C + O2 = 2 CO         RT ln p(O2) = dG + 2 RT ln p(CO)
 * m M + O2 = oxide        RT ln p(O2) = dG - m RT ln a(M)
 * </pre>
 *
 * A metal stays bright where its oxide needs more oxygen than carbon leaves. Equilibrium only: it
 * says nothing of the speed, which below about 650 °C is too low to protect anything, nor of
 * carbides and nitrides, which may form instead.
 *
 * <p>In an alloy the activity of an element is taken as its atom fraction (ideal solution, an
 * assumption), times a span of factors that stands for what the assumption neglects; 0.5 to 2
 * unless stated otherwise, and never more than one.
 *
 * <p>Example: at 1 bar of carbon monoxide carbon undoes pure chromium's oxide above 1243 °C by the
 * measured electromotive forces.
 */
public final class CarbonAtmosphere {
  private static final double R = StandardPolynomial.R;
  private static final double BAR = 1e5;
  private static final Source MODEL =
      Source.recomputed(
          "equilibrium with carbon: NASA/TP-2002-211556 for C, CO, CO2 and O2, published Gibbs"
              + " energies of the oxides, ideal solution");
  private static final Reaction TO_MONOXIDE =
      new Reaction(
          Map.of(Species.GRAPHITE, -2.0, Species.OXYGEN, -1.0, Species.CARBON_MONOXIDE, 2.0));
  private static final Reaction BOUDOUARD =
      new Reaction(
          Map.of(
              Species.GRAPHITE, -1.0, Species.CARBON_DIOXIDE, -1.0, Species.CARBON_MONOXIDE, 2.0));
  private static final Reaction MONOXIDE_TO_DIOXIDE =
      new Reaction(
          Map.of(Species.CARBON_MONOXIDE, -2.0, Species.OXYGEN, -1.0, Species.CARBON_DIOXIDE, 2.0));

  /** How well published crossings agree. */
  private static final Amount<TemperatureDifference> AGREEMENT = Amounts.kelvinDifference(10);

  private final Thermochemistry thermochemistry;
  private final Span<Dimensionless> activityFactor;

  /**
   * An atmosphere with its own data and its own assumption on activities.
   *
   * @param thermochemistry the standard states
   * @param activityFactor what the atom fraction is multiplied by to span the activity; low up to
   *     1, high from 1 on
   * @throws IllegalArgumentException if the factors are not above zero or do not span 1
   */
  public CarbonAtmosphere(Thermochemistry thermochemistry, Span<Dimensionless> activityFactor) {
    new Problems("carbon atmosphere")
        .require(
            activityFactor.low().si() > 0
                && activityFactor.low().si() <= 1
                && activityFactor.high().si() >= 1,
            "activity factor spans "
                + activityFactor.low()
                + " to "
                + activityFactor.high()
                + "; accepted is above 0 and up to 1, to 1 or more")
        .refuseIfAny();
    this.thermochemistry = thermochemistry;
    this.activityFactor = activityFactor;
  }

  /** {@return the atmosphere of the standard data, activities within a factor of two of ideal} */
  public static CarbonAtmosphere standard() {
    return new CarbonAtmosphere(
        Thermochemistry.standard(), Span.of(Amounts.ratio(0.5), Amounts.ratio(2)));
  }

  /**
   * The equilibrium constant of C + CO2 = 2 CO.
   *
   * @param temperature the temperature
   * @return K with pressures in bar, empty outside the data
   */
  public Optional<Amount<Dimensionless>> boudouardConstant(Amount<Temperature> temperature) {
    OptionalDouble energy = thermochemistry.reactionEnergy(BOUDOUARD, temperature.si());
    return energy.isEmpty()
        ? Optional.empty()
        : Optional.of(Amounts.ratio(Math.exp(-energy.getAsDouble() / (R * temperature.si()))));
  }

  /**
   * The share of carbon monoxide in the carbon's two oxides over carbon.
   *
   * @param temperature the temperature
   * @param oxidesOfCarbon p(CO) + p(CO2): the whole pressure without nitrogen, about 0.35 bar where
   *     air has burnt on carbon; above zero
   * @return CO / (CO + CO2), empty outside the data
   * @throws IllegalArgumentException if the pressure is not above zero
   */
  public Optional<Amount<VolumeFraction>> carbonMonoxideShare(
      Amount<Temperature> temperature, Amount<Pressure> oxidesOfCarbon) {
    new Problems("carbon atmosphere")
        .positive("pressure of the oxides of carbon", oxidesOfCarbon)
        .refuseIfAny();
    double p = oxidesOfCarbon.si() / BAR;
    // the second form of the root does not cancel where K is large
    return boudouardConstant(temperature)
        .map(Amount::si)
        .map(k -> Amounts.volumeFraction(2 * k / (k + Math.sqrt(k * k + 4 * k * p))));
  }

  /**
   * CO / CO2 over carbon.
   *
   * @param temperature the temperature
   * @param oxidesOfCarbon p(CO) + p(CO2), above zero
   * @return the ratio, empty outside the data
   * @throws IllegalArgumentException if the pressure is not above zero
   */
  public Optional<Amount<Dimensionless>> ratioOverCarbon(
      Amount<Temperature> temperature, Amount<Pressure> oxidesOfCarbon) {
    double p = oxidesOfCarbon.si() / BAR;
    return carbonMonoxideShare(temperature, oxidesOfCarbon)
        .flatMap(
            share ->
                boudouardConstant(temperature).map(k -> Amounts.ratio(k.si() / (share.si() * p))));
  }

  /**
   * CO / CO2 above which a pure metal stays bright.
   *
   * @param oxide the metal's oxide
   * @param temperature the temperature
   * @return the ratio and its span over all accounts of the oxide, empty outside their range
   */
  public Optional<Estimate<Dimensionless>> ratioNeeded(
      Oxide oxide, Amount<Temperature> temperature) {
    double t = temperature.si();
    OptionalDouble gas = thermochemistry.reactionEnergy(MONOXIDE_TO_DIOXIDE, t);
    return gibbsEnergy(oxide, temperature)
        .filter(energy -> gas.isPresent())
        .map(
            energy -> {
              double dG = gas.getAsDouble();
              return Estimate.of(
                  Amounts.ratio(Math.exp((dG - energy.span().high().si()) / (2 * R * t))),
                  Amounts.ratio(Math.exp((dG - energy.expected().si()) / (2 * R * t))),
                  Amounts.ratio(Math.exp((dG - energy.span().low().si()) / (2 * R * t))));
            });
  }

  /**
   * The Gibbs energy of an oxide per mole of oxygen, pure metal, 1 bar.
   *
   * @param oxide the oxide
   * @param temperature the temperature
   * @return the account most trusted there and the span of all, each with its own uncertainty;
   *     empty outside their range
   */
  public Optional<Estimate<MolarEnergy>> gibbsEnergy(Oxide oxide, Amount<Temperature> temperature) {
    return Potential.of(thermochemistry, oxide, temperature.si())
        .map(
            potential ->
                Estimate.of(
                    Amounts.kilojoulesPerMole(potential.low / 1000),
                    Amounts.kilojoulesPerMole(potential.expected / 1000),
                    Amounts.kilojoulesPerMole(potential.high / 1000)));
  }

  /**
   * Whether a temperature lies where the Gibbs energy of an oxide is known.
   *
   * @param oxide the oxide
   * @param temperature the temperature
   * @return passed, or undetermined with the range
   */
  public Finding range(Oxide oxide, Amount<Temperature> temperature) {
    boolean inside = gibbsEnergy(oxide, temperature).isPresent();
    return AtmosphereFinding.WITHIN_DATA_RANGE
        .about(oxide.formula())
        .severity(inside ? PASSED : UNDETERMINED)
        .measured(temperature)
        .message(
            temperature.format(CELSIUS, 0)
                + (inside ? " lies in" : " lies outside")
                + " the data of "
                + oxide.formula()
                + ", "
                + oxide.range().format(CELSIUS, 0)
                + (inside ? "" : ": no figure is given there"))
        .basis(oxide.sources().get(0))
        .build();
  }

  /**
   * The oxygen pressure at which a pure metal and its oxide are in equilibrium.
   *
   * @param oxide the oxide
   * @param temperature the temperature
   * @return exp(dG / RT) bar with its span, empty outside the data
   */
  public Optional<Estimate<Pressure>> oxygenPressure(Oxide oxide, Amount<Temperature> temperature) {
    double t = temperature.si();
    return gibbsEnergy(oxide, temperature)
        .map(
            energy ->
                Estimate.of(
                    Amounts.bars(Math.exp(energy.span().low().si() / (R * t))),
                    Amounts.bars(Math.exp(energy.expected().si() / (R * t))),
                    Amounts.bars(Math.exp(energy.span().high().si() / (R * t)))));
  }

  /**
   * The oxygen pressure that carbon leaves.
   *
   * @param temperature the temperature
   * @param carbonMonoxide the partial pressure of carbon monoxide, above zero
   * @return the pressure, empty outside the data
   * @throws IllegalArgumentException if the partial pressure is not above zero
   */
  public Optional<Amount<Pressure>> oxygenPressureOverCarbon(
      Amount<Temperature> temperature, Amount<Pressure> carbonMonoxide) {
    checkPressure(carbonMonoxide);
    OptionalDouble potential = carbonPotential(temperature.si(), carbonMonoxide.si() / BAR);
    return potential.isEmpty()
        ? Optional.empty()
        : Optional.of(Amounts.bars(Math.exp(potential.getAsDouble() / (R * temperature.si()))));
  }

  /**
   * From which temperature on carbon undoes the oxide of a pure metal.
   *
   * @param oxide the oxide
   * @param carbonMonoxide the partial pressure of carbon monoxide, above zero
   * @return the temperature, with its span over all accounts of the oxide
   * @throws IllegalArgumentException if the partial pressure is not above zero
   */
  public Reduction reducesAbove(Oxide oxide, Amount<Pressure> carbonMonoxide) {
    checkPressure(carbonMonoxide);
    return crossing(oxide, Activity.PURE, carbonMonoxide);
  }

  /**
   * Whether carbon keeps each element of an alloy bright at a temperature, and from which
   * temperature on.
   *
   * @param alloy the alloy, by its nominal composition
   * @param temperature the temperature
   * @param carbonMonoxide the partial pressure of carbon monoxide, above zero: about 0.35 bar where
   *     the nitrogen of the air stays, 1 bar where carbon monoxide fills the crucible
   * @return an answer for each element, with findings
   * @throws IllegalArgumentException if the partial pressure is not above zero
   */
  public Protection keepsBright(
      Alloy alloy, Amount<Temperature> temperature, Amount<Pressure> carbonMonoxide) {
    checkPressure(carbonMonoxide);
    Protection.Builder protection =
        Protection.builder()
            .alloy(alloy.name())
            .temperature(temperature)
            .carbonMonoxide(carbonMonoxide);
    AtomFractions.of(alloy.composition())
        .forEach(
            (element, fraction) -> {
              if (element != Element.CARBON) {
                ElementProtection answer = answer(element, fraction, temperature, carbonMonoxide);
                protection.addElements(answer);
                protection.addFindings(
                    BrightFinding.of(alloy, answer, temperature, carbonMonoxide, MODEL));
              }
            });
    return protection.build();
  }

  /**
   * Holds the facts of an alloy against the thermochemistry: the temperature from which carbon
   * reduces its deciding oxide at 1 bar of carbon monoxide.
   *
   * @param alloy the alloy
   * @return passed where both agree within 10 K beyond the span of the accounts, a warning where
   *     not, undetermined where there is nothing to compare
   */
  public Finding crossCheck(Alloy alloy) {
    Element deciding = alloy.carbonProtection().decidingElement();
    Optional<Amount<Temperature>> fact =
        alloy.carbonProtection().reducesAbove().map(Sourced::value);
    Optional<Reduction> computed =
        Oxide.of(deciding).map(oxide -> reducesAbove(oxide, Amounts.bars(1)));
    Finding.Builder finding = AtmosphereFinding.FACTS_AGREE.about(alloy.name()).basis(MODEL);
    if (fact.isEmpty() || computed.isEmpty()) {
      return finding
          .severity(UNDETERMINED)
          .message(
              fact.isEmpty()
                  ? "the facts name no temperature from which carbon reduces the oxide of "
                      + deciding.symbol()
                  : "no Gibbs energy of an oxide of " + deciding.symbol() + " is known here")
          .build();
    }
    boolean agrees = computed.get().spans(fact.get(), AGREEMENT);
    return finding
        .severity(agrees ? PASSED : WARNING)
        .measured(fact.get())
        .message(
            "the facts have carbon reduce the oxide of "
                + deciding.symbol()
                + " above "
                + fact.get().format(CELSIUS, 0)
                + ", the thermochemistry "
                + computed.get().words())
        .build();
  }

  private ElementProtection answer(
      Element element,
      double fraction,
      Amount<Temperature> temperature,
      Amount<Pressure> carbonMonoxide) {
    ElementProtection.Builder answer =
        ElementProtection.builder().element(element).atomFraction(Amounts.ratio(fraction));
    Optional<Oxide> oxide = Oxide.of(element);
    if (oxide.isEmpty()) {
      boolean noble = element == Element.SILVER || element == Element.GOLD;
      return answer
          .bright(noble ? ElementProtection.Bright.YES : ElementProtection.Bright.UNKNOWN)
          .build();
    }
    double t = temperature.si();
    double p = carbonMonoxide.si() / BAR;
    Activity activity = new Activity(fraction, activityFactor);
    answer
        .oxide(oxide.get())
        .pure(crossing(oxide.get(), Activity.PURE, carbonMonoxide))
        .inAlloy(crossing(oxide.get(), activity, carbonMonoxide));
    Optional<Potential> potential = Potential.of(thermochemistry, oxide.get(), t);
    OptionalDouble carbon = carbonPotential(t, p);
    if (potential.isEmpty() || carbon.isEmpty()) {
      return answer.bright(ElementProtection.Bright.UNKNOWN).build();
    }
    double share = -oxide.get().metalPerOxygen() * R * t;
    double low = potential.get().low + share * Math.log(activity.high) - carbon.getAsDouble();
    double high = potential.get().high + share * Math.log(activity.low) - carbon.getAsDouble();
    double expected =
        potential.get().expected + share * Math.log(activity.expected) - carbon.getAsDouble();
    return answer
        .bright(
            low > 0
                ? ElementProtection.Bright.YES
                : high < 0 ? ElementProtection.Bright.NO : ElementProtection.Bright.UNCERTAIN)
        .margin(
            Estimate.of(
                Amounts.kilojoulesPerMole(low / 1000),
                Amounts.kilojoulesPerMole(expected / 1000),
                Amounts.kilojoulesPerMole(high / 1000)))
        .build();
  }

  private Reduction crossing(Oxide oxide, Activity activity, Amount<Pressure> carbonMonoxide) {
    double p = carbonMonoxide.si() / BAR;
    CrossingSearch search =
        new CrossingSearch(thermochemistry, oxide, t -> carbonPotential(t, p).orElse(Double.NaN));
    return search.find(activity);
  }

  /** RT ln p(O2) over carbon, J/mol O2. */
  private OptionalDouble carbonPotential(double t, double carbonMonoxide) {
    OptionalDouble energy = thermochemistry.reactionEnergy(TO_MONOXIDE, t);
    return energy.isEmpty()
        ? energy
        : OptionalDouble.of(energy.getAsDouble() + 2 * R * t * Math.log(carbonMonoxide));
  }

  private static void checkPressure(Amount<Pressure> carbonMonoxide) {
    new Problems("carbon atmosphere")
        .positive("partial pressure of carbon monoxide", carbonMonoxide)
        .refuseIfAny();
  }

  /** The activity of an element in its alloy, with the span assumed. */
  static final class Activity {
    static final Activity PURE = new Activity(1, Span.of(Amounts.ratio(1), Amounts.ratio(1)));

    final double low;
    final double expected;
    final double high;

    Activity(double atomFraction, Span<Dimensionless> factor) {
      this.low = atomFraction * factor.low().si();
      this.expected = atomFraction;
      this.high = Math.min(1, atomFraction * factor.high().si());
    }
  }

  /** RT ln p(O2) of a pure metal and its oxide over all accounts, J/mol O2. */
  static final class Potential {
    final double low;
    final double expected;
    final double high;

    private Potential(double low, double expected, double high) {
      this.low = low;
      this.expected = expected;
      this.high = high;
    }

    static Optional<Potential> of(Thermochemistry thermochemistry, Oxide oxide, double t) {
      double low = Double.POSITIVE_INFINITY;
      double expected = Double.NaN;
      double high = Double.NEGATIVE_INFINITY;
      for (OxidationEnergy account : oxide.accounts()) {
        OptionalDouble energy = account.at(thermochemistry, t);
        if (energy.isPresent()) {
          low = Math.min(low, energy.getAsDouble() - account.uncertainty);
          high = Math.max(high, energy.getAsDouble() + account.uncertainty);
          expected = Double.isNaN(expected) ? energy.getAsDouble() : expected;
        }
      }
      return Double.isNaN(expected)
          ? Optional.empty()
          : Optional.of(new Potential(low, expected, high));
    }
  }
}
