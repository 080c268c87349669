package dev.kilnledger.thermal.energy;

import dev.kilnledger.core.explanation.Explanation;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Input;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import java.util.List;
import java.util.Locale;
import javax.measure.quantity.Energy;
import org.immutables.value.Value;

/** One line of an energy balance, with the formula and the inputs it was computed from. */
@Value.Immutable
@ValueStyle
public interface EnergyLine extends Serializable {
  /** Where the energy of a firing goes. */
  enum Use {
    /** Through the wall into the room. */
    WALL_LOSS,
    /** Into the wall, which keeps it. */
    WALL_STORE,
    /** Into crucible, packing and parts. */
    CHARGE,
    /** Not told apart. */
    WHOLE
  }

  /** {@return where it goes} */
  Use use();

  /** {@return what takes it, such as the name of a wall layer} */
  String subject();

  /** {@return the energy} */
  Amount<Energy> energy();

  /** {@return the formula, such as {@code "m x c x dT"}, in the names of {@link #inputs}} */
  String formula();

  /** {@return the figures of the formula in its order, each with its source} */
  List<Input> inputs();

  /** {@return the source of the formula or of its constants} */
  Source source();

  /** {@return the line as a figure that can be opened, such as "charge, alumina"} */
  default Explanation explanation() {
    return Explanation.builder()
        .what(use().name().toLowerCase(Locale.ROOT).replace('_', ' ') + ", " + subject())
        .value(energy())
        .formula(formula())
        .source(source())
        .children(inputs().stream().map(Explanation::given).toList())
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

  /** Builds {@link EnergyLine} values. */
  final class Builder extends ImmutableEnergyLine.Builder {
    Builder() {}
  }
}
