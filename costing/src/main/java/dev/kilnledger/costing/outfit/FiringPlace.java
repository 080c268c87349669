package dev.kilnledger.costing.outfit;

import dev.kilnledger.core.equipment.Crucible;
import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.material.Getter;
import java.io.Serializable;
import java.util.Optional;
import org.immutables.value.Value;

/** Where a route is to be fired. */
@Value.Immutable
@ValueStyle
public interface FiringPlace extends Serializable {
  /** {@return the kiln} */
  @Value.Parameter
  Kiln kiln();

  /** {@return the crucible} */
  @Value.Parameter
  Crucible crucible();

  /** {@return the getter of the outfit, empty where it has none} */
  @Value.Parameter
  Optional<Getter> getter();

  /**
   * A place.
   *
   * @param kiln the kiln
   * @param crucible the crucible
   * @param getter the getter, if there is one
   * @return the place
   */
  static FiringPlace of(Kiln kiln, Crucible crucible, Optional<Getter> getter) {
    return ImmutableFiringPlace.of(kiln, crucible, getter);
  }
}
