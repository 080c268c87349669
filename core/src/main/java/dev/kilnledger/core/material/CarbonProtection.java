package dev.kilnledger.core.material;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import java.util.Optional;
import javax.measure.quantity.Temperature;
import org.immutables.value.Value;

/**
 * Whether carbon as oxygen getter, giving carbon monoxide, can keep a metal bright, and from which
 * temperature up.
 */
@Value.Immutable
@ValueStyle
public interface CarbonProtection extends Serializable {
  /** Whether carbon is the right getter for a metal. */
  enum Suitability {
    /** Carbon takes the oxygen from the metal's oxide in the whole sintering window. */
    PROTECTS,
    /** Carbon takes the oxygen only near the peak; oxide forms on the way, carbides may too. */
    PARTLY,
    /** Nothing to protect: the oxide comes apart by itself. */
    NOT_NEEDED,
    /** Carbon harms this metal. */
    WRONG
  }

  /** {@return the verdict} */
  Suitability suitability();

  /** {@return the element whose oxide decides} */
  Element decidingElement();

  /**
   * {@return the temperature above which carbon reduces the deciding oxide at 1 bar of carbon
   * monoxide, if it ever does below melting}
   */
  Optional<Sourced<Amount<Temperature>>> reducesAbove();

  /** {@return the reason and what else happens (carbon pick-up, nitrides), as one sentence} */
  String remark();

  /** {@return what the verdict stands on} */
  Source source();

  /**
   * Starts one.
   *
   * @return an empty builder
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link CarbonProtection} values. */
  final class Builder extends ImmutableCarbonProtection.Builder {
    Builder() {}
  }

  /**
   * Refuses a blank remark.
   *
   * @throws IllegalArgumentException if the remark is blank
   */
  @Value.Check
  default void check() {
    new Problems("carbon protection").text("remark", remark()).refuseIfAny();
  }
}
