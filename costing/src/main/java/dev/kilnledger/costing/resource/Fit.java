package dev.kilnledger.costing.resource;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Whether offer and stock are what a resource needs, in words. */
final class Fit {
  private Fit() {}

  /** For what is measured: the offer's content has to be of the same kind. */
  static List<String> measured(Offer offer, Kind<?> kind) {
    return offer.content().kind().equals(kind)
        ? List.of()
        : List.of(
            offer.item()
                + " is sold as "
                + offer.content()
                + ", which measures "
                + offer.content().kind()
                + "; accepted is a measure of "
                + kind
                + ", in which it is used");
  }

  /** For equipment: whole packs of pieces. */
  static List<String> pieces(Offer offer) {
    List<String> mismatches = new ArrayList<>();
    if (!offer.content().kind().equals(Kind.RATIO)) {
      mismatches.add(
          offer.item()
              + " is sold as "
              + offer.content()
              + ", which measures "
              + offer.content().kind()
              + "; accepted is a number of pieces");
    }
    if (offer.metered()) {
      mismatches.add(offer.item() + " is sold by measure; accepted are whole packs");
    }
    return List.copyOf(mismatches);
  }

  /** What is owned has to be of the kind in which it is used. */
  static void owned(Optional<Amount<?>> owned, String where, Amount<?> used, Problems problems) {
    owned.ifPresent(
        stock ->
            problems
                .notNegative("owned", stock)
                .require(
                    stock.kind().equals(used.kind()),
                    "owned is "
                        + stock
                        + " and the "
                        + where
                        + " "
                        + used
                        + "; accepted is a measure of "
                        + used.kind()));
  }

  /** A life is counted in its driver's events, or measured as its driver is. */
  static void life(Driver driver, Amount<?> life, String where, Problems problems) {
    if (!life.kind().equals(driver.kind())) {
      problems.require(
          false,
          where
              + " is "
              + life
              + "; accepted is "
              + (driver.isMeasured()
                  ? "a measure of " + driver.kind()
                  : "a number of " + driver.word() + "s"));
    } else if (driver.isMeasured()) {
      problems.positive(where, life);
    } else {
      problems.require(life.si() >= 1, where + " is " + life + "; accepted is 1 or more");
    }
  }
}
