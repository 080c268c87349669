package dev.kilnledger.costing.document;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.costing.ledger.Account;
import dev.kilnledger.costing.ledger.Statement;
import java.io.Serializable;
import java.util.List;
import org.immutables.value.Value;

/** An account as it stands in an answer document: a sum and the lines it is the sum of. */
@Value.Immutable
@ValueStyle
public interface AccountFigures extends Serializable {
  /** {@return what is summed up} */
  @Value.Parameter
  String title();

  /** {@return the sum of lines and surcharges} */
  @Value.Parameter
  Sum total();

  /** {@return the lines} */
  @Value.Parameter
  List<LineFigures> lines();

  /** {@return overhead and tax on the lines} */
  @Value.Parameter
  List<SurchargeFigures> surcharges();

  /**
   * An account.
   *
   * @param title what is summed up
   * @param total the sum of lines and surcharges
   * @param lines the lines
   * @param surcharges overhead and tax on the lines
   * @return the account
   */
  static AccountFigures of(
      String title, Sum total, List<LineFigures> lines, List<SurchargeFigures> surcharges) {
    return ImmutableAccountFigures.of(title, total, lines, surcharges);
  }

  /**
   * The figures of an account.
   *
   * @param statement the statement it belongs to, by whose rule it is rounded
   * @param account the account
   * @return its figures
   */
  static AccountFigures of(Statement statement, Account account) {
    return of(
        account.title(),
        Sum.of(statement, account.total()),
        account.lines().stream().map(LineFigures::of).toList(),
        account.surcharges().stream().map(SurchargeFigures::of).toList());
  }
}
