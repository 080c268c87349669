package dev.kilnledger.costing.ledger;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.costing.internal.RandomPassage;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.yield.StageYield;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.commons.rng.JumpableUniformRandomProvider;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.joda.money.BigMoney;

/**
 * The cash for n good parts where failures are drawn at random: Monte Carlo over the ledger's own
 * count of packs.
 *
 * <p>Counted from the last stage back as {@link dev.kilnledger.costing.resource.Workload} counts,
 * with the failures before the x-th success drawn from the negative binomial distribution. Failed
 * parts are replaced in the next free place of a charge; a lost charge is lost with every part in
 * it. The purchases that this takes are spread over the parts as those foretold are, which says
 * what is ordered together. With every yield 1, each draw is the ledger's account of parts 1 to n.
 *
 * <p>Draws are made in {@value #BLOCKS} blocks, each on a sub-stream of its own of one generator,
 * and read in the order of the blocks, so that a result depends on its seed alone and not on how
 * many threads have worked on it. Blocks run in parallel in the pool of the caller.
 */
public final class RandomYields {
  /** Blocks of draws, whatever their number. */
  public static final int BLOCKS = 64;

  /** The largest number of starts that a simulation may expect. */
  public static final long MOST_STARTS = 100_000_000;

  private static final RandomYields STANDARD = new RandomYields();

  private RandomYields() {}

  /** {@return the simulation} */
  public static RandomYields standard() {
    return STANDARD;
  }

  /**
   * Draws the cash for n good parts.
   *
   * @param plan what is needed and what it costs; the rule of its failures is set aside
   * @param parts n, 1 or more, for which no more than {@value #MOST_STARTS} parts are expected to
   *     be started
   * @param draws how many times, 1 to 10,000,000
   * @param seed the seed
   * @return the cash of each draw, with the seed
   * @throws IllegalArgumentException with all problems
   */
  public RandomStatement simulate(LedgerPlan plan, long parts, int draws, long seed) {
    Problems problems =
        new Problems("random yields")
            .require(parts >= 1, "parts is " + parts + "; accepted is 1 or more")
            .require(
                draws >= 1 && draws <= 10_000_000,
                "draws is " + draws + "; accepted is from 1 to 10000000");
    double starts = parts;
    for (StageYield stage : plan.failures().stages()) {
      starts /= stage.parts().si() * stage.charges().si();
    }
    problems
        .require(
            starts <= MOST_STARTS,
            "for "
                + parts
                + " parts more than "
                + MOST_STARTS
                + " starts are expected; accepted are fewer parts or higher yields")
        .refuseIfAny();

    LedgerPlan withoutLosses =
        LedgerPlan.builder().from(plan).failures(plan.failures().trialsOnly()).build();
    ExactCash cash = ExactCash.of(withoutLosses);
    List<UniformRandomProvider> streams = new ArrayList<>();
    JumpableUniformRandomProvider source =
        (JumpableUniformRandomProvider) RandomSource.XO_SHI_RO_256_PP.create(seed);
    for (int block = 0; block < BLOCKS; block++) {
      streams.add(source.jump());
    }
    List<BigMoney> drawn =
        IntStream.range(0, BLOCKS)
            .parallel()
            .mapToObj(block -> block(plan, parts, size(block, draws), cash, streams.get(block)))
            .flatMap(List::stream)
            .toList();
    return RandomStatement.builder().plan(plan).parts(parts).seed(seed).cash(drawn).build();
  }

  private static int size(int block, int draws) {
    return draws / BLOCKS + (block < draws % BLOCKS ? 1 : 0);
  }

  private static List<BigMoney> block(
      LedgerPlan plan, long parts, int size, ExactCash cash, UniformRandomProvider random) {
    BigDecimal denominator = new BigDecimal(cash.denominator());
    List<BigMoney> drawn = new ArrayList<>(size);
    RandomPassage passage =
        new RandomPassage(plan.failures(), plan.charging(), plan.partsPerFiring(), random);
    for (int i = 0; i < size; i++) {
      BigDecimal total = new BigDecimal(cash.of(events(passage, parts), parts));
      drawn.add(BigMoney.of(plan.currency(), total.divide(denominator, MathContext.DECIMAL128)));
    }
    return drawn;
  }

  /** Draws how often each event happens until n parts are good. */
  private static Map<Driver, BigInteger> events(RandomPassage passage, long parts) {
    passage.restart();
    passage.until(parts);
    Map<Driver, BigInteger> events = new EnumMap<>(Driver.class);
    for (Driver driver : Driver.values()) {
      if (!driver.isMeasured()) {
        events.put(driver, BigInteger.valueOf(passage.events(driver)));
      }
    }
    return events;
  }
}
