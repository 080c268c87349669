package dev.kilnledger.costing.document;

import dev.kilnledger.core.finding.Caution;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.firing.FiringUse;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.costing.job.JobAnswer;
import java.io.Serializable;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.immutables.value.Value;

/**
 * What an answer document holds: the figures of a {@link JobAnswer}, without the curves and
 * explanations behind them, which only a computation has. Written and read back it is equal.
 */
@Value.Immutable
@ValueStyle
public interface AnswerFigures extends Serializable {
  /** {@return the name of the part} */
  String part();

  /** {@return the day of the price book} */
  LocalDate asOf();

  /** {@return the severity of the worst finding} */
  Severity worst();

  /** {@return all findings, passed ones too} */
  List<FindingFigures> findings();

  /** {@return the hazards of the work} */
  Set<Caution> cautions();

  /** {@return the part from green to sintered} */
  PassageFigures passage();

  /** {@return what one firing takes} */
  FiringUse firing();

  /** {@return what the parts cost} */
  StatementFigures statement();

  /**
   * The figures of an answer.
   *
   * @param answer the answer
   * @return its figures
   */
  static AnswerFigures of(JobAnswer answer) {
    return builder()
        .part(answer.job().part().name())
        .asOf(answer.job().prices().asOf())
        .worst(answer.worst())
        .findings(answer.findings().stream().map(FindingFigures::of).toList())
        .cautions(answer.cautions())
        .passage(PassageFigures.of(answer.passage(), answer.job().printer().filamentDiameter()))
        .firing(answer.firing())
        .statement(StatementFigures.of(answer.statement()))
        .build();
  }

  /**
   * Starts some.
   *
   * @return a builder; all but findings and cautions are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link AnswerFigures} values. */
  final class Builder extends ImmutableAnswerFigures.Builder {
    Builder() {}
  }
}
