package dev.kilnledger.core.source;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import org.immutables.value.Value;

/** Where a figure or a rule comes from, and how it was come by. */
@Value.Immutable
@ValueStyle
public interface Source extends Serializable {
  /**
   * The publication with edition and table, or the reason given for the figure.
   *
   * @return text, not blank
   */
  @Value.Parameter
  String text();

  /**
   * How the figure was come by.
   *
   * @return the standing
   */
  @Value.Parameter
  Standing standing();

  /**
   * A source of any standing.
   *
   * @param text publication with edition and table, or reason
   * @param standing how the figure was come by
   * @return the source
   * @throws IllegalArgumentException if the text is blank
   */
  static Source of(String text, Standing standing) {
    return ImmutableSource.of(text, standing);
  }

  /**
   * A publication that was read.
   *
   * @param text publication with edition and table
   * @return the source
   */
  static Source published(String text) {
    return of(text, Standing.PUBLISHED);
  }

  /**
   * A publication read only as quoted elsewhere.
   *
   * @param text the publication and where it was quoted
   * @return the source
   */
  static Source quoted(String text) {
    return of(text, Standing.QUOTED);
  }

  /**
   * A figure computed here from published ones.
   *
   * @param text what it was computed from
   * @return the source
   */
  static Source recomputed(String text) {
    return of(text, Standing.RECOMPUTED);
  }

  /**
   * Known in the trade.
   *
   * @param text the reason
   * @return the source
   */
  static Source commonPractice(String text) {
    return of(text, Standing.COMMON_PRACTICE);
  }

  /**
   * Recalled, not read.
   *
   * @param text the publication meant
   * @return the source
   */
  static Source fromMemory(String text) {
    return of(text, Standing.FROM_MEMORY);
  }

  /**
   * Stated by the user.
   *
   * @param text where the user has it from
   * @return the source
   */
  static Source user(String text) {
    return of(text, Standing.USER);
  }

  /**
   * Refuses blank text.
   *
   * @throws IllegalArgumentException if the text is blank
   */
  @Value.Check
  default void check() {
    new Problems("source").text("text", text()).refuseIfAny();
  }

  /**
   * Source and standing for people: {@code "ASM Handbook vol. 7 (from memory)"}.
   *
   * @return one line of text
   */
  default String cite() {
    return text() + " (" + standing().words() + ")";
  }
}
