package dev.kilnledger.thermal.check;

import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;

import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.units.Amounts;
import java.util.List;

/**
 * The kiln's controller must take the segments of each stage. Cooling at the end is counted apart:
 * where only that does not fit the kiln cools by itself, which is worth a note.
 */
final class KilnSegments implements FiringRule {
  private static final Source BASIS = Source.user("the kiln's maker, as entered with the kiln");

  @Override
  public List<Finding> check(FiringForecast forecast) {
    FiringSetup setup = forecast.setup();
    return setup.route().stages().stream().map(stage -> check(setup.kiln(), stage)).toList();
  }

  private static Finding check(Kiln kiln, FiringStage stage) {
    int all = stage.profile().segments().size();
    int needed = stage.profile().segmentsBeforeFinalCooling().size();
    Finding.Builder finding =
        FiringFinding.KILN_SEGMENTS.about(kiln.name()).measured(Amounts.ratio(all)).basis(BASIS);
    String told =
        "the "
            + stage.name()
            + " profile has "
            + all
            + " segments, "
            + (all - needed)
            + " of them cooling at the end, and the kiln ";
    if (kiln.programmeSegments().isEmpty()) {
      return finding.severity(STOP).message(told + "cannot be programmed").build();
    }
    int taken = kiln.programmeSegments().getAsInt();
    Severity severity;
    String verdict;
    if (needed > taken) {
      severity = STOP;
      verdict = ": the programme does not fit";
    } else if (all > taken) {
      severity = NOTE;
      verdict = ": it cools by itself, as fast as it will";
    } else {
      severity = PASSED;
      verdict = "";
    }
    return finding
        .severity(severity)
        .limit(Amounts.ratio(taken))
        .message(told + "takes " + taken + verdict)
        .build();
  }
}
