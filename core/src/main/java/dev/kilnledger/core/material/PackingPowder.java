package dev.kilnledger.core.material;

import dev.kilnledger.core.finding.Caution;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.SpecificHeatCapacity;
import java.io.Serializable;
import java.util.Set;
import javax.measure.quantity.Temperature;
import org.immutables.value.Value;
import si.uom.quantity.Density;

/** The refractory powder in which a part is buried while it is debound or sintered. */
@Value.Immutable
@ValueStyle
public interface PackingPowder extends Serializable {
  /** What a packing powder is good for. */
  enum Use {
    /** Holding the part while the binder leaves. */
    DEBINDING,
    /** Holding the part at sintering temperature. */
    SINTERING
  }

  /** {@return the name, such as {@code "alumina"}} */
  String name();

  /** {@return the density of its grains} */
  Sourced<Amount<Density>> skeletalDensity();

  /** {@return the density when poured, over the usual grades (ISO 3923)} */
  Sourced<Span<Density>> apparentDensity();

  /** {@return the density when tapped, over the usual grades (ISO 3953)} */
  Sourced<Span<Density>> tapDensity();

  /** {@return the highest temperature it stands, the reason in the condition} */
  Sourced<Amount<Temperature>> temperatureLimit();

  /** {@return the mean specific heat capacity between room and firing temperature} */
  Sourced<Amount<SpecificHeatCapacity>> heatCapacity();

  /** {@return what it is good for} */
  Set<Use> uses();

  /** {@return the hazards of its dust} */
  Set<Caution> cautions();

  /**
   * Starts one.
   *
   * @return an empty builder
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link PackingPowder} values. */
  final class Builder extends ImmutablePackingPowder.Builder {
    Builder() {}
  }

  /**
   * Refuses a powder that packs more densely than its grains.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("packing powder " + name())
        .text("name", name())
        .positive("lowest apparent density", apparentDensity().value().low())
        .require(
            tapDensity().value().high().isLessThan(skeletalDensity().value()),
            "tap density reaches "
                + tapDensity().value().high()
                + " with grains of "
                + skeletalDensity().value()
                + "; accepted is less than the grains' density")
        .refuseIfAny();
  }
}
