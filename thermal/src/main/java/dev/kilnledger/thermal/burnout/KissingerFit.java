package dev.kilnledger.thermal.burnout;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.thermal.kinetics.Frequencies;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.MolarEnergy;
import java.io.Serializable;
import java.util.List;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;

/** The kinetics that Kissinger's line through several peaks gives. */
@Value.Immutable
@ValueStyle
public interface KissingerFit extends Serializable {
  /** {@return the activation energy, its span being the confidence interval} */
  Estimate<MolarEnergy> activationEnergy();

  /** {@return ln(A / (1/s)), its span being the confidence interval} */
  Estimate<Dimensionless> logPreExponential();

  /** {@return the confidence of the intervals} */
  Amount<Dimensionless> confidence();

  /** {@return the peaks it goes through} */
  List<LossPeak> peaks();

  /** {@return whether the energy is known well enough} */
  List<Finding> findings();

  /** {@return the reaction of first order with these numbers} */
  default DecompositionStep step() {
    return DecompositionStep.of(
        activationEnergy().expected(),
        ReactionOrder.first(Frequencies.perSecond(Math.exp(logPreExponential().expected().si()))));
  }

  /**
   * Starts one.
   *
   * @return an empty builder
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link KissingerFit} values. */
  final class Builder extends ImmutableKissingerFit.Builder {
    Builder() {}
  }
}
