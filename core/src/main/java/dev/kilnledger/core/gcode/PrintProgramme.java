package dev.kilnledger.core.gcode;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.part.Extent;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import java.io.Serializable;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/** What a print programme extrudes, where, and how long that takes at least. */
@Value.Immutable
@ValueStyle
public interface PrintProgramme extends Serializable {
  /** {@return whether it was read to its end; not where the reading was interrupted} */
  boolean complete();

  /** {@return the number of lines} */
  long lines();

  /** {@return the number of comments} */
  long comments();

  /** {@return what each tool extrudes, by its number; tools that extrude nothing are left out} */
  List<ToolUse> tools();

  /**
   * {@return the box around the middle of everything that is extruded, priming included; empty if
   * nothing is. The strand is half its width wider}
   */
  Optional<Extent> extent();

  /** {@return the same of what is extruded at the lowest height; empty if nothing is} */
  Optional<Extent> firstLayer();

  /**
   * {@return a lower bound on the time: length of way over feed rate, and the stated waits.
   * Accelerations, heating up and homing come on top}
   */
  Amount<Time> leastTime();

  /**
   * {@return how often each word was passed over that tells nothing of motion or extrusion, such as
   * {@code M104}; beyond a thousand different ones the rest is counted as {@code "other"}}
   */
  Map<String, Long> passedOver();

  /** {@return how many lines could not be understood} */
  long unreadLines();

  /** {@return the first of those lines, at most a hundred} */
  List<UnreadLine> firstUnreadLines();

  /** {@return what was taken for granted or is missing in these figures; passed ones too} */
  List<Finding> findings();

  /** {@return the net filament of all tools} */
  default Amount<Length> netFilament() {
    return Amounts.millimetres(
        tools().stream().mapToDouble(use -> use.netFilament().in(TradeUnits.MILLIMETRE)).sum());
  }

  /**
   * Starts one.
   *
   * @return an empty builder
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link PrintProgramme} values. */
  final class Builder extends ImmutablePrintProgramme.Builder {
    Builder() {}
  }
}
