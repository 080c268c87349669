package dev.kilnledger.examples;

import static dev.kilnledger.units.Amounts.grams;

import dev.kilnledger.core.equipment.Crucible;
import dev.kilnledger.core.explanation.Explanation;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Standing;
import dev.kilnledger.costing.comparison.JobComparer;
import dev.kilnledger.costing.comparison.JobComparison;
import dev.kilnledger.costing.comparison.Scenario;
import dev.kilnledger.costing.explanation.StatementFigure;
import dev.kilnledger.costing.job.Job;
import dev.kilnledger.costing.job.JobAnswer;
import dev.kilnledger.costing.job.JobExplainer;
import dev.kilnledger.costing.job.WholeJob;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.costing.resource.Wearing;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Compares three ways to make the same latch cams: three or two of them in a firing, and a dearer
 * crucible that is heavier and lasts longer; then opens one figure and lists what it rests on.
 */
public final class ThreeWorkshops {
  private static final Source INVENTED = Source.user("invented for this example");

  private ThreeWorkshops() {}

  /**
   * Prints the comparison, one figure opened, and its weakest grounds.
   *
   * @param arguments none
   */
  public static void main(String[] arguments) {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    out.print(text());
  }

  /** {@return what is printed} */
  static String text() {
    Explanation usage = JobExplainer.standard().cost(answer(asItIs()), StatementFigure.USAGE);
    StringBuilder text = new StringBuilder(comparison().text());
    text.append("\nWhere the usage per part comes from\n").append(usage.text(4));
    text.append("\nWhat it rests on and nobody has looked up\n");
    usage
        .grounds(Standing.FROM_MEMORY, Standing.COMMON_PRACTICE)
        .forEach(ground -> text.append(ground.text(0)));
    return text.toString();
  }

  /** {@return the three ways side by side, three cams in a firing being the baseline} */
  static JobComparison comparison() {
    return JobComparer.standard()
        .compare(
            List.of(
                Scenario.of("three per firing", answer(asItIs())),
                Scenario.of("two per firing", answer(twoPerFiring())),
                Scenario.of("heavy crucible", answer(heavyCrucible()))));
  }

  private static JobAnswer answer(Job job) {
    return WholeJob.standard().answer(job);
  }

  static Job asItIs() {
    return WindowWorkshop.latchCams(100);
  }

  static Job twoPerFiring() {
    return Job.builder().from(asItIs()).partsPerCharge(2).build();
  }

  /** A crucible of the same alloy that costs more than twice as much and lasts thirty firings. */
  static Job heavyCrucible() {
    Job job = asItIs();
    return Job.builder()
        .from(job)
        .crucible(
            Crucible.builder()
                .from(job.crucible())
                .name("heavy crucible")
                .mass(grams(2100))
                .build())
        .prices(
            PriceBook.builder()
                .from(job.prices())
                .offers(job.prices().offers().stream().map(ThreeWorkshops::dearer).toList())
                .build())
        .resources(job.resources().stream().map(ThreeWorkshops::longer).toList())
        .build();
  }

  private static Offer dearer(Offer offer) {
    return offer.item().equals("crucible")
        ? Offer.builder().from(offer).price(Money.of(CurrencyUnit.EUR, 90)).build()
        : offer;
  }

  private static Resource longer(Resource resource) {
    return resource.item().equals("crucible")
        ? Wearing.builder().item("crucible").driver(Driver.FIRING).life(30).source(INVENTED).build()
        : resource;
  }
}
