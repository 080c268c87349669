package dev.kilnledger.costing.accounting;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.immutables.value.Value;
import org.joda.money.Money;

/** What an asset is charged year by year; its book value never falls below the salvage value. */
@Value.Immutable
@ValueStyle
public interface DepreciationSchedule extends Serializable {
  /** {@return the asset} */
  @Value.Parameter
  Asset asset();

  /** {@return the method with its formula} */
  @Value.Parameter
  String method();

  /** {@return the years} */
  @Value.Parameter
  List<DepreciationYear> years();

  /**
   * A schedule of charges, each cut where the salvage value is reached.
   *
   * @param asset the asset
   * @param method the method with its formula
   * @param charges what the method asks of each year
   * @return the schedule
   */
  static DepreciationSchedule of(Asset asset, String method, List<Money> charges) {
    List<DepreciationYear> years = new ArrayList<>();
    Money bookValue = asset.cost();
    for (Money charge : charges) {
      Money most = bookValue.minus(asset.salvage());
      Money charged = charge.isGreaterThan(most) ? most : charge;
      bookValue = bookValue.minus(charged);
      years.add(DepreciationYear.of(years.size() + 1, charged, bookValue));
    }
    return ImmutableDepreciationSchedule.of(asset, method, years);
  }
}
