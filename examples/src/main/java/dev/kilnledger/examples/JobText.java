package dev.kilnledger.examples;

import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.CUBIC_CENTIMETRE;
import static dev.kilnledger.units.TradeUnits.GRAM;
import static dev.kilnledger.units.TradeUnits.GRAM_PER_CUBIC_CENTIMETRE;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static dev.kilnledger.units.TradeUnits.KELVIN_DIFFERENCE;
import static dev.kilnledger.units.TradeUnits.KILOWATT_HOUR;
import static dev.kilnledger.units.TradeUnits.MASS_PERCENT;
import static dev.kilnledger.units.TradeUnits.METRE;
import static dev.kilnledger.units.TradeUnits.MILLIMETRE;
import static dev.kilnledger.units.TradeUnits.ONE;
import static dev.kilnledger.units.TradeUnits.PERCENT;
import static dev.kilnledger.units.TradeUnits.VOLUME_PERCENT;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.core.material.Feedstock;
import dev.kilnledger.core.part.Passage;
import dev.kilnledger.core.part.Stage;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.costing.job.Job;
import dev.kilnledger.costing.job.JobAnswer;
import dev.kilnledger.costing.ledger.Account;
import dev.kilnledger.costing.ledger.Ledger;
import dev.kilnledger.costing.ledger.Line;
import dev.kilnledger.costing.ledger.Statement;
import dev.kilnledger.costing.resource.Stock;
import dev.kilnledger.thermal.conduction.CorePoint;
import dev.kilnledger.thermal.energy.EnergyLine;
import dev.kilnledger.thermal.energy.RouteEnergy;
import dev.kilnledger.thermal.firing.CoreSoak;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.StageForecast;
import dev.kilnledger.thermal.profile.FiringStage;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.joda.money.BigMoney;

/** Lays out the answer to a job as plain text, at most 100 columns wide. */
final class JobText {
  private final TextPage page = new TextPage();

  private JobText() {}

  /** The text of an answer with a remark on its data, and the cost of the parts numbered. */
  static String of(String remark, JobAnswer answer, long... parts) {
    Job job = answer.job();
    JobText text = new JobText();
    text.page.title(
        job.parts() + " x " + job.part().name() + ", " + job.feedstock().alloy().name());
    text.page.row("%s", remark);
    text.material(job.feedstock());
    text.passage(answer.passage(), job);
    text.firing(answer);
    text.findings(answer);
    text.costs(answer.statement(), parts);
    text.page.heading("Not in these figures, or assumed");
    answer.statement().caveats().forEach(caveat -> text.page.paragraph("  - ", caveat.text()));
    text.page.heading("Cautions: local codes, safety data sheets and licensed practice decide");
    answer.cautions().forEach(caution -> text.page.paragraph("  ! ", caution.text()));
    return text.page.toString();
  }

  private void material(Feedstock feedstock) {
    Alloy alloy = feedstock.alloy();
    page.heading("Material");
    fact("feedstock", feedstock.name());
    fact(
        "metal in it",
        feedstock.metalMassFraction().format(MASS_PERCENT, 1)
            + " or "
            + feedstock.solidsLoading().format(VOLUME_PERCENT, 1)
            + ", "
            + feedstock.source().standing().words());
    fact(
        "full density",
        alloy.fullDensity().value().format(GRAM_PER_CUBIC_CENTIMETRE, 2)
            + ", "
            + alloy.fullDensity().source().cite());
    fact(
        "solidus",
        alloy.solidus().value().format(CELSIUS, 0) + ", " + alloy.solidus().source().cite());
    fact(
        "sintering window",
        alloy.sinteringWindow().value().format(CELSIUS, 0)
            + ", "
            + alloy.sinteringWindow().source().cite());
    fact(
        "relative density",
        band(alloy.expectedRelativeDensity().value(), VOLUME_PERCENT, 0)
            + ", "
            + alloy.expectedRelativeDensity().source().cite());
  }

  private void passage(Passage passage, Job job) {
    page.heading("The part from green to sintered");
    page.row("  %-9s %9s %10s %11s %7s   %s", "", "mass", "volume", "density", "pores", "envelope");
    stage("green", passage.green());
    stage("brown", passage.brown());
    stage("sintered", passage.sintered());
    fact(
        "shrinkage",
        "x "
            + band(passage.shrinkage().x(), PERCENT, 1)
            + ", y "
            + band(passage.shrinkage().y(), PERCENT, 1)
            + ", z "
            + band(passage.shrinkage().z(), PERCENT, 1));
    fact(
        "print oversize",
        "x "
            + band(passage.oversize().x(), ONE, 3)
            + ", y "
            + band(passage.oversize().y(), ONE, 3)
            + ", z "
            + band(passage.oversize().z(), ONE, 3));
    fact(
        "size may be off",
        "x "
            + passage.deviation().x().format(MILLIMETRE, 1)
            + ", y "
            + passage.deviation().y().format(MILLIMETRE, 1)
            + ", z "
            + passage.deviation().z().format(MILLIMETRE, 1)
            + ", until coupons are measured");
    fact(
        "filament",
        passage.filamentMass().format(GRAM, 1)
            + ", "
            + passage.filamentLength(job.printer().filamentDiameter()).format(METRE, 2)
            + " of "
            + job.printer().filamentDiameter());
  }

  private void stage(String name, Stage stage) {
    page.row(
        "  %-9s %9s %10s %11s %7s   %s",
        name,
        stage.mass().format(GRAM, 2),
        stage.volume().format(CUBIC_CENTIMETRE, 2),
        stage.density().format(GRAM_PER_CUBIC_CENTIMETRE, 2),
        stage.porosity().format(VOLUME_PERCENT, 1).replace(" % by volume", " %"),
        stage.envelope().format());
  }

  private void firing(JobAnswer answer) {
    page.heading("Firing, " + answer.job().partsPerCharge() + " parts in a charge");
    for (FiringStage stage : answer.job().route().stages()) {
      String getter =
          stage
              .getter()
              .map(fill -> ", with " + fill.mass() + " of " + fill.getter().name())
              .orElse("");
      page.row(
          "  %s in %s of %s%s", stage.name(), stage.packingMass(), stage.packing().name(), getter);
      stage.profile().table(CELSIUS).lines().forEach(row -> page.row("  %s", row));
    }
    felt(answer.forecast());
    answer.energy().ifPresent(this::energy);
    amount(
        "energy of the route, " + answer.firing().source().standing().words(),
        answer.firing().energy().format(KILOWATT_HOUR, 2));
  }

  private void felt(FiringForecast forecast) {
    for (StageForecast stage : forecast.stages()) {
      CorePoint lag = stage.core().greatestLag();
      amount(
          stage.stage().name() + ", core behind the kiln, at most",
          lag.lag().format(KELVIN_DIFFERENCE, 0));
    }
    CoreSoak soak = forecast.coreSoak();
    amount(
        "core at or above "
            + soak.temperature().format(CELSIUS, 0)
            + " at a stretch, where "
            + soak.asked().format(HOUR, 1)
            + " are asked",
        soak.had().expected().format(HOUR, 1));
    forecast
        .afterDebinding()
        .ifPresent(
            binder ->
                amount("binder left after debinding", binder.remaining().format(MASS_PERCENT, 1)));
    for (StageForecast stage : forecast.stages()) {
      stage
          .oxygen()
          .ifPresent(
              budget ->
                  amount(
                      stage.stage().name() + ", carbon that the oxygen takes",
                      budget.carbonNeeded().format(GRAM, 1)));
    }
  }

  private void energy(RouteEnergy energy) {
    for (int stage = 0; stage < energy.balances().size(); stage++) {
      String name = energy.route().stages().get(stage).name();
      for (EnergyLine line : energy.balances().get(stage).lines()) {
        String use = line.use().name().toLowerCase(Locale.ROOT).replace('_', ' ');
        amount(name + ", " + use + ", " + line.subject(), line.energy().format(KILOWATT_HOUR, 2));
      }
    }
  }

  private void findings(JobAnswer answer) {
    page.heading("Findings");
    for (Finding finding : answer.atLeast(Severity.NOTE)) {
      page.paragraph(
          marker(finding.severity()),
          (finding.message().contains(finding.subject()) ? "" : finding.subject() + ": ")
              + finding.message()
              + " ("
              + finding.basis().standing().words()
              + ")");
    }
    page.paragraph(
        marker(Severity.PASSED),
        answer.findings().stream()
            .filter(finding -> finding.severity() == Severity.PASSED)
            .map(finding -> finding.code().code())
            .distinct()
            .collect(Collectors.joining(", ")));
  }

  private static String marker(Severity severity) {
    return String.format(Locale.ROOT, "  %-13s", severity.name().toLowerCase(Locale.ROOT));
  }

  private void costs(Statement statement, long... parts) {
    page.heading("Cost, packs bought " + statement.plan().buying().words());
    page.paragraph(
        "  ",
        "One firing is the whole route. A part costs what its own shortage triggers; a part of a"
            + " charge that is already fired costs nothing more.");
    for (long part : parts) {
      account(statement, Ledger.standard().part(statement.plan(), part));
    }
    amount("average of " + statement.parts(), statement.money(statement.average()).toString());
    account(statement, statement.usage());
    page.row("  left after part %d", statement.parts());
    for (Stock stock : statement.stocks()) {
      page.row(
          "    %-20s %12s   %s",
          stock.item(),
          stock.text(),
          stock.nextPurchase().map(next -> "next bought for part " + next).orElse(""));
    }
  }

  private void account(Statement statement, Account account) {
    amount(account.title(), statement.money(account.total()).toString());
    for (Line line : account.lines()) {
      amount("  " + line.text(), unrounded(line.amount()));
    }
  }

  /** An amount as it stands in the account, cut to four decimals where it has more. */
  private static String unrounded(BigMoney amount) {
    return amount.getScale() <= 4
        ? amount.toString()
        : amount.withScale(4, RoundingMode.HALF_EVEN).toString();
  }

  private void amount(String what, String amount) {
    page.row("  %-80s %17s", what, amount);
  }

  private void fact(String name, String value) {
    page.paragraph(String.format(Locale.ROOT, "  %-17s ", name), value);
  }

  private static <Q extends Quantity<Q>> String band(
      Estimate<Q> estimate, Unit<Q> unit, int decimals) {
    return estimate.expected().format(unit, decimals)
        + " ("
        + estimate.span().format(unit, decimals)
        + ")";
  }
}
