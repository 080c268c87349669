package dev.kilnledger.examples.report;

import static dev.kilnledger.units.TradeUnits.GRAM;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static dev.kilnledger.units.TradeUnits.KILOWATT_HOUR;
import static dev.kilnledger.units.TradeUnits.METRE;
import static dev.kilnledger.units.TradeUnits.ONE;

import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.part.Passage;
import dev.kilnledger.costing.job.Job;
import dev.kilnledger.costing.job.JobAnswer;
import dev.kilnledger.costing.ledger.Statement;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.joda.money.BigMoney;
import org.jsoup.nodes.Element;

/** Puts a report together: the answer in short, then section by section. */
final class ReportPage {
  private final JobReport report;
  private final JobAnswer answer;
  private final Page page;

  private ReportPage(JobReport report) {
    this.report = report;
    this.answer = report.answer();
    Job job = answer.job();
    this.page =
        new Page(job.parts() + " × " + job.part().name() + ", " + job.feedstock().alloy().name());
  }

  static String of(JobReport report) {
    ReportPage sections = new ReportPage(report);
    sections.header();
    sections.firing();
    sections.part();
    sections.cost();
    sections.purchases();
    sections.breakEven();
    sections.uncertainty();
    FindingsSection.write(sections.page.section("findings", "Findings"), sections.answer);
    CaveatsSection.write(sections.page, sections.answer);
    SourcesSection.write(
        sections.page.section("sources", "Where the figures are from"), report.answer());
    return sections.page.html();
  }

  private void header() {
    Element header = page.header();
    header.appendElement("p").addClass("remark").text(report.remark());
    Severity worst = answer.worst();
    Element verdict = header.appendElement("p").addClass("verdict");
    verdict.appendElement("strong").text(FindingsSection.verdict(worst));
    verdict.appendText(" " + counts() + ". ");
    verdict.appendElement("a").attr("href", "#findings").text("All findings");
    verdict.appendText(" and ");
    verdict.appendElement("a").attr("href", "#cautions").text("cautions");
    verdict.appendText(": local codes, safety data sheets and licensed practice decide.");
    Statement statement = answer.statement();
    Element figures = header.appendElement("dl").addClass("figures");
    Page.fact(figures, "first part", money(statement.firstPart().total()));
    Page.fact(figures, "average of " + statement.parts(), money(statement.average()));
    Page.fact(figures, "used up by a part", money(statement.usage().total()));
    Passage passage = answer.passage();
    Page.fact(
        figures,
        "print it larger by",
        "x "
            + passage.oversize().x().expected().format(ONE, 3)
            + ", y "
            + passage.oversize().y().expected().format(ONE, 3)
            + ", z "
            + passage.oversize().z().expected().format(ONE, 3));
    Page.fact(
        figures,
        "filament for a part",
        passage.filamentMass().format(GRAM, 1)
            + ", "
            + passage.filamentLength(answer.job().printer().filamentDiameter()).format(METRE, 2));
    Page.fact(
        figures,
        "a firing of " + Words.count(answer.job().partsPerCharge(), "part"),
        answer.firing().duration().format(HOUR, 1)
            + ", "
            + answer.firing().energy().format(KILOWATT_HOUR, 2));
  }

  private String counts() {
    return Stream.of(Severity.STOP, Severity.WARNING, Severity.UNDETERMINED, Severity.PASSED)
        .map(
            severity ->
                answer.findings().stream().filter(f -> f.severity() == severity).count()
                    + " "
                    + FindingsSection.name(severity))
        .collect(Collectors.joining(", "));
  }

  private String money(BigMoney exact) {
    return answer.statement().money(exact).toString();
  }

  private void firing() {
    Element section = page.section("firing", "The firing");
    Page.figure(section, FiringFigures.of(answer.forecast()));
    PowerFigure.of(answer.forecast()).ifPresent(figure -> Page.figure(section, figure));
    FiringTables.write(section, answer);
  }

  private void part() {
    PartTables.write(page.section("part", "The part from green to sintered"), answer);
  }

  private void cost() {
    Element section = page.section("cost", "What the parts cost");
    Page.figure(section, CostFigure.of(answer.statement()));
    CostTables.write(section, answer.statement());
  }

  private void purchases() {
    Element section = page.section("purchases", "Purchases and what is left");
    Page.figure(section, StaircaseFigure.of(answer.statement()));
    PurchaseTables.write(section, answer);
  }

  private void breakEven() {
    report
        .breakEven()
        .ifPresent(
            ways -> {
              Element section = page.section("break-even", "Making or buying");
              Page.figure(
                  section,
                  BreakEvenFigure.of(ways.crossing(), ways.other(), answer.statement().parts()));
              UncertaintyTables.writeCrossing(section, ways, answer.statement());
            });
  }

  private void uncertainty() {
    if (report.uncertainty().isEmpty() && report.inputs().isEmpty()) {
      return;
    }
    Element section = page.section("uncertainty", "How sure the cost is");
    report
        .uncertainty()
        .ifPresent(
            statement -> {
              Page.figure(section, UncertaintyFigures.spread(statement));
              UncertaintyTables.writeBands(section, statement);
            });
    report
        .inputs()
        .filter(tornado -> !tornado.bars().isEmpty())
        .ifPresent(
            tornado -> {
              String currency = answer.statement().plan().currency().getCode();
              Page.figure(section, UncertaintyFigures.inputs(tornado, currency));
              UncertaintyTables.writeInputs(section, tornado, currency);
            });
  }
}
