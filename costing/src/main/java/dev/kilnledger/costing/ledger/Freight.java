package dev.kilnledger.costing.ledger;

import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.costing.resource.Staircase;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** How many orders go to one supplier. */
final class Freight {
  final Offer order;
  final List<String> items = new ArrayList<>();
  private final boolean planned;
  private final List<Driver> drivers = new ArrayList<>();
  final List<Staircase> orders = new ArrayList<>();

  private Freight(Offer order, LedgerPlan plan, List<Resource> resources) {
    this.order = order;
    this.planned = plan.buying() == BuyingRule.PLANNED_FOR_N;
    for (Resource resource : resources) {
      Offer offer = plan.offerOf(resource);
      if (offer.supplier().equals(order.supplier())) {
        resource
            .staircase(offer, plan.workload())
            .orders()
            .ifPresent(
                staircase -> {
                  orders.add(staircase);
                  items.add(resource.item());
                  drivers.add(resource.driver().event());
                });
      }
    }
  }

  static List<Freight> of(LedgerPlan plan, List<Resource> resources) {
    return plan.shipping().stream().map(order -> new Freight(order, plan, resources)).toList();
  }

  /** Whether orders go on as long as parts are made. */
  boolean grows() {
    return !planned;
  }

  BigInteger through(long parts) {
    if (parts == 0) {
      return BigInteger.ZERO;
    }
    if (planned) {
      return anything(parts);
    }
    BigInteger count = anything(1);
    for (Staircase item : orders) {
      count = count.add(item.count(parts)).subtract(item.count(1));
    }
    return count;
  }

  /** The orders for events drawn at random; what the first part needs is one order all the same. */
  BigInteger of(Map<Driver, BigInteger> events) {
    BigInteger count = anything(1);
    boolean any = count.signum() > 0;
    for (int i = 0; i < orders.size(); i++) {
      BigInteger bought = orders.get(i).countOf(ExactCash.number(events, drivers.get(i)));
      any |= bought.signum() > 0;
      count = count.add(bought.subtract(orders.get(i).count(1)).max(BigInteger.ZERO));
    }
    return planned ? (any ? BigInteger.ONE : BigInteger.ZERO) : count;
  }

  /** One order if any item is bought for so many parts. */
  private BigInteger anything(long parts) {
    return orders.stream().anyMatch(item -> item.count(parts).signum() > 0)
        ? BigInteger.ONE
        : BigInteger.ZERO;
  }
}
