package dev.kilnledger.examples;

import static dev.kilnledger.units.TradeUnits.HOUR;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.FindingCode;
import dev.kilnledger.core.part.MassBalancePassage;
import dev.kilnledger.core.part.Passage;
import dev.kilnledger.costing.job.Job;
import dev.kilnledger.thermal.design.DesignTask;
import dev.kilnledger.thermal.design.ProfileComparison;
import dev.kilnledger.thermal.design.ProfileDesign;
import dev.kilnledger.thermal.design.ProfileDesigner;
import dev.kilnledger.thermal.design.SegmentComparison;
import dev.kilnledger.thermal.design.SegmentReason;
import dev.kilnledger.thermal.design.StageComparison;
import dev.kilnledger.thermal.design.StageDesign;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.units.Amount;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.measure.quantity.Time;

/**
 * Designs profiles for the window workshop's latch cams, tells what sets each segment, and sets
 * them beside the profiles that the workshop has.
 */
public final class DesignedProfile {
  private DesignedProfile() {}

  /**
   * Prints the design.
   *
   * @param arguments none
   */
  public static void main(String[] arguments) {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    ProfileDesigner designer = ProfileDesigner.standard();
    out.print(text(designer, designer.design(task())));
  }

  /** {@return the firing of the workshop's latch cams, three in a charge} */
  static DesignTask task() {
    Job job = WindowWorkshop.latchCams(1);
    Passage passage =
        MassBalancePassage.standard().passage(job.part(), job.feedstock(), job.conditions());
    double oversize = passage.oversize().x().expected().si();
    return DesignTask.builder()
        .setup(
            FiringSetup.builder()
                .from(job)
                .thickestSection(job.part().thickestSection().multiply(oversize))
                .greenMass(passage.green().mass().multiply(job.partsPerCharge()))
                .build())
        .debindingRamps(2)
        .build();
  }

  /** {@return what is printed} */
  static String text(ProfileDesigner designer, ProfileDesign design) {
    TextPage page = new TextPage();
    page.title("Profiles for latch cams");
    page.paragraph("", "Equipment is invented for this example. " + summary(design));
    for (StageDesign stage : design.stages()) {
      page.heading(capital(stage.stage().name()));
      stage.stage().profile().tableInBothScales().lines().forEach(line -> page.row("%s", line));
      for (SegmentReason reason : stage.segments()) {
        page.paragraph("  " + reason.row().number() + " is no faster: ", told(reason.forbids()));
      }
      page.paragraph("  The peak is no lower: ", told(stage.forbidsLowerPeak()));
    }
    page.heading("What no profile mends");
    design.unmended().forEach(finding -> page.paragraph(marker(finding), finding.message()));
    page.heading("Worth knowing");
    design.notes().forEach(finding -> page.paragraph(marker(finding), finding.message()));
    ProfileComparison comparison = designer.compare(design, design.task().setup().route());
    page.heading("The workshop's own profiles");
    for (StageComparison stage : comparison.stages()) {
      page.row(
          "%s: %s programmed, %s until cold; designed %s and %s",
          stage.theirs().name(),
          hours(stage.theirs().profile().duration()),
          stage.theirsUntilOpening().map(DesignedProfile::hours).orElse("?"),
          hours(stage.designed().profile().duration()),
          stage.designedUntilOpening().map(DesignedProfile::hours).orElse("?"));
      for (SegmentComparison segment : stage.segments()) {
        page.row(
            "  segment %d takes %7s, the design %7s: %s",
            segment.row().number(),
            hours(segment.theirs()),
            segment.designed().map(DesignedProfile::hours).orElse("-"),
            segment.pace().name().toLowerCase(Locale.ROOT).replace('_', ' '));
      }
    }
    Set<FindingCode> unmended =
        design.unmended().stream().map(Finding::code).collect(Collectors.toSet());
    List<Finding> failing =
        comparison.failing().stream()
            .filter(finding -> !unmended.contains(finding.code()))
            .toList();
    failing.forEach(finding -> page.paragraph(marker(finding), finding.message()));
    if (failing.isEmpty()) {
      page.paragraph("", "They fail nothing beside what no profile mends.");
    }
    page.heading("Cautions: local codes, safety data sheets and licensed practice decide");
    design.report().cautions().forEach(caution -> page.paragraph("! ", caution.text()));
    return page.toString();
  }

  private static String summary(ProfileDesign design) {
    return "Found in "
        + design.evaluations()
        + " checks: "
        + hours(design.duration())
        + " of programme, "
        + hours(design.untilOpening())
        + " until the kiln may be opened.";
  }

  private static String told(Optional<Finding> finding) {
    return finding.map(Finding::message).orElse("it would gain nothing");
  }

  private static String marker(Finding finding) {
    return String.format(Locale.ROOT, "%-13s", finding.severity().name().toLowerCase(Locale.ROOT));
  }

  private static String hours(Amount<Time> time) {
    return time.format(HOUR, 1);
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
