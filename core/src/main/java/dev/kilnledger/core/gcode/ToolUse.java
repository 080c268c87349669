package dev.kilnledger.core.gcode;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.material.Feedstock;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Relations;
import java.io.Serializable;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.immutables.value.Value;

/** What one tool of a print programme extrudes. */
@Value.Immutable
@ValueStyle
public interface ToolUse extends Serializable {
  /** {@return the number of the tool, 0 where none is chosen} */
  int tool();

  /**
   * {@return the filament that leaves the nozzle: all that is fed, less what is fed only to make
   * good a retraction}
   */
  Amount<Length> netFilament();

  /** {@return how often it is drawn back} */
  long retractions();

  /** {@return by how much in all it is drawn back} */
  Amount<Length> drawnBack();

  /**
   * The volume that is extruded.
   *
   * @param diameter of the filament
   * @return the volume of the net filament
   */
  default Amount<Volume> volume(Amount<Length> diameter) {
    return Relations.volumeOfPrism(Relations.areaOfCircle(diameter), netFilament());
  }

  /**
   * The mass that is extruded.
   *
   * @param feedstock what the filament is made of
   * @param diameter of the filament
   * @return the mass of the net filament
   */
  default Amount<Mass> mass(Feedstock feedstock, Amount<Length> diameter) {
    return Relations.massOfStrand(feedstock.massPerLength(diameter), netFilament());
  }

  /**
   * Starts one.
   *
   * @return a builder; all attributes are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link ToolUse} values. */
  final class Builder extends ImmutableToolUse.Builder {
    Builder() {}
  }
}
