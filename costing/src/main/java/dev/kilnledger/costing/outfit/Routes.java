package dev.kilnledger.costing.outfit;

import dev.kilnledger.thermal.profile.FiringRoute;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where routes come from: written down for each metal, or made for the place by a designer of
 * profiles. The same question always has the same answer.
 */
@FunctionalInterface
public interface Routes {
  /**
   * The route for an aim.
   *
   * @param aim the part and its feedstock
   * @param place kiln, crucible and getter
   * @return the route, or why there is none
   */
  RouteAnswer routeFor(Aim aim, FiringPlace place);

  /**
   * The same route for a metal wherever it is fired.
   *
   * @param byFeedstock the routes by the name of the feedstock; for others there is none
   * @return the routes
   */
  static Routes of(Map<String, FiringRoute> byFeedstock) {
    Map<String, FiringRoute> routes = Map.copyOf(byFeedstock);
    return (aim, place) ->
        RouteAnswer.of(Optional.ofNullable(routes.get(aim.feedstock().name())), List.of());
  }
}
