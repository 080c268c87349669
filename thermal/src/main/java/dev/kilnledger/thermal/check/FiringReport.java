package dev.kilnledger.thermal.check;

import dev.kilnledger.core.finding.Caution;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.FindingCode;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.immutables.value.Value;

/** What a check of a firing answered: every finding, passed ones too, and the cautions. */
@Value.Immutable
@ValueStyle
public interface FiringReport extends Serializable {
  /** {@return the findings in the order of the rules} */
  @Value.Parameter
  List<Finding> findings();

  /** {@return the hazards of this firing} */
  @Value.Parameter
  Set<Caution> cautions();

  /**
   * A report.
   *
   * @param findings the findings
   * @param cautions the hazards
   * @return the report
   */
  static FiringReport of(List<Finding> findings, Set<Caution> cautions) {
    return ImmutableFiringReport.of(findings, cautions);
  }

  /** {@return the severity of the worst finding, {@code PASSED} if there is none} */
  default Severity worst() {
    return findings().stream()
        .map(Finding::severity)
        .max(Comparator.naturalOrder())
        .orElse(Severity.PASSED);
  }

  /**
   * The findings that matter at least so much.
   *
   * @param least the least severity
   * @return the findings in the order of the rules
   */
  default List<Finding> atLeast(Severity least) {
    return findings().stream().filter(f -> f.severity().compareTo(least) >= 0).toList();
  }

  /**
   * The findings with a code.
   *
   * @param code the code
   * @return the findings in the order of the rules, empty if no rule answered with it
   */
  default List<Finding> of(FindingCode code) {
    return findings().stream().filter(f -> f.code().equals(code)).toList();
  }
}
