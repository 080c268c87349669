package dev.kilnledger.costing.document;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.util.List;
import org.immutables.value.Value;

/** What is ordered of one group of items, as it stands in an answer document. */
@Value.Immutable
@ValueStyle
public interface ShoppingGroupFigures extends Serializable {
  /** {@return the name of the group} */
  @Value.Parameter
  String name();

  /** {@return the sum of the lines} */
  @Value.Parameter
  Sum subtotal();

  /** {@return the lines} */
  @Value.Parameter
  List<LineFigures> lines();

  /**
   * A group.
   *
   * @param name its name
   * @param subtotal the sum of the lines
   * @param lines the lines
   * @return the group
   */
  static ShoppingGroupFigures of(String name, Sum subtotal, List<LineFigures> lines) {
    return ImmutableShoppingGroupFigures.of(name, subtotal, lines);
  }
}
