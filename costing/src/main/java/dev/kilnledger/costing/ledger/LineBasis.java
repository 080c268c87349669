package dev.kilnledger.costing.ledger;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Input;
import dev.kilnledger.costing.offer.Offer;
import java.io.Serializable;
import java.util.List;
import org.immutables.value.Value;
import org.joda.money.BigMoney;

/** What a line of an account says beside its count: the same for any number of parts. */
@Value.Immutable
@ValueStyle
public interface LineBasis extends Serializable {
  /** {@return what the line stands for} */
  @Value.Parameter
  Entry entry();

  /** {@return the offer that is paid, with pack content, price and source} */
  @Value.Parameter
  Offer offer();

  /** {@return what is paid for one pack: the price of the offer, or that of one of its breaks} */
  @Value.Parameter
  BigMoney price();

  /** {@return how the packs are counted, in the names of {@link #inputs}} */
  @Value.Parameter
  String formula();

  /** {@return the figures of the formula, each with its source} */
  @Value.Parameter
  List<Input> inputs();

  /**
   * A basis.
   *
   * @param entry what the line stands for
   * @param offer the offer that is paid
   * @param price what is paid for one pack
   * @param formula how the packs are counted
   * @param inputs the figures of the formula
   * @return the basis
   */
  static LineBasis of(
      Entry entry, Offer offer, BigMoney price, String formula, List<Input> inputs) {
    return ImmutableLineBasis.of(entry, offer, price, formula, inputs);
  }
}
