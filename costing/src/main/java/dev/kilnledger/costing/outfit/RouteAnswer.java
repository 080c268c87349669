package dev.kilnledger.costing.outfit;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.thermal.profile.FiringRoute;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import org.immutables.value.Value;

/** A route for a place, or why there is none. */
@Value.Immutable
@ValueStyle
public interface RouteAnswer extends Serializable {
  /** {@return the route, empty where there is none} */
  @Value.Parameter
  Optional<FiringRoute> route();

  /** {@return what was found in making it, or why there is none} */
  @Value.Parameter
  List<Finding> findings();

  /**
   * A route.
   *
   * @param route the route
   * @return the answer
   */
  static RouteAnswer of(FiringRoute route) {
    return of(Optional.of(route), List.of());
  }

  /**
   * An answer.
   *
   * @param route the route, empty where there is none
   * @param findings what was found in making it, or why there is none
   * @return the answer
   */
  static RouteAnswer of(Optional<FiringRoute> route, List<Finding> findings) {
    return ImmutableRouteAnswer.of(route, findings);
  }
}
