package dev.kilnledger.thermal.atmosphere;

import dev.kilnledger.core.explanation.Explanation;
import dev.kilnledger.core.finding.Caution;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/** The oxygen of a firing against the carbon laid in. */
@Value.Immutable
@ValueStyle
public interface OxygenBudget extends Serializable {
  /**
   * {@return the ways in which oxygen comes to the carbon; without the exchange through lid and
   * packing where that is not known}
   */
  List<BudgetLine> lines();

  /** {@return whether the exchange through lid and packing is among the lines} */
  boolean exchangeKnown();

  /** {@return the carbon laid in, without its ash} */
  Span<Mass> carbonLaidIn();

  /** {@return the carbon asked for over time} */
  List<BudgetPoint> points();

  /** {@return when the carbon may be spent at the earliest; empty if it lasts for sure} */
  Optional<Amount<Time>> spentAtEarliest();

  /** {@return when the carbon is spent for sure; empty if it may last} */
  Optional<Amount<Time>> spentAtLatest();

  /** {@return how long the metal is hot enough to oxidise and the carbon too cool to protect it} */
  Amount<Time> tooSlow();

  /** {@return the most of carbon monoxide that is given off, over time} */
  GasRelease carbonMonoxide();

  /** {@return what was found} */
  List<Finding> findings();

  /** {@return the hazards that go with it} */
  Set<Caution> cautions();

  /** {@return the carbon that the oxygen takes, the sum of the lines} */
  default Span<Mass> carbonNeeded() {
    return Span.of(
        grams(lines().stream().mapToDouble(line -> line.carbon().low().si()).sum()),
        grams(lines().stream().mapToDouble(line -> line.carbon().high().si()).sum()));
  }

  /** {@return the carbon needed as a figure that can be opened; empty where no oxygen comes} */
  default Optional<Explanation> explanation() {
    return lines().isEmpty()
        ? Optional.empty()
        : Optional.of(
            Explanation.builder()
                .what("carbon needed")
                .value(carbonNeeded())
                .formula("sum of the lines")
                .children(lines().stream().map(BudgetLine::explanation).toList())
                .build());
  }

  private static Amount<Mass> grams(double kilograms) {
    return Amounts.kilograms(kilograms).to(TradeUnits.GRAM);
  }

  /**
   * Starts a budget.
   *
   * @return an empty builder
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link OxygenBudget} values. */
  final class Builder extends ImmutableOxygenBudget.Builder {
    Builder() {}
  }
}
