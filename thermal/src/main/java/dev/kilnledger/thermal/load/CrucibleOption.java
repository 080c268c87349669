package dev.kilnledger.thermal.load;

import dev.kilnledger.core.equipment.Crucible;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.util.List;
import org.immutables.value.Value;

/** One crucible that was considered. */
@Value.Immutable
@ValueStyle
public interface CrucibleOption extends Serializable {
  /** {@return the charge in it} */
  @Value.Parameter
  LoadPlan plan();

  /** {@return how many of it stand side by side in the kiln, 0 where it does not fit} */
  @Value.Parameter
  int inChamber();

  /** {@return all that was found, the plan's findings among it} */
  @Value.Parameter
  List<Finding> findings();

  /** {@return why it cannot be taken; empty if it can} */
  @Value.Parameter
  List<Finding> reasons();

  /** {@return the crucible} */
  default Crucible crucible() {
    return plan().crucible();
  }

  /** {@return whether it can be taken} */
  default boolean suits() {
    return reasons().isEmpty();
  }

  /**
   * An option.
   *
   * @param plan the charge
   * @param inChamber how many of it stand in the kiln
   * @param findings all that was found
   * @param reasons which of them rule it out
   * @return the option
   */
  static CrucibleOption of(
      LoadPlan plan, int inChamber, List<Finding> findings, List<Finding> reasons) {
    return ImmutableCrucibleOption.of(plan, inChamber, findings, reasons);
  }
}
