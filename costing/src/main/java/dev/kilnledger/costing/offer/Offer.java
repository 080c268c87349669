package dev.kilnledger.costing.offer;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Kind;
import java.io.Serializable;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import org.immutables.value.Value;
import org.joda.money.BigMoney;
import org.joda.money.Money;

/** What a supplier asks for one pack of an item, or for a measure of it. */
@Value.Immutable
@ValueStyle
public interface Offer extends Serializable {
  /** {@return the name of the item, by which a resource asks for it} */
  String item();

  /** {@return who offers it} */
  String supplier();

  /**
   * {@return what one pack holds, more than zero: a mass, volume, length, area, energy or time, or
   * a whole number of pieces as a ratio}
   */
  Amount<?> content();

  /** {@return the price of one pack, zero or more} */
  BigMoney price();

  /** {@return the day on which the price was seen, empty where it is not known} */
  Optional<LocalDate> date();

  /** {@return where the price was seen} */
  Source source();

  /** {@return whether the price holds the tax; {@link Tax#UNKNOWN} unless stated} */
  @Value.Default
  default Tax tax() {
    return Tax.UNKNOWN;
  }

  /**
   * {@return whether it is sold by measure, as energy is, so that any fraction of {@link #content}
   * is paid in proportion; false, in whole packs, unless stated}
   */
  @Value.Default
  default boolean metered() {
    return false;
  }

  /**
   * Starts one.
   *
   * @return a builder; item, supplier, content, price and source are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Offer} values. */
  final class Builder extends ImmutableOffer.Builder {
    Builder() {}

    /**
     * The price of one pack.
     *
     * @param price an amount in whole minor units
     * @return this
     */
    public Builder price(Money price) {
      return price(price.toBigMoney());
    }
  }

  /**
   * Refuses what cannot be bought.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Set<Kind<?>> accepted =
        Set.of(Kind.MASS, Kind.VOLUME, Kind.LENGTH, Kind.AREA, Kind.ENERGY, Kind.TIME, Kind.RATIO);
    new Problems("offer of " + item())
        .text("item", item())
        .text("supplier", supplier())
        .require(
            accepted.contains(content().kind()),
            "content is "
                + content()
                + ", which measures "
                + content().kind()
                + "; accepted is a mass, volume, length, area, energy, time or number of pieces")
        .positive("content", content())
        .require(
            !content().kind().equals(Kind.RATIO) || content().si() == Math.rint(content().si()),
            "content is " + content() + " pieces; accepted is a whole number of pieces")
        .require(!price().isNegative(), "price is " + price() + "; accepted is zero or more")
        .refuseIfAny();
  }
}
