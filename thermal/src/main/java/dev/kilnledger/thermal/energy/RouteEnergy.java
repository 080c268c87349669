package dev.kilnledger.thermal.energy;

import dev.kilnledger.core.explanation.Explanation;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.firing.FiringUse;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Standing;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import javax.measure.quantity.Energy;
import org.immutables.value.Value;

/** The energy of a route, stage by stage, and what of it the ledger needs. */
@Value.Immutable
@ValueStyle
public interface RouteEnergy extends Serializable {
  /** {@return the route} */
  @Value.Parameter
  FiringRoute route();

  /** {@return the balance of each stage, in the order of the stages} */
  @Value.Parameter
  List<EnergyBalance> balances();

  /**
   * The energy of a route.
   *
   * @param route the route
   * @param balances the balance of each stage, in the order of the stages
   * @return the energy of the route
   * @throws IllegalArgumentException if there are more or fewer balances than stages
   */
  static RouteEnergy of(FiringRoute route, List<EnergyBalance> balances) {
    return ImmutableRouteEnergy.of(route, balances);
  }

  /** {@return the energy of all stages, in kWh} */
  default Amount<Energy> total() {
    return Amounts.joules(balances().stream().mapToDouble(b -> b.total().si()).sum())
        .to(TradeUnits.KILOWATT_HOUR);
  }

  /** {@return the findings of all stages in order, each told with its stage} */
  default List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    for (int stage = 0; stage < balances().size(); stage++) {
      String name = route().stages().get(stage).name();
      for (Finding finding : balances().get(stage).findings()) {
        findings.add(
            Finding.builder().from(finding).message(name + ": " + finding.message()).build());
      }
    }
    return List.copyOf(findings);
  }

  /**
   * What the ledger needs: the time of the programmes, the energy, and all getter of the route, as
   * if none of it were used again.
   *
   * @param partsPerCharge how many parts one charge holds, at least 1
   * @return the use, its source naming the models and having the standing of the weakest of them
   * @throws IllegalArgumentException if the charge is empty
   */
  default FiringUse toFiringUse(int partsPerCharge) {
    String models =
        balances().stream()
            .map(balance -> balance.model().text())
            .distinct()
            .collect(Collectors.joining("; "));
    Standing weakest =
        balances().stream()
            .map(balance -> balance.model().standing())
            .max(Comparator.naturalOrder())
            .orElseThrow();
    return FiringUse.builder()
        .duration(route().duration())
        .energy(total())
        .getter(route().getterMass())
        .partsPerCharge(partsPerCharge)
        .source(Source.of("forecast: " + models, weakest))
        .build();
  }

  /** {@return the energy of all stages as a figure that can be opened} */
  default Explanation explanation() {
    List<Explanation> stages = new ArrayList<>();
    for (int stage = 0; stage < balances().size(); stage++) {
      stages.add(balances().get(stage).explanation(route().stages().get(stage).name()));
    }
    return Explanation.builder()
        .what("energy of the route")
        .value(total())
        .formula("sum of the stages")
        .children(stages)
        .build();
  }

  /**
   * Refuses balances that do not match the stages.
   *
   * @throws IllegalArgumentException if there are more or fewer balances than stages
   */
  @Value.Check
  default void check() {
    int stages = route().stages().size();
    new Problems("energy of a route")
        .require(
            balances().size() == stages,
            "there are "
                + balances().size()
                + " balances for "
                + stages
                + " stages; accepted is one for each")
        .refuseIfAny();
  }
}
