package dev.kilnledger.costing.document;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.part.LinearShrinkage;
import dev.kilnledger.core.part.Passage;
import dev.kilnledger.core.part.PerAxis;
import dev.kilnledger.core.part.Stage;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.immutables.value.Value;

/** The passage of a part as it stands in an answer document. */
@Value.Immutable
@ValueStyle
public interface PassageFigures extends Serializable {
  /** {@return as printed} */
  Stage green();

  /** {@return with the binder burnt out} */
  Stage brown();

  /** {@return as wanted} */
  Stage sintered();

  /** {@return the metal in it} */
  Amount<Mass> metal();

  /** {@return the char that the binder leaves} */
  Amount<Mass> residue();

  /** {@return the linear shrinkage from green to sintered} */
  LinearShrinkage shrinkage();

  /** {@return what to multiply the finished lengths by for printing} */
  PerAxis<Estimate<Dimensionless>> oversize();

  /** {@return how far the finished lengths may lie from those wanted} */
  PerAxis<Span<Length>> deviation();

  /** {@return the filament in the green part} */
  Amount<Mass> filamentMass();

  /** {@return the same as a length at the diameter of the printer} */
  Amount<Length> filamentLength();

  /**
   * The figures of a passage.
   *
   * @param passage the passage
   * @param filamentDiameter the diameter that the printer takes
   * @return its figures
   */
  static PassageFigures of(Passage passage, Amount<Length> filamentDiameter) {
    return builder()
        .green(passage.green())
        .brown(passage.brown())
        .sintered(passage.sintered())
        .metal(passage.metal())
        .residue(passage.residue())
        .shrinkage(passage.shrinkage())
        .oversize(passage.oversize())
        .deviation(passage.deviation())
        .filamentMass(passage.filamentMass())
        .filamentLength(passage.filamentLength(filamentDiameter))
        .build();
  }

  /**
   * Starts some.
   *
   * @return a builder; all attributes are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link PassageFigures} values. */
  final class Builder extends ImmutablePassageFigures.Builder {
    Builder() {}
  }
}
