package dev.kilnledger.core.material;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import java.io.Serializable;
import java.util.Optional;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;
import si.uom.quantity.Density;

/** The full density of an alloy as stated, beside the one computed by the {@link MixtureRule}. */
@Value.Immutable
@ValueStyle
public interface MixtureComparison extends Serializable {
  /** {@return the alloy} */
  @Value.Parameter
  Alloy alloy();

  /** {@return the density by the rule} */
  @Value.Parameter
  Amount<Density> computed();

  /**
   * A comparison.
   *
   * @param alloy the alloy with its stated full density
   * @param computed the density by the rule
   * @return the comparison
   * @throws IllegalArgumentException if the computed density is not above zero
   */
  static MixtureComparison of(Alloy alloy, Amount<Density> computed) {
    return ImmutableMixtureComparison.of(alloy, computed);
  }

  /** {@return the density as stated, usually a handbook's} */
  default Sourced<Amount<Density>> handbook() {
    return alloy().fullDensity();
  }

  /** {@return how far the computed density lies above the stated one, as a share of the latter} */
  default Amount<Dimensionless> deviation() {
    return Amounts.ratio(computed().ratio(handbook().value()) - 1);
  }

  /** {@return how far they may lie apart, and why; empty where none has been stated} */
  default Optional<Sourced<Amount<Dimensionless>>> tolerance() {
    return alloy().mixtureTolerance();
  }

  /** {@return whether a tolerance is stated and the deviation, of either sign, lies in it} */
  default boolean within() {
    return tolerance()
        .map(tolerance -> Math.abs(deviation().si()) <= tolerance.value().si())
        .orElse(false);
  }

  /**
   * {@return the comparison as a finding: passed within the tolerance, a warning outside (the
   * composition or the density may be mistyped), undetermined without one}
   */
  default Finding finding() {
    Finding.Builder finding = Finding.builder();
    tolerance().ifPresent(tolerance -> finding.limit(tolerance.value()));
    return finding
        .code(MaterialFinding.FULL_DENSITY_BY_MIXTURE_RULE)
        .severity(
            tolerance().isEmpty()
                ? Severity.UNDETERMINED
                : within() ? Severity.PASSED : Severity.WARNING)
        .subject(alloy().name())
        .message(
            "The inverse rule of mixtures gives "
                + computed().format(TradeUnits.GRAM_PER_CUBIC_CENTIMETRE, 3)
                + " where "
                + handbook().value().format(TradeUnits.GRAM_PER_CUBIC_CENTIMETRE, 3)
                + " is stated, a deviation of "
                + deviation().format(TradeUnits.PERCENT, 2)
                + "; "
                + tolerance()
                    .map(
                        tolerance ->
                            "accepted is up to "
                                + tolerance.value().format(TradeUnits.PERCENT, 1)
                                + " either way ("
                                + tolerance.condition()
                                + ").")
                    .orElse("no tolerance is stated for this alloy."))
        .measured(deviation())
        .basis(tolerance().map(Sourced::source).orElse(MixtureRule.SOURCE))
        .build();
  }

  /**
   * Refuses a density that is not above zero.
   *
   * @throws IllegalArgumentException if the computed density is not above zero
   */
  @Value.Check
  default void check() {
    new Problems("mixture comparison of " + alloy().name())
        .positive("computed density", computed())
        .refuseIfAny();
  }
}
