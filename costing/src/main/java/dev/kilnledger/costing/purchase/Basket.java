package dev.kilnledger.costing.purchase;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Covers of the first needs, taken together. */
final class Basket {
  final List<Cover> covers;
  final BigInteger goods;

  /** The value of goods at each supplier whose threshold matters, up to the threshold. */
  final BigInteger[] values;

  private Basket(List<Cover> covers, BigInteger goods, BigInteger[] values) {
    this.covers = covers;
    this.goods = goods;
    this.values = values;
  }

  static Basket empty(int thresholds) {
    BigInteger[] values = new BigInteger[thresholds];
    Arrays.fill(values, BigInteger.ZERO);
    return new Basket(List.of(), BigInteger.ZERO, values);
  }

  Basket with(Cover cover, BigInteger[] thresholds) {
    List<Cover> more = new ArrayList<>(covers);
    more.add(cover);
    BigInteger[] sums = values.clone();
    for (int i = 0; i < cover.values.length; i++) {
      sums[i] = sums[i].add(cover.values[i]).min(thresholds[i]);
    }
    return new Basket(more, goods.add(cover.cost), sums);
  }

  boolean reaches(BigInteger[] thresholds) {
    for (int i = 0; i < thresholds.length; i++) {
      if (values[i].compareTo(thresholds[i]) < 0) {
        return false;
      }
    }
    return true;
  }

  /** By cost of goods, then as {@link #orderOfEqualCost}. */
  int order(Basket that) {
    int order = goods.compareTo(that.goods);
    return order == 0 ? orderOfEqualCost(that) : order;
  }

  /** By surplus need by need, then packs, then the order of the catalogue need by need. */
  int orderOfEqualCost(Basket that) {
    int order = 0;
    for (int i = 0; i < covers.size() && order == 0; i++) {
      order = Long.compare(covers.get(i).surplus, that.covers.get(i).surplus);
    }
    if (order == 0) {
      order = Long.compare(packs(), that.packs());
    }
    for (int i = 0; i < covers.size() && order == 0; i++) {
      order = Arrays.compare(that.covers.get(i).counts, covers.get(i).counts);
    }
    return order;
  }

  boolean dominates(Basket that) {
    for (int i = 0; i < values.length; i++) {
      if (values[i].compareTo(that.values[i]) < 0) {
        return false;
      }
    }
    return order(that) <= 0;
  }

  private long packs() {
    return covers.stream().mapToLong(cover -> cover.packs).sum();
  }
}
