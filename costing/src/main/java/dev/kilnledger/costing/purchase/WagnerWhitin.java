package dev.kilnledger.costing.purchase;

import dev.kilnledger.units.Amount;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import javax.measure.Quantity;
import org.joda.money.BigMoney;

/**
 * The cheapest orders for a known demand, by the dynamic program of H. M. Wagner and T. M. Whitin,
 * Dynamic version of the economic lot size model, Management Science 5 (1958) 89 (from memory): an
 * order is placed only when nothing is left, and covers whole periods. The stock that is carried
 * into the next period is charged; the use of the period itself is not. Exact; the time grows with
 * the square of the periods. Among equally cheap plans the one whose orders reach furthest, counted
 * from the last, is taken.
 */
public final class WagnerWhitin {
  private static final WagnerWhitin STANDARD = new WagnerWhitin();

  private WagnerWhitin() {}

  /** {@return the planner} */
  public static WagnerWhitin standard() {
    return STANDARD;
  }

  /**
   * The cheapest orders.
   *
   * @param sizing demand and costs
   * @return the orders, none of them for nothing
   */
  public LotPlan plan(LotSizing sizing) {
    int periods = sizing.demand().size();
    List<BigDecimal> demand =
        sizing.demand().stream()
            .map(
                amount ->
                    Market.si(amount).divide(Market.si(sizing.measure()), MathContext.DECIMAL128))
            .toList();
    BigDecimal hold = sizing.holdingCost().getAmount();
    BigDecimal[] least = new BigDecimal[periods + 1];
    int[] firsts = new int[periods + 1];
    least[0] = BigDecimal.ZERO;
    for (int last = 1; last <= periods; last++) {
      BigDecimal held = BigDecimal.ZERO;
      BigDecimal used = BigDecimal.ZERO;
      BigDecimal best = least[last - 1];
      int bestFirst = 0; // nothing is ordered for a period without demand
      boolean found = demand.get(last - 1).signum() == 0;
      for (int first = last; first >= 1 && reaches(sizing, first, last); first--) {
        held = held.add(used);
        used = used.add(demand.get(first - 1));
        BigDecimal cost =
            least[first - 1].add(sizing.orderCost().getAmount()).add(held.multiply(hold));
        if (!found || cost.compareTo(best) < 0 || (bestFirst > 0 && cost.compareTo(best) == 0)) {
          best = cost;
          bestFirst = first;
          found = true;
        }
      }
      least[last] = best;
      firsts[last] = bestFirst;
    }
    return LotPlan.of(sizing.orderCost().getCurrencyUnit(), lots(sizing, demand, firsts));
  }

  private static boolean reaches(LotSizing sizing, int first, int last) {
    return sizing.longestCover().filter(most -> last - first + 1 > most).isEmpty();
  }

  private static List<Lot> lots(LotSizing sizing, List<BigDecimal> demand, int[] firsts) {
    Deque<Lot> lots = new ArrayDeque<>();
    for (int last = demand.size(); last > 0; ) {
      int first = firsts[last];
      if (first == 0) {
        last--;
        continue;
      }
      BigDecimal quantity = BigDecimal.ZERO;
      BigDecimal held = BigDecimal.ZERO;
      for (int period = first; period <= last; period++) {
        quantity = quantity.add(demand.get(period - 1));
        held = held.add(demand.get(period - 1).multiply(BigDecimal.valueOf(period - first)));
      }
      lots.addFirst(
          Lot.builder()
              .first(first)
              .last(last)
              .quantity(times(sizing.measure(), quantity))
              .orderCost(sizing.orderCost())
              .holdingCost(
                  BigMoney.of(
                      sizing.holdingCost().getCurrencyUnit(),
                      sizing.holdingCost().getAmount().multiply(held)))
              .build());
      last = first - 1;
    }
    return new ArrayList<>(lots);
  }

  private static <Q extends Quantity<Q>> Amount<Q> times(Amount<Q> measure, BigDecimal factor) {
    double number = measure.decimalIn(measure.getUnit()).multiply(factor).doubleValue();
    return Amount.of(number, measure.getUnit(), measure.kind());
  }
}
