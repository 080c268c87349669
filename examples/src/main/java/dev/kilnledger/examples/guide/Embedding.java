package dev.kilnledger.examples.guide;

import static dev.kilnledger.units.Amounts.cubicCentimetres;
import static dev.kilnledger.units.Amounts.massPercent;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.TradeUnits.GRAM;
import static dev.kilnledger.units.TradeUnits.ONE;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.material.Feedstock;
import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.core.part.Part;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.explanation.StatementFigure;
import dev.kilnledger.costing.job.Job;
import dev.kilnledger.costing.job.JobAnswer;
import dev.kilnledger.costing.job.JobExplainer;
import dev.kilnledger.costing.job.WholeJob;
import dev.kilnledger.costing.ledger.Statement;
import dev.kilnledger.costing.quote.CostPlusQuoter;
import dev.kilnledger.costing.quote.Quote;
import dev.kilnledger.costing.quote.QuoteItem;
import dev.kilnledger.costing.quote.QuoteTax;
import dev.kilnledger.costing.quote.QuoteTerms;
import dev.kilnledger.costing.quote.Uplift;
import dev.kilnledger.examples.WindowWorkshop;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The program of the guide to embedding. */
public final class Embedding {
  private Embedding() {}

  /**
   * Prints what the guide shows.
   *
   * @param arguments none
   */
  public static void main(String[] arguments) {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    MaterialLibrary library = MaterialLibrary.standard();
    Part escutcheon = part();
    JobAnswer answer = answer(escutcheon, feedstock(library));
    verdict(answer, out);
    cost(answer, out);
    quote(answer, out);
    explanation(answer, out);
    refused(out);
  }

  private static Feedstock feedstock(MaterialLibrary library) {
    // spotless:off
    Feedstock bronze = Feedstock.builder()
        .name("our bronze filament")
        .alloy(library.alloy("tin bronze 90/10"))
        .binder(library.binder("polylactide"))
        .statedMetalMassFraction(massPercent(88))
        .source(Source.user("data sheet of the spool, invented here"))
        .build();
    // spotless:on
    return bronze;
  }

  private static Part part() {
    // spotless:off
    Part escutcheon = Part.builder()
        .name("escutcheon")
        .finishedVolume(cubicCentimetres(2.4))
        .envelope(Envelope.of(millimetres(40), millimetres(20), millimetres(4)))
        .thickestSection(millimetres(4))
        .build();
    // spotless:on
    return escutcheon;
  }

  private static JobAnswer answer(Part escutcheon, Feedstock bronze) {
    // spotless:off
    Job job = Job.builder()
        .from(WindowWorkshop.latchCams(1))
        .part(escutcheon)
        .feedstock(bronze)
        .partsPerCharge(2)
        .parts(30)
        .build();
    JobAnswer answer = WholeJob.standard().answer(job);
    // spotless:on
    return answer;
  }

  private static void verdict(JobAnswer answer, PrintStream out) {
    // spotless:off
    out.println("worst finding: " + answer.worst());
    for (Finding finding : answer.atLeast(Severity.WARNING)) {
      out.println(finding.severity() + " " + finding.code().code() + ": " + finding.message());
    }
    // spotless:on
  }

  private static void cost(JobAnswer answer, PrintStream out) {
    // spotless:off
    Statement cost = answer.statement();
    out.println("filament for one: " + answer.passage().filamentMass().format(GRAM, 1));
    out.println("print it " + answer.passage().oversize().x().expected().format(ONE, 3) + " as large");
    out.println("first part, all bought: " + cost.money(cost.firstPart().total()));
    out.println("average of 30: " + cost.money(cost.average()));
    out.println("one in the long run: " + cost.money(cost.usage().total()));
    cost.caveats().forEach(caveat -> out.println("- " + caveat.text()));
    // spotless:on
  }

  private static void quote(JobAnswer answer, PrintStream out) {
    // spotless:off
    QuoteTerms terms = QuoteTerms.builder()
        .uplift(Uplift.margin(percent(40)))
        .taxRate(percent(19))
        .taxPolicy(QuoteTax.ON_SUM)
        .build();
    Quote quote = CostPlusQuoter.standard().quote(
        List.of(QuoteItem.of("escutcheon", 30, answer.statement().usage().total())), terms);
    out.println("30 escutcheons: net " + quote.total().net() + ", tax " + quote.total().tax());
    // spotless:on
  }

  private static void explanation(JobAnswer answer, PrintStream out) {
    // spotless:off
    out.print(JobExplainer.standard().cost(answer, StatementFigure.USAGE).text(2));
    // spotless:on
  }

  private static void refused(PrintStream out) {
    // spotless:off
    try {
      Part.builder()
          .name("")
          .finishedVolume(cubicCentimetres(5))
          .envelope(Envelope.of(millimetres(10), millimetres(10), millimetres(10)))
          .thickestSection(millimetres(12))
          .build();
    } catch (IllegalArgumentException problems) {
      out.println(problems.getMessage());
    }
    // spotless:on
  }
}
