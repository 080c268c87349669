package dev.kilnledger.thermal.check;

import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.thermal.Workbench.carbon;
import static dev.kilnledger.thermal.Workbench.copper;
import static dev.kilnledger.thermal.Workbench.debinding;
import static dev.kilnledger.thermal.Workbench.feedstock;
import static dev.kilnledger.thermal.Workbench.informed;
import static dev.kilnledger.thermal.Workbench.kinetics;
import static dev.kilnledger.thermal.Workbench.setup;
import static dev.kilnledger.thermal.Workbench.sintering;
import static dev.kilnledger.thermal.Workbench.wallLimit;
import static dev.kilnledger.thermal.check.Rules.all;
import static dev.kilnledger.thermal.check.Rules.first;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.massFraction;
import static dev.kilnledger.units.Amounts.millimetres;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.material.Binder;
import dev.kilnledger.core.material.Feedstock;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.burnout.BinderKinetics;
import dev.kilnledger.thermal.burnout.BurnOutFinding;
import dev.kilnledger.thermal.burnout.PublishedKinetics;
import dev.kilnledger.thermal.burnout.WallRateLimit;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.thermal.kinetics.Frequencies;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.thermal.profile.Profile;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rules of the binder, polylactide that leaves between 250 and 400 °C. */
class BinderRulesTest {
  private static FiringSetup.Builder debound(Profile... profiles) {
    List<FiringStage> stages = new ArrayList<>();
    for (Profile profile : profiles) {
      stages.add(debinding().name("debinding " + stages.size()).profile(profile).build());
    }
    stages.add(sintering(1000).getter(carbon(), grams(300)).build());
    return setup(copper(), 1000).route(FiringRoute.of(stages));
  }

  private static Profile heldAt(double celsius) {
    return Profile.from(celsius(celsius)).hold(hours(2)).build();
  }

  private static Profile heatedTo(double celsius, double kelvinPerHour) {
    return Profile.from(celsius(20)).rampTo(celsius(celsius), kelvinPerHour(kelvinPerHour)).build();
  }

  /** A charge held from the start is as hot as its hold, and there are the ends of the range. */
  @ParameterizedTest
  @CsvSource({
    "250, STOP, ': none of it leaves'",
    "251, WARNING, ': some of it stays and leaves in the heat of sintering'",
    "399, WARNING, ': some of it stays and leaves in the heat of sintering'",
    "400, UNDETERMINED, ', but how long that takes is not known: no kinetics of your feedstock are"
        + " given'"
  })
  void leavesWithinItsRange(double celsius, Severity severity, String verdict) {
    Finding finding = first(new BinderGone(), debound(heldAt(celsius)));
    assertThat(finding.severity()).isEqualTo(severity);
    assertThat(finding.message())
        .isEqualTo(
            "in debinding the core reaches "
                + Math.round(celsius)
                + " °C and polylactide leaves between 250 °C and 400 °C"
                + verdict);
    assertThat(finding.code()).isEqualTo(BurnOutFinding.BINDER_REMAINING);
    assertThat(finding.subject()).isEqualTo("polylactide");
    assertThat(finding.measured().orElseThrow().si()).isCloseTo(celsius + 273.15, within(0.02));
    assertThat(finding.limit()).contains(celsius(400));
    assertThat(finding.basis()).isEqualTo(feedstock(copper()).binder().decomposition().source());
  }

  @Test
  void leavesInTheHottestStageOfDebinding() {
    for (FiringSetup.Builder setup :
        List.of(debound(heldAt(300), heldAt(100)), debound(heldAt(100), heldAt(300)))) {
      assertThat(first(new BinderGone(), setup).measured().orElseThrow().si())
          .isCloseTo(573.15, within(0.02));
    }
  }

  @Test
  void isGoneByTheKineticsOfTheUser() {
    FiringForecast forecast = FiringForecast.of(informed(copper(), 1000).build());
    Finding gone = new BinderGone().check(forecast).get(0);
    assertThat(gone.severity()).isEqualTo(PASSED);
    assertThat(gone.code()).isEqualTo(BurnOutFinding.BINDER_REMAINING);
    assertThat(gone.subject()).isEqualTo("polylactide");
    assertThat(gone.measured())
        .contains(forecast.afterDebinding().orElseThrow().remaining().high());
    assertThat(gone.limit()).contains(massFraction(0.01));
    assertThat(gone.basis()).isEqualTo(Source.user("thermogravimetry"));
  }

  @Test
  void tellsOnWhatPublishedKineticsRest() {
    Binder acrylate =
        Binder.builder()
            .from(feedstock(copper()).binder())
            .name("poly(methyl methacrylate)")
            .build();
    FiringSetup.Builder setup =
        setup(copper(), 1000)
            .feedstock(Feedstock.builder().from(feedstock(copper())).binder(acrylate).build());
    Finding gone = first(new BinderGone(), setup);
    assertThat(gone.basis()).isEqualTo(PublishedKinetics.of(acrylate).get(0).source());
    assertThat(gone.subject()).isEqualTo("poly(methyl methacrylate)");
    // in range and yet cooler than the range ends: the temperature alone tells enough
    Finding some = first(new BinderGone(), setup.route(debound(heldAt(399)).build().route()));
    assertThat(some.severity()).isEqualTo(WARNING);
    assertThat(some.basis()).isEqualTo(acrylate.decomposition().source());
  }

  private static WallRateLimit allowing(double perSecond) {
    return WallRateLimit.builder()
        .from(wallLimit())
        .knownRate(Frequencies.perSecond(perSecond))
        .build();
  }

  private static Finding held(double perSecond) {
    return first(
        new BinderLeavesSlowly(),
        informed(copper(), 1000).lossLimits(List.of(allowing(perSecond))));
  }

  /** Just as fast as the wall stands passes; a thousandth more, or four times as much, does not. */
  @Test
  void leavesJustAsFastAsTheWallStands() {
    Finding usual = held(0.6 / 3600);
    double rate = usual.measured().orElseThrow().si();
    assertThat(held(rate).severity()).isEqualTo(PASSED);
    assertThat(held(rate / 1.001).severity()).isEqualTo(WARNING);
    assertThat(held(rate / 3.99).severity()).isEqualTo(WARNING);
    assertThat(held(rate / 4.01).severity()).isEqualTo(STOP);
    assertThat(usual.limit().orElseThrow().si()).isCloseTo(0.6 / 3600, within(1e-15));
    assertThat(usual.subject()).isEqualTo("polylactide");
    assertThat(usual.basis()).isEqualTo(Source.user("parts that came through"));
  }

  /** Two limits and two kinetics: a verdict for each limit, by both kinetics together. */
  @Test
  void answersForEachLimitOnce() {
    BinderKinetics same = BinderKinetics.builder().from(kinetics()).name("again").build();
    List<Finding> findings =
        all(
            new BinderLeavesSlowly(),
            informed(copper(), 1000)
                .lossLimits(List.of(allowing(0.6 / 3600), allowing(0.06 / 3600)))
                .addKinetics(same));
    assertThat(findings)
        .filteredOn(finding -> finding.code() == BurnOutFinding.LOSS_RATE)
        .extracting(Finding::severity)
        .containsExactly(PASSED, STOP);
    assertThat(findings)
        .filteredOn(finding -> finding.code() == BurnOutFinding.LOSS_RATE)
        .allSatisfy(
            finding -> assertThat(finding.message()).contains(", by the quickest of 2 kinetics"));
    assertThat(findings)
        .extracting(Finding::code)
        .containsExactly(
            BurnOutFinding.LOSS_RATE,
            BurnOutFinding.POWDER_BED,
            BurnOutFinding.LIMIT_RANGE,
            BurnOutFinding.KINETICS_RANGE,
            BurnOutFinding.LOSS_RATE,
            BurnOutFinding.POWDER_BED,
            BurnOutFinding.LIMIT_RANGE,
            BurnOutFinding.KINETICS_RANGE);
  }

  @Test
  void goesByTheHeatingWhereNoLimitOnTheLossIsGiven() {
    FiringSetup.Builder setup = informed(copper(), 1000).lossLimits(List.of());
    assertThat(all(new BinderLeavesSlowly(), setup))
        .hasSize(1)
        .isEqualTo(all(new DebindingRate(), setup));
  }

  /** 60 K/h up to 3 mm, then by the square of the section: 60 (3 / 5)² = 21.6 K/h. */
  @ParameterizedTest
  @CsvSource({"1, 60", "3, 60", "5, 21.6", "10, 5.4", "11, 5", "40, 5"})
  void allowsLessTheThickerTheSection(double millimetres, double allowed) {
    Finding finding =
        first(new DebindingRate(), setup(copper(), 1000).thickestSection(millimetres(millimetres)));
    assertThat(finding.limit().orElseThrow().si() * 3600).isCloseTo(allowed, within(1e-9));
    assertThat(finding.measured().orElseThrow().si() * 3600).isCloseTo(30, within(1e-9));
    assertThat(finding.code()).isEqualTo(FiringFinding.DEBINDING_RATE);
    assertThat(finding.subject()).isEqualTo("polylactide");
    assertThat(finding.basis().text()).startsWith("10 to 60 K/h through the binder's range");
  }

  /** 60 K/h are allowed, and four times as much is far too fast. */
  @ParameterizedTest
  @CsvSource({"60, PASSED", "60.1, WARNING", "240, WARNING", "241, STOP"})
  void isHeatedJustAsFastAsIsAllowed(double kelvinPerHour, Severity severity) {
    assertThat(first(new DebindingRate(), debound(heatedTo(420, kelvinPerHour))).severity())
        .isEqualTo(severity);
  }

  /** What reaches 400 °C has no binder left for what follows, what reaches 399 °C has. */
  @ParameterizedTest
  @CsvSource({"400, 30", "399, 150"})
  void isHeatedAsLongAsThereIsBinder(double celsius, double fastest) {
    assertThat(fastest(debound(heatedTo(celsius, 30)))).isCloseTo(fastest, within(1e-9));
  }

  @Test
  void isHeatedAsFastAsInTheFastestStage() {
    assertThat(fastest(debound(heatedTo(300, 40), heatedTo(420, 10)))).isCloseTo(40, within(1e-9));
    assertThat(fastest(debound(heatedTo(300, 10), heatedTo(420, 40)))).isCloseTo(40, within(1e-9));
  }

  private static double fastest(FiringSetup.Builder setup) {
    return first(new DebindingRate(), setup).measured().orElseThrow().si() * 3600;
  }

  @Test
  void isNotHeatedWhereItIsHotFromTheStart() {
    Finding open = first(new DebindingRate(), debound(heldAt(450)));
    assertThat(open.severity()).isEqualTo(UNDETERMINED);
    assertThat(open.measured()).isEmpty();
    assertThat(open.limit()).contains(kelvinPerHour(60));
  }

  @Test
  void givesOffWhatIsListedWithIt() {
    Finding fumes = first(new BinderFumes(), setup(copper(), 1000));
    assertThat(fumes.code()).isEqualTo(FiringFinding.BINDER_FUMES);
    assertThat(fumes.subject()).isEqualTo("polylactide");
    assertThat(fumes.basis())
        .isEqualTo(
            Source.commonPractice("as listed with the binder; its safety data sheet decides"));
  }
}
