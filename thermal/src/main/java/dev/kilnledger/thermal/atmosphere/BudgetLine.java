package dev.kilnledger.thermal.atmosphere;

import dev.kilnledger.core.explanation.Explanation;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Input;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Span;
import java.io.Serializable;
import java.util.List;
import javax.measure.quantity.Mass;
import org.immutables.value.Value;

/** Oxygen that comes to the carbon in one way, and the carbon it takes. */
@Value.Immutable
@ValueStyle
public interface BudgetLine extends Serializable {
  /** {@return how the oxygen comes, such as {@code "air in the crucible at the start"}} */
  String what();

  /** {@return the oxygen} */
  Span<Mass> oxygen();

  /** {@return the carbon it burns: least to carbon dioxide, most to carbon monoxide} */
  Span<Mass> carbon();

  /** {@return the formula of the oxygen, in the names of {@link #inputs}} */
  String formula();

  /**
   * {@return the figures of the formula, each with its source; {@code "T least"} and {@code "T
   * most"} where the ends of the span differ in it}
   */
  List<Input> inputs();

  /** {@return the source of the formula or of its input} */
  Source source();

  /** {@return the carbon as a figure that can be opened down to the oxygen and its inputs} */
  default Explanation explanation() {
    Explanation came =
        Explanation.builder()
            .what("oxygen")
            .value(oxygen())
            .formula(formula())
            .source(source())
            .children(inputs().stream().map(Explanation::given).toList())
            .build();
    return Explanation.builder()
        .what(what())
        .value(carbon())
        .formula("oxygen x carbon per oxygen, to dioxide at least and to monoxide at most")
        .children(List.of(came, AirGas.carbonPerOxygen()))
        .build();
  }

  /**
   * Starts a line.
   *
   * @return a builder; all attributes are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link BudgetLine} values. */
  final class Builder extends ImmutableBudgetLine.Builder {
    Builder() {}
  }
}
