package dev.kilnledger.costing.ledger;

import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBreak;
import dev.kilnledger.costing.offer.ShippingTerms;
import java.util.ArrayList;
import java.util.List;

/**
 * The least that needs of several items cost, goods and shipping, by depth-first branch and bound
 * over the packs of each offer (A. H. Land and A. G. Doig, An automatic method of solving discrete
 * programming problems, Econometrica 28 (1960) 497; from memory). What is still lacking is bounded
 * by the lowest price per content; shipping is counted when all packs are chosen.
 */
final class BranchAndBound {
  private final List<Long> needs;
  private final List<Offer> offers = new ArrayList<>();
  private final List<Integer> itemOf = new ArrayList<>();
  private final List<ShippingTerms> terms;
  private final double[] rates;
  private long best = Long.MAX_VALUE;

  BranchAndBound(List<Long> needs, List<List<Offer>> offers, List<ShippingTerms> terms) {
    this.needs = needs;
    this.terms = terms;
    this.rates = new double[needs.size()];
    for (int i = 0; i < needs.size(); i++) {
      rates[i] = Double.MAX_VALUE;
      for (Offer offer : offers.get(i)) {
        this.offers.add(offer);
        itemOf.add(i);
        double lowest = offer.price().getAmount().doubleValue();
        for (PriceBreak step : offer.breaks()) {
          lowest = step.price().getAmount().doubleValue();
        }
        rates[i] = Math.min(rates[i], lowest / RandomMarket.content(offer));
      }
    }
  }

  long least() {
    visit(0, new long[offers.size()], new long[needs.size()], 0);
    return best;
  }

  private void visit(int index, long[] packs, long[] contents, long cost) {
    double bound = cost;
    for (int i = 0; i < contents.length; i++) {
      long lacking = Math.max(0, needs.get(i) - contents[i]);
      if (lacking > 0 && (index == packs.length || itemOf.get(index) > i)) {
        return;
      }
      bound += lacking * rates[i];
    }
    // No price is fractional, so that nothing is lost to the rounding of the bound.
    if (best < Long.MAX_VALUE && Math.ceil(bound - 1e-6) >= best) {
      return;
    }
    if (index == packs.length) {
      best = Math.min(best, cost + shipping(packs));
      return;
    }
    Offer offer = offers.get(index);
    int item = itemOf.get(index);
    long content = RandomMarket.content(offer);
    long cover = Math.max(0, needs.get(item) - contents[item] + content - 1) / content;
    // Enough to cover what lacks, to reach every break, and to spend what a charge could save.
    long most = cover + offer.minimumOrder() + offer.orderIncrement() + 10 + 8;
    for (long some = most; some >= 0; some--) {
      long price = RandomMarket.cost(offer, some, offer.available().orElse(Long.MAX_VALUE));
      if (price >= 0) {
        packs[index] = some;
        contents[item] += some * content;
        visit(index + 1, packs, contents, cost + price);
        contents[item] -= some * content;
      }
    }
    packs[index] = 0;
  }

  private long shipping(long[] packs) {
    long charges = 0;
    for (ShippingTerms one : terms) {
      long goods = 0;
      boolean ordered = false;
      for (int i = 0; i < packs.length; i++) {
        if (offers.get(i).supplier().equals(one.supplier())) {
          goods += RandomMarket.cost(offers.get(i), packs[i], Long.MAX_VALUE);
          ordered |= packs[i] > 0;
        }
      }
      long value = goods;
      boolean free =
          one.freeFrom().filter(from -> from.getAmount().longValueExact() <= value).isPresent();
      charges += ordered && !free ? one.charge().getAmount().longValueExact() : 0;
    }
    return charges;
  }
}
