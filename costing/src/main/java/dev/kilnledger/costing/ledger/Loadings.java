package dev.kilnledger.costing.ledger;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import org.immutables.value.Value;
import org.joda.money.BigMoney;

/** The same parts with the kiln loaded as planned, and filled. */
@Value.Immutable
@ValueStyle
public interface Loadings extends Serializable {
  /** {@return the statement as the kiln is loaded by the plan} */
  @Value.Parameter
  Statement asPlanned();

  /** {@return the statement with the kiln filled in every firing, a firing taking the same} */
  @Value.Parameter
  Statement filled();

  /** {@return by how much less of everything a part uses up in the long run, in money} */
  default BigMoney savedPerPart() {
    return asPlanned().usage().total().minus(filled().usage().total());
  }

  /**
   * Both loadings.
   *
   * @param asPlanned the statement as planned
   * @param filled the statement with the kiln filled
   * @return both
   */
  static Loadings of(Statement asPlanned, Statement filled) {
    return ImmutableLoadings.of(asPlanned, filled);
  }
}
