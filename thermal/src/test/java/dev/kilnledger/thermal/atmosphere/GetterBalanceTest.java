package dev.kilnledger.thermal.atmosphere;

import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.gramsPerHour;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.kilograms;
import static dev.kilnledger.units.Amounts.litres;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.Amounts.pascals;
import static dev.kilnledger.units.Amounts.squareMillimetres;
import static dev.kilnledger.units.TradeUnits.GRAM;
import static dev.kilnledger.units.TradeUnits.GRAM_PER_HOUR;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static dev.kilnledger.units.TradeUnits.LITRE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import dev.kilnledger.core.explanation.Explanation;
import dev.kilnledger.core.finding.Caution;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.Workbench;
import dev.kilnledger.thermal.profile.GetterFill;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amount;
import java.util.List;
import java.util.Locale;
import javax.measure.quantity.AmountOfSubstance;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Gas volumes by the ideal gas law, computed in other software; stoichiometry by hand. */
class GetterBalanceTest {
  private static final AirGas AIR = AirGas.standard();
  private static final GetterBalance MODEL = GetterBalance.standard();

  /** 20 to 1000 °C in 7 h, 3 h of hold, back to 20 °C in 9.8 h. */
  private static final Profile FIRING =
      Profile.from(celsius(20))
          .rampTo(celsius(1000), kelvinPerHour(140))
          .hold(hours(3))
          .coolTo(celsius(20), kelvinPerHour(100))
          .build();

  private static GetterFill carbon(double grams) {
    return GetterFill.of(Workbench.carbon(), grams(grams)); // 2 to 10 % ash, burns from 350 °C
  }

  private static CrucibleAir air(double litres) {
    return CrucibleAir.builder().voidVolume(litres(litres)).build();
  }

  private static CrucibleAir air(double litres, double low, double high) {
    return CrucibleAir.builder()
        .voidVolume(litres(litres))
        .oxygenInflow(
            Sourced.of(Span.of(gramsPerHour(low), gramsPerHour(high)), Source.user("test")))
        .build();
  }

  private static Finding finding(OxygenBudget budget, AtmosphereFinding code) {
    return budget.findings().stream().filter(f -> f.code() == code).findFirst().orElseThrow();
  }

  private static double end(BudgetLine line, String end) {
    return (end.equals("least") ? line.oxygen().low() : line.oxygen().high()).si();
  }

  private static double input(BudgetLine line, String name) {
    return line.inputs().stream()
        .filter(input -> input.name().equals(name))
        .findFirst()
        .orElseThrow()
        .value()
        .si();
  }

  @Test
  void litreOfAirHoldsOxygenForATenthOfAGramOfCarbon() {
    assertThat(AIR.held(litres(1), celsius(20)).si()).isCloseTo(0.0415711969, within(1e-10));
    Amount<Mass> oxygen = AirGas.oxygenIn(AIR.held(litres(1), celsius(20)));
    assertThat(oxygen.in(GRAM) / 31.998).isCloseTo(0.0087075029, within(1e-10));
    assertThat(oxygen.in(GRAM)).isCloseTo(0.278622678, within(1e-9));
    Span<Mass> carbon = AirGas.carbonFor(oxygen);
    assertThat(carbon.low().in(GRAM)).isCloseTo(0.104585817, within(1e-9));
    assertThat(carbon.high().in(GRAM)).isCloseTo(0.209171635, within(1e-9));
    // 1.5 litres of crucible, 0.45 of it void
    assertThat(AirGas.oxygenIn(AIR.held(litres(0.675), celsius(20))).in(GRAM))
        .isCloseTo(0.188070, within(5e-7));
  }

  @ParameterizedTest
  @CsvSource({
    "1000, 0.0319992, 0.214468, 0.161009",
    "1100, 0.0326963, 0.219140, 0.164516",
    "1300, 0.0338246, 0.226702, 0.170193"
  })
  void coolingDrawsAirIn(double celsius, double moles, double oxygen, double carbon) {
    Amount<AmountOfSubstance> drawn = AIR.drawnIn(litres(1), celsius(celsius), celsius(20));
    assertThat(drawn.si()).isCloseTo(moles, within(5e-8));
    assertThat(AirGas.oxygenIn(drawn).in(GRAM)).isCloseTo(oxygen, within(1e-6));
    assertThat(AirGas.carbonFor(AirGas.oxygenIn(drawn)).high().in(GRAM))
        .isCloseTo(carbon, within(1e-6));
    assertThat(AIR.drawnIn(litres(1), celsius(20), celsius(celsius)).si()).isNegative();
  }

  /** 20 mm2, 5 mm, 1000 °C: 0.2414 g of O2 an hour (diffusivity from memory). */
  @Test
  void looseLidLetsOxygenDiffuseIn() {
    assertThat(
            AIR.diffusionInflow(squareMillimetres(20), millimetres(5), celsius(1000))
                .in(GRAM_PER_HOUR))
        .isCloseTo(0.2414, within(5e-5));
    assertThatThrownBy(
            () -> AIR.diffusionInflow(squareMillimetres(20), millimetres(0), celsius(1000)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("length is 0 mm");
    assertThatThrownBy(() -> new AirGas(pascals(0))).hasMessageContaining("pressure is 0 Pa");
  }

  @Test
  void withoutTheExchangeTheVerdictIsUndetermined() {
    OxygenBudget budget = MODEL.budget(FIRING, carbon(50), air(1), Workbench.copper());

    assertThat(finding(budget, AtmosphereFinding.CARBON_LASTS).severity())
        .isEqualTo(Severity.UNDETERMINED);
    assertThat(finding(budget, AtmosphereFinding.CARBON_LASTS).message())
        .contains("exchange through lid and packing, which decides, is not stated");
    assertThat(budget.exchangeKnown()).isFalse();
    assertThat(budget.lines()).hasSize(2);
  }

  /** By hand: quick for 350/140 + 3 + 350/100 h, burning for 650/140 + 3 + 650/100 h. */
  @Test
  void countsEachWayInWhichOxygenComes() {
    OxygenBudget budget = MODEL.budget(FIRING, carbon(50), air(1, 0.2, 0.5), Workbench.copper());

    BudgetLine first = budget.lines().get(0);
    assertThat(first.oxygen().high().in(GRAM)).isCloseTo(0.278622678, within(1e-9));
    assertThat(first.oxygen().low().in(GRAM))
        .isCloseTo(0.278622678 * 293.15 / 923.15, within(1e-9));
    BudgetLine drawn = budget.lines().get(1);
    double perKelvinInverse = 0.278622678 * 293.15; // n R / p of a litre: g K
    assertThat(drawn.oxygen().low().in(GRAM))
        .isCloseTo(perKelvinInverse * (1 / 923.15 - 1 / 1273.15), within(1e-9));
    assertThat(drawn.oxygen().high().in(GRAM))
        .isCloseTo(perKelvinInverse * (1 / 623.15 - 1 / 1273.15), within(1e-9));
    BudgetLine exchange = budget.lines().get(2);
    assertThat(exchange.oxygen().low().in(GRAM))
        .isCloseTo(0.2 * (350 / 140.0 + 3 + 350 / 100.0), within(1e-9));
    assertThat(exchange.oxygen().high().in(GRAM))
        .isCloseTo(0.5 * (650 / 140.0 + 3 + 650 / 100.0), within(1e-9));
    assertThat(input(exchange, "inflow least")).isCloseTo(0.2e-3 / 3600, within(1e-18));
    assertThat(input(first, "T least")).isEqualTo(923.15);
    assertThat(input(first, "T most")).isEqualTo(293.15);
    for (String end : List.of("least", "most")) {
      // each end of a line is what its formula gives with its inputs
      assertThat(end(first, end))
          .isCloseTo(
              0.20946
                  * input(first, "p")
                  * input(first, "V")
                  * input(first, "M")
                  * input(first, "share " + end)
                  / (8.314462618 * input(first, "T " + end)),
              withPercentage(1e-10));
      assertThat(end(drawn, end))
          .isCloseTo(0.20946 * input(drawn, "n " + end) * input(drawn, "M"), withPercentage(1e-10));
      assertThat(end(exchange, end))
          .isCloseTo(
              input(exchange, "inflow " + end) * input(exchange, "time " + end),
              withPercentage(1e-10));
    }
    Span<Mass> needed = budget.carbonNeeded();
    BudgetPoint end = budget.points().get(budget.points().size() - 1);
    assertThat(end.carbonAsked().low().si()).isCloseTo(needed.low().si(), within(1e-15));
    assertThat(end.carbonAsked().high().si()).isCloseTo(needed.high().si(), within(1e-15));
    assertThat(needed.high().in(GRAM))
        .isCloseTo(
            24.022
                / 31.998
                * (0.278622678
                    + drawn.oxygen().high().in(GRAM)
                    + exchange.oxygen().high().in(GRAM)),
            within(1e-9));
    // 28.010 g of monoxide for 12.011 g of carbon, all of it in the steps of the release
    assertThat(budget.carbonMonoxide().mass().in(GRAM))
        .isCloseTo(needed.high().in(GRAM) * 28.010 / 12.011, within(1e-9));
    assertThat(budget.carbonMonoxide().duration().in(HOUR)).isCloseTo(19.8, within(1e-9));
  }

  @Test
  void theCarbonNeededOpensDownToTheOxygenAndItsInputs() {
    OxygenBudget budget = MODEL.budget(FIRING, carbon(50), air(1, 0.2, 0.5), Workbench.copper());
    Explanation needed = budget.explanation().orElseThrow();
    assertThat(needed.value()).isEqualTo(budget.carbonNeeded());
    assertThat(needed.children()).hasSameSizeAs(budget.lines());
    for (BudgetLine line : budget.lines()) {
      Explanation carbon = needed.at(line.what());
      assertThat(carbon.value()).isEqualTo(line.carbon());
      assertThat(carbon.at("oxygen").value()).isEqualTo(line.oxygen());
      assertThat(carbon.at("oxygen").formula()).contains(line.formula());
      // 12.011 / 31.998 to dioxide, twice that to monoxide
      Span<?> per = (Span<?>) carbon.at("carbon per oxygen").value();
      assertThat(line.carbon().low().si())
          .isCloseTo(line.oxygen().low().si() * per.low().si(), withPercentage(1e-10));
      assertThat(line.carbon().high().si())
          .isCloseTo(line.oxygen().high().si() * per.high().si(), withPercentage(1e-10));
      assertThat(per.high().si()).isCloseTo(2 * 12.011 / 31.998, within(1e-12));
    }
    assertThat(OxygenBudget.builder().from(budget).lines(List.of()).build().explanation())
        .isEmpty();
    assertThat(needed.at("exchange through lid and packing", "oxygen", "inflow most").shown())
        .isEqualTo("0.5 g/h");
  }

  @ParameterizedTest
  @CsvSource({
    "50, 0.2, 0.5, PASSED", // at least 45 g against 5.6 g at most
    "5, 0.2, 0.5, WARNING", // 4.5 to 4.9 g against 0.8 to 5.6 g
    "0.5, 0.2, 0.5, STOP" // 0.49 g against at least 0.76 g
  })
  void verdictComparesTheIntervals(double grams, double low, double high, Severity severity) {
    OxygenBudget budget =
        MODEL.budget(FIRING, carbon(grams), air(1, low, high), Workbench.copper());
    assertThat(finding(budget, AtmosphereFinding.CARBON_LASTS).severity()).isEqualTo(severity);
    assertThat(budget.spentAtEarliest().isPresent()).isEqualTo(severity != Severity.PASSED);
    assertThat(budget.spentAtLatest().isPresent()).isEqualTo(severity == Severity.STOP);
    budget
        .spentAtLatest()
        .ifPresent(
            latest -> assertThat(latest).isGreaterThan(budget.spentAtEarliest().orElseThrow()));
    assertThat(budget.cautions()).contains(Caution.CARBON_MONOXIDE);
  }

  /**
   * By hand, 6 g of oxygen an hour and 5 g of getter, 4.5 to 4.9 g of carbon. At most, to monoxide
   * from 350 °C on: 4.5 x 31.998 / 24.022 = 0.278623 (T - 350) / 300 + 6 (T - 350) / 140 at T =
   * 486.896 °C. At least, to dioxide from 650 °C on: 4.9 x 31.998 / 12.011 = 0.088477 + 6 h.
   */
  @Test
  void tellsWhenTheCarbonIsSpent() {
    OxygenBudget budget = MODEL.budget(FIRING, carbon(5), air(1, 6, 6), Workbench.copper());
    double per = 0.278622678 / 300 + 6 / 140.0;
    double above = 4.5 * 31.998 / 24.022 / per; // K above 350 °C
    assertThat(budget.spentAtEarliest().orElseThrow().in(HOUR))
        .isCloseTo((330 + above) / 140, within(1e-6));
    double quick = (4.9 * 31.998 / 12.011 - 0.278622678 * 293.15 / 923.15) / 6;
    assertThat(budget.spentAtLatest().orElseThrow().in(HOUR))
        .isCloseTo(630 / 140.0 + quick, within(1e-6));
    assertThat(budget.carbonLaidIn().low().in(GRAM)).isCloseTo(4.5, within(1e-12));
    assertThat(budget.carbonLaidIn().high().in(GRAM)).isCloseTo(4.9, within(1e-12));
    // below 200 °C after 7 + 3 + 8 h
    assertThat(finding(budget, AtmosphereFinding.CARBON_LASTS).message())
        .startsWith("5.0 g of granular carbon hold 4.5 to 4.9 g of carbon and the oxygen takes ")
        .endsWith(
            ": spent after 6.7 h at the latest, before the charge is below 200 °C after 18.0 h");
  }

  /**
   * 45 to 49 g; at most 3.63 h and 1.5 h more of 20 g/h are too much, at least 9 h of 1 g/h not.
   */
  @Test
  void saysThatItMayBeSpent() {
    OxygenBudget budget = MODEL.budget(FIRING, carbon(50), air(1, 1, 20), Workbench.copper());
    double spent = 45 * 31.998 / 24.022 - 0.278622678; // g, all of it before the cooling
    Finding lasts = finding(budget, AtmosphereFinding.CARBON_LASTS);
    assertThat(budget.spentAtEarliest().orElseThrow().in(HOUR))
        .isCloseTo(330 / 140.0 + spent / 20, within(1e-6));
    assertThat(lasts.severity()).isEqualTo(Severity.WARNING);
    assertThat(lasts.message())
        .endsWith(
            String.format(
                Locale.ROOT,
                ": it may be spent after %.1f h, before the charge is below 200 °C",
                330 / 140.0 + spent / 20));
    assertThat(
            finding(
                    MODEL.budget(FIRING, carbon(50), air(1, 0.2, 0.5), Workbench.copper()),
                    AtmosphereFinding.CARBON_LASTS)
                .message())
        .endsWith(": it lasts");
  }

  /**
   * A metal that air leaves alone up to 500 °C: 4.643 + 3 + 5 h of 1 g/h, and 1.5 h more until the
   * carbon burns no more. What is spent in those is no loss.
   */
  @Test
  void doesNotMindCarbonSpentAfterTheMetalIsSafe() {
    GetterBalance tolerant =
        new GetterBalance(AIR, celsius(650), Sourced.of(celsius(500), Source.user("test")));
    double untilSafe = 0.278622678 + 650 / 140.0 + 3 + 5; // g of O2, and some drawn in
    double drawn = 0.278622678 * 293.15 * (1 / 623.15 - 1 / 1273.15);
    double grams = (untilSafe + 1 + drawn) * 24.022 / 31.998 / 0.9;
    OxygenBudget budget =
        tolerant.budget(FIRING, carbon(grams), air(1, 0.1, 1), Workbench.copper());
    assertThat(budget.spentAtEarliest().orElseThrow().in(HOUR)).isBetween(15.0, 16.5);
    assertThat(finding(budget, AtmosphereFinding.CARBON_LASTS).severity())
        .isEqualTo(Severity.PASSED);
  }

  /** Half way from 350 to 650 °C half of the first air burns at most, and for sure none. */
  @Test
  void burnsOnlyPartOfTheFirstAirWhereItDoesNotGetQuick() {
    Profile to500 = Profile.from(celsius(20)).rampTo(celsius(500), kelvinPerHour(140)).build();
    BudgetLine first =
        MODEL.budget(to500, carbon(50), air(1, 0.2, 0.5), Workbench.copper()).lines().get(0);
    assertThat(first.oxygen().low().si()).isZero();
    assertThat(first.oxygen().high().in(GRAM)).isCloseTo(0.278622678 / 2, within(1e-9));
    assertThat(input(first, "share least")).isZero();
    assertThat(input(first, "share most")).isCloseTo(0.5, within(1e-12));
  }

  /** Carbon is quick from 650 °C on: two hours there are two hours. */
  @Test
  void isQuickFromItsLimitOn() {
    Profile to650 =
        Profile.from(celsius(20)).rampTo(celsius(650), kelvinPerHour(140)).hold(hours(2)).build();
    OxygenBudget budget = MODEL.budget(to650, carbon(50), air(1, 0.2, 0.5), Workbench.copper());
    assertThat(budget.lines().get(0).oxygen().low().in(GRAM))
        .isCloseTo(0.278622678 * 293.15 / 923.15, within(1e-9));
    assertThat(input(budget.lines().get(0), "share least")).isEqualTo(1);
    assertThat(budget.lines().get(2).oxygen().low().in(GRAM)).isCloseTo(0.4, within(1e-9));
  }

  /**
   * A charge that is taken over hot: its air is that of 700 °C, all of it burns, none is driven
   * out.
   */
  @Test
  void countsTheAirOfAChargeThatStartsHot() {
    Profile cooling = Profile.from(celsius(700)).coolTo(celsius(100), kelvinPerHour(100)).build();
    OxygenBudget budget = MODEL.budget(cooling, carbon(50), air(1, 0.2, 0.5), Workbench.copper());
    double held = 0.278622678 * 293.15 / 973.15;
    assertThat(budget.lines().get(0).oxygen().high().in(GRAM)).isCloseTo(held, within(1e-9));
    assertThat(budget.lines().get(0).oxygen().low().in(GRAM)).isCloseTo(held, within(1e-9));
    assertThat(budget.points().get(0).carbonAsked().high().in(GRAM))
        .isCloseTo(held * 24.022 / 31.998, within(1e-9));
  }

  /** The carbon is ample up to 500 °C, but what comes on the way to 200 °C is not known. */
  @Test
  void leavesOpenWhatComesAfterAHistoryThatEndsHot() {
    Profile hot =
        Profile.from(celsius(20))
            .rampTo(celsius(1000), kelvinPerHour(140))
            .coolTo(celsius(500), kelvinPerHour(100))
            .build();
    Finding lasts =
        finding(
            MODEL.budget(hot, carbon(50), air(1, 0.2, 0.5), Workbench.copper()),
            AtmosphereFinding.CARBON_LASTS);
    assertThat(lasts.severity()).isEqualTo(Severity.UNDETERMINED);
    assertThat(lasts.message())
        .endsWith("up to 500 °C; how the charge cools from there is not known");
  }

  /** With 0.03 g of getter even the crucible's own air is too much, whatever the exchange. */
  @Test
  void tooLittleForItsOwnAirIsCertainWithoutTheExchange() {
    OxygenBudget budget = MODEL.budget(FIRING, carbon(0.03), air(1), Workbench.copper());
    assertThat(finding(budget, AtmosphereFinding.CARBON_LASTS).severity()).isEqualTo(Severity.STOP);
  }

  /** 450 K at 140 K/h up and at 100 K/h down between 200 and 650 °C. */
  @Test
  void tellsHowLongCarbonIsTooSlow() {
    OxygenBudget budget = MODEL.budget(FIRING, carbon(50), air(1, 0.2, 0.5), Workbench.copper());
    assertThat(budget.tooSlow().in(HOUR)).isCloseTo(450 / 140.0 + 4.5, within(1e-9));
    Finding finding = finding(budget, AtmosphereFinding.CARBON_TOO_SLOW);
    assertThat(finding.severity()).isEqualTo(Severity.NOTE);
    // oxygen at most: 0.5 g/h x 7.714 h + drawn in from 650 to 200 °C; Cu2O takes 4 x 63.546 /
    // 31.998
    double oxygen = 0.5 * (450 / 140.0 + 4.5) + 0.278622678 * 293.15 * (1 / 473.15 - 1 / 923.15);
    assertThat(finding.message())
        .contains(String.format(Locale.ROOT, "up to %.2f g of Cu", oxygen * 4 * 63.546 / 31.998))
        .contains(", 4.5 h of it after the peak;")
        .endsWith(" to Cu2O");
    assertThat(
            finding(
                    MODEL.budget(FIRING, carbon(50), air(1), Workbench.copper()),
                    AtmosphereFinding.CARBON_TOO_SLOW)
                .message())
        .endsWith(" to Cu2O, exchange through lid and packing not counted");
    // a peak where carbon is slow: the hold of 3 h, then 300 of 480 K in 4.8 h down to 200 °C
    Profile low =
        Profile.from(celsius(20))
            .rampTo(celsius(500), kelvinPerHour(140))
            .hold(hours(3))
            .coolTo(celsius(20), kelvinPerHour(100))
            .build();
    assertThat(
            finding(
                    MODEL.budget(low, carbon(50), air(1, 0.2, 0.5), Workbench.copper()),
                    AtmosphereFinding.CARBON_TOO_SLOW)
                .message())
        .contains(", 6.0 h of it after the peak;");
    Profile cold = Profile.from(celsius(20)).rampTo(celsius(150), kelvinPerHour(140)).build();
    assertThat(
            finding(
                    MODEL.budget(cold, carbon(50), air(1), Workbench.copper()),
                    AtmosphereFinding.CARBON_TOO_SLOW)
                .severity())
        .isEqualTo(Severity.PASSED);
  }

  /** Worst case per litre of void: 2.2133 g of copper or 0.97254 g of iron. */
  @Test
  void oxygenOfALitreTakesThePublishedMassOfMetal() {
    assertThat(0.278622678 / 31.998 * Oxide.COPPER.metalPerOxygen() * 63.546)
        .isCloseTo(2.2133, within(5e-5));
    assertThat(0.278622678 / 31.998 * Oxide.IRON.metalPerOxygen() * 55.845)
        .isCloseTo(0.97254, within(5e-6));
  }

  @Test
  void findsNitrogenCarbonAndTheFlameAtTheLid() {
    OxygenBudget titanium = MODEL.budget(FIRING, carbon(50), air(1), Workbench.titanium());
    assertThat(finding(titanium, AtmosphereFinding.NITROGEN).severity()).isEqualTo(Severity.STOP);
    Alloy stainless =
        MaterialLibrary.standard().alloys().stream()
            .filter(a -> a.name().contains("316L"))
            .findFirst()
            .orElseThrow();
    OxygenBudget steel = MODEL.budget(FIRING, carbon(50), air(1), stainless);
    assertThat(finding(steel, AtmosphereFinding.NITROGEN).severity()).isEqualTo(Severity.WARNING);
    assertThat(finding(steel, AtmosphereFinding.CARBON_PICK_UP).severity())
        .isEqualTo(Severity.WARNING);
    assertThat(finding(steel, AtmosphereFinding.CARBON_PICK_UP).message()).contains("0.03 %");
    assertThat(finding(steel, AtmosphereFinding.CARBON_PICK_UP).limit().orElseThrow().si())
        .isCloseTo(0.0003, within(1e-15));
    OxygenBudget copper = MODEL.budget(FIRING, carbon(50), air(1), Workbench.copper());
    assertThat(finding(copper, AtmosphereFinding.NITROGEN).severity()).isEqualTo(Severity.PASSED);
    assertThat(finding(copper, AtmosphereFinding.CARBON_PICK_UP).severity())
        .isEqualTo(Severity.PASSED);
    // 2 x 0.20946 mol in 1.20946 mol: 34.6 %, above 12.5 %
    Finding lid = finding(copper, AtmosphereFinding.FLAMMABLE_AT_LID);
    assertThat(lid.severity()).isEqualTo(Severity.NOTE);
    assertThat(lid.measured().orElseThrow().si()).isCloseTo(0.34637, within(1e-5));
  }

  @Test
  void coolFiringBurnsNoCarbon() {
    Profile cool = Profile.from(celsius(20)).rampTo(celsius(300), kelvinPerHour(100)).build();
    OxygenBudget budget = MODEL.budget(cool, carbon(50), air(1, 0.2, 0.5), Workbench.copper());
    assertThat(budget.carbonNeeded().high().si()).isZero();
    assertThat(budget.tooSlow().in(HOUR)).isCloseTo(1, within(1e-9));
  }

  @Test
  void voidIsWhatPackingAndMetalLeave() {
    // Workbench: 160 mm x 140 mm inside, 1.5 kg of 3.9 g/cm3, metal of 8.9 g/cm3
    Amount<Volume> left =
        CrucibleAir.voidVolume(
            Workbench.mullite(),
            Workbench.sintering(1000).build(),
            Workbench.copper(),
            kilograms(0.2));
    assertThat(left.in(LITRE))
        .isCloseTo(Math.PI / 4 * 1.6 * 1.6 * 1.4 - 1.5 / 3.9 - 0.2 / 8.9, within(1e-9));
    assertThatThrownBy(
            () ->
                CrucibleAir.voidVolume(
                    Workbench.mullite(),
                    Workbench.sintering(1000).build(),
                    Workbench.copper(),
                    kilograms(30)))
        .hasMessageContaining("leave no room in 2.815 L; accepted is less of them");
  }

  @Test
  void refusesWhatCannotBe() {
    assertThatThrownBy(() -> air(0, -1, 2))
        .hasMessageContaining("void volume is 0 L")
        .hasMessageContaining("lowest oxygen inflow is -1 g/h");
    assertThatThrownBy(
            () ->
                new GetterBalance(AIR, celsius(650), Sourced.of(celsius(700), Source.user("test"))))
        .hasMessageContaining("oxidation limit is 700 °C; accepted is up to 650 °C");
  }

  @Test
  void isSerializable() throws Exception {
    OxygenBudget budget = MODEL.budget(FIRING, carbon(50), air(1, 0.2, 0.5), Workbench.copper());
    assertThat(Workbench.thawed(budget)).isEqualTo(budget);
  }
}
