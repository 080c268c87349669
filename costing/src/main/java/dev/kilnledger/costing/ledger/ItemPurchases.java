package dev.kilnledger.costing.ledger;

import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Staircase;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Map;
import java.util.Optional;

/** The purchases of one item over the parts, bought as needed. */
final class ItemPurchases {
  final Item item;
  final PurchaseSequence sequence;
  private final Staircase need;

  /** The need in units of the sequence, over the divisor of this staircase. */
  private final Staircase units;

  ItemPurchases(Item item, Staircase need) {
    this.item = item;
    this.sequence = ShortageBuyer.sequence(item, need);
    this.need = need;
    this.units = need.byMeasureOf(sequence.unit);
  }

  /** How many purchases the first n parts take: of plain items, one is one pack. */
  BigInteger through(long parts) {
    if (item.isPlain()) {
      return need.count(parts);
    }
    return sequence.purchases(units.count(parts), units.divisor());
  }

  /** The packs of the first n parts, by price. */
  BigInteger[] packs(long parts) {
    BigInteger purchases = through(parts);
    return item.isPlain() ? new BigInteger[] {purchases} : sequence.packs(purchases);
  }

  /** How many purchases events take that were drawn at random. */
  BigInteger of(Map<Driver, BigInteger> events) {
    return sequence.purchases(drawn(events), units.divisor());
  }

  /** The first part, from a given one on, whose need is more than so many purchases hold. */
  Optional<Long> partAfter(BigInteger purchases, long from) {
    return units.firstAbove(sequence.reach(purchases).multiply(units.divisor()), from);
  }

  /**
   * From the part for which a purchase is made to that for which the next one is; empty for good.
   */
  Optional<Long> lasts(BigInteger purchase) {
    long from = partAfter(purchase.subtract(BigInteger.ONE), 1).orElse(1L);
    return partAfter(purchase, from).map(next -> next - from);
  }

  /**
   * The part, from a given one on, at which events drawn at random for n parts need more than so
   * many purchases hold, if the need drawn is spread over the parts as the need foretold is.
   */
  long drawnPartAfter(BigInteger purchases, Map<Driver, BigInteger> events, long from, long parts) {
    BigInteger foretold = units.count(parts);
    BigInteger reach = sequence.reach(purchases).multiply(units.divisor());
    BigInteger share = reach.multiply(foretold).divide(drawn(events));
    return units.firstAbove(share, from).filter(part -> part < parts).orElse(parts);
  }

  private BigInteger drawn(Map<Driver, BigInteger> events) {
    return units.countOf(Buying.number(item, events));
  }

  /** What one cycle of purchases holds, in the measure of the need. */
  BigDecimal cycleContent() {
    return sequence.unit.multiply(BigDecimal.valueOf(sequence.cycleContent()));
  }

  /** Whether the purchases end although the need goes on. */
  boolean isOpen() {
    return need.perUse().signum() > 0 && !sequence.repeats();
  }

  /** After how many parts the purchases repeat. */
  BigInteger period() {
    return need.perUse().signum() == 0 ? BigInteger.ONE : need.inPacksOf(cycleContent()).period();
  }

  /** The number of parts from which on they do. */
  long settled() {
    if (need.perUse().signum() == 0) {
      return 1;
    }
    BigInteger first = BigInteger.valueOf(sequence.first());
    return Math.max(
        need.inPacksOf(cycleContent()).settled(), partAfter(first, 1).orElse(Long.MAX_VALUE));
  }

  /** The need in measures of what one cycle holds. */
  Staircase inCycles() {
    return need.byMeasureOf(cycleContent());
  }
}
