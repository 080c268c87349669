package dev.kilnledger.thermal.check;

import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.thermal.Workbench.carbon;
import static dev.kilnledger.thermal.Workbench.copper;
import static dev.kilnledger.thermal.Workbench.debinding;
import static dev.kilnledger.thermal.Workbench.informed;
import static dev.kilnledger.thermal.Workbench.setup;
import static dev.kilnledger.thermal.Workbench.silver;
import static dev.kilnledger.thermal.Workbench.sintering;
import static dev.kilnledger.thermal.Workbench.stainless;
import static dev.kilnledger.thermal.Workbench.titanium;
import static dev.kilnledger.thermal.check.Rules.all;
import static dev.kilnledger.thermal.check.Rules.assertTold;
import static dev.kilnledger.thermal.check.Rules.first;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.cubicMetres;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.kilograms;
import static dev.kilnledger.units.TradeUnits.GRAM;
import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.core.finding.Caution;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.atmosphere.AtmosphereFinding;
import dev.kilnledger.thermal.atmosphere.MetalInCarbonGas;
import dev.kilnledger.thermal.atmosphere.RoomAir;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.thermal.firing.StageForecast;
import dev.kilnledger.thermal.profile.FiringRoute;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The rules of the carbon, of the gas over it, and of where both go. */
class CarbonRulesTest {
  private static final FiringForecast COPPER = FiringForecast.of(setup(copper(), 1000).build());

  private static FiringSetup.Builder withoutCarbon(Alloy alloy, double peakCelsius) {
    return setup(alloy, peakCelsius)
        .route(FiringRoute.of(debinding().build(), sintering(peakCelsius).build()));
  }

  /** What oxygen harms and carbon helps asks for it, if it helps only partly as well. */
  @Test
  void isAskedForWhereItHelps() {
    FiringRule rule = new GetterLaidIn();
    Finding partly = first(rule, withoutCarbon(stainless(), 1250));
    assertTold(
        partly,
        WARNING,
        "the sintering stage has no getter: without carbon or another protection 316L oxidises");
    assertThat(partly.code()).isEqualTo(FiringFinding.GETTER_LAID_IN);
    assertThat(partly.subject()).isEqualTo("316L");
    assertThat(partly.measured()).isEmpty();
    assertThat(partly.basis()).isEqualTo(stainless().carbonProtection().source());
    assertTold(
        first(rule, withoutCarbon(titanium(), 1250)),
        PASSED,
        "the sintering stage has no getter, and none is wanted");
    List<Finding> laidIn = rule.check(COPPER);
    assertThat(laidIn).as("debinding asks for none").hasSize(1);
    assertThat(laidIn.get(0).measured()).contains(grams(300));
  }

  @Test
  void isTheRightOneForTheMetal() {
    FiringRule rule = new CarbonSuitsAlloy();
    assertTold(
        first(rule, withoutCarbon(stainless(), 1250)),
        PASSED,
        "carbon, which is not laid in, protects 316L only partly: what carbon does to 316L");
    assertThat(first(rule, withoutCarbon(copper(), 1000)).severity()).isEqualTo(PASSED);
    assertThat(first(rule, withoutCarbon(titanium(), 1250)).severity()).isEqualTo(WARNING);
    Finding laidIn = rule.check(COPPER).get(0);
    assertThat(laidIn.code()).isEqualTo(FiringFinding.CARBON_SUITS_ALLOY);
    assertThat(laidIn.subject()).isEqualTo("copper");
    assertThat(laidIn.basis()).isEqualTo(copper().carbonProtection().source());
  }

  @Test
  void lastsAsLongAsItWillForWhatNeedsNone() {
    List<Finding> silver = all(new CarbonLasts(), setup(silver(), 900));
    assertThat(silver)
        .extracting(Finding::code)
        .containsExactly(AtmosphereFinding.CARBON_LASTS, AtmosphereFinding.FLAMMABLE_AT_LID);
    assertThat(silver).allSatisfy(told -> assertThat(told.message()).startsWith("sintering: "));
    assertThat(silver.get(0).severity()).isEqualTo(PASSED);
    assertThat(silver.get(0).subject()).isEqualTo("round, 160 mm");
    assertThat(silver.get(0).basis()).isEqualTo(silver().carbonProtection().source());
  }

  @Test
  void lastsWhoKnowsHowLongWithoutRoomForGas() {
    Finding full =
        first(
            new CarbonLasts(),
            setup(copper(), 1000).partsVolume(Optional.empty()).greenMass(kilograms(50)));
    assertThat(full.code()).isEqualTo(AtmosphereFinding.CARBON_LASTS);
    assertThat(full.severity()).isEqualTo(UNDETERMINED);
    assertThat(full.subject()).isEqualTo("round, 160 mm");
    assertThat(full.basis()).isEqualTo(Source.recomputed("mass over density of grains and metal"));
  }

  /** Copper is bright at 1000 °C whatever the nitrogen: told for carbon monoxide alone. */
  @Test
  void keepsBrightWithAndWithoutTheNitrogen() {
    List<Finding> bright = new CarbonKeepsBright().check(COPPER);
    assertThat(bright).hasSize(1);
    assertThat(bright.get(0).severity()).isEqualTo(PASSED);
    assertThat(bright.get(0).message())
        .startsWith("sintering: Cu ")
        .contains("1.00 bar of carbon monoxide")
        .doesNotContain("; but ");
    assertThat(bright.get(0).code()).isEqualTo(AtmosphereFinding.CARBON_KEEPS_BRIGHT);
  }

  @Test
  void givesTheMetalWhatItTakesUp() {
    assertThat(new MetalTakesUp().check(COPPER))
        .isEqualTo(MetalInCarbonGas.standard().findings(copper()));
    Finding none = first(new MetalTakesUp(), withoutCarbon(copper(), 1000));
    assertTold(none, PASSED, "no carbon is laid in");
    assertThat(none.code()).isEqualTo(AtmosphereFinding.CARBON_PICK_UP);
    assertThat(none.subject()).isEqualTo("copper");
    assertThat(none.basis()).isEqualTo(Source.user("the route"));
  }

  @Test
  void isMissedWhereTheMetalIsHot() {
    FiringRule rule = new UnprotectedInterval();
    List<Finding> taken = rule.check(COPPER);
    assertThat(taken).as("sintering has its carbon").hasSize(1);
    Finding debinding = taken.get(0);
    assertThat(debinding.severity()).isEqualTo(NOTE);
    assertThat(debinding.code()).isEqualTo(FiringFinding.UNPROTECTED_INTERVAL);
    assertThat(debinding.subject()).isEqualTo("copper");
    assertThat(debinding.measured())
        .contains(COPPER.debinding().get(0).felt().timeAbove(celsius(200)));
    assertThat(debinding.limit()).contains(celsius(200));
    assertThat(debinding.basis())
        .isEqualTo(Source.commonPractice("fine metal tarnishes in air above about 200 °C"));
    assertThat(debinding.message())
        .endsWith(
            " h above 200 °C of the debinding stage, which has no getter; carbon takes the oxygen"
                + " back in sintering");

    List<Finding> never = all(rule, withoutCarbon(copper(), 1000));
    assertThat(never).extracting(Finding::severity).containsExactly(WARNING, WARNING);
    assertThat(never.get(0).message())
        .endsWith(", and nothing takes back all of that oxygen in sintering");
    assertThat(never.get(1).message()).endsWith(" of the sintering stage, which has no getter");
    // iron at 740 °C: bright at 0.35 bar, between the accounts of its oxide at 1 bar
    assertThat(first(rule, setup(stainless(), 740)).message())
        .endsWith("; whether carbon takes all of the oxygen back in sintering cannot be told");
    Finding noble = first(rule, setup(silver(), 900));
    assertThat(noble.measured()).isEmpty();
    assertThat(noble.limit()).contains(celsius(200));
  }

  /** The carbon of the first sintering does not help in a second one without it. */
  @Test
  void isMissedInASecondSinteringWithoutIt() {
    FiringRoute twice =
        FiringRoute.of(
            List.of(
                debinding().build(),
                sintering(1000).getter(carbon(), grams(300)).build(),
                sintering(1000).name("again").build()));
    assertThat(all(new UnprotectedInterval(), setup(copper(), 1000).route(twice)))
        .extracting(Finding::severity)
        .containsExactly(NOTE, WARNING);
  }

  @Test
  void goesIntoARoomThatMustBeStated() {
    Finding open = new GasInRoom().check(COPPER).get(0);
    assertThat(open.code()).isEqualTo(AtmosphereFinding.ROOM_CONCENTRATION);
    assertThat(open.severity()).isEqualTo(UNDETERMINED);
    assertThat(open.subject()).isEqualTo("front loader");
    assertThat(open.basis()).isEqualTo(Caution.CARBON_MONOXIDE.source());
    FiringForecast stated =
        FiringForecast.of(
            setup(copper(), 1000).room(RoomAir.ofChanges(cubicMetres(50), 10)).build());
    List<Finding> findings = new GasInRoom().check(stated);
    Finding binder = findings.get(findings.size() - 1);
    assertThat(binder.subject()).isEqualTo("polylactide");
    assertThat(binder.severity()).isEqualTo(UNDETERMINED);
    assertThat(findings.subList(0, findings.size() - 1))
        .isEqualTo(stated.carbonMonoxideInRoom().get(0).findings());
  }

  /** Carbon in both stages: the monoxide of both goes into the room. */
  @Test
  void addsUpTheGasOfAllStages() {
    FiringRoute both =
        FiringRoute.of(
            debinding().getter(carbon(), grams(100)).build(),
            sintering(1000).getter(carbon(), grams(300)).build());
    FiringForecast forecast =
        FiringForecast.of(informed(copper(), 1000).room(Optional.empty()).route(both).build());
    double monoxide = 0;
    for (StageForecast stage : forecast.stages()) {
      monoxide += stage.oxygen().orElseThrow().carbonMonoxide().mass().si();
    }
    assertThat(new GasInRoom().check(forecast).get(0).message())
        .startsWith(
            "the room is not stated, into which up to "
                + kilograms(monoxide).format(GRAM, 1)
                + " of carbon monoxide come from the carbon and 5.5 g of binder as gas");
  }
}
