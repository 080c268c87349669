package dev.kilnledger.thermal.profile;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import java.io.Serializable;
import java.util.List;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/**
 * The way of a charge through the kiln: debinding, then, repacked, sintering. Each stage is a
 * firing of its own; the charge cools and is repacked in between, which no profile tells.
 */
@Value.Immutable
@ValueStyle
public interface FiringRoute extends Serializable {
  /** {@return the stages in order: one or more for debinding, then one or more for sintering} */
  @Value.Parameter
  List<FiringStage> stages();

  /**
   * The usual route of two stages.
   *
   * @param debinding the debinding stage
   * @param sintering the sintering stage
   * @return the route
   * @throws IllegalArgumentException as {@link #of(List)}
   */
  static FiringRoute of(FiringStage debinding, FiringStage sintering) {
    return of(List.of(debinding, sintering));
  }

  /**
   * A route of any number of stages.
   *
   * @param stages the stages in order
   * @return the route
   * @throws IllegalArgumentException if debinding or sintering is missing, if a debinding stage
   *     follows a sintering stage, or if one gets as hot as a sintering stage; with all problems
   */
  static FiringRoute of(List<FiringStage> stages) {
    return ImmutableFiringRoute.of(stages);
  }

  /** {@return the debinding stages in order} */
  default List<FiringStage> debinding() {
    return stagesFor(FiringStage.Purpose.DEBINDING);
  }

  /** {@return the sintering stages in order} */
  default List<FiringStage> sintering() {
    return stagesFor(FiringStage.Purpose.SINTERING);
  }

  private List<FiringStage> stagesFor(FiringStage.Purpose purpose) {
    return stages().stream().filter(stage -> stage.purpose() == purpose).toList();
  }

  /** {@return the stage that gets hottest, the first of them if several do} */
  default FiringStage hottest() {
    FiringStage hottest = stages().get(0);
    for (FiringStage stage : stages()) {
      if (stage.profile().peak().isGreaterThan(hottest.profile().peak())) {
        hottest = stage;
      }
    }
    return hottest;
  }

  /** {@return the highest temperature of all stages} */
  default Amount<Temperature> peak() {
    return hottest().profile().peak();
  }

  /** {@return the time of all programmes, without the cooling and repacking between them} */
  default Amount<Time> duration() {
    return Amounts.seconds(
            stages().stream().mapToDouble(stage -> stage.profile().duration().si()).sum())
        .to(TradeUnits.HOUR);
  }

  /** {@return the getter of all stages together, zero if there is none} */
  default Amount<Mass> getterMass() {
    return Amounts.kilograms(
            stages().stream()
                .flatMap(stage -> stage.getter().stream())
                .mapToDouble(fill -> fill.mass().si())
                .sum())
        .to(TradeUnits.GRAM);
  }

  /**
   * Refuses a route out of order.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems =
        new Problems("firing route")
            .require(
                !debinding().isEmpty(), "there is no debinding stage; accepted is at least one")
            .require(
                !sintering().isEmpty(), "there is no sintering stage; accepted is at least one");
    boolean sintered = false;
    for (FiringStage stage : stages()) {
      boolean sinters = stage.purpose() == FiringStage.Purpose.SINTERING;
      problems.require(
          sinters || !sintered,
          "stage "
              + stage.name()
              + " debinds after a sintering stage; accepted is debinding first");
      sintered |= sinters;
    }
    for (FiringStage debinding : debinding()) {
      for (FiringStage sintering : sintering()) {
        problems.require(
            debinding.profile().peak().isLessThan(sintering.profile().peak()),
            "stage "
                + debinding.name()
                + " debinds at up to "
                + debinding.profile().peak()
                + " and stage "
                + sintering.name()
                + " sinters at "
                + sintering.profile().peak()
                + "; accepted is debinding below the sintering temperature");
      }
    }
    problems.refuseIfAny();
  }
}
