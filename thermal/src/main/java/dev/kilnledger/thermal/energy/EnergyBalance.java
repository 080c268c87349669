package dev.kilnledger.thermal.energy;

import dev.kilnledger.core.explanation.Explanation;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.Relations;
import dev.kilnledger.units.TradeUnits;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Power;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/** What one firing takes from the mains: its lines are the computation, the total is their sum. */
@Value.Immutable
@ValueStyle
public interface EnergyBalance extends Serializable {
  /** {@return the model it was computed by, and how far that can be relied on} */
  Source model();

  /** {@return the lines} */
  List<EnergyLine> lines();

  /** {@return how long the kiln is heated, above zero unless the profile only cools} */
  Amount<Time> poweredTime();

  /** {@return the most power asked at any time, empty where the model does not tell} */
  Optional<Amount<Power>> peakPower();

  /** {@return what the model found about the kiln and about its own range} */
  List<Finding> findings();

  /** {@return the energy, the sum of the lines, in kWh} */
  default Amount<Energy> total() {
    return sum(lines());
  }

  /**
   * The energy that goes one way.
   *
   * @param use where it goes
   * @return the sum of the lines of this use, in kWh, zero if there is none
   */
  default Amount<Energy> total(EnergyLine.Use use) {
    return sum(lines().stream().filter(line -> line.use() == use).toList());
  }

  private static Amount<Energy> sum(List<EnergyLine> lines) {
    return Amounts.joules(lines.stream().mapToDouble(line -> line.energy().si()).sum())
        .to(TradeUnits.KILOWATT_HOUR);
  }

  /** {@return the mean power while the kiln is heated, zero if it never is} */
  default Amount<Power> meanPower() {
    return poweredTime().si() == 0 ? Amounts.watts(0) : Relations.meanPower(total(), poweredTime());
  }

  /**
   * The energy as a figure that can be opened.
   *
   * @param what what was fired, such as the name of a stage
   * @return the total, standing on the lines
   */
  default Explanation explanation(String what) {
    return Explanation.builder()
        .what(what)
        .value(total())
        .formula("sum of the lines")
        .source(model())
        .children(lines().stream().map(EnergyLine::explanation).toList())
        .build();
  }

  /**
   * Starts a balance.
   *
   * @return a builder; model and powered time are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link EnergyBalance} values. */
  final class Builder extends ImmutableEnergyBalance.Builder {
    Builder() {}
  }
}
