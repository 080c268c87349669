package dev.kilnledger.thermal.design;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.util.List;
import org.immutables.value.Value;

/** A limit that no profile was found to keep along with others. */
@Value.Immutable
@ValueStyle
public interface Contradiction extends Serializable {
  /** {@return the limit as the design breaks it} */
  @Value.Parameter
  Finding broken();

  /** {@return what breaks instead in the best profile tried that keeps it} */
  @Value.Parameter
  List<Finding> instead();

  /**
   * A contradiction.
   *
   * @param broken the limit as the design breaks it
   * @param instead what breaks instead where it is kept
   * @return the contradiction
   */
  static Contradiction of(Finding broken, List<Finding> instead) {
    return ImmutableContradiction.of(broken, instead);
  }
}
