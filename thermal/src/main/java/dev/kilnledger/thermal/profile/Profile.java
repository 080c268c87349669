package dev.kilnledger.thermal.profile;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import dev.kilnledger.units.quantity.HeatingRate;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import javax.measure.Unit;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/**
 * The programme of a kiln: ramps and holds without gaps, each starting where the one before ended.
 *
 * <p>Temperatures are those of the programme, not of the part. Equality is by value, segment by
 * segment; every query depends on the course of the temperature alone, so that cutting a segment in
 * two changes no answer.
 *
 * <pre>{@code
 * Profile.from(celsius(20))
 *     .rampTo(celsius(250), kelvinPerHour(60))
 *     .hold(hours(2))
 *     .rampTo(celsius(450), kelvinPerHour(30))
 *     .coolTo(celsius(100), kelvinPerHour(120))
 *     .build();
 * }</pre>
 */
@Value.Immutable
@ValueStyle
public interface Profile extends Serializable {
  /** {@return the segments in order, at least one} */
  @Value.Parameter
  List<Segment> segments();

  /**
   * Starts a profile.
   *
   * @param start the temperature at its start
   * @return a builder
   */
  static ProfileBuilder from(Amount<Temperature> start) {
    return new ProfileBuilder(start);
  }

  /**
   * The profile of given segments.
   *
   * @param segments the segments in order
   * @return the profile
   * @throws IllegalArgumentException if there is none, or if one does not start where the one
   *     before it ended; with all problems
   */
  static Profile of(List<Segment> segments) {
    return ImmutableProfile.of(segments);
  }

  /** {@return the temperature at the start} */
  default Amount<Temperature> start() {
    return segments().get(0).start();
  }

  /** {@return the temperature at the end} */
  default Amount<Temperature> end() {
    return segments().get(segments().size() - 1).end();
  }

  /** {@return the highest temperature} */
  default Amount<Temperature> peak() {
    return Stream.concat(Stream.of(start()), segments().stream().map(Segment::end))
        .max(Comparator.naturalOrder())
        .orElseThrow();
  }

  /** {@return how long it takes, programmed cooling included} */
  default Amount<Time> duration() {
    return durationOf(segments());
  }

  /** {@return how long it takes up to the end of the last ramp or hold that is no cooling} */
  default Amount<Time> durationBeforeFinalCooling() {
    return durationOf(segmentsBeforeFinalCooling());
  }

  /**
   * {@return the segments without the cooling at the end, which a kiln may do switched off; empty
   * if it does nothing but cool}
   */
  default List<Segment> segmentsBeforeFinalCooling() {
    int count = segments().size();
    while (count > 0 && segments().get(count - 1).isCooling()) {
      count--;
    }
    return segments().subList(0, count);
  }

  /**
   * The temperature at a time.
   *
   * @param time since the start, from zero to the duration
   * @return the temperature
   * @throws IllegalArgumentException if the time lies before the start or after the end
   */
  default Amount<Temperature> temperatureAt(Amount<Time> time) {
    new Problems("profile").within("time", time, Amounts.hours(0), duration()).refuseIfAny();
    double left = time.si();
    for (Segment segment : segments()) {
      if (left <= segment.duration().si()) {
        return segment.temperatureAt(Amounts.seconds(left));
      }
      left -= segment.duration().si();
    }
    return end(); // the parts may add up to a rounding error less than the whole
  }

  /**
   * The total time at or above a temperature.
   *
   * @param temperature the temperature
   * @return the time, zero if the profile stays below
   */
  default Amount<Time> timeAbove(Amount<Temperature> temperature) {
    return TimeAbove.of(segments(), temperature).total();
  }

  /**
   * The longest time at or above a temperature without falling below it in between.
   *
   * @param temperature the temperature
   * @return the time, zero if the profile stays below
   */
  default Amount<Time> longestTimeAbove(Amount<Temperature> temperature) {
    return TimeAbove.of(segments(), temperature).longest();
  }

  /** {@return the longest time at the peak at a stretch, zero if it is only touched} */
  default Amount<Time> holdAtPeak() {
    return longestTimeAbove(peak());
  }

  /** {@return the fastest heating, empty if it never heats} */
  default Optional<Amount<HeatingRate>> fastestHeating() {
    return fastestHeating(segment -> true);
  }

  /**
   * The fastest heating inside a span of temperatures.
   *
   * @param span the temperatures looked at
   * @return the fastest heating, empty if the profile does not heat there
   */
  default Optional<Amount<HeatingRate>> fastestHeating(Span<Temperature> span) {
    return fastestHeating(
        segment ->
            segment.start().isLessThan(span.high()) && segment.end().isGreaterThan(span.low()));
  }

  private Optional<Amount<HeatingRate>> fastestHeating(Predicate<Segment> where) {
    return segments().stream()
        .filter(Segment::isHeating)
        .filter(where)
        .map(Segment::rate)
        .max(Comparator.naturalOrder());
  }

  private static Amount<Time> durationOf(List<Segment> segments) {
    return Amounts.seconds(segments.stream().mapToDouble(s -> s.duration().si()).sum())
        .to(TradeUnits.HOUR);
  }

  /** {@return the segment table, for programs} */
  default List<SegmentRow> rows() {
    List<SegmentRow> rows = new ArrayList<>();
    for (Segment segment : segments()) {
      int number = rows.size() + 1;
      rows.add(SegmentRow.of(number, segment, durationOf(segments().subList(0, number))));
    }
    return List.copyOf(rows);
  }

  /**
   * The segment table as plain text for people: temperatures in whole degrees, times in hours and
   * minutes.
   *
   * @param unit the unit of the temperatures; with degrees Fahrenheit the rates are in °F/h, else
   *     in K/h
   * @return one line per segment below a heading, each ended by a line feed
   */
  default String table(Unit<Temperature> unit) {
    return SegmentTable.text(rows(), unit);
  }

  /**
   * The segment table as plain text for people, in degrees Celsius and Fahrenheit side by side:
   * temperatures in whole degrees, rates in tenths of a degree an hour, times in hours and minutes.
   * Each figure is rounded by itself; whole degrees of one scale seldom are whole ones of the
   * other.
   *
   * @return one line per segment below a heading, each ended by a line feed
   */
  default String tableInBothScales() {
    return SegmentTable.bothScales(rows());
  }

  /**
   * Refuses a profile that is empty or has gaps.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems =
        new Problems("profile")
            .require(!segments().isEmpty(), "there is no segment; accepted is at least one");
    for (int i = 1; i < segments().size(); i++) {
      int number = i;
      Amount<Temperature> before = segments().get(i - 1).end();
      Amount<Temperature> after = segments().get(i).start();
      problems.require(
          before.equals(after),
          () ->
              "segment "
                  + (number + 1)
                  + " starts at "
                  + after
                  + " where segment "
                  + number
                  + " ended at "
                  + before
                  + "; accepted is the same temperature");
    }
    problems.refuseIfAny();
  }
}
