package dev.kilnledger.costing.document;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Input;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.ledger.Entry;
import dev.kilnledger.costing.ledger.Line;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.immutables.value.Value;
import org.joda.money.BigMoney;

/** A line of an account as it stands in an answer document. */
@Value.Immutable
@ValueStyle
public interface LineFigures extends Serializable {
  /** {@return what the line stands for} */
  Entry entry();

  /** {@return the item} */
  String item();

  /** {@return who offers it} */
  String supplier();

  /** {@return the packs, a decimal of 34 digits where it has no end} */
  BigDecimal packs();

  /** {@return what one pack holds} */
  Amount<?> content();

  /** {@return the price of one pack} */
  BigMoney price();

  /** {@return price times packs} */
  BigMoney amount();

  /** {@return how the packs are counted, in the names of the inputs} */
  String formula();

  /** {@return the figures of the formula, each with its source} */
  List<Input> inputs();

  /** {@return the day on which the price was seen, if it is known} */
  Optional<LocalDate> date();

  /** {@return where the price was seen} */
  Source source();

  /**
   * The figures of a line.
   *
   * @param line the line
   * @return its figures
   */
  static LineFigures of(Line line) {
    return builder()
        .entry(line.entry())
        .item(line.item())
        .supplier(line.offer().supplier())
        .packs(line.packs())
        .content(line.offer().content())
        .price(line.price())
        .amount(line.amount())
        .formula(line.formula())
        .inputs(line.inputs())
        .date(line.offer().date())
        .source(line.offer().source())
        .build();
  }

  /**
   * Starts some.
   *
   * @return a builder; all but inputs and date are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link LineFigures} values. */
  final class Builder extends ImmutableLineFigures.Builder {
    Builder() {}
  }
}
