package dev.kilnledger.core.source;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import org.immutables.value.Value;

/**
 * A fact with its source.
 *
 * @param <T> the fact: an amount, a span or an estimate
 */
@Value.Immutable
@ValueStyle
public interface Sourced<T extends Serializable> extends Serializable {
  /**
   * The fact.
   *
   * @return an amount, a span or an estimate
   */
  @Value.Parameter
  T value();

  /**
   * Under which condition it holds, such as "20 to 25 °C, solid".
   *
   * @return the condition, empty where it needs none
   */
  @Value.Parameter
  String condition();

  /**
   * Where it comes from.
   *
   * @return the source
   */
  @Value.Parameter
  Source source();

  /**
   * A fact that holds without further condition.
   *
   * @param <T> the fact's type
   * @param value the fact
   * @param source where it comes from
   * @return the sourced fact
   */
  static <T extends Serializable> Sourced<T> of(T value, Source source) {
    return of(value, "", source);
  }

  /**
   * A fact that holds under a condition.
   *
   * @param <T> the fact's type
   * @param value the fact
   * @param condition the condition in words
   * @param source where it comes from
   * @return the sourced fact
   */
  static <T extends Serializable> Sourced<T> of(T value, String condition, Source source) {
    return ImmutableSourced.of(value, condition, source);
  }
}
