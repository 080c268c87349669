package dev.kilnledger.costing.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.part.Passage;
import dev.kilnledger.core.part.Stage;
import dev.kilnledger.costing.job.FiftyJobs.Row;
import dev.kilnledger.costing.ledger.Ledger;
import dev.kilnledger.costing.ledger.Line;
import dev.kilnledger.costing.ledger.Statement;
import dev.kilnledger.thermal.conduction.CorePoint;
import dev.kilnledger.thermal.energy.EnergyBalance;
import dev.kilnledger.thermal.energy.EnergyLine;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.StageForecast;
import dev.kilnledger.thermal.kiln.KilnPoint;
import dev.kilnledger.thermal.kiln.KilnRun;
import java.util.List;
import java.util.stream.Stream;
import org.joda.money.BigMoney;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Some fifty whole jobs over metals, binders, sizes, kilns and crucibles. What has to be found of
 * each stands in {@code fifty-jobs.csv} with its physical reason; and whatever is found, no figure
 * may be impossible.
 */
class FiftyJobsTest {
  private static final WholeJob WHOLE_JOB = WholeJob.standard();

  /** The kiln's courses are thinned to 0.05 K, the core's to 0.02 K. */
  private static final double THINNED = 0.15;

  static Stream<Row> rows() {
    return FiftyJobs.rows();
  }

  @Test
  void thereAreFifty() {
    assertThat(FiftyJobs.rows()).hasSizeGreaterThanOrEqualTo(50);
    assertThat(FiftyJobs.rows().map(Row::name)).doesNotHaveDuplicates();
    assertThat(FiftyJobs.rows()).allSatisfy(row -> assertThat(row.reason()).isNotBlank());
  }

  @ParameterizedTest
  @MethodSource("rows")
  void isFoundAndComputedAsPhysicsSays(Row row) {
    JobAnswer answer = WHOLE_JOB.answer(row.job());
    for (String must : row.must()) {
      boolean exactly = !must.contains(">=");
      String code = must.substring(0, must.indexOf(exactly ? "=" : ">="));
      Severity severity = Severity.valueOf(must.substring(must.indexOf('=') + 1));
      List<Finding> found =
          answer.findings().stream().filter(f -> f.code().code().equals(code)).toList();
      assertThat(found).as(must + ": " + row.reason()).isNotEmpty();
      // Of several, such as one for each stage, the worst tells.
      assertThat(found.stream().map(Finding::severity).max(Severity::compareTo).orElseThrow())
          .as(must + ": " + row.reason() + ": " + found)
          .satisfies(
              worst ->
                  assertThat(exactly ? worst == severity : worst.compareTo(severity) >= 0)
                      .isTrue());
    }
    assertThat(answer.worst())
        .as(row.reason() + ": " + answer.atLeast(row.worst()))
        .isEqualTo(row.worst());
    findingsCanBeRead(answer.findings());
    masses(answer.passage());
    temperatures(answer.forecast());
    binderAndDensity(answer);
    energies(answer);
    cash(answer.statement());
  }

  private static void findingsCanBeRead(List<Finding> findings) {
    assertThat(findings)
        .allSatisfy(
            finding -> {
              assertThat(finding.subject()).isNotBlank();
              assertThat(finding.message()).isNotBlank();
              assertThat(finding.message()).doesNotContain("NaN", "Infinity", "null", "E-", "E1");
            });
  }

  private static void masses(Passage passage) {
    assertThat(passage.green().mass()).isGreaterThan(passage.brown().mass());
    assertThat(passage.sintered().mass()).isEqualTo(passage.brown().mass());
    assertThat(passage.metal().si()).isPositive();
    assertThat(passage.residue().si()).isBetween(0.0, passage.binderBurnt().si());
    double full = passage.feedstock().alloy().fullDensity().value().si();
    for (Stage stage : List.of(passage.green(), passage.brown(), passage.sintered())) {
      assertThat(stage.mass().si()).isPositive();
      assertThat(stage.density().si()).isBetween(1.0, full);
      assertThat(stage.porosity().si()).isBetween(0.0, 1.0);
      assertThat(stage.volume().si())
          .isLessThanOrEqualTo(stage.envelope().volume().si() * (1 + 1e-9));
    }
    assertThat(passage.sintered().volume()).isLessThan(passage.green().volume());
  }

  private static void temperatures(FiringForecast forecast) {
    double ceiling = forecast.setup().kiln().peakTemperature().si();
    for (StageForecast stage : forecast.stages()) {
      double programmed = stage.stage().profile().peak().si();
      double coldest = stage.stage().profile().start().si();
      KilnRun run = stage.kiln().orElseThrow();
      double power = forecast.setup().kiln().power().si();
      double hottest = 0;
      for (KilnPoint point : run.points()) {
        assertThat(point.actual().si()).isBetween(coldest - 5, programmed + THINNED);
        assertThat(point.power().si()).isBetween(0.0, power * (1 + 1e-9));
        hottest = Math.max(hottest, point.actual().si());
      }
      assertThat(run.peak().si()).isLessThanOrEqualTo(Math.max(ceiling, programmed) + THINNED);
      for (CorePoint point : stage.core().points()) {
        // No hotter than the kiln ever was, no colder than the room.
        assertThat(point.core().si()).isBetween(coldest - 5, hottest + THINNED);
        assertThat(point.surface().si()).isBetween(coldest - 5, hottest + THINNED);
      }
      stage
          .oxygen()
          .ifPresent(
              budget -> {
                assertThat(budget.carbonNeeded().low().si()).isGreaterThanOrEqualTo(0);
                assertThat(budget.carbonNeeded().low())
                    .isLessThanOrEqualTo(budget.carbonNeeded().high());
                assertThat(budget.carbonMonoxide().mass().si()).isGreaterThanOrEqualTo(0);
                assertThat(budget.tooSlow()).isLessThanOrEqualTo(run.untilOpening());
              });
    }
  }

  private static void binderAndDensity(JobAnswer answer) {
    FiringForecast forecast = answer.forecast();
    forecast
        .burnOut()
        .ifPresent(
            burnOut ->
                burnOut
                    .curves()
                    .forEach(
                        curve ->
                            assertThat(curve.points())
                                .allSatisfy(
                                    point ->
                                        assertThat(point.remaining().si()).isBetween(0.0, 1.0))));
    forecast
        .density()
        .ifPresent(
            density ->
                assertThat(density.points())
                    .allSatisfy(
                        point -> {
                          assertThat(point.density().span().low().si()).isGreaterThan(0);
                          assertThat(point.density().span().high().si()).isLessThanOrEqualTo(1);
                        }));
    var literature = forecast.literatureDensity().density();
    assertThat(literature.low().si()).isBetween(0.2, 1.0);
    assertThat(literature.high().si()).isBetween(literature.low().si(), 1.0);
  }

  private static void energies(JobAnswer answer) {
    double sum = 0;
    for (StageForecast stage : answer.forecast().stages()) {
      KilnRun run = stage.kiln().orElseThrow();
      EnergyBalance balance = run.energy();
      double lines = balance.lines().stream().mapToDouble(line -> line.energy().si()).sum();
      assertThat(balance.total().si()).isCloseTo(lines, within(1e-9 * (1 + lines)));
      assertThat(balance.lines()).allSatisfy(line -> assertThat(line.energy().si() >= 0).isTrue());
      double supplied = run.energySupplied().si();
      assertThat(lines).isCloseTo(supplied, within(1e-6 * (1 + supplied)));
      // What heats the charge is part of what is supplied: the efficiency is below 1.
      assertThat(balance.total(EnergyLine.Use.CHARGE).si()).isBetween(0.0, supplied);
      double most = answer.job().kiln().power().si() * run.duration().si();
      assertThat(supplied).isBetween(0.0, most * (1 + 1e-9));
      sum += supplied;
    }
    assertThat(answer.firing().energy().si()).isCloseTo(sum, within(1e-6 * sum));
    assertThat(answer.firing().duration().si()).isPositive();
  }

  private static void cash(Statement statement) {
    BigMoney before = BigMoney.zero(statement.plan().currency());
    for (long parts : new long[] {1, 2, 3, 5, 10, 50, 100, 1000, 100_000}) {
      BigMoney through = Ledger.standard().through(statement.plan(), parts).total();
      assertThat(through).isGreaterThanOrEqualTo(before);
      before = through;
    }
    assertThat(statement.firstPart().total()).isGreaterThan(statement.usage().total());
    assertThat(statement.usage().total().isPositive()).isTrue();
    assertThat(statement.average()).isGreaterThanOrEqualTo(statement.usage().total());
    for (Line line : statement.allParts().lines()) {
      assertThat(line.amount().isNegative()).isFalse();
      assertThat(line.packs().signum()).isPositive();
    }
    assertThat(statement.stocks())
        .allSatisfy(stock -> assertThat(stock.left().si()).isGreaterThanOrEqualTo(0));
    BigMoney lines =
        statement.allParts().lines().stream()
            .map(Line::amount)
            .reduce(BigMoney.zero(statement.plan().currency()), BigMoney::plus);
    assertThat(statement.allParts().total()).isEqualByComparingTo(lines);
  }
}
