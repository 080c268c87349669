package dev.kilnledger.costing.outfit;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.util.List;
import java.util.stream.Collectors;
import org.immutables.value.Value;

/**
 * An aim that nothing in the catalogue reaches, and what stands in the way of what comes closest.
 */
@Value.Immutable
@ValueStyle
public interface Unreachable extends Serializable {
  /** {@return the aim} */
  @Value.Parameter
  Aim aim();

  /** {@return what stands in the way} */
  @Value.Parameter
  List<Finding> findings();

  /**
   * An aim out of reach.
   *
   * @param aim the aim
   * @param findings what stands in the way
   * @return the value
   */
  static Unreachable of(Aim aim, List<Finding> findings) {
    return ImmutableUnreachable.of(aim, findings);
  }

  /** {@return the value for people} */
  default String text() {
    return aim().name()
        + " is out of reach of the whole catalogue: "
        + findings().stream().map(Finding::message).collect(Collectors.joining("; "));
  }
}
