package dev.kilnledger.core.material;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import java.util.Optional;
import javax.measure.quantity.Temperature;
import org.immutables.value.Value;

/** What a crucible is made of and how hot it may get in air. */
@Value.Immutable
@ValueStyle
public interface CrucibleMaterial extends Serializable {
  /** {@return the name, such as {@code "stainless steel 310S"}} */
  String name();

  /** {@return the highest service temperature in air, held steadily} */
  Sourced<Amount<Temperature>> serviceLimit();

  /**
   * {@return the highest service temperature in air when heated and cooled again and again, where
   * that is lower}
   */
  Optional<Sourced<Amount<Temperature>>> cyclicLimit();

  /** {@return what else spoils it, such as carbon pick-up or thermal shock; may be empty} */
  String remark();

  /**
   * Starts one.
   *
   * @return an empty builder
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link CrucibleMaterial} values. */
  final class Builder extends ImmutableCrucibleMaterial.Builder {
    Builder() {}
  }

  /**
   * Refuses a blank name and a cyclic limit above the service limit.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems = new Problems("crucible material").text("name", name());
    cyclicLimit()
        .ifPresent(
            cyclic ->
                problems.require(
                    !cyclic.value().isGreaterThan(serviceLimit().value()),
                    "cyclic limit is "
                        + cyclic.value()
                        + "; accepted is up to the service limit "
                        + serviceLimit().value()));
    problems.refuseIfAny();
  }
}
