package dev.kilnledger.costing.explanation;

import dev.kilnledger.core.explanation.Explanation;
import dev.kilnledger.core.source.Input;
import java.util.Optional;

/** Tells where an input of a ledger stems from, if another result computed it. */
@FunctionalInterface
public interface InputOrigin {
  /**
   * The origin of an input.
   *
   * @param item the item whose line has the input
   * @param input the input
   * @return the input as a figure that stands on the other result; empty where it was given
   */
  Optional<Explanation> of(String item, Input input);
}
