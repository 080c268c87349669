package dev.kilnledger.costing.ledger;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.consumed;
import static dev.kilnledger.costing.ledger.FixturePlan.offer;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kilograms;
import static dev.kilnledger.units.Amounts.kilowattHours;
import static dev.kilnledger.units.Amounts.minutes;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.Amounts.seconds;

import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.resource.Aged;
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
  private static final int MINUTES = 90;
  private static final List<Driver> DRIVERS =
      List.of(
          Driver.PART,
          Driver.FIRING,
          Driver.GOOD_PART,
          Driver.DEBOUND_PART,
          Driver.SINTERED_PART,
          Driver.DEBINDING);

  private final int partsPerFiring;
  private final List<Driver> drivers = new ArrayList<>();
  private final List<Shelf> shelves = new ArrayList<>();
  private final List<Integer> cents = new ArrayList<>();
  private final List<Boolean> inPacks = new ArrayList<>();
  private final Production production;
  private final int shippingCents;

  /** What one resource does when a part is made. */
  private interface Shelf {
    /** Takes what is needed and returns how many packs, or measures, had to be bought. */
    long take();
  }

  /** A workshop where everything comes out good. */
  public Simulated(SplittableRandom random) {
    this(random, false);
  }

  /** A workshop, on demand one where parts and charges fail, and shipping is charged. */
  public Simulated(SplittableRandom random, boolean failing) {
    partsPerFiring = random.nextInt(1, 5);
    PriceBook.Builder book = PriceBook.builder().currency(CurrencyUnit.EUR).asOf(FixturePlan.TODAY);
    List<Resource> resources = new ArrayList<>();
    int count = random.nextInt(1, 7);
    for (int i = 0; i < count; i++) {
      String item = "item " + i;
      int price = random.nextInt(1, 10_000);
      cents.add(price);
      Driver driver =
          failing
              ? DRIVERS.get(random.nextInt(DRIVERS.size()))
              : random.nextBoolean() ? Driver.PART : Driver.FIRING;
      String euros = BigDecimal.valueOf(price, 2).toPlainString();
      Offer.Builder offer;
      boolean metered = false;
      switch (random.nextInt(failing ? 9 : 7)) {
        case 0 -> {
          boolean owned = random.nextBoolean();
          offer = offer(item, ratio(1), euros);
          resources.add(owned ? Durable.owned(item) : Durable.toBuy(item));
          shelves.add(driven(Driver.PART, durable(owned)));
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
          metered = true;
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
        case 7 -> {
          int life = random.nextInt(1, 20 * MINUTES);
          int left = random.nextInt(2) * random.nextInt(20 * MINUTES);
          boolean printing = random.nextBoolean();
          offer = offer(item, ratio(1), euros);
          resources.add(
              Wearing.builder()
                  .item(item)
                  .driver(printing ? Driver.PRINT_TIME : Driver.FIRING_TIME)
                  .life(minutes(life))
                  .usesLeft(seconds(60.0 * left))
                  .source(INVENTED)
                  .build());
          shelves.add(
              driven(
                  printing ? Driver.PART : Driver.FIRING,
                  joined(printing ? MINUTES : 2 * MINUTES, left, life)));
        }
        case 8 -> {
          int fill = random.nextInt(1, 3000);
          int cycles = random.nextInt(1, 9);
          int owned = random.nextInt(2) * random.nextInt(4000);
          int pack = random.nextInt(1, 3000);
          offer = offer(item, grams(pack), euros);
          resources.add(
              Aged.builder()
                  .item(item)
                  .fill(grams(fill))
                  .cycles(cycles)
                  .owned(grams(owned))
                  .source(INVENTED)
                  .build());
          shelves.add(driven(Driver.FIRING, aged(joined(fill, owned, pack), cycles)));
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
      inPacks.add(!metered);
    }
    production = new Production(random, failing, partsPerFiring);
    shippingCents = failing ? random.nextInt(2000) : 0;
    LedgerPlan.Builder builder =
        LedgerPlan.builder()
            .prices(book.build())
            .resources(resources)
            .partsPerFiring(partsPerFiring)
            .failures(production.failures());
    if (failing) {
      builder
          .putAmounts(Driver.PRINT_TIME, minutes(MINUTES))
          .putAmounts(Driver.FIRING_TIME, hours(2 * MINUTES / 60.0))
          .addShipping(
              offer("shipping", ratio(1), BigDecimal.valueOf(shippingCents, 2).toPlainString())
                  .build());
    }
    plan = builder.build();
  }

  /** Makes the next good part and returns what it costs, in cents. */
  public long nextPart() {
    production.nextGoodPart();
    long cost = 0;
    boolean ordered = false;
    for (int i = 0; i < shelves.size(); i++) {
      long events = production.newEvents(drivers.get(i));
      for (long event = 0; event < events; event++) {
        long packs = shelves.get(i).take();
        cost += cents.get(i) * packs;
        ordered |= packs > 0 && inPacks.get(i);
      }
    }
    // All that one part makes necessary comes in one order.
    return cost + (ordered ? shippingCents : 0);
  }

  private Shelf driven(Driver driver, Shelf shelf) {
    drivers.add(driver);
    return shelf;
  }

  private static Shelf aged(Shelf fresh, int cycles) {
    return new Shelf() {
      private int left;

      @Override
      public long take() {
        long bought = left == 0 ? fresh.take() : 0;
        left = (left == 0 ? cycles : left) - 1;
        return bought;
      }
    };
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
