package dev.kilnledger.costing.resource;

import java.math.BigDecimal;
import java.util.Optional;

/** What is there of one resource after a number of parts, in the measure of its need. */
public final class Shelf {
  final long parts;

  /** Stock and purchases less what each use has taken. */
  final BigDecimal left;

  /** The uses so far, where each is a whole one or a share of it. */
  final BigDecimal used;

  /** What the packs bought held, as their offers state it. */
  final BigDecimal contents;

  final Optional<Long> nextPurchase;
  final boolean metered;

  Shelf(
      boolean metered,
      long parts,
      BigDecimal left,
      BigDecimal used,
      BigDecimal contents,
      Optional<Long> nextPurchase) {
    this.metered = metered;
    this.parts = parts;
    this.left = left;
    this.used = used;
    this.contents = contents;
    this.nextPurchase = nextPurchase;
  }

  /** {@return what is left, in the measure of the need} */
  public BigDecimal left() {
    return left;
  }

  /** A stock of an item with parts and next purchase filled in. */
  Stock.Builder stock(String item) {
    return Stock.builder().item(item).parts(parts).counted("").nextPurchase(nextPurchase);
  }
}
