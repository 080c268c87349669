package dev.kilnledger.costing.purchase;

import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.units.Amount;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;

/**
 * What is wanted of one item and the offers that may cover it, in the largest unit of which every
 * pack is a whole multiple.
 */
final class Market {
  private static final BigInteger LARGEST = BigInteger.ONE.shiftLeft(52);

  final String item;
  final List<Pack> packs = new ArrayList<>();

  /** What is wanted in whole units, rounded up: no cover can tell it from the exact one. */
  final long amount;

  Market(Wanted wanted, int moneyScale) {
    this.item = wanted.item();
    List<BigDecimal> contents =
        wanted.supplies().stream().map(supply -> supply.holds().stripTrailingZeros()).toList();
    int scale = contents.stream().mapToInt(BigDecimal::scale).reduce(0, Math::max);
    BigInteger unit = BigInteger.ZERO;
    for (BigDecimal content : contents) {
      unit = unit.gcd(content.setScale(scale).unscaledValue());
    }
    BigDecimal size = new BigDecimal(unit, scale);
    amount =
        inRange(
            "the need of " + wanted.amount().stripTrailingZeros().toPlainString(),
            wanted.amount().divide(size, 0, RoundingMode.CEILING).toBigIntegerExact());
    for (int i = 0; i < contents.size(); i++) {
      Offer offer = wanted.supplies().get(i).offer();
      BigInteger content = contents.get(i).divide(size).toBigIntegerExact();
      long largest = offer.orderOf(1);
      if (!offer.breaks().isEmpty()) {
        largest = offer.orderOf(offer.breaks().get(offer.breaks().size() - 1).fromPacks());
      }
      inRange("an order of " + offer.text(), content.multiply(BigInteger.valueOf(largest)));
      packs.add(new Pack(offer, content.longValueExact(), moneyScale));
    }
  }

  private long inRange(String what, BigInteger units) {
    if (units.compareTo(LARGEST) > 0) {
      throw new IllegalArgumentException(
          item
              + ": "
              + what
              + " is "
              + units
              + " of the largest measure that divides every pack; accepted is up to "
              + LARGEST
              + ", so state contents in rounder numbers");
    }
    return units.longValueExact();
  }

  static <Q extends Quantity<Q>> BigDecimal si(Amount<Q> amount) {
    return amount.decimalIn(amount.kind().siUnit()).stripTrailingZeros();
  }
}
