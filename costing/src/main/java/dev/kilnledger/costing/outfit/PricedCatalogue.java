package dev.kilnledger.costing.outfit;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.offer.PriceCheck;
import dev.kilnledger.costing.offer.ShippingTerms;
import dev.kilnledger.costing.offer.Tax;
import dev.kilnledger.costing.purchase.Need;
import dev.kilnledger.costing.purchase.PurchasePlanner;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** What is bought for each option of a catalogue: whole packs, the cheapest, each for itself. */
final class PricedCatalogue {
  /** What the lines of the starter are bought for. */
  static final String STARTER = "for the first part";

  final List<List<OutfitLine>> lines = new ArrayList<>();
  final List<OutfitLine> starter;
  private final PriceBook prices;

  PricedCatalogue(OutfitQuestion question, Problems problems) {
    prices = question.prices();
    PriceBook goods = PriceBook.builder().from(prices).shipping(List.of()).build();
    for (Option option : question.catalogue().options()) {
      lines.add(option.owned() ? List.of() : lines(goods, option.name(), option.toBuy(), problems));
    }
    starter = lines(goods, STARTER, question.starter(), problems);
    List<Tax> bases =
        Stream.concat(lines.stream().flatMap(List::stream), starter.stream())
            .map(line -> line.purchase().offer().tax())
            .toList();
    problems.require(
        !bases.contains(Tax.INCLUDED) || !bases.contains(Tax.EXCLUDED),
        "some prices hold the tax and others do not; accepted is a price book on one basis");
  }

  private static List<OutfitLine> lines(
      PriceBook goods, String option, List<Need> needs, Problems problems) {
    if (needs.isEmpty()) {
      return List.of();
    }
    try {
      return PurchasePlanner.standard().plan(goods, needs).purchases().stream()
          .map(purchase -> OutfitLine.of(option, purchase))
          .toList();
    } catch (IllegalArgumentException e) {
      problems.require(false, option + ": " + e.getMessage());
      return List.of();
    }
  }

  /** The cost of each option in minor units. */
  long[] costs() {
    return lines.stream().mapToLong(PricedCatalogue::cost).toArray();
  }

  static long cost(List<OutfitLine> lines) {
    return lines.stream().mapToLong(line -> line.paid().getAmountMinorLong()).sum();
  }

  /** What deserves attention about the prices of some lines, and what their senders ask. */
  List<Finding> findings(List<OutfitLine> bought) {
    List<Offer> offers = bought.stream().map(line -> line.purchase().offer()).distinct().toList();
    List<Finding> findings = new ArrayList<>(PriceCheck.standard().offers(prices, offers));
    offers.stream()
        .filter(offer -> !offer.metered())
        .map(Offer::supplier)
        .distinct()
        .flatMap(supplier -> prices.shippingOf(supplier).stream())
        .filter(terms -> terms.charge().isPositive())
        .forEach(terms -> findings.add(sending(terms)));
    return findings;
  }

  private static Finding sending(ShippingTerms terms) {
    return Finding.builder()
        .code(OutfitFinding.SHIPPING)
        .severity(Severity.NOTE)
        .subject(terms.supplier())
        .message("sending is not in the cost of the outfit: " + terms.text())
        .basis(Source.user("the terms as they were entered"))
        .build();
  }
}
