package dev.kilnledger.thermal.check;

import static dev.kilnledger.core.finding.Severity.PASSED;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.atmosphere.AtmosphereFinding;
import dev.kilnledger.thermal.atmosphere.MetalInCarbonGas;
import dev.kilnledger.thermal.firing.FiringForecast;
import java.util.List;

/** What the metal takes up from the gas over carbon: nitrogen and carbon. */
final class MetalTakesUp implements FiringRule {
  @Override
  public List<Finding> check(FiringForecast forecast) {
    boolean laidIn =
        forecast.setup().route().stages().stream().anyMatch(s -> s.getter().isPresent());
    return laidIn
        ? MetalInCarbonGas.standard().findings(forecast.setup().alloy())
        : List.of(
            Finding.builder()
                .code(AtmosphereFinding.CARBON_PICK_UP)
                .subject(forecast.setup().alloy().name())
                .severity(PASSED)
                .message("no carbon is laid in")
                .basis(Source.user("the route"))
                .build());
  }
}
