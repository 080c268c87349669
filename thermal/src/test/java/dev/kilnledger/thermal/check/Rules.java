package dev.kilnledger.thermal.check;

import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.FiringSetup;
import java.util.List;

/** Asks one rule alone, which computes no more than that rule wants. */
final class Rules {
  private Rules() {}

  static List<Finding> all(FiringRule rule, FiringSetup.Builder setup) {
    return rule.check(FiringForecast.of(setup.build()));
  }

  static Finding first(FiringRule rule, FiringSetup.Builder setup) {
    return all(rule, setup).get(0);
  }

  static Finding last(FiringRule rule, FiringSetup.Builder setup) {
    List<Finding> findings = all(rule, setup);
    return findings.get(findings.size() - 1);
  }

  static void assertTold(Finding finding, Severity severity, String message) {
    assertThat(finding.message()).isEqualTo(message);
    assertThat(finding.severity()).isEqualTo(severity);
  }
}
