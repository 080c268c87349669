package dev.kilnledger.thermal.atmosphere;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.material.Element;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.MolarEnergy;
import java.io.Serializable;
import java.util.Optional;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;

/** What carbon does for one element of an alloy. */
@Value.Immutable
@ValueStyle
public interface ElementProtection extends Serializable {
  /** Whether an element stays bright. */
  enum Bright {
    /** By every account of its oxide, over the whole span of its activity. */
    YES,
    /** By no account, at no activity of the span. */
    NO,
    /** The accounts or the span of the activity disagree. */
    UNCERTAIN,
    /** No data, or none at this temperature. */
    UNKNOWN
  }

  /** {@return the element} */
  Element element();

  /** {@return its share of the atoms} */
  Amount<Dimensionless> atomFraction();

  /** {@return whether it stays bright at the temperature asked for} */
  Bright bright();

  /** {@return its oxide that decides, empty where none is known here} */
  Optional<Oxide> oxide();

  /**
   * {@return RT ln of the oxide's oxygen pressure over that which carbon leaves, per mole of O2;
   * above zero means bright; empty outside the data}
   */
  Optional<Estimate<MolarEnergy>> margin();

  /** {@return from which temperature on the pure element stays bright} */
  Optional<Reduction> pure();

  /** {@return from which temperature on it stays bright in the alloy} */
  Optional<Reduction> inAlloy();

  /**
   * Starts one.
   *
   * @return a builder; element, atom fraction and verdict are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link ElementProtection} values. */
  final class Builder extends ImmutableElementProtection.Builder {
    Builder() {}
  }
}
