package dev.kilnledger.thermal.densification;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.thermal.kinetics.TemperatureHistory;
import java.io.Serializable;
import java.util.List;
import org.immutables.value.Value;

/** A sintering run: the temperature the part felt, and the densities read along it. */
@Value.Immutable
@ValueStyle
public interface DensificationRun extends Serializable {
  /** {@return the name of the run; the heating rate is never read from it} */
  @Value.Parameter
  String name();

  /** {@return the temperature the part felt, from cold} */
  @Value.Parameter
  TemperatureHistory history();

  /** {@return the densities, one or more, at times in the history after its start} */
  @Value.Parameter
  List<DensityReading> readings();

  /**
   * A run.
   *
   * @param name the name of the run
   * @param history the temperature the part felt, from cold
   * @param readings the densities, at times in the history after its start
   * @return the run
   * @throws IllegalArgumentException if there is no reading, or one lies outside the history
   */
  static DensificationRun of(
      String name, TemperatureHistory history, List<DensityReading> readings) {
    return ImmutableDensificationRun.of(name, history, readings);
  }

  /**
   * Refuses a run without readings and readings outside the history.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems =
        new Problems("run " + name())
            .text("name", name())
            .require(!readings().isEmpty(), "readings are none; accepted is one or more");
    for (DensityReading reading : readings()) {
      if (!reading.time().isGreaterThan(history().start().time())
          || reading.time().isGreaterThan(history().end().time())) {
        problems.require(
            false,
            "a reading is at "
                + reading.time()
                + "; accepted is after "
                + history().start().time()
                + " and up to "
                + history().end().time());
      }
    }
    problems.refuseIfAny();
  }
}
