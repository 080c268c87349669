package dev.kilnledger.thermal.check;

import dev.kilnledger.core.finding.Caution;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.thermal.profile.FiringStage;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Holds a firing against a list of rules, in order.
 *
 * <p>The standard rules ask the computed firing - what the kiln really does, what the core of the
 * charge feels of it, binder, density, gas - and tables for what no model knows, such as ratings
 * and service limits. What they lack an input for they answer as undetermined.
 */
public final class FiringCheck {
  private final List<FiringRule> rules;

  /**
   * A check of given rules.
   *
   * @param rules the rules in order
   */
  public FiringCheck(List<FiringRule> rules) {
    this.rules = List.copyOf(rules);
  }

  /** {@return the check with all built-in rules: metal, binder, kiln, crucible, carbon, supply} */
  public static FiringCheck standard() {
    return new FiringCheck(
        List.of(
            new PeakInSinteringWindow(),
            new MetalStaysSolid(),
            new CoreLag(),
            new CoreGetsSoak(),
            new DensityReached(),
            new BinderGone(),
            new BinderLeavesSlowly(),
            new BinderFumes(),
            new KilnReachesPeak(),
            new KilnHoldsPeak(),
            new KilnSegments(),
            new KilnHeatingRate(),
            new KilnFollows(),
            new SensorTolerance(),
            new CrucibleTemperature(),
            new ChargeVolume(),
            new PackingTemperature(),
            new PackingUse(),
            new CarbonSuitsAlloy(),
            new CarbonKeepsBright(),
            new MetalTakesUp(),
            new GetterLaidIn(),
            new CarbonLasts(),
            new UnprotectedInterval(),
            new GasInRoom(),
            new SupplyCurrent(),
            new SupplyVoltage()));
  }

  /**
   * This check with one rule more, asked last.
   *
   * @param rule the user's own rule
   * @return another check
   */
  public FiringCheck with(FiringRule rule) {
    List<FiringRule> more = new ArrayList<>(rules);
    more.add(rule);
    return new FiringCheck(more);
  }

  /**
   * Holds a firing against the rules.
   *
   * @param setup the firing
   * @return every finding, and the cautions that go with the materials
   */
  public FiringReport check(FiringSetup setup) {
    return check(FiringForecast.of(setup));
  }

  /**
   * Holds a firing against the rules, whose forecast is of use elsewhere as well.
   *
   * @param forecast the firing; what no rule asks for is not computed
   * @return every finding, and the cautions that go with the materials
   */
  public FiringReport check(FiringForecast forecast) {
    List<Finding> findings = new ArrayList<>();
    rules.forEach(rule -> findings.addAll(rule.check(forecast)));
    return FiringReport.of(findings, cautions(forecast.setup()));
  }

  private static Set<Caution> cautions(FiringSetup setup) {
    // Binder, heat and current are there in every firing, and binder alone makes carbon monoxide.
    Set<Caution> cautions =
        EnumSet.of(
            Caution.CARBON_MONOXIDE,
            Caution.BINDER_FUMES,
            Caution.HOT_WORK,
            Caution.ELECTRICAL_LOAD);
    cautions.addAll(setup.alloy().cautions());
    for (FiringStage stage : setup.route().stages()) {
      cautions.addAll(stage.packing().cautions());
    }
    return cautions;
  }
}
