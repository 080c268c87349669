package dev.kilnledger.core.internal;

import dev.kilnledger.units.Amount;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javax.measure.Quantity;

/**
 * The problems of one value, gathered so that they are all told at once.
 *
 * <p>Each message says where, what value, and what would be accepted.
 */
public final class Problems {
  private final String subject;
  private final Supplier<String> more;
  private List<String> messages = List.of();

  /**
   * Starts without problems.
   *
   * @param subject what is being checked, such as {@code kiln "small front loader"}
   */
  public Problems(String subject) {
    this(subject, () -> "");
  }

  /**
   * Starts without problems, for values that are made so often that the subject is worth composing
   * only if there are any.
   *
   * @param subject what is being checked
   */
  public Problems(Supplier<String> subject) {
    this("", subject);
  }

  private Problems(String subject, Supplier<String> more) {
    this.subject = subject;
    this.more = more;
  }

  /**
   * Adds a problem where a condition does not hold.
   *
   * @param holds the condition
   * @param message where, what, and what would be accepted
   * @return this
   */
  public Problems require(boolean holds, String message) {
    return holds ? this : with(message);
  }

  /**
   * Adds a problem where a condition does not hold, for checks that are made so often that the
   * message is worth composing only then.
   *
   * @param holds the condition
   * @param message where, what, and what would be accepted
   * @return this
   */
  public Problems require(boolean holds, Supplier<String> message) {
    return holds ? this : with(message.get());
  }

  /**
   * Requires text that is not blank.
   *
   * @param where the attribute
   * @param text its value
   * @return this
   */
  public Problems text(String where, String text) {
    return text.isBlank() ? with(where + " is blank; accepted is any text") : this;
  }

  /**
   * Requires an amount above zero.
   *
   * @param where the attribute
   * @param amount its value
   * @return this
   */
  public Problems positive(String where, Amount<?> amount) {
    return amount.si() > 0 ? this : with(where + " is " + amount + "; accepted is more than zero");
  }

  /**
   * Requires an amount of zero or more.
   *
   * @param where the attribute
   * @param amount its value
   * @return this
   */
  public Problems notNegative(String where, Amount<?> amount) {
    return amount.si() >= 0 ? this : with(where + " is " + amount + "; accepted is zero or more");
  }

  /**
   * Requires an amount within bounds, both included.
   *
   * @param <Q> the quantity
   * @param where the attribute
   * @param amount its value
   * @param low the lowest value accepted
   * @param high the highest value accepted
   * @return this
   */
  public <Q extends Quantity<Q>> Problems within(
      String where, Amount<Q> amount, Amount<Q> low, Amount<Q> high) {
    return amount.isLessThan(low) || amount.isGreaterThan(high)
        ? with(where + " is " + amount + "; accepted is from " + low + " to " + high)
        : this;
  }

  /**
   * Throws if there is any problem.
   *
   * @throws IllegalArgumentException with all messages
   */
  public void refuseIfAny() {
    if (!messages.isEmpty()) {
      throw new IllegalArgumentException(
          subject + more.get() + ": " + String.join("; and ", messages));
    }
  }

  private Problems with(String message) {
    if (messages.isEmpty()) {
      messages = new ArrayList<>();
    }
    messages.add(message);
    return this;
  }
}
