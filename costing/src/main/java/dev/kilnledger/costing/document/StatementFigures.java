package dev.kilnledger.costing.document;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.costing.ledger.Caveat;
import dev.kilnledger.costing.ledger.NextPurchase;
import dev.kilnledger.costing.ledger.Statement;
import dev.kilnledger.costing.resource.Stock;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import org.immutables.value.Value;

/** A statement of costs as it stands in an answer document. */
@Value.Immutable
@ValueStyle
public interface StatementFigures extends Serializable {
  /** {@return n, the number of parts} */
  long parts();

  /** {@return the cash for the first part} */
  AccountFigures firstPart();

  /** {@return the cash for the second part} */
  AccountFigures secondPart();

  /** {@return the cash for part n} */
  AccountFigures lastPart();

  /** {@return the cash for parts 1 to n} */
  AccountFigures allParts();

  /** {@return what one part uses up in the long run} */
  AccountFigures usage();

  /** {@return what was bought and is left; without lines if it is not valued} */
  AccountFigures leftovers();

  /** {@return the cash for parts 1 to n divided by n} */
  Sum average();

  /** {@return the cash for parts 1 to n less the leftovers, divided by n} */
  Sum averageLessLeftovers();

  /** {@return what is left of each resource after part n} */
  List<Stock> stocks();

  /** {@return the next part after n that makes packs necessary; empty if none will} */
  Optional<NextPurchase> nextPurchase();

  /** {@return what has to be ordered before the first part} */
  ShoppingFigures firstShoppingList();

  /** {@return what is ordered for all n parts} */
  ShoppingFigures shoppingList();

  /** {@return the rules by which it was counted, one sentence each} */
  List<String> rules();

  /** {@return what is left out or taken for granted} */
  List<Caveat> caveats();

  /**
   * The figures of a statement.
   *
   * @param statement the statement
   * @return its figures
   */
  static StatementFigures of(Statement statement) {
    return builder()
        .parts(statement.parts())
        .firstPart(AccountFigures.of(statement, statement.firstPart()))
        .secondPart(AccountFigures.of(statement, statement.secondPart()))
        .lastPart(AccountFigures.of(statement, statement.lastPart()))
        .allParts(AccountFigures.of(statement, statement.allParts()))
        .usage(AccountFigures.of(statement, statement.usage()))
        .leftovers(AccountFigures.of(statement, statement.leftovers()))
        .average(Sum.of(statement, statement.average()))
        .averageLessLeftovers(Sum.of(statement, statement.averageLessLeftovers()))
        .stocks(statement.stocks())
        .nextPurchase(statement.nextPurchase())
        .firstShoppingList(ShoppingFigures.of(statement, statement.firstShoppingList()))
        .shoppingList(ShoppingFigures.of(statement, statement.shoppingList()))
        .rules(statement.rules())
        .caveats(statement.caveats())
        .build();
  }

  /**
   * Starts some.
   *
   * @return a builder; all but stocks, next purchase, rules and caveats are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link StatementFigures} values. */
  final class Builder extends ImmutableStatementFigures.Builder {
    Builder() {}
  }
}
