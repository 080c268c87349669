package dev.kilnledger.core.equipment;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.util.List;
import org.immutables.value.Value;

/** Equipment to choose from, such as what a workshop owns or a dealer offers. */
@Value.Immutable
@ValueStyle
public interface EquipmentList extends Serializable {
  /** {@return the printers, in the order added} */
  List<Printer> printers();

  /** {@return the kilns, in the order added} */
  List<Kiln> kilns();

  /** {@return the crucibles, in the order added} */
  List<Crucible> crucibles();

  /** {@return the circuits that can feed a kiln, in the order added} */
  List<SupplyCircuit> supplyCircuits();

  /**
   * Starts a list.
   *
   * @return an empty builder
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link EquipmentList} values. */
  final class Builder extends ImmutableEquipmentList.Builder {
    Builder() {}
  }
}
