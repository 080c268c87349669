package dev.kilnledger.thermal.burnout;

import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.PERCENT;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.kinetics.TemperatureHistory;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.thermal.profile.SegmentRow;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import dev.kilnledger.units.quantity.MassFraction;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;

/**
 * Burns binder out along a temperature history: each step of its kinetics by the closed form of its
 * reduced time on every straight line, without stepping.
 *
 * <p>Example: 150 kJ/mol, 1e9 1/s, first order, at 60 K/h from 300 K is half gone at 638.911 K and
 * leaves fastest at 645.314 K.
 */
public final class BurnOut {
  /** What may remain of the binder for a burn-out to count as complete. */
  public static final double COMPLETE_BELOW = 0.01;

  private static final double BEGINS = 0.01;
  private static final double ENDS = 0.99;
  private static final double STOP_FROM = 4;
  private static final Source COMPLETE =
      Source.commonPractice("99 % of the binder gone counts as burnt out");
  private static final BurnOut STANDARD = new BurnOut();

  private BurnOut() {}

  /** {@return the calculator} */
  public static BurnOut standard() {
    return STANDARD;
  }

  /**
   * The binder over a history.
   *
   * @param kinetics how it decomposes
   * @param history the temperature that the part feels
   * @return the series, the fastest loss, and findings
   */
  public BurnOutCurve along(BinderKinetics kinetics, TemperatureHistory history) {
    BurnOutRun run = new BurnOutRun(kinetics, history);
    BurnOutCurve.Builder curve = BurnOutCurve.builder().kinetics(kinetics);
    for (double time : run.samples(run.start(), run.end())) {
      curve.addPoints(run.point(time));
    }
    return curve
        .peak(run.point(run.largest(run.start(), run.end(), run::rate)))
        .addFindings(remaining(kinetics, run), range(kinetics, run))
        .build();
  }

  /**
   * The state of the binder at a time.
   *
   * @param kinetics how it decomposes
   * @param history the temperature that the part feels
   * @param time a time in the history
   * @return the point
   * @throws IllegalArgumentException if the time lies outside the history
   */
  public BurnOutPoint at(BinderKinetics kinetics, TemperatureHistory history, Amount<Time> time) {
    return new BurnOutRun(kinetics, history).point(time.si());
  }

  /**
   * When a share of the binder has gone.
   *
   * @param kinetics how it decomposes
   * @param history the temperature that the part feels
   * @param conversion the share, above 0 and below 1
   * @return the point, empty if the history ends before
   * @throws IllegalArgumentException if the conversion is out of range
   */
  public Optional<BurnOutPoint> reaching(
      BinderKinetics kinetics, TemperatureHistory history, Amount<MassFraction> conversion) {
    new Problems("burn-out")
        .require(
            conversion.si() > 0 && conversion.si() < 1,
            "conversion is " + conversion + "; accepted is above 0 and below 1")
        .refuseIfAny();
    BurnOutRun run = new BurnOutRun(kinetics, history);
    OptionalDouble time = run.timeTo(1 - conversion.si());
    return time.isPresent() ? Optional.of(run.point(time.getAsDouble())) : Optional.empty();
  }

  /**
   * The binder over a history where the kinetics are not known, but several published ones are.
   *
   * @param candidates the kinetics, one or more
   * @param history the temperature that the part feels
   * @return the course by each, the interval of what remains, and how far they disagree
   * @throws IllegalArgumentException if there is no candidate
   */
  public BurnOutForecast forecast(List<BinderKinetics> candidates, TemperatureHistory history) {
    new Problems("burn-out forecast")
        .require(!candidates.isEmpty(), "candidates are none; accepted is one or more kinetics")
        .refuseIfAny();
    List<BurnOutCurve> curves = candidates.stream().map(one -> along(one, history)).toList();
    List<Amount<MassFraction>> left =
        curves.stream().map(curve -> curve.end().remaining()).sorted().toList();
    Span<MassFraction> span = Span.of(left.get(0), left.get(left.size() - 1));
    List<Finding> findings = new ArrayList<>();
    findings.add(spread(candidates, span));
    curves.forEach(curve -> findings.addAll(curve.findings()));
    return ImmutableBurnOutForecast.of(curves, span, findings);
  }

  /**
   * Holds a profile against a limit, the part following the programme without lag.
   *
   * @param kinetics how the binder decomposes
   * @param profile the programme
   * @param limit how fast it may leave
   * @return the verdict, segment by segment
   */
  public LossCheck check(BinderKinetics kinetics, Profile profile, LossRateLimit limit) {
    return check(kinetics, profile, TemperatureHistory.of(profile), limit);
  }

  /**
   * Holds a profile against a limit, the part feeling another temperature than the programme.
   *
   * @param kinetics how the binder decomposes
   * @param profile the programme, whose segments are blamed
   * @param felt the temperature that the part feels; it begins with the programme at time zero and
   *     lasts as long or longer
   * @param limit how fast it may leave
   * @return the verdict, segment by segment
   * @throws IllegalArgumentException if what is felt does not cover the programme
   */
  public LossCheck check(
      BinderKinetics kinetics, Profile profile, TemperatureHistory felt, LossRateLimit limit) {
    double needed = profile.duration().si();
    new Problems("check of the rate of loss")
        .require(
            felt.start().time().si() == 0
                && felt.end().time().si() >= needed * (1 - LossCheck.ROUNDING),
            "the history goes from "
                + felt.start().time()
                + " to "
                + felt.end().time()
                + "; accepted is from zero to the end of the programme at "
                + profile.duration())
        .refuseIfAny();
    BurnOutRun run = new BurnOutRun(kinetics, felt);
    DoubleUnaryOperator use =
        time -> run.rate(time) / limit.allowedAt(Amounts.kelvin(run.kelvin(time))).si();
    List<SegmentLoss> segments = new ArrayList<>();
    double from = 0;
    for (SegmentRow row : profile.rows()) {
      double to = Math.min(row.elapsed().si(), run.end());
      double nearest = run.largest(from, to, use);
      segments.add(
          SegmentLoss.builder()
              .row(row)
              .converted(Amounts.massFraction(run.remaining(from) - run.remaining(to)))
              .nearest(run.point(nearest))
              .use(Amounts.ratio(use.applyAsDouble(nearest)))
              .build());
      from = to;
    }
    return ImmutableLossCheck.of(limit, segments, findings(kinetics, limit, segments, run));
  }

  private static List<Finding> findings(
      BinderKinetics kinetics, LossRateLimit limit, List<SegmentLoss> segments, BurnOutRun run) {
    List<Finding> findings = new ArrayList<>();
    SegmentLoss worst = segments.stream().max(Comparator.comparing(SegmentLoss::use)).orElseThrow();
    double use = worst.use().si();
    boolean kept = use <= 1 + LossCheck.ROUNDING;
    findings.add(
        limit
            .code()
            .about(kinetics.name())
            .severity(kept ? PASSED : use > STOP_FROM ? STOP : WARNING)
            .message(
                limit.tell(worst.nearest())
                    + ", at "
                    + worst.nearest().temperature().format(CELSIUS, 0)
                    + " in segment "
                    + worst.row().number()
                    + (kept ? "" : ": the part may blister or crack"))
            .measured(worst.nearest().rate())
            .limit(limit.allowedAt(worst.nearest().temperature()))
            .basis(limit.source())
            .build());
    if (limit.code() == BurnOutFinding.PORE_PRESSURE) {
      findings.add(
          BurnOutFinding.CLOSED_PORES
              .about(kinetics.name())
              .severity(NOTE)
              .message(
                  "until 4 to 20 % of the binder have left its pores are closed, and the pressure"
                      + " in open pores tells nothing of blisters from boiling binder: heat slowly"
                      + " there")
              .basis(
                  Source.quoted(
                      "pores seen to open at about 4 % in steel and wax (abstract), 20 % in public"
                          + " research notes"))
              .build());
    }
    findings.add(
        BurnOutFinding.POWDER_BED
            .about(kinetics.name())
            .severity(NOTE)
            .message(
                "a bed of fine, dense or thick packing powder slows the gas down and lowers the"
                    + " rate that large parts stand; the limit does not know it")
            .basis(Source.quoted("AIChE J. 42 (1996) 1715"))
            .build());
    findings.add(limit.range(kinetics.name()));
    findings.add(range(kinetics, run));
    return findings;
  }

  private static Finding remaining(BinderKinetics kinetics, BurnOutRun run) {
    Amount<MassFraction> left = Amounts.massFraction(run.remaining(run.end()));
    boolean complete = left.si() <= COMPLETE_BELOW;
    return BurnOutFinding.BINDER_REMAINING
        .about(kinetics.name())
        .severity(complete ? PASSED : WARNING)
        .message(
            percent(left)
                + " of the binder is left at the end"
                + (complete ? "" : ": it leaves in the heat of what follows, or stays as carbon"))
        .measured(left)
        .limit(Amounts.massFraction(COMPLETE_BELOW))
        .basis(COMPLETE)
        .build();
  }

  private static Finding range(BinderKinetics kinetics, BurnOutRun run) {
    Span<Temperature> range = kinetics.range();
    Finding.Builder finding =
        BurnOutFinding.KINETICS_RANGE.about(kinetics.name()).basis(kinetics.source());
    OptionalDouble begins = run.timeTo(1 - BEGINS);
    if (begins.isEmpty()) {
      return finding
          .severity(NOTE)
          .message(
              "less than 1 % of the binder leaves, by kinetics observed from "
                  + range.format(CELSIUS, 0))
          .build();
    }
    // of what leaves at all: where some stays, the cooling after it asks nothing of the kinetics
    double leaves = 1 - run.remaining(run.end());
    double ends = Math.max(begins.getAsDouble(), run.timeTo(1 - ENDS * leaves).orElseThrow());
    double hottest = run.largest(begins.getAsDouble(), ends, run::kelvin);
    double coldest = run.largest(begins.getAsDouble(), ends, time -> -run.kelvin(time));
    Span<Temperature> used = Span.of(celsius(run.kelvin(coldest)), celsius(run.kelvin(hottest)));
    boolean within = range.contains(used.low()) && range.contains(used.high());
    return finding
        .severity(within ? PASSED : UNDETERMINED)
        .message(
            "most of the binder leaves from "
                + used.format(CELSIUS, 0)
                + ", and its kinetics were observed from "
                + range.format(CELSIUS, 0)
                + (within ? "" : ": outside they are a guess"))
        .build();
  }

  private static Finding spread(List<BinderKinetics> candidates, Span<MassFraction> span) {
    boolean agree = span.low().si() > COMPLETE_BELOW || span.high().si() <= COMPLETE_BELOW;
    Severity severity = agree ? NOTE : UNDETERMINED;
    return BurnOutFinding.KINETICS_SPREAD
        .about(candidates.get(0).name())
        .severity(severity)
        .message(
            "by "
                + candidates.size()
                + " kinetics from elsewhere "
                + percent(span.low())
                + " to "
                + percent(span.high())
                + " of the binder is left at the end"
                + (agree ? "" : ": they do not agree whether it is gone")
                + "; thermogravimetry of your own feedstock decides")
        .basis(Source.recomputed("each of the kinetics, whose sources they tell"))
        .build();
  }

  private static Amount<Temperature> celsius(double kelvin) {
    return Amounts.kelvin(kelvin).to(TradeUnits.CELSIUS);
  }

  private static String percent(Amount<MassFraction> share) {
    return Amounts.ratio(share.si()).format(PERCENT, 1);
  }
}
