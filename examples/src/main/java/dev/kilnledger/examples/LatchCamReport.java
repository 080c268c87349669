package dev.kilnledger.examples;

import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.volumeFraction;
import static dev.kilnledger.units.TradeUnits.GRAM;
import static dev.kilnledger.units.TradeUnits.KILOWATT_HOUR;

import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.breakeven.BreakEven;
import dev.kilnledger.costing.job.Job;
import dev.kilnledger.costing.job.JobAnswer;
import dev.kilnledger.costing.job.WholeJob;
import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.uncertainty.CashFigure;
import dev.kilnledger.costing.uncertainty.LogNormal;
import dev.kilnledger.costing.uncertainty.MonteCarlo;
import dev.kilnledger.costing.uncertainty.OneAtATime;
import dev.kilnledger.costing.uncertainty.Pert;
import dev.kilnledger.costing.uncertainty.Trials;
import dev.kilnledger.costing.uncertainty.UncertainInput;
import dev.kilnledger.costing.uncertainty.UncertainPlan;
import dev.kilnledger.examples.report.JobReport;
import dev.kilnledger.thermal.burnout.PublishedKinetics;
import dev.kilnledger.thermal.densification.DensificationRun;
import dev.kilnledger.thermal.densification.DensityReading;
import dev.kilnledger.thermal.densification.FittedSinteringCurve;
import dev.kilnledger.thermal.densification.SinteringCurveFit;
import dev.kilnledger.thermal.kinetics.TemperatureHistory;
import dev.kilnledger.thermal.profile.Profile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.BigMoney;

/** Writes a page with pictures on a hundred latch cams of the window workshop. */
public final class LatchCamReport {
  private static final Source INVENTED = Source.user("invented for this example");

  private LatchCamReport() {}

  /**
   * Writes the page.
   *
   * @param arguments the file to write
   * @throws IOException if it cannot be written
   */
  public static void main(String[] arguments) throws IOException {
    if (arguments.length != 1) {
      throw new IllegalArgumentException(
          "there are " + arguments.length + " arguments; accepted is one, the file to write");
    }
    Files.writeString(Path.of(arguments[0]), report().html());
  }

  /** {@return the report: the job, against buying at EUR 45, and with what is not sure of it} */
  static JobReport report() {
    JobAnswer answer = WholeJob.standard().answer(job());
    LedgerPlan plan = answer.statement().plan();
    BigMoney outside = BigMoney.parse("EUR 45.00");
    UncertainPlan uncertain = UncertainPlan.of(plan, unsure());
    long parts = answer.job().parts();
    return JobReport.of(
            "Equipment, prices, lives, losses, sintering runs and their uncertainties are invented"
                + " for this example.",
            answer)
        .with(BreakEven.standard().find(plan, outside), "buying at " + outside)
        .with(MonteCarlo.standard().statement(uncertain, parts, Trials.fixed(20_000, 7)))
        .with(OneAtATime.standard().tornado(uncertain, CashFigure.AVERAGE, parts));
  }

  /** The latch cams with what the workshop has found out about binder and powder. */
  private static Job job() {
    Job cams = WindowWorkshop.latchCams(100);
    return Job.builder()
        .from(cams)
        .kinetics(PublishedKinetics.bracket(cams.binder(), celsius(360), kelvinPerHour(600)))
        .sinteringCurve(sinteringCurve())
        .build();
  }

  private static FittedSinteringCurve sinteringCurve() {
    return SinteringCurveFit.standard()
        .fit(
            "own tin bronze",
            List.of(
                run(
                    100,
                    830,
                    new double[][] {
                      {5.5, 0.51},
                      {6.5, 0.52},
                      {7.5, 0.53},
                      {8, 0.58},
                      {9, 0.71},
                      {10, 0.78},
                      {11, 0.83}
                    }),
                run(
                    200,
                    830,
                    new double[][] {
                      {3, 0.51},
                      {3.5, 0.51},
                      {4, 0.54},
                      {4.5, 0.63},
                      {5.5, 0.73},
                      {7, 0.82},
                      {9, 0.85}
                    }),
                run(
                    400,
                    790,
                    new double[][] {
                      {1.75, 0.51}, {2, 0.52}, {3, 0.59}, {4, 0.66}, {6, 0.75}, {8, 0.81}
                    })));
  }

  /** A run of a dilatometer: hours from the start, and the relative density read. */
  private static DensificationRun run(double rate, double peak, double[][] read) {
    Profile felt =
        Profile.from(celsius(20)).rampTo(celsius(peak), kelvinPerHour(rate)).hold(hours(8)).build();
    List<DensityReading> readings = new ArrayList<>();
    for (double[] each : read) {
      readings.add(DensityReading.of(hours(each[0]), volumeFraction(each[1])));
    }
    return DensificationRun.of(rate + " K/h", TemperatureHistory.of(felt), readings);
  }

  private static List<UncertainInput> unsure() {
    return List.of(
        UncertainInput.price("bronze filament", LogNormal.of(80, 0.15), INVENTED),
        UncertainInput.price("kiln", Pert.of(1300, 1500, 2000), INVENTED),
        UncertainInput.price("electricity", Pert.of(0.25, 0.30, 0.45), INVENTED),
        UncertainInput.quantity("bronze filament", Pert.of(16.5, 17.4, 20), INVENTED).in(GRAM),
        UncertainInput.quantity("electricity", Pert.of(8.5, 9.7, 13), INVENTED).in(KILOWATT_HOUR),
        UncertainInput.life("crucible", Pert.of(4, 12, 20), INVENTED));
  }
}
