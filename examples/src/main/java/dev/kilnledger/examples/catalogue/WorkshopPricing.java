package dev.kilnledger.examples.catalogue;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.costing.job.CheckedFiring;
import dev.kilnledger.costing.job.Job;
import dev.kilnledger.costing.job.JobAnswer;
import dev.kilnledger.costing.job.WholeJob;
import dev.kilnledger.costing.ledger.Statement;
import dev.kilnledger.thermal.firing.FiringSetup;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Prices the rows of a catalogue in a workshop, each part as if it were the first job there. Rows
 * that are fired alike share one firing: the last {@value #MOST_FIRINGS} different ones are kept,
 * so that memory does not grow with the catalogue, and a catalogue in the order of its sizes needs
 * no more. Several threads may price by the same one.
 */
public final class WorkshopPricing implements Function<CatalogueRow, PricedRow> {
  private static final int MOST_FIRINGS = 64;

  private final WholeJob wholeJob = WholeJob.standard();
  private final Map<String, Job> workshop;
  private final Map<FiringSetup, SharedFiring> firings =
      new LinkedHashMap<>(2 * MOST_FIRINGS, 0.75F, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<FiringSetup, SharedFiring> one) {
          return size() > MOST_FIRINGS;
        }
      };

  /**
   * A pricing that keeps no firing yet.
   *
   * @param workshop the job of each alloy that the workshop works in, whose part is left out
   */
  public WorkshopPricing(Map<String, Job> workshop) {
    this.workshop = new TreeMap<>(workshop);
  }

  @Override
  public PricedRow apply(CatalogueRow row) {
    Job job = workshop.get(row.alloy());
    if (job == null) {
      throw new IllegalArgumentException(
          "alloy is \"" + row.alloy() + "\"; accepted is one of " + workshop.keySet());
    }
    return priced(answer(Job.builder().from(job).part(row.part()).build()));
  }

  private JobAnswer answer(Job job) {
    FiringSetup setup = wholeJob.setup(job);
    SharedFiring firing;
    synchronized (firings) {
      firing = firings.computeIfAbsent(setup, SharedFiring::new);
    }
    return wholeJob.answer(job, firing.checked(wholeJob));
  }

  /** A firing that whoever comes first computes, while others who want it wait. */
  private static final class SharedFiring {
    private final FiringSetup setup;
    private @Nullable CheckedFiring checked;

    SharedFiring(FiringSetup setup) {
      this.setup = setup;
    }

    synchronized CheckedFiring checked(WholeJob wholeJob) {
      CheckedFiring known = checked;
      if (known == null) {
        known = wholeJob.check(setup);
        checked = known;
      }
      return known;
    }
  }

  private static PricedRow priced(JobAnswer answer) {
    Statement cost = answer.statement();
    List<String> codes =
        answer.worst() == Severity.PASSED
            ? List.of()
            : answer.atLeast(answer.worst()).stream()
                .map(Finding::code)
                .map(code -> code.code())
                .distinct()
                .toList();
    return new PricedRow(
        answer.passage().filamentMass(),
        cost.firstPart().total(),
        cost.usage().total(),
        answer.worst(),
        codes);
  }
}
