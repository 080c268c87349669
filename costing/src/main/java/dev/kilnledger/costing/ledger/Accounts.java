package dev.kilnledger.costing.ledger;

import dev.kilnledger.core.source.Input;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.resource.Depreciated;
import dev.kilnledger.costing.resource.Durable;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.costing.resource.Shelf;
import dev.kilnledger.costing.resource.Staircase;
import dev.kilnledger.units.Amount;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Time;

/** Turns what is bought, used or left into lines that explain themselves. */
final class Accounts {
  private final LedgerPlan plan;
  private final Buying buying;

  Accounts(LedgerPlan plan, Buying buying) {
    this.plan = plan;
    this.buying = buying;
  }

  /** The account of what is bought. */
  Account bought(String title, Bought bought, String when) {
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i < buying.items().size(); i++) {
      Item item = buying.items().get(i);
      Entry entry =
          item.resource instanceof Depreciated
              ? Entry.DEPRECIATED
              : item.inPacks() ? Entry.BOUGHT : Entry.METERED;
      for (int j = 0; j < bought.counts[i].length; j++) {
        if (bought.counts[i][j].signum() > 0) {
          lines.add(
              line(entry, item, item.prices.get(j))
                  .count(bought.counts[i][j])
                  .divisor(item.divisor())
                  .formula(when + buying.formula(i) + formula(item, item.prices.get(j)))
                  .build());
        }
      }
    }
    for (int i = 0; i < bought.orders.length; i++) {
      if (bought.orders[i].signum() > 0) {
        lines.add(
            Line.builder()
                .entry(Entry.SHIPPED)
                .offer(buying.freights().get(i).order)
                .count(bought.orders[i])
                .divisor(BigInteger.ONE)
                .formula(buying.orderFormula(i))
                .inputs(List.of())
                .build());
      }
    }
    return account(title, lines);
  }

  /** What one good part uses up in the long run. */
  Account usage() {
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i < buying.items().size(); i++) {
      Item item = buying.items().get(i);
      if (!item.inPacks()) {
        addUsage(item, item.prices.get(0), BigInteger.ONE, item.staircase, lines);
        continue;
      }
      Optional<Buying.Cycle> cycle = buying.cycle(i);
      for (int j = 0; j < item.prices.size() && cycle.isPresent(); j++) {
        addUsage(
            item,
            item.prices.get(j),
            cycle.get().packs().get(j),
            item.staircase.byMeasureOf(cycle.get().content()),
            lines);
      }
    }
    for (int i = 0; i < buying.freights().size(); i++) {
      Buying.Share orders = buying.ordersPerPart(i);
      if (orders.numerator().signum() > 0) {
        lines.add(
            Line.builder()
                .entry(Entry.USED)
                .offer(buying.freights().get(i).order)
                .count(orders.numerator())
                .divisor(orders.denominator())
                .formula("orders per part " + orders.span() + ": " + buying.orderFormula(i))
                .inputs(List.of())
                .build());
      }
    }
    return account("usage per part", lines);
  }

  private void addUsage(
      Item item, Priced priced, BigInteger packs, Staircase need, List<Line> lines) {
    BigInteger used = packs.multiply(need.usage());
    if (used.signum() > 0) {
      BigInteger common = used.gcd(need.lineDivisor());
      lines.add(
          line(Entry.USED, item, priced)
              .count(used.divide(common))
              .divisor(need.lineDivisor().divide(common))
              .formula("rise per part in the long run of " + formula(item, priced))
              .build());
    }
  }

  /** What was bought and is left after part n, at its share of what it cost. */
  Account leftovers(Bought bought, long parts) {
    List<Line> lines = new ArrayList<>();
    boolean valued = plan.leftovers().rule() != LeftoverRule.NOT_VALUED;
    for (int i = 0; i < buying.items().size(); i++) {
      Item item = buying.items().get(i);
      if (valued && item.inPacks() && !(item.resource instanceof Durable)) {
        addLeft(item, bought.counts[i], parts, lines);
      }
    }
    return account("left after part " + parts, lines);
  }

  private void addLeft(Item item, BigInteger[] counts, long parts, List<Line> lines) {
    BigDecimal held = item.held(counts);
    Shelf shelf = item.shelf(counts, parts);
    BigDecimal left = shelf.left().min(held);
    if (plan.leftovers().rule() == LeftoverRule.COST_SHARE_WITHIN_SHELF_LIFE) {
      Optional<Long> further = furtherParts(item, counts);
      left = further.map(more -> item.staircase.usedBy(parts, more)).orElse(left).min(left);
    }
    if (left.signum() <= 0) {
      return;
    }
    int scale = Math.max(0, Math.max(left.scale(), held.scale()));
    BigInteger part = left.setScale(scale).unscaledValue();
    BigInteger whole = held.setScale(scale).unscaledValue();
    BigInteger common = part.gcd(whole);
    for (int j = 0; j < counts.length; j++) {
      if (counts[j].signum() > 0) {
        lines.add(
            line(Entry.LEFT, item, item.prices.get(j))
                .count(counts[j].multiply(part).divide(common))
                .divisor(whole.divide(common))
                .formula(
                    plan.leftovers().rule() == LeftoverRule.COST_SHARE
                        ? "packs bought x min(left, bought) / bought"
                        : "packs bought x min(left, bought, used within the shelf life) / bought")
                .build());
      }
    }
  }

  /** How many further parts fall into the shortest shelf life of what was bought. */
  private Optional<Long> furtherParts(Item item, BigInteger[] counts) {
    Amount<Time> pace = plan.timePerPart().orElseThrow();
    return shelfLife(item, counts).map(life -> (long) Math.floor(life.si() / pace.si()));
  }

  /** The shortest shelf life of what was bought of an item, if any of it perishes. */
  static Optional<Amount<Time>> shelfLife(Item item, BigInteger[] counts) {
    Optional<Amount<Time>> shortest = Optional.empty();
    for (int j = 0; j < counts.length; j++) {
      Optional<Amount<Time>> life = item.prices.get(j).offer().shelfLife();
      if (counts[j].signum() > 0
          && life.isPresent()
          && shortest.filter(known -> !life.get().isLessThan(known)).isEmpty()) {
        shortest = life;
      }
    }
    return shortest;
  }

  private Line.Builder line(Entry entry, Item item, Priced priced) {
    Line.Builder line = Line.builder();
    line.entry(entry)
        .offer(priced.offer())
        .price(priced.price())
        .inputs(inputs(item.resource, priced.offer()));
    return line;
  }

  private String formula(Item item, Priced priced) {
    return item.resource.formula(priced.offer(), plan.workload());
  }

  private List<Input> inputs(Resource resource, Offer offer) {
    List<Input> inputs = new ArrayList<>(resource.inputs());
    inputs.add(Input.of("content", offer.content(), offer.source()));
    inputs.addAll(plan.workload().inputs(resource.driver()));
    return inputs;
  }

  private Account account(String title, List<Line> lines) {
    return Account.of(title, plan.currency(), lines, Surcharges.on(lines, plan));
  }
}
