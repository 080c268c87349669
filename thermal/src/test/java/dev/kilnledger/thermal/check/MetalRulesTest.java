package dev.kilnledger.thermal.check;

import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.thermal.Workbench.copper;
import static dev.kilnledger.thermal.Workbench.informed;
import static dev.kilnledger.thermal.Workbench.setup;
import static dev.kilnledger.thermal.check.Rules.first;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.volumeFraction;
import static dev.kilnledger.units.Amounts.watts;
import static dev.kilnledger.units.Amounts.wattsPerMetreKelvin;
import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.Workbench;
import dev.kilnledger.thermal.conduction.ConductionFinding;
import dev.kilnledger.thermal.conduction.PropertyCurve;
import dev.kilnledger.thermal.densification.DensificationFinding;
import dev.kilnledger.thermal.firing.CoreSoak;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Time;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rules of the metal and of the core in which it lies. */
class MetalRulesTest {
  private static final FiringForecast INFORMED =
      FiringForecast.of(informed(copper(), 1000).build());
  private static final FiringForecast USUAL = FiringForecast.of(setup(copper(), 1000).build());

  /** Copper: a window of 950 to 1050 °C, and melts at 1084.62 °C. */
  @ParameterizedTest
  @CsvSource({
    "949, STOP, 950",
    "950, PASSED, 950",
    "1050, PASSED, 950",
    "1051, WARNING, 1050",
    "1084.61, WARNING, 1050",
    "1084.62, STOP, 1050"
  })
  void sintersFromTheFirstToTheLastOfItsWindow(double peak, Severity severity, double limit) {
    Finding finding = first(new PeakInSinteringWindow(), setup(copper(), peak));
    assertThat(finding.severity()).isEqualTo(severity);
    assertThat(finding.code()).isEqualTo(FiringFinding.PEAK_IN_SINTERING_WINDOW);
    assertThat(finding.subject()).isEqualTo("copper");
    assertThat(finding.measured()).contains(celsius(peak));
    assertThat(finding.limit()).contains(celsius(limit));
    assertThat(finding.basis()).isEqualTo(copper().sinteringWindow().source());
  }

  /** A kiln of 413 W gets to 951 °C at the most: what is programmed above does not melt it. */
  @Test
  void meltsOnlyByWhatTheKilnReallyDoes() {
    Finding programmed = first(new MetalStaysSolid(), setup(copper(), 1090));
    assertThat(programmed.severity()).isEqualTo(STOP);
    Finding weak =
        first(
            new MetalStaysSolid(),
            setup(copper(), 1090).kiln(Workbench.kiln(1300).power(watts(413)).build()));
    assertThat(weak.severity()).isEqualTo(PASSED);
    assertThat(weak.code()).isEqualTo(DensificationFinding.FELT_BELOW_SOLIDUS);
  }

  @Test
  void soaksForAsLongAsTheCoreIsHot() {
    CoreSoak soak = USUAL.coreSoak();
    Finding finding = new CoreGetsSoak().check(USUAL).get(0);
    assertThat(finding.code()).isEqualTo(ConductionFinding.CORE_SOAK);
    assertThat(finding.subject()).isEqualTo("round, 160 mm");
    assertThat(finding.measured()).contains(soak.had().expected());
    assertThat(finding.limit()).contains(hours(1));
    assertThat(finding.basis()).isEqualTo(USUAL.hottest().core().model());
  }

  /** What the slowest charge has is enough, what the quickest has may be. */
  @Test
  void soaksJustLongEnough() {
    Span<Time> had = USUAL.coreSoak().had().span();
    FiringRule rule = new CoreGetsSoak();
    assertThat(first(rule, setup(copper(), 1000).soak(had.low())).severity()).isEqualTo(PASSED);
    assertThat(first(rule, setup(copper(), 1000).soak(had.low().multiply(1.001))).severity())
        .isEqualTo(UNDETERMINED);
    assertThat(first(rule, setup(copper(), 1000).soak(had.high())).severity())
        .isEqualTo(UNDETERMINED);
    assertThat(first(rule, setup(copper(), 1000).soak(had.high().multiply(1.001))).severity())
        .isEqualTo(WARNING);
  }

  /** Packing whose conductivity is measured, and nothing else in it. */
  @Test
  void tellsOneTimeWhereTheChargeIsKnown() {
    FiringSetup.Builder known =
        setup(copper(), 1000)
            .partsVolume(Optional.empty())
            .packingConductivity(
                Sourced.of(
                    PropertyCurve.constant(wattsPerMetreKelvin(0.3)), Source.user("hot wire")));
    assertThat(first(new CoreGetsSoak(), known).message())
        .matches("the core is at or above 950 °C for [0-9.]+ h at a stretch, asked are 1\\.00 h");
  }

  @Test
  void lagsInEveryStage() {
    assertThat(new CoreLag().check(USUAL))
        .extracting(finding -> finding.message().replaceAll(":.*", ""))
        .containsExactly("debinding", "sintering");
  }

  @Test
  void isAsDenseAsTheUsersCurveTells() {
    Estimate<VolumeFraction> density = INFORMED.density().orElseThrow().density();
    List<Finding> findings = new DensityReached().check(INFORMED);
    Finding told = findings.get(0);
    assertThat(told.severity()).isEqualTo(PASSED);
    assertThat(told.message())
        .matches(
            "a relative density of [0-9.]+ % by volume \\([0-9.]+ to [0-9.]+ % by volume\\) is"
                + " forecast, wanted are 90\\.0 % by volume");
    assertThat(told.code()).isEqualTo(DensificationFinding.DENSITY_TARGET);
    assertThat(told.subject()).isEqualTo("copper");
    assertThat(told.measured()).contains(density.expected());
    assertThat(told.limit()).contains(volumeFraction(0.9));
    assertThat(told.basis()).isEqualTo(Source.user("three dilatometer runs"));
    assertThat(findings.subList(1, findings.size()))
        .isNotEmpty()
        .isEqualTo(INFORMED.density().orElseThrow().findings());
  }

  /** Surely dense at the low end of what is forecast, perhaps at what is expected. */
  @Test
  void isJustDenseEnough() {
    Estimate<VolumeFraction> density = INFORMED.density().orElseThrow().density();
    assertThat(severityFor(density.span().low())).isEqualTo(PASSED);
    assertThat(severityFor(volumeFraction(density.span().low().si() + 1e-6)))
        .isEqualTo(UNDETERMINED);
    assertThat(severityFor(density.expected())).isEqualTo(UNDETERMINED);
    assertThat(severityFor(volumeFraction(density.expected().si() + 1e-6))).isEqualTo(WARNING);
    // hotter than the curve was observed
    assertThat(first(new DensityReached(), informed(copper(), 1070)).severity())
        .isEqualTo(UNDETERMINED);
  }

  private static Severity severityFor(Amount<VolumeFraction> target) {
    return first(new DensityReached(), informed(copper(), 1000).targetDensity(target)).severity();
  }

  /** By the literature alone: as dense as usual, not known, or denser than is usual. */
  @Test
  void isAsDenseAsTheLiteratureTells() {
    Span<VolumeFraction> usual = USUAL.literatureDensity().density();
    Finding told = new DensityReached().check(USUAL).get(0);
    assertThat(told.severity()).isEqualTo(NOTE);
    assertThat(told.message())
        .isEqualTo(
            "wanted is a relative density of 90 % by volume; "
                + USUAL.literatureDensity().findings().get(0).message());
    assertThat(told.measured()).contains(usual.low());
    assertThat(told.limit()).contains(volumeFraction(0.9));
    assertThat(told.basis()).isEqualTo(USUAL.literatureDensity().findings().get(0).basis());
    assertThat(byLiterature(usual.low())).isEqualTo(NOTE);
    assertThat(byLiterature(volumeFraction(usual.low().si() + 1e-6))).isEqualTo(UNDETERMINED);
    assertThat(byLiterature(usual.high())).isEqualTo(UNDETERMINED);
    assertThat(byLiterature(volumeFraction(usual.high().si() + 1e-6))).isEqualTo(WARNING);
  }

  private static Severity byLiterature(Amount<VolumeFraction> target) {
    return first(new DensityReached(), setup(copper(), 1000).targetDensity(target)).severity();
  }
}
