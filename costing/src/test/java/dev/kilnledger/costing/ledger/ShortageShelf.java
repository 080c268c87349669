package dev.kilnledger.costing.ledger;

import dev.kilnledger.costing.offer.Offer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A shelf of one item that is filled, use by use, by trying out every order that could help. */
final class ShortageShelf {
  private final List<Offer> offers;
  private final long[] available;
  private final Map<List<Long>, long[]> known = new HashMap<>();
  private long there;

  ShortageShelf(List<Offer> offers, long owned) {
    this.offers = offers;
    this.there = owned;
    this.available =
        offers.stream().mapToLong(offer -> offer.available().orElse(Long.MAX_VALUE)).toArray();
  }

  /** Takes a quantity and returns the packs that have to be bought of each offer. */
  long[] take(long quantity) {
    long[] bought = new long[offers.size()];
    if (there < quantity) {
      bought = cheapest(quantity - there);
      for (int i = 0; i < bought.length; i++) {
        there += bought[i] * RandomMarket.content(offers.get(i));
        if (offers.get(i).available().isPresent()) {
          available[i] -= bought[i];
        }
      }
    }
    there -= quantity;
    return bought;
  }

  /** What is left of what was taken from it, put back. */
  void putBack(long quantity) {
    there += quantity;
  }

  long there() {
    return there;
  }

  private long[] cheapest(long shortage) {
    List<Long> key = new ArrayList<>(List.of(shortage));
    Arrays.stream(available).forEach(key::add);
    return known.computeIfAbsent(key, missing -> new Search(shortage).best);
  }

  private final class Search {
    private final long shortage;
    private long[] bestKey = new long[0];
    private long[] best = new long[0];

    Search(long shortage) {
      this.shortage = shortage;
      visit(0, new long[offers.size()], 0, 0);
    }

    private void visit(int index, long[] counts, long content, long cost) {
      if (index == counts.length) {
        if (content >= shortage) {
          long[] key = new long[3 + counts.length];
          key[0] = cost;
          key[1] = content;
          key[2] = Arrays.stream(counts).sum();
          for (int i = 0; i < counts.length; i++) {
            key[3 + i] = -counts[i];
          }
          if (bestKey.length == 0 || Arrays.compare(key, bestKey) < 0) {
            bestKey = key;
            best = counts.clone();
          }
        }
        return;
      }
      Offer offer = offers.get(index);
      // Enough to cover alone and to reach every break.
      long most =
          shortage / RandomMarket.content(offer)
              + 1
              + offer.minimumOrder()
              + offer.orderIncrement()
              + (offer.breaks().isEmpty() ? 0 : 10);
      for (long packs = 0; packs <= most; packs++) {
        long price = RandomMarket.cost(offer, packs, available[index]);
        if (price >= 0) {
          counts[index] = packs;
          visit(index + 1, counts, content + packs * RandomMarket.content(offer), cost + price);
        }
      }
      counts[index] = 0;
    }
  }
}
