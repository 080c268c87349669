package dev.kilnledger.costing.ledger;

import static dev.kilnledger.costing.ledger.FixturePlan.consumed;
import static dev.kilnledger.costing.ledger.FixturePlan.eur;
import static dev.kilnledger.costing.ledger.FixturePlan.offer;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.joules;
import static dev.kilnledger.units.Amounts.kilowattHours;
import static dev.kilnledger.units.Amounts.litres;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import dev.kilnledger.core.source.Input;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Durable;
import dev.kilnledger.costing.resource.Stock;
import dev.kilnledger.costing.resource.Tails;
import dev.kilnledger.units.Amounts;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Expected values of the fixture were made for this project and computed by hand, apart from the
 * code; random plans are checked by making their parts one by one ({@link Simulated}).
 */
class LedgerTest {
  private static final Ledger LEDGER = Ledger.standard();

  @ParameterizedTest
  @CsvSource({"1, 4271.40", "2, 8.40", "3, 8.40", "4, 108.40", "7, 75.40"})
  void costsWhatTheFixtureSays(long part, String cash) {
    assertThat(LEDGER.part(FixturePlan.of(1), part).total()).isEqualByComparingTo(eur(cash));
  }

  @Test
  void showsFirstSecondLastAverageUsageStockAndNextPurchaseTogether() {
    Statement four = LEDGER.statement(FixturePlan.of(1), 4);
    assertThat(four.firstPart().total()).isEqualByComparingTo(eur("4271.40"));
    assertThat(four.secondPart().total()).isEqualByComparingTo(eur("8.40"));
    assertThat(four.lastPart().total()).isEqualByComparingTo(eur("108.40"));
    assertThat(four.lastPart().lines())
        .extracting(Line::item)
        .containsExactly("filament", "packing powder", "carbon", "energy");
    assertThat(four.average()).isEqualByComparingTo(eur("1099.15"));
    assertThat(four.money(four.average())).isEqualTo(Money.parse("EUR 1099.15"));
    assertThat(four.usage().total()).isEqualByComparingTo(eur("39.48"));
    assertThat(four.usage().lines())
        .extracting(Line::item, line -> line.amount().getAmount().stripTrailingZeros())
        .containsExactly(
            tuple("crucible", new BigDecimal("7.5")),
            tuple("filament", new BigDecimal("15.36")),
            tuple("packing powder", new BigDecimal("1.62")),
            tuple("carbon", new BigDecimal("6.6")),
            tuple("energy", new BigDecimal("8.4")));
    assertThat(four.plan().buying().words()).isEqualTo("as needed");

    Statement one = LEDGER.statement(FixturePlan.of(1), 1);
    assertThat(one.firstPart().lines())
        .extracting(Line::text)
        .containsExactly(
            "printer: bought 1 x 1 piece at EUR 900.00",
            "kiln: bought 1 x 1 piece at EUR 3200.00",
            "crucible: bought 1 x 1 piece at EUR 45.00",
            "filament: bought 1 x 500 g at EUR 60.00",
            "packing powder: bought 2 x 1 kg at EUR 18.00",
            "carbon: bought 1 x 1 kg at EUR 22.00",
            "energy: metered 28 x 1 kWh at EUR 0.30");
    assertThat(one.stocks())
        .extracting(Stock::item, Stock::text, Stock::furtherParts)
        .containsExactly(
            tuple("printer", "1 piece", Optional.empty()),
            tuple("kiln", "1 piece", Optional.empty()),
            tuple("crucible", "5 firings", Optional.of(5L)),
            tuple("filament", "372 g", Optional.of(2L)),
            tuple("packing powder", "1910 g", Optional.of(2L)),
            tuple("carbon", "700 g", Optional.of(2L)));
    assertThat(one.nextPurchase())
        .contains(NextPurchase.of(4, List.of("filament", "packing powder", "carbon")));
  }

  @ParameterizedTest
  @CsvSource({"1, 39.48", "2, 27.42", "4, 21.39", "7, 18.8057"})
  void sharesTheFiringAmongItsParts(int partsPerFiring, String usage) {
    // Four decimals, as the fixture gives the last one: 15.36 + 24.12 / 7.
    Account account = LEDGER.usage(FixturePlan.of(partsPerFiring));
    assertThat(account.total().rounded(4, RoundingMode.HALF_UP)).isEqualByComparingTo(eur(usage));
  }

  @Test
  void chargesAStartedFiringToItsFirstPart() {
    LedgerPlan two = FixturePlan.of(2);
    assertThat(LEDGER.part(two, 1).total()).isEqualByComparingTo(eur("4271.40"));
    assertThat(LEDGER.part(two, 2).total()).isEqualByComparingTo(eur("0"));
    assertThat(LEDGER.part(two, 3).total()).isEqualByComparingTo(eur("8.40"));
  }

  @ParameterizedTest
  @CsvSource({
    // 256,000 spools, 166,667 crucibles, 90,002 kg, 300,000 kg, energy, 4,100 once
    "1000000, 39484151",
    // 256e9 spools, 166,666,666,667 crucibles, 90,000,000,002 kg, 300e9 kg, energy, 4,100 once
    "1000000000000, 39480000004151"
  })
  void answersForAnyNumberOfPartsAtOnce(long parts, String cash) {
    assertThat(LEDGER.through(FixturePlan.of(1), parts).total()).isEqualByComparingTo(eur(cash));
    assertThat(LEDGER.statement(FixturePlan.of(3), Long.MAX_VALUE).allParts().total().isPositive())
        .isTrue();
  }

  @Test
  void agreesWithAWorkshopThatMakesAFewPlansPartByPart() {
    agreesWithAWorkshopThatMakesRandomPlansPartByPart(20);
  }

  @Tag("sampled")
  @Test
  void agreesWithAWorkshopThatMakesRandomPlansPartByPart() {
    agreesWithAWorkshopThatMakesRandomPlansPartByPart(300);
  }

  private static void agreesWithAWorkshopThatMakesRandomPlansPartByPart(int trials) {
    SplittableRandom random = new SplittableRandom(20261102);
    for (int trial = 0; trial < trials; trial++) {
      Simulated workshop = new Simulated(random);
      List<Long> stepped = new ArrayList<>();
      List<Long> closed = new ArrayList<>();
      long cents = 0;
      for (long part = 1; part <= 500; part++) {
        long cost = workshop.nextPart();
        cents += cost;
        stepped.add(cost);
        closed.add(cents(LEDGER.part(workshop.plan, part)));
        if (part % 71 == 1) {
          stepped.add(cents);
          closed.add(cents(LEDGER.through(workshop.plan, part)));
        }
      }
      assertThat(closed).as("trial %s", trial).isEqualTo(stepped);
    }
  }

  private static long cents(Account account) {
    return account.total().getAmount().movePointRight(2).longValueExact();
  }

  @Test
  void foretellsTheNextPurchaseOfRandomPlans() {
    SplittableRandom random = new SplittableRandom(7);
    for (int trial = 0; trial < 200; trial++) {
      LedgerPlan plan = new Simulated(random).plan;
      long parts = random.nextLong(1, 300);
      Optional<NextPurchase> next = LEDGER.statement(plan, parts).nextPurchase();
      Optional<NextPurchase> stepped =
          LongStream.range(parts + 1, parts + 1000)
              .mapToObj(part -> NextPurchase.of(part, bought(LEDGER.part(plan, part))))
              .filter(purchase -> !purchase.items().isEmpty())
              .findFirst();
      if (next.isEmpty() || next.get().part() < parts + 1000) {
        assertThat(next).isEqualTo(stepped);
      }
    }
  }

  private static List<String> bought(Account account) {
    return account.lines().stream()
        .filter(line -> line.entry() == Entry.BOUGHT)
        .map(Line::item)
        .toList();
  }

  @Test
  void growsByUsagePerPartInTheLongRun() {
    // Over a multiple of all cycles packs come out whole, so cash and usage agree to the cent:
    // 1500 parts of the fixture take 384 spools, 250 crucibles, 135 kg, 450 kg.
    LedgerPlan plan = FixturePlan.of(1);
    BigMoney cash = LEDGER.through(plan, 3001).total().minus(LEDGER.through(plan, 1501).total());
    assertThat(cash).isEqualByComparingTo(eur("39.48").multipliedBy(1500));
  }

  @Test
  void sumsItsTotalsFromLinesThatExplainThemselves() {
    Statement statement = LEDGER.statement(FixturePlan.of(4), 4711);
    for (Account account :
        List.of(
            statement.firstPart(),
            statement.secondPart(),
            statement.lastPart(),
            statement.allParts(),
            statement.usage())) {
      BigMoney sum = BigMoney.zero(CurrencyUnit.EUR);
      for (Line line : account.lines()) {
        sum = sum.plus(line.amount());
        assertThat(line.amount().getAmount().multiply(new BigDecimal(line.divisor())))
            .usingComparator(
                (a, b) -> a.subtract(b).abs().compareTo(new BigDecimal("1e-28")) < 0 ? 0 : 1)
            .isEqualTo(line.offer().price().getAmount().multiply(new BigDecimal(line.count())));
        assertThat(line.inputs())
            .allSatisfy(input -> assertThat(input.source().text()).isNotBlank());
      }
      assertThat(account.total()).isEqualTo(sum);
    }
    Line powder = statement.allParts().lines().get(4);
    assertThat(powder.formula())
        .isEqualTo(
            "packs(n) = max(0, ceil(x)), x = (fill x (1 + (ceil(n / parts per firing) - 1) x loss)"
                + " - stock) / content");
    assertThat(powder.inputs())
        .extracting(Input::name, Input::value)
        .containsExactly(
            tuple("fill", grams(1800)),
            tuple("loss", Amounts.percent(5)),
            tuple("stock", grams(0)),
            tuple("content", Amounts.kilograms(1)),
            tuple("parts per firing", Amounts.ratio(4)));
    // By hand: ceil(4711 / 4) = 1178 firings, 1.8 x (1 + 1177 x 0.05) = 107.73 kg.
    assertThat(powder.count()).isEqualTo(BigInteger.valueOf(108));
  }

  @Test
  void survivesSerialization() throws IOException, ClassNotFoundException {
    Statement statement = LEDGER.statement(FixturePlan.of(2), 5);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(statement);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      assertThat(in.readObject()).isEqualTo(statement);
    }
  }

  @Test
  void roundsOnceByTheRuleOfThePlan() {
    LedgerPlan even = FixturePlan.of(1);
    LedgerPlan up = FixturePlan.builder().partsPerFiring(1).rounding(Rounding.HALF_UP).build();
    BigMoney half = eur("0.125");
    assertThat(LEDGER.statement(even, 1).money(half)).isEqualTo(Money.parse("EUR 0.12"));
    assertThat(LEDGER.statement(up, 1).money(half)).isEqualTo(Money.parse("EUR 0.13"));
    assertThat(LEDGER.statement(up, 1).plan().rounding()).isEqualTo(Rounding.HALF_UP);
  }

  @Test
  void paysAShareOfAMeasureInAnyUnit() {
    // 1 MJ a part at 1.00 for 3.6 MJ; 34 digits where the quotient has no end.
    LedgerPlan plan =
        LedgerPlan.builder()
            .prices(
                FixturePlan.book()
                    .offers(List.of(offer("energy", kilowattHours(1), "1").metered(true).build()))
                    .build())
            .addResources(consumed("energy", Driver.PART, joules(1e6)).build())
            .partsPerFiring(1)
            .build();
    assertThat(LEDGER.through(plan, 18).total()).isEqualByComparingTo(eur("5"));
    assertThat(LEDGER.part(plan, 1).total().getAmount())
        .isEqualTo(new BigDecimal("0.2777777777777777777777777777777778"));
    assertThat(LEDGER.statement(plan, 18).stocks()).isEmpty();
  }

  @Test
  void refusesAPartBeforeTheFirst() {
    assertThatThrownBy(() -> LEDGER.statement(FixturePlan.of(1), 0))
        .hasMessage("there is no part 0; accepted is a number of parts from 1 up");
    assertThatThrownBy(() -> LEDGER.through(FixturePlan.of(1), 0)).hasMessageContaining("part 0;");
    LedgerPlan planned =
        FixturePlan.builder().partsPerFiring(1).buying(BuyingRule.PLANNED_FOR_N).build();
    assertThatThrownBy(() -> LEDGER.part(planned, 1, 0)).hasMessageContaining("part 0;");
    assertThatThrownBy(() -> LEDGER.part(planned, 0, 1)).hasMessageContaining("part 0;");
    assertThatThrownBy(() -> LEDGER.staircase(planned, 0, 1)).hasMessageContaining("part 0;");
    assertThatThrownBy(() -> LEDGER.part(FixturePlan.of(1), -3)).hasMessageContaining("part -3");
  }

  @Test
  void refusesAPlanThatCannotBeBoughtWithAllItsProblems() {
    assertThatThrownBy(
            () ->
                FixturePlan.builder()
                    .partsPerFiring(0)
                    .addResources(
                        Durable.owned("crucible"),
                        Durable.toBuy("microscope"),
                        consumed("carbon", Driver.PART, litres(1)).build(),
                        consumed("filament", Driver.PART, grams(600)).tails(Tails.STRANDED).build(),
                        Durable.toBuy("energy"))
                    .build())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("parts per firing is 0; accepted is 1 or more")
        .hasMessageContaining(
            "no offer of \"microscope\"; accepted is one of [carbon, crucible, energy, filament,"
                + " kiln, packing powder, printer]")
        .hasMessageContaining(
            "carbon is sold as 1 kg, which measures mass; accepted is a measure of volume")
        .hasMessageContaining(
            "a pack of 500 g of filament does not hold the 600 g of one part; accepted is a larger"
                + " pack, or tails that can be joined")
        .hasMessageContaining(
            "energy is sold as 1 kWh, which measures energy; accepted is a number of pieces")
        .hasMessageContaining("energy is sold by measure; accepted are whole packs")
        .hasMessageContaining("crucible is needed by 2 resources");
    assertThatThrownBy(
            () -> LedgerPlan.builder().prices(FixturePlan.book().build()).partsPerFiring(1).build())
        .hasMessageContaining("there is no resource; accepted is one or more");
  }
}
