package dev.kilnledger.core.finding;

import dev.kilnledger.core.explanation.Explanation;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.immutables.value.Value;

/** The answer of one check: what was found, against which limit, and on what basis. */
@Value.Immutable
@ValueStyle
public interface Finding extends Serializable {
  /**
   * What was checked.
   *
   * @return the stable code
   */
  FindingCode code();

  /**
   * How much it matters.
   *
   * @return the severity
   */
  Severity severity();

  /**
   * What it is about, such as the name of the kiln or alloy.
   *
   * @return the subject, not blank
   */
  String subject();

  /**
   * The finding as a sentence for people.
   *
   * @return the sentence, not blank
   */
  String message();

  /**
   * The value that was measured or computed.
   *
   * @return the value, if the check compares one
   */
  Optional<Amount<?>> measured();

  /**
   * The limit it was held against.
   *
   * @return the limit, if there is one
   */
  Optional<Amount<?>> limit();

  /**
   * What the check stands on: a published source, common practice, or the user's own rule.
   *
   * @return the basis
   */
  Source basis();

  /**
   * The finding as a figure that can be opened: what was measured, the limit, and the basis.
   *
   * @return a node named after subject and code, its value being the severity
   */
  default Explanation explanation() {
    Source by = Source.recomputed("measured or computed for this check");
    List<Explanation> compared = new ArrayList<>();
    measured().ifPresent(amount -> compared.add(Explanation.given("measured", amount, by)));
    limit().ifPresent(amount -> compared.add(Explanation.given("limit", amount, basis())));
    return Explanation.builder()
        .what(subject() + ", " + code().code())
        .value(severity())
        .shown(severity().name().toLowerCase(Locale.ROOT) + ": " + message())
        .formula(
            compared.isEmpty()
                ? Optional.empty()
                : Optional.of(
                    String.join(" against ", compared.stream().map(Explanation::what).toList())))
        .source(basis())
        .children(compared)
        .build();
  }

  /**
   * Starts a finding.
   *
   * @return a builder; code, severity, subject, message and basis are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds a {@link Finding}. */
  final class Builder extends ImmutableFinding.Builder {
    Builder() {}
  }

  /**
   * Refuses blank text.
   *
   * @throws IllegalArgumentException if subject or message are blank
   */
  @Value.Check
  default void check() {
    new Problems("finding " + code().code())
        .text("subject", subject())
        .text("message", message())
        .refuseIfAny();
  }
}
