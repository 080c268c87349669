package dev.kilnledger.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.costing.ledger.Account;
import dev.kilnledger.costing.ledger.Ledger;
import dev.kilnledger.costing.ledger.Statement;
import dev.kilnledger.costing.resource.Stock;
import dev.kilnledger.units.Amount;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LedgerBenchmarkTest {
  private final LedgerBenchmark benchmark = new LedgerBenchmark();

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 7, 24, 25, 999, 1_000, 1_000_000, 123_456_789})
  void comesToTheSameLinesAndTheSameStock(long parts) {
    Statement statement = Ledger.standard().statement(benchmark.plan, parts);
    HandWrittenLedger.Answer answer = benchmark.hand.statement(parts);
    isSame(statement.firstPart(), answer.first());
    isSame(statement.secondPart(), answer.second());
    isSame(statement.lastPart(), answer.last());
    isSame(statement.allParts(), answer.all());
    isSame(statement.usage(), answer.usage());
    assertThat(statement.average().getAmount()).isEqualByComparingTo(answer.average());
    assertThat(left(statement.stocks()))
        .isEqualTo(
            answer.left().stream()
                .filter(left -> left.nextPurchase() > 0)
                .map(
                    left ->
                        left.item()
                            + " "
                            + left.left().doubleValue()
                            + " "
                            + Optional.of(left.nextPurchase()))
                .collect(Collectors.joining("\n")));
  }

  private static void isSame(Account account, HandWrittenLedger.Account expected) {
    assertThat(account.title()).isEqualTo(expected.title());
    assertThat(account.total().getAmount()).isEqualByComparingTo(expected.total());
    assertThat(account.lines()).hasSameSizeAs(expected.lines());
    for (int i = 0; i < account.lines().size(); i++) {
      HandWrittenLedger.Line line = expected.lines().get(i);
      assertThat(account.lines().get(i).item()).isEqualTo(line.item());
      assertThat(account.lines().get(i).packs())
          .isEqualByComparingTo(line.count().divide(line.divisor(), MathContext.DECIMAL128));
      assertThat(account.lines().get(i).amount().getAmount()).isEqualByComparingTo(line.amount());
    }
  }

  private static String left(List<Stock> stocks) {
    return stocks.stream()
        .filter(stock -> stock.nextPurchase().isPresent())
        .map(stock -> stock.item() + " " + number(stock.left()) + " " + stock.nextPurchase())
        .collect(Collectors.joining("\n"));
  }

  private static <Q extends Quantity<Q>> double number(Amount<Q> amount) {
    return amount.getValue().doubleValue();
  }

  /** By hand: 1,000 parts in 250 firings; 128 kg of filament are 256 packs, and so on. */
  @Test
  void isTheSumWorkedOutByHand() {
    assertThat(benchmark.hand.statement(1_000).all().total())
        .isEqualByComparingTo(
            new BigDecimal(900 + 3200 + 42 * 45 + 256 * 60 + 25 * 18 + 75 * 22)
                .add(new BigDecimal("2100.00")));
    assertThat(benchmark.statementOfThousand().parts()).isEqualTo(1_000);
    assertThat(benchmark.statementOfMillion().parts()).isEqualTo(1_000_000);
    assertThat(benchmark.byHandOfThousand()).isEqualTo(benchmark.hand.statement(1_000));
  }
}
