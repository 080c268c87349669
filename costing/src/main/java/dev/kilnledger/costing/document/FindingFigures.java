package dev.kilnledger.costing.document;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import java.util.Optional;
import org.immutables.value.Value;

/** A finding as it stands in an answer document. */
@Value.Immutable
@ValueStyle
public interface FindingFigures extends Serializable {
  /** {@return the stable code of what was checked} */
  String code();

  /** {@return how much it matters} */
  Severity severity();

  /** {@return what it is about} */
  String subject();

  /** {@return the finding as a sentence} */
  String message();

  /** {@return the value that was measured or computed, if the check compares one} */
  Optional<Amount<?>> measured();

  /** {@return the limit it was held against, if there is one} */
  Optional<Amount<?>> limit();

  /** {@return what the check stands on} */
  Source basis();

  /**
   * The figures of a finding.
   *
   * @param finding the finding
   * @return its figures
   */
  static FindingFigures of(Finding finding) {
    return builder()
        .code(finding.code().code())
        .severity(finding.severity())
        .subject(finding.subject())
        .message(finding.message())
        .measured(finding.measured())
        .limit(finding.limit())
        .basis(finding.basis())
        .build();
  }

  /**
   * Starts some.
   *
   * @return a builder; all but measured and limit are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link FindingFigures} values. */
  final class Builder extends ImmutableFindingFigures.Builder {
    Builder() {}
  }
}
