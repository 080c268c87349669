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
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * Turns what is bought, used or left into lines that explain themselves. What a line says beside
 * its count is written once, and shared by all lines that say it.
 */
final class Accounts {
  private static final String USAGE = "rise per part in the long run of ";

  private final LedgerPlan plan;
  private final Buying buying;

  /** What is said of purchases, by item and price, for each way of telling them apart by part. */
  private final Map<String, LineBasis[][]> bought = new ConcurrentHashMap<>();

  private final LineBasis[] orders;
  private volatile @Nullable Account usage;

  Accounts(LedgerPlan plan, Buying buying) {
    this.plan = plan;
    this.buying = buying;
    this.orders = new LineBasis[buying.freights().size()];
    for (int i = 0; i < orders.length; i++) {
      orders[i] = order(Entry.SHIPPED, i, buying.orderFormula(i));
    }
  }

  /** The account of what is bought. */
  Account bought(String title, Bought what, String when) {
    LineBasis[][] bases = bought.computeIfAbsent(when, this::bases);
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i < bases.length; i++) {
      for (int j = 0; j < what.counts[i].length; j++) {
        if (what.counts[i][j].signum() > 0) {
          lines.add(Line.of(bases[i][j], what.counts[i][j], buying.items().get(i).divisor()));
        }
      }
    }
    for (int i = 0; i < what.orders.length; i++) {
      if (what.orders[i].signum() > 0) {
        lines.add(Line.of(orders[i], what.orders[i], BigInteger.ONE));
      }
    }
    return account(title, lines);
  }

  private LineBasis[][] bases(String when) {
    LineBasis[][] bases = new LineBasis[buying.items().size()][];
    for (int i = 0; i < bases.length; i++) {
      Item item = buying.items().get(i);
      String how = when + buying.formula(i);
      Entry entry =
          item.resource instanceof Depreciated
              ? Entry.DEPRECIATED
              : item.inPacks() ? Entry.BOUGHT : Entry.METERED;
      bases[i] =
          item.prices.stream()
              .map(priced -> basis(entry, item, priced, how + formula(item, priced)))
              .toArray(LineBasis[]::new);
    }
    return bases;
  }

  private LineBasis order(Entry entry, int freight, String formula) {
    Offer order = buying.freights().get(freight).order;
    return LineBasis.of(entry, order, order.price(), formula, List.of());
  }

  /** What one good part uses up in the long run. */
  Account usage() {
    Account known = usage;
    if (known == null) {
      known = longRun();
      usage = known;
    }
    return known;
  }

  private Account longRun() {
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
    for (int i = 0; i < orders.length; i++) {
      Buying.Share share = buying.ordersPerPart(i);
      if (share.numerator().signum() > 0) {
        String how = "orders per part " + share.span() + ": " + buying.orderFormula(i);
        lines.add(Line.of(order(Entry.USED, i, how), share.numerator(), share.denominator()));
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
          Line.of(
              basis(Entry.USED, item, priced, USAGE + formula(item, priced)),
              used.divide(common),
              need.lineDivisor().divide(common)));
    }
  }

  /** What was bought and is left after part n, at its share of what it cost. */
  Account leftovers(Bought bought, long parts) {
    List<Line> lines = new ArrayList<>();
    boolean valued = plan.leftovers().rule() != LeftoverRule.NOT_VALUED;
    for (int i = 0; i < buying.items().size() && valued; i++) {
      Item item = buying.items().get(i);
      if (item.inPacks() && !(item.resource instanceof Durable)) {
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
        String how =
            plan.leftovers().rule() == LeftoverRule.COST_SHARE
                ? "packs bought x min(left, bought) / bought"
                : "packs bought x min(left, bought, used within the shelf life) / bought";
        lines.add(
            Line.of(
                basis(Entry.LEFT, item, item.prices.get(j), how),
                counts[j].multiply(part).divide(common),
                whole.divide(common)));
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

  private LineBasis basis(Entry entry, Item item, Priced priced, String formula) {
    return LineBasis.of(
        entry, priced.offer(), priced.price(), formula, inputs(item.resource, priced.offer()));
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
