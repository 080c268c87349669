package dev.kilnledger.costing.yield;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Source;
import java.io.Serializable;
import java.util.List;
import java.util.TreeMap;
import org.immutables.value.Value;

/** What fails on the way to good parts, and how that is counted. */
@Value.Immutable
@ValueStyle
public interface Failures extends Serializable {
  /** {@return how failures are counted; {@link FailureRule#PLANNED_STARTS} unless stated} */
  @Value.Default
  default FailureRule rule() {
    return FailureRule.PLANNED_STARTS;
  }

  /** {@return the stages at which something fails, each at most once} */
  List<StageYield> stages();

  /**
   * {@return how many parts go through all stages, and are not good, before the first good one; 0
   * unless stated}
   */
  @Value.Default
  default int trialParts() {
    return 0;
  }

  /** {@return how many charges the trial parts take; each has its own unless stated} */
  @Value.Default
  default int trialFirings() {
    return trialParts();
  }

  /** {@return where the number of trial parts comes from; the plan unless stated} */
  @Value.Default
  default Source trialSource() {
    return Source.user("the plan");
  }

  /** {@return whether everything comes out good and nothing is tried} */
  default boolean isNone() {
    return trialParts() == 0
        && stages().stream().allMatch(s -> s.parts().si() == 1 && s.charges().si() == 1);
  }

  /**
   * The yield of a stage.
   *
   * @param stage the stage
   * @return its yield; without failures where none is stated
   */
  default StageYield at(Stage stage) {
    return stages().stream()
        .filter(yield -> yield.stage() == stage)
        .findFirst()
        .orElseGet(
            () ->
                StageYield.builder()
                    .stage(stage)
                    .source(Source.user("no failures are stated"))
                    .build());
  }

  /** {@return these failures with the trial parts alone} */
  default Failures trialsOnly() {
    return builder()
        .trialParts(trialParts())
        .trialFirings(trialFirings())
        .trialSource(trialSource())
        .build();
  }

  /** {@return no failures at all} */
  static Failures none() {
    return builder().build();
  }

  /**
   * Starts one.
   *
   * @return a builder; nothing is required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Failures} values. */
  final class Builder extends ImmutableFailures.Builder {
    Builder() {}
  }

  /**
   * Refuses stages named twice, and trials that cannot be.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems =
        new Problems("failures")
            .require(
                rule() != FailureRule.AT_RANDOM,
                "rule is at random; accepted are planned starts and expected values, and at random"
                    + " is the rule of a simulation of random yields")
            .require(
                trialParts() >= 0, "trial parts is " + trialParts() + "; accepted is zero or more")
            .require(
                trialFirings() >= Math.min(1, trialParts())
                    && trialFirings() <= Math.max(0, trialParts()),
                "trial firings is "
                    + trialFirings()
                    + "; accepted is from "
                    + Math.min(1, Math.max(0, trialParts()))
                    + " to the number of trial parts, "
                    + trialParts());
    stages().stream()
        .collect(groupingBy(StageYield::stage, TreeMap::new, counting()))
        .forEach(
            (stage, count) ->
                problems.require(
                    count == 1,
                    stage.words() + " is stated " + count + " times; accepted is once"));
    problems.refuseIfAny();
  }
}
