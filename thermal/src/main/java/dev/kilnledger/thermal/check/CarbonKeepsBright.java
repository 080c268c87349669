package dev.kilnledger.thermal.check;

import static dev.kilnledger.core.finding.Severity.UNDETERMINED;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.thermal.atmosphere.Protection;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.StageForecast;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Carbon must keep each element of the metal bright where the core is hottest. How much carbon
 * monoxide there is lies between what air burnt on carbon gives and a crucible full of it: where
 * that decides, the answer is undetermined.
 */
final class CarbonKeepsBright implements FiringRule {
  @Override
  public List<Finding> check(FiringForecast forecast) {
    return forecast.sintering().stream()
        .filter(stage -> !stage.protection().isEmpty())
        .flatMap(CarbonKeepsBright::check)
        .toList();
  }

  private static Stream<Finding> check(StageForecast stage) {
    Protection withNitrogen = stage.protection().get(0);
    Protection pure = stage.protection().get(1);
    return IntStream.range(0, pure.findings().size())
        .mapToObj(i -> both(withNitrogen.findings().get(i), pure.findings().get(i)))
        .map(stage::tell);
  }

  private static Finding both(Finding withNitrogen, Finding pure) {
    return withNitrogen.severity() == pure.severity()
        ? pure
        : Finding.builder()
            .from(pure)
            .severity(UNDETERMINED)
            .message(pure.message() + "; but " + withNitrogen.message())
            .build();
  }
}
