package dev.kilnledger.costing.purchase;

import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBreak;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.BigMoney;

/** An offer in whole numbers: content in the item's smallest unit, money in the plan's. */
final class Pack {
  /** A price that holds from a number of packs on. */
  record Tier(long first, BigInteger price) {}

  final Offer offer;
  final long content;
  private final int moneyScale;
  private final List<Tier> tiers = new ArrayList<>();

  Pack(Offer offer, long content, int moneyScale) {
    this.offer = offer;
    this.content = content;
    this.moneyScale = moneyScale;
    tiers.add(new Tier(offer.orderOf(1), money(offer.price())));
    for (PriceBreak step : offer.breaks()) {
      // A break that the smallest order or the increment skips replaces the one before it.
      Tier tier = new Tier(offer.orderOf(step.fromPacks()), money(step.price()));
      if (tier.first() > offer.available().orElse(Long.MAX_VALUE)) {
        break;
      }
      if (tiers.get(tiers.size() - 1).first() == tier.first()) {
        tiers.remove(tiers.size() - 1);
      }
      tiers.add(tier);
    }
  }

  /**
   * The prices, each with the fewest packs that can be ordered at it. The cost of k packs is the
   * least of cost(first) + (k - first) x price over the tiers with first up to k: breaks never
   * raise the price.
   */
  List<Tier> tiers() {
    return tiers;
  }

  /** The price of one more pack that no order goes below. */
  BigInteger lowestPrice() {
    return tiers.get(tiers.size() - 1).price();
  }

  /** What an order costs that can be made. */
  BigInteger cost(long packs) {
    return offer.breaks().isEmpty()
        ? lowestPrice().multiply(BigInteger.valueOf(packs))
        : money(offer.cost(packs));
  }

  boolean limited() {
    return offer.available().isPresent();
  }

  /** Whether every whole multiple of the increment, none included, costs in proportion. */
  boolean proportional() {
    return !limited() && offer.breaks().isEmpty() && offer.orderOf(1) == offer.orderIncrement();
  }

  private BigInteger money(BigMoney amount) {
    return amount.getAmount().setScale(moneyScale).unscaledValue();
  }
}
