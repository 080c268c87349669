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
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Staircases of random whole figures against what they stand for: need(n) = base + step x events(n)
 * - stock, in whole packs or by measure, told here in exact fractions and searched part by part.
 */
class StaircaseTest {
  /** A resource and the same need by its formula, in grams, over the parts per firing. */
  private static final class Case {
    final int partsPerFiring;
    final boolean firing;
    final boolean shared;
    final boolean metered;
    final int base;
    final int step;
    final int stock;
    final int content;
    final Staircase staircase;

    Case(Random random) {
      partsPerFiring = 1 + random.nextInt(4);
      shared = random.nextInt(3) == 0;
      metered = random.nextInt(3) == 0;
      stock = random.nextBoolean() ? 0 : random.nextInt(150);
      content = 1 + random.nextInt(60);
      boolean topped = random.nextBoolean();
      firing = topped || random.nextBoolean();
      Offer offer = offer("wax", grams(content), "1").metered(metered).build();
      Workload workload =
          Workload.of(
              partsPerFiring,
              shared ? ChargeRule.SHARED : ChargeRule.WHOLE,
              Failures.none(),
              Map.of());
      if (topped) {
        int loss = random.nextInt(101);
        int fill = 100 * (1 + random.nextInt(3));
        step = fill / 100 * loss;
        base = fill - step;
        staircase =
            ToppedUp.builder()
                .item("wax")
                .fill(grams(fill))
                .loss(percent(loss))
                .owned(grams(stock))
                .source(INVENTED)
                .build()
                .staircase(offer, workload);
      } else {
        base = 0;
        step = 1 + random.nextInt(40);
        staircase =
            consumed("wax", firing ? Driver.FIRING : Driver.PART, grams(step))
                .owned(grams(stock))
                .build()
                .staircase(offer, workload);
      }
    }

    /** What has to be bought for n parts, in grams, times the parts per firing. */
    BigInteger need(long parts) {
      BigInteger n = BigInteger.valueOf(parts);
      BigInteger each = BigInteger.valueOf(partsPerFiring);
      BigInteger events;
      if (!firing) {
        events = n.multiply(each);
      } else if (shared) {
        events = base > 0 ? n.max(each) : n; // a fill is there as a whole
      } else {
        events = n.add(each).subtract(BigInteger.ONE).divide(each).multiply(each);
      }
      return BigInteger.valueOf(base - stock)
          .multiply(each)
          .add(BigInteger.valueOf(step).multiply(events))
          .max(BigInteger.ZERO);
    }

    BigInteger pack() {
      return BigInteger.valueOf((long) content * partsPerFiring);
    }

    @Override
    public String toString() {
      return List.of(partsPerFiring, firing, shared, metered, base, step, stock, content)
          .toString();
    }
  }

  private static void assertCount(Case one, long parts) {
    BigInteger count = one.staircase.count(parts);
    if (one.metered) {
      // count / divisor = need / pack
      assertThat(count.multiply(one.pack()))
          .as("%s for %s parts", one, parts)
          .isEqualTo(one.need(parts).multiply(one.staircase.divisor()));
    } else {
      BigInteger packs =
          one.need(parts).add(one.pack()).subtract(BigInteger.ONE).divide(one.pack());
      assertThat(count).as("%s for %s parts", one, parts).isEqualTo(packs);
      assertThat(one.staircase.divisor()).isOne();
    }
    assertThat(one.staircase.isMetered()).isEqualTo(one.metered);
  }

  /** Few parts, and so many that no long holds the need. */
  @Test
  void countsWhatTheNeedAsksFor() {
    Random random = new Random(11);
    for (int round = 0; round < 300; round++) {
      Case one = new Case(random);
      for (long parts = 1; parts <= 60; parts++) {
        assertCount(one, parts);
      }
      for (int shift = 0; shift < 62; shift++) {
        assertCount(one, Long.MAX_VALUE >> shift);
        assertCount(one, (Long.MAX_VALUE >> shift) - random.nextInt(2));
      }
    }
  }

  @Test
  void findsTheFirstPartThatNeedsMore() {
    Random random = new Random(12);
    for (int round = 0; round < 300; round++) {
      Case one = new Case(random);
      if (one.step == 0) {
        continue;
      }
      for (long from : new long[] {1, 2, 7, 40}) {
        for (int number = 0; number < 12; number++) {
          BigInteger more = BigInteger.valueOf(number);
          long part = from;
          while (one.staircase.count(part).compareTo(more) <= 0) {
            part++;
          }
          assertThat(one.staircase.firstAbove(more, from))
              .as("%s more than %s from %s", one, number, from)
              .contains(part);
        }
        long far = 1_000_000_000_000L + random.nextInt(1000);
        BigInteger much = one.staircase.count(far);
        long first = one.staircase.firstAbove(much, from).orElseThrow();
        assertThat(one.staircase.count(first)).isGreaterThan(much);
        assertThat(one.staircase.count(first - 1)).isLessThanOrEqualTo(much);
        assertThat(one.staircase.firstAbove(much, first + 5)).contains(first + 5);
        BigInteger all = one.staircase.count(Long.MAX_VALUE);
        assertThat(one.staircase.firstAbove(all, from)).isEmpty();
        BigInteger last = all.subtract(BigInteger.ONE);
        long end = one.staircase.firstAbove(last, from).orElseThrow();
        assertThat(one.staircase.count(end)).isEqualTo(all);
        assertThat(one.staircase.count(end - 1)).isLessThan(all);
      }
      assertThat(one.staircase.nextPurchase(Long.MAX_VALUE)).isEmpty();
      assertThat(one.staircase.nextPurchase(3).isPresent()).isEqualTo(!one.metered);
    }
  }

  /** From settled on each further period brings the same, and no part leaves the lines. */
  @Test
  void repeatsAndKeepsBetweenItsLines() {
    Random random = new Random(13);
    for (int round = 0; round < 300; round++) {
      Case one = new Case(random);
      Staircase staircase = one.staircase;
      long period = staircase.period().longValueExact();
      long settled = staircase.settled();
      assertThat(settled).isPositive();
      if (one.step > 0) {
        BigInteger rise = staircase.count(settled + period).subtract(staircase.count(settled));
        assertThat(rise).isPositive();
        for (long parts = settled; parts < settled + 200; parts++) {
          assertThat(staircase.count(parts + period).subtract(staircase.count(parts)))
              .as("%s after %s parts", one, parts)
              .isEqualTo(rise);
        }
        // The slope of the lines is the rise over a period.
        assertThat(rise.multiply(staircase.lineDivisor()))
            .isEqualTo(
                staircase
                    .growth()
                    .multiply(BigInteger.valueOf(period))
                    .multiply(staircase.divisor()));
      }
      for (long parts = 1; parts <= 200; parts++) {
        BigInteger along = staircase.growth().multiply(BigInteger.valueOf(parts));
        assertThat(staircase.count(parts).multiply(staircase.lineDivisor()))
            .as("%s for %s parts", one, parts)
            .isGreaterThanOrEqualTo(staircase.lowest().add(along).multiply(staircase.divisor()))
            .isLessThanOrEqualTo(staircase.highest().add(along).multiply(staircase.divisor()));
      }
    }
  }

  /** 100 g in stock serve two parts of 50 g; paid by measure, the need itself is both lines. */
  @Test
  void settlesWhereTheStockIsUsedUp() {
    Consumed wax = consumed("wax", Driver.PART, grams(50)).owned(grams(100)).build();
    Workload workload = Workload.of(1);
    assertThat(wax.staircase(offer("wax", grams(20), "1").build(), workload).settled())
        .isEqualTo(2);
    Consumed plain = consumed("wax", Driver.PART, grams(50)).build();
    Staircase measured =
        plain.staircase(offer("wax", grams(20), "1").metered(true).build(), workload);
    assertThat(measured.lowest()).isZero();
    assertThat(measured.highest()).isZero();
    assertThat(measured.period()).isOne();
    assertThat(measured.settled()).isOne();
    // A fill of 100 g without loss is bought once, and for no firing not at all.
    Staircase fill =
        ToppedUp.builder()
            .item("wax")
            .fill(grams(100))
            .loss(percent(0))
            .source(INVENTED)
            .build()
            .staircase(offer("wax", grams(20), "1").build(), workload);
    assertThat(fill.settled()).isOne();
    assertThat(fill.period()).isOne();
    // With more in stock than the fill nothing is ever bought, whatever the size of a charge.
    Staircase owned =
        ToppedUp.builder()
            .item("wax")
            .fill(grams(100))
            .loss(percent(0))
            .owned(grams(200))
            .source(INVENTED)
            .build()
            .staircase(offer("wax", grams(20), "1").build(), Workload.of(4));
    assertThat(owned.settled()).isOne();
    assertThat(owned.period()).isOne();
    assertThat(owned.count(Long.MAX_VALUE)).isZero();
    assertThat(fill.countOf(BigInteger.ZERO)).isZero();
    assertThat(fill.countOf(BigInteger.ONE)).isEqualTo(5);
  }

  /** 1,000 over 100 firings: nothing in the long run, all of it after the hundredth. */
  @Test
  void doesNotGrowWhereItIsChargedOverALife() {
    Staircase charged =
        Depreciated.builder()
            .item("kiln")
            .driver(Driver.FIRING)
            .life(ratio(100))
            .salvage(eur("0"))
            .source(INVENTED)
            .build()
            .staircase(offer("kiln", ratio(1), "1000").build(), Workload.of(1));
    assertThat(charged.growth()).isZero();
    assertThat(charged.lowest()).isZero();
    assertThat(charged.period()).isOne();
    assertThat(charged.settled()).isEqualTo(100);
    assertThat(charged.count(100)).isEqualTo(charged.divisor());
    assertThat(charged.count(99).multiply(BigInteger.valueOf(100)))
        .isEqualTo(charged.divisor().multiply(BigInteger.valueOf(99)));
    assertThat(charged.highest()).isEqualTo(charged.lineDivisor());
  }

  @Test
  void tellsWhatFurtherPartsUse() {
    Staircase staircase =
        consumed("wax", Driver.PART, grams(50))
            .build()
            .staircase(offer("wax", grams(20), "1").build(), Workload.of(1));
    assertThat(staircase.usedBy(10, 3)).isEqualByComparingTo("0.15"); // kg
    assertThat(staircase.usedBy(10, Long.MAX_VALUE))
        .isEqualByComparingTo(
            new BigDecimal("0.05")
                .multiply(BigDecimal.valueOf(Long.MAX_VALUE).subtract(BigDecimal.TEN)));
    assertThat(staircase.usedBy(Long.MAX_VALUE, 0)).isZero();
  }
}
