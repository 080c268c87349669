package dev.kilnledger.costing.explanation;

import dev.kilnledger.core.explanation.Explanation;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.offer.PriceBreak;
import dev.kilnledger.costing.purchase.Covered;
import dev.kilnledger.costing.purchase.Delivery;
import dev.kilnledger.costing.purchase.Purchase;
import dev.kilnledger.costing.purchase.PurchasePlan;
import java.util.ArrayList;
import java.util.List;

/** Opens a purchase plan: packs and prices of each purchase, the needs, and what sending costs. */
public final class PurchaseExplainer {
  private static final Source NEED = Source.user("the need as stated");
  private static final Source COVER = Source.recomputed("exact search for the cheapest cover");
  private static final PurchaseExplainer STANDARD = new PurchaseExplainer();

  private PurchaseExplainer() {}

  /** {@return the explainer} */
  public static PurchaseExplainer standard() {
    return STANDARD;
  }

  /**
   * Opens the total of a plan.
   *
   * @param plan the plan
   * @return the total, standing on purchases and deliveries
   */
  public Explanation total(PurchasePlan plan) {
    List<Explanation> lines = new ArrayList<>();
    plan.purchases().forEach(purchase -> lines.add(purchase(purchase, plan)));
    plan.deliveries().forEach(delivery -> lines.add(delivery(delivery)));
    return MoneyNode.of("purchases", plan.total())
        .condition("at the prices of " + plan.asOf())
        .formula("sum of the lines")
        .source(COVER)
        .children(lines)
        .build();
  }

  private static Explanation purchase(Purchase purchase, PurchasePlan plan) {
    List<Explanation> from = new ArrayList<>();
    from.add(
        Explanation.builder()
            .what("packs")
            .value(purchase.packs())
            .formula("of the cheapest cover of the need")
            .source(COVER)
            .children(needs(purchase, plan))
            .build());
    from.add(MoneyNode.price(purchase.offer()));
    for (PriceBreak step : purchase.offer().breaks()) {
      from.add(
          MoneyNode.given(
              "price from " + step.fromPacks() + " packs",
              step.price(),
              purchase.offer().source()));
    }
    return MoneyNode.of(purchase.offer().item(), purchase.cost())
        .condition("from " + purchase.offer().supplier())
        .formula(
            purchase.offer().breaks().isEmpty()
                ? "packs x price"
                : "packs by their price, " + purchase.offer().breakRule().words())
        .children(from)
        .build();
  }

  private static List<Explanation> needs(Purchase purchase, PurchasePlan plan) {
    List<Explanation> needs = new ArrayList<>();
    for (Covered covered : plan.covered()) {
      if (covered.need().item().equals(purchase.offer().item())) {
        needs.add(Explanation.given("need", covered.need().amount(), NEED));
        needs.add(Explanation.given("surplus", covered.surplus(), COVER));
      }
    }
    return needs;
  }

  private static Explanation delivery(Delivery delivery) {
    List<Explanation> from = new ArrayList<>();
    from.add(MoneyNode.given("charge", delivery.terms().charge(), delivery.terms().source()));
    delivery
        .terms()
        .freeFrom()
        .ifPresent(
            value -> from.add(MoneyNode.given("free from", value, delivery.terms().source())));
    from.add(
        MoneyNode.given(
            "goods", delivery.goods(), Source.recomputed("sum of the purchases there")));
    return MoneyNode.of("shipping by " + delivery.terms().supplier(), delivery.charge())
        .formula(
            delivery.terms().freeFrom().isPresent()
                ? "charge, or nothing where goods reach free from"
                : "charge")
        .children(from)
        .build();
  }
}
