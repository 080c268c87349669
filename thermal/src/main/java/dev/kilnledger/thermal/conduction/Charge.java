package dev.kilnledger.thermal.conduction;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.immutables.value.Value;

/**
 * What a kiln heats, as one body of layers in which heat flows along one coordinate.
 *
 * <p>A real charge is heated from its ends as well: the endless slab or cylinder inscribed in it
 * lags more than the charge does, and so is the safe side.
 */
@Value.Immutable
@ValueStyle
public interface Charge extends Serializable {
  /** {@return the name, such as {@code "round crucible, 100 mm"}} */
  String name();

  /** {@return its shape} */
  BodyShape shape();

  /** {@return the layers from the inside outwards, at least one} */
  List<ChargeLayer> layers();

  /** {@return how its surface takes up heat from the kiln; without resistance unless stated} */
  @Value.Default
  default SurfaceContact contact() {
    return SurfaceContact.perfect();
  }

  /** {@return its back, for a slab that is not symmetric; empty for symmetry at the core} */
  Optional<BackFace> back();

  /** {@return its even temperature at the start; the profile's start where empty} */
  Optional<Amount<Temperature>> startTemperature();

  /** {@return radius, or half thickness: the sum of the layers} */
  default Amount<Length> halfSize() {
    return Amounts.metres(halfMetres()).to(TradeUnits.MILLIMETRE);
  }

  /** {@return this charge with every conductivity as low as its factor allows: the slowest core} */
  default Charge slow() {
    return conducting(material -> 1 / material.conductivityFactor().si());
  }

  /** {@return this charge with every conductivity as high as its factor allows} */
  default Charge quick() {
    return conducting(material -> material.conductivityFactor().si());
  }

  private Charge conducting(ToDoubleFunction<ChargeMaterial> factor) {
    return builder()
        .from(this)
        .layers(
            layers().stream()
                .map(
                    layer ->
                        ChargeLayer.of(
                            layer.material().conducting(factor.applyAsDouble(layer.material())),
                            layer.thickness()))
                .toList())
        .build();
  }

  private double halfMetres() {
    return layers().stream().mapToDouble(layer -> layer.thickness().si()).sum();
  }

  /**
   * Starts one.
   *
   * @return a builder; name, shape and at least one layer are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Charge} values. */
  final class Builder extends ImmutableCharge.Builder {
    Builder() {}
  }

  /**
   * Refuses a charge of nothing, or a back of what has none.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("charge " + name())
        .text("name", name())
        .require(!layers().isEmpty(), "there is no layer; accepted is at least one")
        .require(
            back().isEmpty() || shape() == BodyShape.SLAB,
            "a " + shape() + " has no back face; accepted is one for a SLAB")
        .refuseIfAny();
  }
}
