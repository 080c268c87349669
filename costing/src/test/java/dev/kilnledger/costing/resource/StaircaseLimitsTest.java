package dev.kilnledger.costing.resource;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.consumed;
import static dev.kilnledger.costing.ledger.FixturePlan.eur;
import static dev.kilnledger.costing.ledger.FixturePlan.offer;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.yield.Failures;
import dev.kilnledger.costing.yield.Stage;
import dev.kilnledger.costing.yield.StageYield;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Staircases at their ends: before the first part, of figures and numbers beyond 2^63, shared, and
 * flat. What has to be bought is ceil((base + step x uses - stock) / content) throughout.
 */
class StaircaseLimitsTest {
  private static final Offer TEN = offer("wax", grams(10), "1").build();
  private static final Offer MEASURED = offer("wax", grams(100), "1").metered(true).build();

  private static Staircase.Build eachPart() {
    return Staircase.of(Workload.of(1).tally(Driver.PART));
  }

  private static BigDecimal number(String text) {
    return new BigDecimal(text);
  }

  private static Workload shared(int partsPerFiring) {
    return Workload.of(partsPerFiring, ChargeRule.SHARED, Failures.none(), Map.of());
  }

  private static ToppedUp topped(double loss) {
    return ToppedUp.builder()
        .item("wax")
        .fill(grams(100))
        .loss(percent(loss))
        .source(INVENTED)
        .build();
  }

  @Test
  void holdsFiguresBeyondLongs() {
    // A pack for 10^21 parts is more than any number of parts takes.
    Staircase huge = eachPart().step(BigDecimal.ONE).content(number("1e21"));
    assertThat(huge.count(4_200_000_000_000_000_000L)).isOne();
    assertThat(huge.count(Long.MAX_VALUE)).isOne();
    // 7e18 - 7 and 6e17 times 7 are 11.2e18 - 7, which lies between one and two packs of 9e18.
    Staircase base =
        eachPart().base(number("6999999999999999993")).step(number("7")).content(number("9e18"));
    assertThat(base.count(600_000_000_000_000_000L)).isEqualTo(2);
    // 99 more than the largest long.
    Staircase last = eachPart().base(number("99")).step(BigDecimal.ONE).content(BigDecimal.ONE);
    assertThat(last.count(Long.MAX_VALUE))
        .isEqualTo(BigInteger.valueOf(Long.MAX_VALUE).add(BigInteger.valueOf(99)));
  }

  /** (3e18 + 1) / 0.3 = 1e19 + 3.33... starts, in packs for seven: ceil((1e19 + 4) / 7). */
  @Test
  void countsPacksForMoreStartsThanALongHolds() {
    Failures failures =
        Failures.builder()
            .addStages(
                StageYield.builder().stage(Stage.PRINT).parts(percent(30)).source(INVENTED).build())
            .build();
    Workload workload = Workload.of(1, ChargeRule.WHOLE, failures, Map.of());
    Staircase wax =
        consumed("wax", Driver.PART, grams(1))
            .build()
            .staircase(offer("wax", grams(7), "1").build(), workload);
    assertThat(wax.count(3_000_000_000_000_000_001L))
        .isEqualTo(new BigInteger("1428571428571428572"));
  }

  /** 2^61 + 412 is no double: the nearest one is 100 more, and the search starts there. */
  @Test
  void findsPartsBetweenTheNumbersThatDoublesHold() {
    Staircase each = eachPart().step(BigDecimal.ONE).content(BigDecimal.ONE);
    long number = (1L << 61) + 412;
    assertThat(each.firstAbove(BigInteger.valueOf(number), 1)).contains(number + 1);
    assertThat(each.firstAbove(BigInteger.valueOf(number), number + 51)).contains(number + 51);
    // More than N packs of 43 are needed once 28 n > 43 N; in doubles that is 921 parts too far,
    // and
    // the search goes back from there, but no further than it is asked to.
    Staircase packs = eachPart().step(number("28")).content(number("43"));
    BigInteger bought = BigInteger.valueOf(2_932_496_561_184_418_049L);
    long first =
        bought.multiply(BigInteger.valueOf(43)).divide(BigInteger.valueOf(28)).longValueExact() + 1;
    assertThat(packs.firstAbove(bought, 1)).contains(first);
    for (long later : new long[] {1, 230, 900, 5_000}) {
      assertThat(packs.firstAbove(bought, first + later)).contains(first + later);
    }
  }

  @Test
  void needsNothingForNoPart() {
    Staircase fill = topped(5).staircase(TEN, Workload.of(1));
    assertThat(fill.count(0)).isZero();
    assertThat(fill.count(1)).isEqualTo(10);
    assertThat(fill.nextPurchase(0)).contains(1L);
  }

  /** A fill without loss is bought once; no part ever needs more, however much more is asked. */
  @Test
  void neverReachesMoreThanItsOnlyFill() {
    Staircase fill = topped(0).staircase(TEN, Workload.of(1));
    assertThat(fill.firstAbove(BigInteger.ONE.shiftLeft(70), 1)).isEmpty();
    assertThat(fill.firstAbove(BigInteger.TEN, 1)).isEmpty();
    assertThat(fill.firstAbove(BigInteger.valueOf(9), 1)).contains(1L);
    assertThat(fill.nextPurchase(Long.MAX_VALUE)).isEmpty();
  }

  /** Of 100 g for each firing two of four parts take a half, and a fill is there as a whole. */
  @Test
  void countsSharesOfEvents() {
    Staircase wax =
        consumed("wax", Driver.FIRING, grams(100)).build().staircase(MEASURED, shared(4));
    assertThat(wax.eventDivisor()).isEqualTo(4);
    assertThat(wax.countOf(BigInteger.TWO).multiply(BigInteger.TWO)).isEqualTo(wax.divisor());
    // By measure the need itself is both lines.
    assertThat(wax.lowest()).isZero();
    assertThat(wax.highest()).isZero();
    Staircase fill = topped(50).staircase(TEN, shared(4));
    assertThat(fill.countOf(BigInteger.ONE)).isEqualTo(10);
    // 50 g + 6 / 4 x 50 g = 125 g.
    assertThat(fill.countOf(BigInteger.valueOf(6))).isEqualTo(13);
    // Through the first whole charge a fill is needed, and a fourth of a loss with each part after.
    assertThat(fill.settled()).isEqualTo(4);
  }

  @Test
  void leavesNothingOfWhatIsPaidByMeasure() {
    Consumed wax = consumed("wax", Driver.PART, grams(128)).build();
    for (long parts = 1; parts < 5; parts++) {
      assertThat(wax.stock(MEASURED, Workload.of(1), parts).left()).isEqualTo(grams(0));
    }
  }

  /** 1,000 over a life of 100 firings: each part of four to a firing takes 1 / 400 of it. */
  @Test
  void isFlatInTheLongRunWhereItIsChargedOverALife() {
    Depreciated kiln =
        Depreciated.builder()
            .item("kiln")
            .driver(Driver.FIRING)
            .life(ratio(100))
            .salvage(eur("0"))
            .source(INVENTED)
            .build();
    Offer price = offer("kiln", ratio(1), "1000").build();
    Failures tried = Failures.builder().trialParts(2).build();
    Staircase charged = kiln.staircase(price, Workload.of(4, ChargeRule.WHOLE, tried, Map.of()));
    assertThat(charged.lineDivisor()).isPositive();
    assertThat(charged.usage().multiply(BigInteger.valueOf(400))).isEqualTo(charged.lineDivisor());
    assertThat(charged.highest()).isEqualTo(charged.lineDivisor());
    assertThat(charged.growth()).isZero();
    assertThat(charged.lowest()).isZero();
    assertThat(charged.period()).isOne();
    // Two firings of trials, and 98 for 389 to 392 parts.
    assertThat(charged.settled()).isEqualTo(389);
  }
}
