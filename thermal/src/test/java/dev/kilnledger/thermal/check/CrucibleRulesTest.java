package dev.kilnledger.thermal.check;

import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.thermal.Workbench.alumina;
import static dev.kilnledger.thermal.Workbench.carbon;
import static dev.kilnledger.thermal.Workbench.copper;
import static dev.kilnledger.thermal.Workbench.crucible;
import static dev.kilnledger.thermal.Workbench.debinding;
import static dev.kilnledger.thermal.Workbench.mullite;
import static dev.kilnledger.thermal.Workbench.setup;
import static dev.kilnledger.thermal.Workbench.sintering;
import static dev.kilnledger.thermal.Workbench.talc;
import static dev.kilnledger.thermal.check.Rules.all;
import static dev.kilnledger.thermal.check.Rules.assertTold;
import static dev.kilnledger.thermal.check.Rules.first;
import static dev.kilnledger.thermal.check.Rules.last;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.kilograms;
import static dev.kilnledger.units.Amounts.millimetres;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.equipment.Crucible;
import dev.kilnledger.core.equipment.RoundCavity;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.material.CrucibleMaterial;
import dev.kilnledger.core.material.PackingPowder;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.thermal.profile.FiringRoute;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The rules of the crucible and of the packing powder in it. */
class CrucibleRulesTest {
  private static FiringSetup.Builder in(CrucibleMaterial material, double peakCelsius) {
    return setup(copper(), peakCelsius)
        .crucible(Crucible.builder().from(mullite()).material(material).build());
  }

  private static CrucibleMaterial.Builder steel() {
    return CrucibleMaterial.builder().from(crucible("steel", 900).material());
  }

  @Test
  void standsThePeakThatIsItsLimit() {
    FiringRule rule = new CrucibleTemperature();
    Finding just = first(rule, in(steel().build(), 900));
    assertTold(just, PASSED, "steel stands 900 °C in air, and the peak is 900 °C");
    assertThat(just.code()).isEqualTo(FiringFinding.CRUCIBLE_TEMPERATURE);
    assertThat(just.subject()).isEqualTo("round, 160 mm");
    assertThat(just.measured()).contains(celsius(900));
    assertThat(just.limit()).contains(celsius(900));
    assertThat(just.basis()).isEqualTo(steel().build().serviceLimit().source());
    assertThat(first(rule, in(steel().build(), 901)).severity()).isEqualTo(STOP);
    assertTold(
        first(rule, in(steel().remark("scales").build(), 900)),
        NOTE,
        "steel stands 900 °C in air, and the peak is 900 °C; scales");
  }

  @Test
  void standsLessAgainAndAgain() {
    CrucibleMaterial often =
        steel().cyclicLimit(Sourced.of(celsius(800), Source.user("the maker"))).build();
    FiringRule rule = new CrucibleTemperature();
    assertThat(first(rule, in(often, 800)).severity()).isEqualTo(PASSED);
    Finding tooOften = first(rule, in(often, 900));
    assertTold(
        tooOften,
        WARNING,
        "steel stands 900 °C in air, 800 °C when fired again and again, and the peak is 900 °C");
    assertThat(tooOften.limit()).contains(celsius(800));
    assertThat(tooOften.measured()).contains(celsius(900));
    assertThat(tooOften.basis()).isEqualTo(Source.user("the maker"));
    assertThat(first(rule, in(often, 901)).severity()).isEqualTo(STOP);
  }

  /** By hand: 10 cm³ of parts, 1500 g at 1.5 to 0.8 g/cm³, 300 g of carbon at 0.5 to 0.4 g/cm³. */
  @Test
  void holdsPartsPackingAndGetter() {
    List<Finding> stages = all(new ChargeVolume(), setup(copper(), 1000));
    assertThat(stages).hasSize(2);
    assertTold(
        stages.get(0),
        PASSED,
        "the charge of the debinding stage takes 1010 to 1885 cm³, by how densely the powder packs,"
            + " and the crucible holds 2815 cm³");
    Finding sintering = stages.get(1);
    assertThat(sintering.code()).isEqualTo(FiringFinding.CHARGE_VOLUME);
    assertThat(sintering.subject()).isEqualTo("round, 160 mm");
    assertThat(sintering.measured().orElseThrow().si()).isCloseTo(2635e-6, within(1e-12));
    assertThat(sintering.limit().orElseThrow().si())
        .isCloseTo(Math.PI * 0.08 * 0.08 * 0.14, within(1e-12));
    assertThat(sintering.basis())
        .isEqualTo(Source.recomputed("mass over bulk density, the range over the usual grades"));
  }

  /** 201.06 cm² times 93.7 mm are 1884 cm³, times 93.8 mm 1886, times 50.2 mm 1009. */
  @Test
  void isFullWhereItTakesJustTheLoosestPowder() {
    assertThat(volume(93.8).severity()).isEqualTo(PASSED);
    assertThat(volume(93.7).severity()).isEqualTo(UNDETERMINED);
    assertThat(volume(50.3).severity()).isEqualTo(UNDETERMINED);
    Finding never = volume(50.2);
    assertTold(
        never,
        STOP,
        "the charge of the debinding stage takes 1010 to 1885 cm³, by how densely the powder packs,"
            + " and the crucible holds 1009 cm³");
  }

  private static Finding volume(double millimetres) {
    return first(new ChargeVolume(), setup(copper(), 1000).crucible(high(millimetres)));
  }

  private static Crucible high(double millimetres) {
    return Crucible.builder()
        .from(mullite())
        .cavity(RoundCavity.of(millimetres(160), millimetres(millimetres)))
        .build();
  }

  /** The packing alone, 1000 to 1875 cm³, is too much for 905 cm³. */
  @Test
  void holdsTooMuchPackingWhateverThePartsTake() {
    Finding never =
        first(
            new ChargeVolume(),
            setup(copper(), 1000).partsVolume(Optional.empty()).crucible(high(45)));
    assertTold(
        never,
        STOP,
        "the charge of the debinding stage takes 1000 to 1875 cm³, by how densely the powder packs,"
            + " without the parts, and the crucible holds 905 cm³");
  }

  private static FiringSetup.Builder packedIn(PackingPowder powder, double peakCelsius) {
    return setup(copper(), peakCelsius)
        .route(
            FiringRoute.of(
                debinding().build(),
                sintering(peakCelsius)
                    .packing(powder)
                    .packingMass(kilograms(1.5))
                    .getter(carbon(), grams(300))
                    .build()));
  }

  @Test
  void packsInWhatStandsThePeakOfItsStage() {
    FiringRule rule = new PackingTemperature();
    Finding just = last(rule, packedIn(talc(), 800));
    assertTold(just, PASSED, "talc stands 800 °C and the sintering stage reaches 800 °C");
    assertThat(just.code()).isEqualTo(FiringFinding.PACKING_TEMPERATURE);
    assertThat(just.subject()).isEqualTo("talc");
    assertThat(just.measured()).contains(celsius(800));
    assertThat(just.limit()).contains(celsius(800));
    assertThat(just.basis()).isEqualTo(talc().temperatureLimit().source());
    PackingPowder plain =
        PackingPowder.builder()
            .from(talc())
            .temperatureLimit(Sourced.of(celsius(800), Source.user("tried")))
            .build();
    assertTold(
        last(rule, packedIn(plain, 801)),
        STOP,
        "talc stands 800 °C and the sintering stage reaches 801 °C");
  }

  @Test
  void packsInWhatIsMeantForItsStage() {
    List<Finding> uses = all(new PackingUse(), packedIn(talc(), 800));
    assertThat(uses).hasSize(2);
    assertTold(
        uses.get(0), PASSED, "alumina is meant for debinding, where the debinding stage has it");
    assertTold(
        uses.get(1), WARNING, "talc is not meant for sintering, where the sintering stage has it");
    assertThat(uses.get(1).code()).isEqualTo(FiringFinding.PACKING_USE);
    assertThat(uses.get(0).subject()).isEqualTo(alumina().name());
    assertThat(uses.get(1).basis())
        .isEqualTo(Source.commonPractice("the uses entered with the packing powder"));
  }
}
