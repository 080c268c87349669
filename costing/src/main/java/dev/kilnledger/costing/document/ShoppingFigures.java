package dev.kilnledger.costing.document;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.costing.ledger.ShoppingList;
import dev.kilnledger.costing.ledger.Statement;
import java.io.Serializable;
import java.util.List;
import org.immutables.value.Value;

/** A shopping list as it stands in an answer document. */
@Value.Immutable
@ValueStyle
public interface ShoppingFigures extends Serializable {
  /** {@return what is bought for} */
  @Value.Parameter
  String title();

  /** {@return the sum of the subtotals and the tax} */
  @Value.Parameter
  Sum total();

  /** {@return the groups} */
  @Value.Parameter
  List<ShoppingGroupFigures> groups();

  /** {@return the tax on the lines, one surcharge or none} */
  @Value.Parameter
  List<SurchargeFigures> tax();

  /**
   * A shopping list.
   *
   * @param title what is bought for
   * @param total the sum of the subtotals and the tax
   * @param groups the groups
   * @param tax the tax on the lines
   * @return the list
   */
  static ShoppingFigures of(
      String title, Sum total, List<ShoppingGroupFigures> groups, List<SurchargeFigures> tax) {
    return ImmutableShoppingFigures.of(title, total, groups, tax);
  }

  /**
   * The figures of a shopping list.
   *
   * @param statement the statement it belongs to, by whose rule it is rounded
   * @param list the list
   * @return its figures
   */
  static ShoppingFigures of(Statement statement, ShoppingList list) {
    return of(
        list.title(),
        Sum.of(statement, list.total()),
        list.groups().stream()
            .map(
                group ->
                    ShoppingGroupFigures.of(
                        group.name(),
                        Sum.of(statement, group.subtotal()),
                        group.lines().stream().map(LineFigures::of).toList()))
            .toList(),
        list.tax().stream().map(SurchargeFigures::of).toList());
  }
}
