package dev.kilnledger.costing.ledger;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import org.immutables.value.Value;

/** Something that a statement leaves out or takes for granted. */
@Value.Immutable
@ValueStyle
public interface Caveat extends Serializable {
  /** {@return the stable code} */
  @Value.Parameter
  CaveatCode code();

  /** {@return the caveat as a sentence for people} */
  @Value.Parameter
  String text();

  /**
   * A caveat.
   *
   * @param code the stable code
   * @param text the sentence
   * @return the caveat
   */
  static Caveat of(CaveatCode code, String text) {
    return ImmutableCaveat.of(code, text);
  }
}
