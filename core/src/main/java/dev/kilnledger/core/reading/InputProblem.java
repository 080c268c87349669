package dev.kilnledger.core.reading;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import org.immutables.value.Value;

/** One thing that is wrong with an input. */
@Value.Immutable
@ValueStyle
public interface InputProblem extends Serializable {
  /** {@return where it stands, such as {@code "line 12, column 3, /parts/0/mass"}} */
  @Value.Parameter
  String where();

  /**
   * {@return the field as a JSON pointer (RFC 6901), such as {@code "/parts/0/mass"}, for programs;
   * empty where it is no field}
   */
  @Value.Default
  default String path() {
    return "";
  }

  /** {@return what stands there} */
  @Value.Parameter
  String what();

  /** {@return what would be accepted} */
  @Value.Parameter
  String accepted();

  /**
   * A problem.
   *
   * @param where where it stands
   * @param what what stands there
   * @param accepted what would be accepted
   * @return the problem
   */
  static InputProblem of(String where, String what, String accepted) {
    return ImmutableInputProblem.of(where, what, accepted);
  }

  /**
   * A problem with a field.
   *
   * @param where where it stands
   * @param path the field as a JSON pointer
   * @param what what stands there
   * @param accepted what would be accepted
   * @return the problem
   */
  static InputProblem of(String where, String path, String what, String accepted) {
    return ImmutableInputProblem.builder()
        .where(where)
        .path(path)
        .what(what)
        .accepted(accepted)
        .build();
  }

  /** {@return the problem as a sentence} */
  default String text() {
    return where() + ": " + what() + "; accepted is " + accepted();
  }
}
