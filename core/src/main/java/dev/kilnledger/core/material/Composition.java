package dev.kilnledger.core.material;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.MassFraction;
import java.io.Serializable;
import java.util.Map;
import org.immutables.value.Value;

/**
 * What an alloy is made of: the element that makes up the balance, the range of every other element
 * as the standard gives it, and a nominal composition for computing.
 */
@Value.Immutable
@ValueStyle
public interface Composition extends Serializable {
  /** {@return the designation in the standard, such as {@code "UNS C52400"}} */
  String designation();

  /** {@return the element that makes up the rest} */
  Element balance();

  /** {@return the permitted mass fraction of every other element; a mere maximum starts at zero} */
  Map<Element, Span<MassFraction>> ranges();

  /**
   * {@return the nominal mass fractions, balance included; they add up to 1 within 0.0005 and
   * elements that only a maximum limits may be left out}
   */
  Map<Element, Amount<MassFraction>> nominal();

  /**
   * {@return limits in words that the ranges cannot hold: elements that are not among {@link
   * Element}, sums of several; empty by default}
   */
  @Value.Default
  default String otherLimits() {
    return "";
  }

  /** {@return the standard that gives the ranges} */
  Source source();

  /**
   * Starts one.
   *
   * @return an empty builder
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Composition} values. */
  final class Builder extends ImmutableComposition.Builder {
    Builder() {}
  }

  /**
   * Refuses a nominal composition that does not add up or leaves the ranges.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems = new Problems("composition " + designation());
    problems.text("designation", designation());
    double sum = nominal().values().stream().mapToDouble(Amount::si).sum();
    problems.require(
        Math.abs(sum - 1) <= 0.0005,
        "the nominal mass fractions add up to " + sum + "; accepted is 1 within 0.0005");
    problems.require(
        nominal().containsKey(balance()),
        "the nominal composition lacks the balance element "
            + balance().symbol()
            + "; accepted is one that names it");
    ranges()
        .forEach(
            (element, range) ->
                problems.require(
                    nominal().containsKey(element) || range.low().si() == 0,
                    "the nominal composition lacks "
                        + element.symbol()
                        + "; accepted is from "
                        + range.low()
                        + " to "
                        + range.high()));
    nominal()
        .forEach(
            (element, fraction) -> {
              problems.notNegative("nominal " + element.symbol(), fraction);
              Span<MassFraction> range = ranges().get(element);
              if (range != null) {
                problems.within("nominal " + element.symbol(), fraction, range.low(), range.high());
              }
            });
    problems.refuseIfAny();
  }
}
