package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.util.List;
import org.immutables.value.Value;

/** What a formula comes to when its inputs are drawn. */
@Value.Immutable
@ValueStyle
public interface Simulation extends Serializable {
  /** {@return the inputs, in the order of the formula's values} */
  @Value.Parameter
  List<UncertainInput> inputs();

  /** {@return the values drawn} */
  @Value.Parameter
  Outcome outcome();

  /** {@return how many trials were made, from which seed, and why they have ended} */
  @Value.Parameter
  TrialRecord trials();

  /**
   * A simulation.
   *
   * @param inputs the inputs
   * @param outcome the values drawn
   * @param trials how many trials were made
   * @return the simulation
   */
  static Simulation of(List<UncertainInput> inputs, Outcome outcome, TrialRecord trials) {
    return ImmutableSimulation.of(inputs, outcome, trials);
  }
}
