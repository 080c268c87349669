package dev.kilnledger.costing.purchase;

import static java.util.Comparator.comparing;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;

/**
 * The best covers of one need, exactly: the cheapest one, or, where the value of goods at some
 * suppliers matters because it may free their shipping, every cover that is not beaten in cost and
 * in all those values at once.
 *
 * <p>Orders with a minimum, breaks or a limit are tried out one by one, within the bound that the
 * best cover so far sets. What is left is covered by packs whose cost is proportional to their
 * number. Of these one has the best price per content, W of it in a pack: in a best cover the
 * others never reach a total that W divides, or they could be replaced by it. So it is enough to
 * know, for every residue class modulo W, the mixes of other packs that waste least against the
 * best price. They are searched from the least waste up, until the waste alone exceeds the best
 * cover known; how large the need is plays no part.
 */
final class CoverSearch {
  /** How many mixes may be kept in mind before the search gives up. */
  private static final int MOST_MIXES = 1 << 20;

  /** Packs that are bought in steps of a fixed content and price. */
  private record Step(int pack, long packs, long content, BigInteger price) {
    /** Compares price per content, then packs per content, then the order of the catalogue. */
    static int byRate(Step a, Step b) {
      int order = a.price.multiply(whole(b.content)).compareTo(b.price.multiply(whole(a.content)));
      if (order == 0) {
        order =
            whole(a.packs)
                .multiply(whole(b.content))
                .compareTo(whole(b.packs).multiply(whole(a.content)));
      }
      return order == 0 ? Integer.compare(a.pack, b.pack) : order;
    }
  }

  /** A mix of packs without the one of best price, and what it wastes against that one. */
  private static final class Mix {
    static final Comparator<Mix> LEAST_WASTE =
        (a, b) -> {
          int order = a.waste.compareTo(b.waste);
          if (order == 0) {
            order = a.extraPacks.compareTo(b.extraPacks);
          }
          return order == 0 ? Long.compare(a.content, b.content) : order;
        };

    final long[] counts;
    final long content;

    /** Price x W - price of best x content: nothing for the best pack, never less. */
    final BigInteger waste;

    /** The same for the number of packs, so that it compares within a residue class. */
    final BigInteger extraPacks;

    final BigInteger[] values;
    boolean beaten;

    Mix(long[] counts, long content, BigInteger waste, BigInteger extraPacks, BigInteger[] values) {
      this.counts = counts;
      this.content = content;
      this.waste = waste;
      this.extraPacks = extraPacks;
      this.values = values;
    }
  }

  /** A step added to a mix, and by how much it raises waste and packs. */
  private record Addition(Step step, BigInteger waste, BigInteger extraPacks) {
    static Addition of(Step step, Step bulk) {
      BigInteger bulkContent = whole(bulk.content);
      BigInteger content = whole(step.content);
      return new Addition(
          step,
          step.price.multiply(bulkContent).subtract(bulk.price.multiply(content)),
          whole(step.packs).multiply(bulkContent).subtract(whole(bulk.packs).multiply(content)));
    }
  }

  private final Market market;
  private final boolean[] usable;
  private final int[] threshold;
  private final BigInteger[] thresholds;
  private final List<Cover> best = new ArrayList<>();
  private Optional<BigInteger> limit;
  private BigInteger lowestPrice = BigInteger.ZERO;
  private BigInteger lowestContent = BigInteger.ZERO;
  private int mixes;

  /**
   * A search.
   *
   * @param market the need and its offers
   * @param usable which packs may be bought
   * @param threshold for each pack the index of its supplier's threshold, or -1
   * @param thresholds the values of goods that matter; with none, only the cheapest cover counts
   * @param limit the cost above which covers are of no interest; required with thresholds
   */
  CoverSearch(
      Market market,
      boolean[] usable,
      int[] threshold,
      BigInteger[] thresholds,
      Optional<BigInteger> limit) {
    this.market = market;
    this.usable = usable;
    this.threshold = threshold;
    this.thresholds = thresholds;
    this.limit = limit;
  }

  /** The covers, none of which beats another; empty if the need cannot be covered. */
  List<Cover> best() {
    for (int i = 0; i < usable.length; i++) {
      if (usable[i]) {
        BigInteger price = market.packs.get(i).lowestPrice();
        BigInteger content = whole(market.packs.get(i).content);
        if (lowestContent.signum() == 0
            || price.multiply(lowestContent).compareTo(lowestPrice.multiply(content)) < 0) {
          lowestPrice = price;
          lowestContent = content;
        }
      }
    }
    if (lowestContent.signum() > 0) {
      choose(0, new long[usable.length], 0, BigInteger.ZERO, new ArrayList<>());
    }
    return best;
  }

  /** Tries the orders of each pack in turn; steps are left for the mixes. */
  private void choose(int index, long[] counts, long content, BigInteger cost, List<Step> steps) {
    BigInteger missing = whole(Math.max(0, market.amount - content));
    if (exceeds(cost.multiply(lowestContent).add(missing.multiply(lowestPrice)), lowestContent)) {
      return;
    }
    if (index == usable.length) {
      mix(counts, content, cost, steps);
      return;
    }
    Pack pack = market.packs.get(index);
    long increment = pack.offer.orderIncrement();
    if (!usable[index]) {
      choose(index + 1, counts, content, cost, steps);
    } else if (pack.proportional()) {
      choose(
          index + 1,
          counts,
          content,
          cost,
          with(steps, step(index, increment, pack.lowestPrice())));
    } else {
      choose(index + 1, counts, content, cost, steps);
      if (pack.limited() || (thresholds.length > 0 && pack.tiers().size() > 1)) {
        oneByOne(index, counts, content, cost, steps);
      } else {
        for (Pack.Tier tier : pack.tiers()) {
          choose(
              index + 1,
              with(counts, index, tier.first()),
              content + tier.first() * pack.content,
              cost.add(pack.cost(tier.first())),
              with(steps, step(index, increment, tier.price())));
        }
      }
    }
  }

  private void oneByOne(int index, long[] counts, long content, BigInteger cost, List<Step> steps) {
    Pack pack = market.packs.get(index);
    long lastBreak = pack.tiers().get(pack.tiers().size() - 1).first();
    long most = pack.offer.available().orElse(Long.MAX_VALUE);
    for (long packs = pack.offer.orderOf(1); packs <= most; packs += pack.offer.orderIncrement()) {
      if (exceeds(cost.add(pack.lowestPrice().multiply(whole(packs))), BigInteger.ONE)) {
        return;
      }
      countMix();
      BigInteger price = pack.cost(packs);
      long held = Math.addExact(content, Math.multiplyExact(packs, pack.content));
      choose(index + 1, with(counts, index, packs), held, cost.add(price), steps);
      boolean wanted =
          threshold[index] >= 0
              && pack.lowestPrice().signum() > 0
              && price.compareTo(thresholds[threshold[index]]) < 0;
      if (held >= market.amount && packs >= lastBreak && !wanted) {
        return;
      }
    }
  }

  /** Covers what chosen orders leave with the best mix of steps. */
  private void mix(long[] counts, long content, BigInteger cost, List<Step> steps) {
    if (steps.isEmpty() || (thresholds.length == 0 && content >= market.amount)) {
      if (content >= market.amount) {
        record(counts);
      }
      return;
    }
    Step bulk = steps.stream().min(Step::byRate).orElseThrow();
    long rest = Math.max(0, market.amount - content);
    Map<Long, List<Mix>> kept = new HashMap<>();
    PriorityQueue<Mix> open = new PriorityQueue<>(Mix.LEAST_WASTE);
    admit(new Mix(counts, 0, BigInteger.ZERO, BigInteger.ZERO, values(counts)), bulk, kept, open);
    List<Addition> additions =
        steps.stream()
            .filter(step -> step.pack != bulk.pack)
            .map(step -> Addition.of(step, bulk))
            .sorted(comparing(Addition::waste))
            .toList();
    BigInteger toRest = cost.multiply(whole(bulk.content)).add(bulk.price.multiply(whole(rest)));
    while (!open.isEmpty()) {
      Mix mix = open.remove();
      if (exceeds(mix.waste.add(toRest), whole(bulk.content))) {
        return; // all that follow waste as much or more
      }
      BigInteger beyond = bulk.price.multiply(whole(Math.max(0, mix.content - rest)));
      if (mix.beaten || exceeds(mix.waste.add(toRest).add(beyond), whole(bulk.content))) {
        continue;
      }
      fill(mix, rest, bulk);
      Optional<BigInteger> most =
          limit.map(bound -> bound.multiply(whole(bulk.content)).subtract(toRest));
      for (Addition more : additions) {
        BigInteger waste = mix.waste.add(more.waste);
        if (most.isPresent() && waste.compareTo(most.get()) > 0) {
          break; // so do all that follow; none of them need be built
        }
        if (mix.content < rest || wanted(mix.values, more.step.pack)) {
          admit(plus(mix, more, waste), bulk, kept, open);
        }
      }
    }
  }

  /** Completes a mix with the pack of best price, also beyond the need where its value matters. */
  private void fill(Mix mix, long rest, Step bulk) {
    long missing = Math.max(0, rest - mix.content);
    long steps = missing / bulk.content + (missing % bulk.content == 0 ? 0 : 1);
    while (true) {
      long[] counts = with(mix.counts, bulk.pack, mix.counts[bulk.pack] + steps * bulk.packs);
      boolean withinLimit = record(counts);
      if (!withinLimit || bulk.price.signum() == 0 || !wanted(values(counts), bulk.pack)) {
        return;
      }
      countMix();
      steps++;
    }
  }

  private Mix plus(Mix mix, Addition more, BigInteger waste) {
    long content = mix.content + more.step.content;
    long[] counts = with(mix.counts, more.step.pack, mix.counts[more.step.pack] + more.step.packs);
    return new Mix(counts, content, waste, mix.extraPacks.add(more.extraPacks), values(counts));
  }

  private void admit(Mix mix, Step bulk, Map<Long, List<Mix>> kept, PriorityQueue<Mix> open) {
    List<Mix> rivals =
        kept.computeIfAbsent(mix.content % bulk.content, residue -> new ArrayList<>());
    for (Mix rival : rivals) {
      if (beats(rival, mix, bulk)) {
        return;
      }
    }
    countMix();
    rivals.removeIf(
        rival -> {
          rival.beaten = beats(mix, rival, bulk);
          return rival.beaten;
        });
    rivals.add(mix);
    open.add(mix);
  }

  /**
   * Whether a mix can do whatever another of its residue class does, and no worse: it holds no
   * more, and is filled up to the other's content with the pack of best price.
   */
  private boolean beats(Mix mix, Mix that, Step bulk) {
    if (mix.content > that.content) {
      return false;
    }
    long steps = (that.content - mix.content) / bulk.content;
    for (int i = 0; i < thresholds.length; i++) {
      BigInteger value = mix.values[i];
      if (i == threshold[bulk.pack]) {
        value = value.add(bulk.price.multiply(whole(steps)));
      }
      if (value.compareTo(thresholds[i].min(that.values[i])) < 0) {
        return false;
      }
    }
    int order = mix.waste.compareTo(that.waste);
    if (order == 0) {
      order = mix.extraPacks.compareTo(that.extraPacks);
    }
    if (order == 0) {
      long[] filled = with(mix.counts, bulk.pack, mix.counts[bulk.pack] + steps * bulk.packs);
      order = Arrays.compare(that.counts, filled);
    }
    return order <= 0;
  }

  /** Keeps a cover that nothing known beats; says whether its cost is within the limit. */
  private boolean record(long[] counts) {
    BigInteger cost = BigInteger.ZERO;
    long content = 0;
    for (int i = 0; i < counts.length; i++) {
      if (counts[i] > 0) {
        Pack pack = market.packs.get(i);
        cost = cost.add(pack.cost(counts[i]));
        content = Math.addExact(content, Math.multiplyExact(counts[i], pack.content));
      }
    }
    if (exceeds(cost, BigInteger.ONE)) {
      return false;
    }
    BigInteger[] values = values(counts);
    for (int i = 0; i < values.length; i++) {
      values[i] = values[i].min(thresholds[i]);
    }
    Cover cover = new Cover(counts, cost, content - market.amount, values);
    if (best.stream().noneMatch(known -> known.dominates(cover))) {
      best.removeIf(cover::dominates);
      best.add(cover);
      if (thresholds.length == 0) {
        limit = Optional.of(cost);
      }
    }
    return true;
  }

  private BigInteger[] values(long[] counts) {
    BigInteger[] values = new BigInteger[thresholds.length];
    Arrays.fill(values, BigInteger.ZERO);
    if (thresholds.length > 0) {
      for (int i = 0; i < counts.length; i++) {
        if (threshold[i] >= 0 && counts[i] > 0) {
          values[threshold[i]] = values[threshold[i]].add(market.packs.get(i).cost(counts[i]));
        }
      }
    }
    return values;
  }

  private boolean wanted(BigInteger[] values, int pack) {
    int index = threshold[pack];
    return index >= 0 && values[index].compareTo(thresholds[index]) < 0;
  }

  /** Whether cost / divisor lies above the limit. */
  private boolean exceeds(BigInteger cost, BigInteger divisor) {
    return limit.isPresent() && cost.compareTo(limit.get().multiply(divisor)) > 0;
  }

  private void countMix() {
    mixes++;
    if (mixes > MOST_MIXES) {
      throw new IllegalArgumentException(
          "the packs of "
              + market.item
              + " can be mixed in more than "
              + MOST_MIXES
              + " ways that matter; accepted are fewer offers, rounder contents, or a smaller need");
    }
  }

  private Step step(int index, long packs, BigInteger price) {
    return new Step(
        index, packs, packs * market.packs.get(index).content, price.multiply(whole(packs)));
  }

  private static long[] with(long[] counts, int index, long count) {
    long[] copy = counts.clone();
    copy[index] = count;
    return copy;
  }

  private static List<Step> with(List<Step> steps, Step step) {
    List<Step> copy = new ArrayList<>(steps);
    copy.add(step);
    return copy;
  }

  private static BigInteger whole(long number) {
    return BigInteger.valueOf(number);
  }
}
