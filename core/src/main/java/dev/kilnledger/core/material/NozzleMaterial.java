package dev.kilnledger.core.material;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import java.io.Serializable;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;

/** What a nozzle is made of and how hard that is. */
@Value.Immutable
@ValueStyle
public interface NozzleMaterial extends Serializable {
  /** {@return the name, such as {@code "hardened tool steel"}} */
  String name();

  /** {@return the hardness as a Vickers number} */
  Sourced<Span<Dimensionless>> hardness();

  /**
   * Starts one.
   *
   * @return an empty builder
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link NozzleMaterial} values. */
  final class Builder extends ImmutableNozzleMaterial.Builder {
    Builder() {}
  }

  /**
   * Refuses a blank name and a hardness that is not above zero.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("nozzle material " + name())
        .text("name", name())
        .positive("lowest hardness", hardness().value().low())
        .refuseIfAny();
  }
}
