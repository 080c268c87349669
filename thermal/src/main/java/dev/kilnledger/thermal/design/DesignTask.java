package dev.kilnledger.thermal.design;

import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.io.Serializable;
import java.util.Optional;
import javax.measure.quantity.Temperature;
import org.immutables.value.Value;

/** What a profile is designed for, and in what form. */
@Value.Immutable
@ValueStyle
public interface DesignTask extends Serializable {
  /** The most ramps that are looked for in one direction. */
  int MOST_RAMPS = 6;

  /**
   * {@return the firing: material, part, charge, kiln, and a route whose stages tell packing and
   * getter. Its profiles are what the design starts from where they pass; {@link RuleOfThumb} has
   * some for those who have none}
   */
  FiringSetup setup();

  /** {@return how the controller is told; in whole °C and minutes unless given} */
  @Value.Default
  default ProgrammeForm form() {
    return ProgrammeForm.of(ProgrammeForm.Scale.CELSIUS, ProgrammeForm.Ramps.BY_TIME);
  }

  /**
   * {@return the worst that a finding may be for a firing to count as passed; {@code NOTE} unless
   * given, not {@code STOP}}
   */
  @Value.Default
  default Severity accepted() {
    return Severity.NOTE;
  }

  /**
   * {@return where the peak of the hottest stage has to lie, one temperature being a span as well;
   * empty to leave that to the check, which, as long as no density is asked for, ends near the low
   * end of the sintering window}
   */
  Optional<Span<Temperature>> peak();

  /** {@return how many ramps debinding may heat with, from 1 to 6; 3 unless given} */
  @Value.Default
  default int debindingRamps() {
    return 3;
  }

  /** {@return how many ramps sintering may heat with, from 1 to 6; 2 unless given} */
  @Value.Default
  default int sinteringRamps() {
    return 2;
  }

  /**
   * {@return how many ramps a stage cools with, from 0 to 6; 0 unless given: the programme ends hot
   * and the kiln cools by itself, which is the fastest it can. Ramps are for what must not cool so
   * fast; the kiln follows them as it can, so each takes longer than cooling by itself}
   */
  @Value.Default
  default int coolingRamps() {
    return 0;
  }

  /** {@return the temperature of the cold kiln; 20 °C unless given} */
  @Value.Default
  default Amount<Temperature> startAt() {
    return Amounts.celsius(20);
  }

  /**
   * {@return to where cooling is programmed, if it is, above the start; 60 °C unless given, what a
   * hand can touch (common practice)}
   */
  @Value.Default
  default Amount<Temperature> coolTo() {
    return Amounts.celsius(60);
  }

  /** {@return after how many checks the search gives up and tells the best so far; 2000} */
  @Value.Default
  default int mostEvaluations() {
    return 2000;
  }

  /**
   * A task with nothing but a firing.
   *
   * @param setup the firing
   * @return the task, all else as stated with it
   */
  static DesignTask of(FiringSetup setup) {
    return builder().setup(setup).build();
  }

  /**
   * Starts one.
   *
   * @return a builder; the setup is required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link DesignTask} values. */
  final class Builder extends ImmutableDesignTask.Builder {
    Builder() {}
  }

  /**
   * Refuses a task that no programme can do.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems =
        new Problems("design task")
            .require(
                accepted() != Severity.STOP,
                "accepted is STOP, which everything is; accepted are PASSED to WARNING")
            .require(
                coolTo().isGreaterThan(startAt()),
                "it cools to "
                    + coolTo()
                    + " in a room of "
                    + startAt()
                    + "; accepted is more than the room's temperature")
            .require(
                mostEvaluations() >= 1,
                "most evaluations are " + mostEvaluations() + "; accepted is 1 or more");
    ramps(problems, "debinding ramps", debindingRamps(), 1);
    ramps(problems, "sintering ramps", sinteringRamps(), 1);
    ramps(problems, "cooling ramps", coolingRamps(), 0);
    peak()
        .ifPresent(
            span ->
                problems.require(
                    span.low().isGreaterThan(coolTo()),
                    "peak is " + span + "; accepted is above " + coolTo() + ", where it cools to"));
    problems.refuseIfAny();
  }

  private static void ramps(Problems problems, String what, int ramps, int least) {
    problems.require(
        ramps >= least && ramps <= MOST_RAMPS,
        what + " are " + ramps + "; accepted is from " + least + " to " + MOST_RAMPS);
  }
}
