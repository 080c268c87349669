package dev.kilnledger.core.gcode;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import org.immutables.value.Value;

/** A line of a programme that could not be understood and is not counted. */
@Value.Immutable
@ValueStyle
public interface UnreadLine extends Serializable {
  /** {@return the number of the line in the file, from 1} */
  @Value.Parameter
  long number();

  /** {@return its beginning, what cannot be printed as a question mark} */
  @Value.Parameter
  String beginning();

  /** {@return why it is not counted} */
  @Value.Parameter
  String reason();

  /**
   * A line that is not counted.
   *
   * @param number the number of the line in the file, from 1
   * @param beginning its beginning
   * @param reason why
   * @return the line
   */
  static UnreadLine of(long number, String beginning, String reason) {
    return ImmutableUnreadLine.of(number, beginning, reason);
  }
}
