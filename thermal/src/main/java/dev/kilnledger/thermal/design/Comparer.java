package dev.kilnledger.thermal.design;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.thermal.check.FiringCheck;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.thermal.firing.StageForecast;
import dev.kilnledger.thermal.kiln.KilnRun;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.thermal.profile.Segment;
import dev.kilnledger.thermal.profile.SegmentRow;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Time;

/** Sets a design beside another route. */
final class Comparer {
  private final ProfileDesign design;
  private final FiringCheck check;

  Comparer(ProfileDesign design, FiringCheck check) {
    this.design = design;
    this.check = check;
  }

  ProfileComparison with(FiringRoute route) {
    List<FiringStage> designed = design.route().stages();
    List<FiringStage> theirs = route.stages();
    new Problems("comparison of a design")
        .require(
            purposes(theirs).equals(purposes(designed)),
            "the other route has the stages "
                + purposes(theirs)
                + "; accepted are those of the design, "
                + purposes(designed))
        .refuseIfAny();
    FiringForecast forecast = forecast(route);
    List<StageForecast> before = forecast(design.route()).stages();
    List<StageComparison> stages = new ArrayList<>();
    for (int i = 0; i < theirs.size(); i++) {
      stages.add(
          ImmutableStageComparison.of(
              designed.get(i),
              theirs.get(i),
              untilOpening(before.get(i)),
              untilOpening(forecast.stages().get(i)),
              segments(designed.get(i).profile(), theirs.get(i).profile())));
    }
    return ImmutableProfileComparison.of(
        design, route, new Demands(design.task()).report(check, forecast), stages);
  }

  private FiringForecast forecast(FiringRoute route) {
    return FiringForecast.of(
        FiringSetup.builder().from(design.task().setup()).route(route).build());
  }

  private static Optional<Amount<Time>> untilOpening(StageForecast stage) {
    return stage.kiln().map(KilnRun::untilOpening);
  }

  private static List<FiringStage.Purpose> purposes(List<FiringStage> stages) {
    return stages.stream().map(FiringStage::purpose).toList();
  }

  private static List<SegmentComparison> segments(Profile designed, Profile theirs) {
    List<SegmentComparison> compared = new ArrayList<>();
    for (SegmentRow row : theirs.rows()) {
      compared.add(
          row.segment().isHold()
              ? ImmutableSegmentComparison.of(row, row.duration(), hold(designed, theirs, row))
              : ramp(designed, row));
    }
    return compared;
  }

  private static Optional<Amount<Time>> hold(Profile designed, Profile theirs, SegmentRow row) {
    if (row.end().equals(theirs.peak())) {
      return Optional.of(designed.holdAtPeak());
    }
    double seconds =
        designed.segments().stream()
            .filter(segment -> segment.isHold() && segment.end().equals(row.end()))
            .mapToDouble(segment -> segment.duration().si())
            .sum();
    return seconds > 0 ? Optional.of(hours(seconds)) : Optional.empty();
  }

  private static SegmentComparison ramp(Profile designed, SegmentRow row) {
    boolean up = row.segment().isHeating();
    double low = Math.min(row.start().si(), row.end().si());
    double high = Math.max(row.start().si(), row.end().si());
    double seconds = 0;
    double covered = 0;
    for (Segment segment : designed.segments()) {
      double from = Math.min(segment.start().si(), segment.end().si());
      double to = Math.max(segment.start().si(), segment.end().si());
      double shared = Math.min(high, to) - Math.max(low, from);
      boolean same = up ? segment.isHeating() : segment.isCooling();
      if (same && shared > 0) {
        seconds += segment.duration().si() * shared / (to - from);
        covered += shared;
      }
    }
    return covered > 0
        ? ImmutableSegmentComparison.of(
            row,
            hours(row.duration().si() * Math.min(1, covered / (high - low))),
            Optional.of(hours(seconds)))
        : ImmutableSegmentComparison.of(row, row.duration(), Optional.empty());
  }

  private static Amount<Time> hours(double seconds) {
    return Amounts.seconds(seconds).to(TradeUnits.HOUR);
  }
}
