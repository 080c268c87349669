package dev.kilnledger.costing.ledger;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.consumed;
import static dev.kilnledger.costing.ledger.FixturePlan.offer;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.kilograms;
import static dev.kilnledger.units.Amounts.kilowattHours;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;

import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Durable;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.costing.resource.RunDown;
import dev.kilnledger.costing.resource.Tails;
import dev.kilnledger.costing.resource.ToppedUp;
import dev.kilnledger.costing.resource.Wearing;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.IntSupplier;
import org.joda.money.CurrencyUnit;

/**
 * A random plan and, beside it, a workshop that makes its parts one by one with things that are
 * taken from a shelf: the independent check of the closed forms.
 */
public final class Simulated {
  public final LedgerPlan plan;
  private final int partsPerFiring;
  private final List<Shelf> shelves = new ArrayList<>();
  private final List<Integer> cents = new ArrayList<>();
  private long parts;

  /** What one resource does when a part is made. */
  private interface Shelf {
    /** Takes what is needed and returns how many packs, or measures, had to be bought. */
    long take();
  }

  public Simulated(SplittableRandom random) {
    partsPerFiring = random.nextInt(1, 5);
    PriceBook.Builder book = PriceBook.builder().currency(CurrencyUnit.EUR).asOf(FixturePlan.TODAY);
    List<Resource> resources = new ArrayList<>();
    int count = random.nextInt(1, 7);
    for (int i = 0; i < count; i++) {
      String item = "item " + i;
      int price = random.nextInt(1, 10_000);
      cents.add(price);
      Driver driver = random.nextBoolean() ? Driver.PART : Driver.FIRING;
      String euros = BigDecimal.valueOf(price, 2).toPlainString();
      Offer.Builder offer;
      switch (random.nextInt(7)) {
        case 0 -> {
          boolean owned = random.nextBoolean();
          offer = offer(item, ratio(1), euros);
          resources.add(owned ? Durable.owned(item) : Durable.toBuy(item));
          shelves.add(durable(owned));
        }
        case 1 -> {
          int life = random.nextInt(1, 20);
          int usesLeft = random.nextInt(3) * random.nextInt(10);
          int pieces = random.nextInt(1, 4);
          offer = offer(item, ratio(pieces), euros);
          resources.add(
              Wearing.builder()
                  .item(item)
                  .driver(driver)
                  .life(life)
                  .usesLeft(usesLeft)
                  .source(INVENTED)
                  .build());
          shelves.add(driven(driver, wearing(life, usesLeft, pieces)));
        }
        case 2 -> {
          int fill = 100 * random.nextInt(1, 30);
          int loss = random.nextInt(0, 101);
          int owned = random.nextInt(2) * random.nextInt(4000);
          int pack = random.nextInt(1, 3000);
          offer = offer(item, grams(pack), euros);
          resources.add(
              ToppedUp.builder()
                  .item(item)
                  .fill(grams(fill))
                  .loss(percent(loss))
                  .owned(kilograms(owned / 1000.0))
                  .source(INVENTED)
                  .build());
          shelves.add(driven(Driver.FIRING, toppedUp(fill, loss, owned, pack)));
        }
        case 3 -> {
          int fill = random.nextInt(1, 3000);
          int loss = random.nextInt(1, 90);
          int minimum = random.nextInt(1, 101);
          int owned = random.nextInt(2) * random.nextInt(4000);
          int pack = random.nextInt(1, 3000);
          offer = offer(item, grams(pack), euros);
          resources.add(
              RunDown.builder()
                  .item(item)
                  .fill(grams(fill))
                  .loss(percent(loss))
                  .minimum(percent(minimum))
                  .owned(grams(owned))
                  .source(INVENTED)
                  .build());
          shelves.add(driven(Driver.FIRING, runDown(fill, loss, minimum, owned, pack)));
        }
        case 4 -> {
          int quantity = random.nextInt(1, 100);
          offer = offer(item, kilowattHours(1), euros).metered(true);
          resources.add(consumed(item, driver, kilowattHours(quantity)).build());
          shelves.add(driven(driver, () -> quantity));
        }
        case 5 -> {
          int quantity = random.nextInt(1, 500);
          int pack = quantity + random.nextInt(3000);
          int owned = random.nextInt(2) * random.nextInt(4000);
          offer = offer(item, grams(pack), euros);
          resources.add(
              consumed(item, driver, grams(quantity))
                  .tails(Tails.STRANDED)
                  .owned(grams(owned))
                  .build());
          shelves.add(driven(driver, stranded(quantity, owned, pack)));
        }
        default -> {
          int quantity = random.nextInt(1, 2000);
          int pack = random.nextInt(1, 3000);
          int owned = random.nextInt(2) * random.nextInt(4000);
          offer = offer(item, grams(pack), euros);
          resources.add(
              consumed(item, driver, kilograms(quantity / 1000.0)).owned(grams(owned)).build());
          shelves.add(driven(driver, joined(quantity, owned, pack)));
        }
      }
      book.addOffers(offer.build());
    }
    plan =
        LedgerPlan.builder()
            .prices(book.build())
            .resources(resources)
            .partsPerFiring(partsPerFiring)
            .build();
  }

  /** Makes the next part and returns what it costs, in cents. */
  public long nextPart() {
    parts++;
    long cost = 0;
    for (int i = 0; i < shelves.size(); i++) {
      cost += cents.get(i) * shelves.get(i).take();
    }
    return cost;
  }

  private Shelf driven(Driver driver, Shelf shelf) {
    return driver == Driver.PART
        ? shelf
        : () -> (parts - 1) % partsPerFiring == 0 ? shelf.take() : 0;
  }

  private static Shelf durable(boolean owned) {
    return new Shelf() {
      private boolean there = owned;

      @Override
      public long take() {
        long bought = there ? 0 : 1;
        there = true;
        return bought;
      }
    };
  }

  private static Shelf wearing(int life, int usesLeft, int pieces) {
    return new Shelf() {
      private int uses = usesLeft;
      private int spare;

      @Override
      public long take() {
        long bought = 0;
        if (uses == 0) {
          if (spare == 0) {
            bought = 1;
            spare = pieces;
          }
          spare--;
          uses = life;
        }
        uses--;
        return bought;
      }
    };
  }

  private static Shelf toppedUp(int fill, int loss, int owned, int pack) {
    return new Shelf() {
      private final Shelf shelf = joinedBy(() -> fill - inCrucible(), owned, pack);
      private int inCrucible;

      private int inCrucible() {
        return inCrucible;
      }

      @Override
      public long take() {
        long bought = shelf.take();
        inCrucible = fill - fill * loss / 100;
        return bought;
      }
    };
  }

  private static Shelf runDown(int fill, int loss, int minimum, int owned, int pack) {
    return new Shelf() {
      private final Shelf shelf = joined(fill, owned, pack);
      private final BigDecimal kept = BigDecimal.valueOf(100L - loss, 2);
      private BigDecimal share = BigDecimal.ZERO;

      @Override
      public long take() {
        long bought = 0;
        if (share.signum() == 0 || share.compareTo(BigDecimal.valueOf(minimum, 2)) < 0) {
          bought = shelf.take();
          share = BigDecimal.ONE;
        }
        share = share.multiply(kept);
        return bought;
      }
    };
  }

  private static Shelf stranded(int quantity, int owned, int pack) {
    return new Shelf() {
      private int spool = owned;

      @Override
      public long take() {
        long bought = 0;
        if (spool < quantity) {
          spool = pack;
          bought = 1;
        }
        spool -= quantity;
        return bought;
      }
    };
  }

  private static Shelf joined(int quantity, int owned, int pack) {
    return joinedBy(() -> quantity, owned, pack);
  }

  private static Shelf joinedBy(IntSupplier quantity, int owned, int pack) {
    return new Shelf() {
      private int there = owned;

      @Override
      public long take() {
        long bought = 0;
        while (there < quantity.getAsInt()) {
          there += pack;
          bought++;
        }
        there -= quantity.getAsInt();
        return bought;
      }
    };
  }
}
