package dev.kilnledger.examples.report;

import dev.kilnledger.costing.job.JobAnswer;
import dev.kilnledger.costing.ledger.Statement;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.resource.Stock;
import dev.kilnledger.units.Kind;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.jsoup.nodes.Element;

/** What is left after the last part, and what is bought from whom. */
final class PurchaseTables {
  private PurchaseTables() {}

  static void write(Element section, JobAnswer answer) {
    Statement statement = answer.statement();
    Table left =
        new Table(
            section,
            "left after part " + statement.parts(),
            "item",
            "#left",
            "#next bought for part");
    for (Stock stock : statement.stocks()) {
      left.row(
          stock.item(),
          stock.text(),
          stock.nextPurchase().map(part -> Long.toString(part)).orElse("never"));
    }
    prices(section, statement);
  }

  private static void prices(Element section, Statement statement) {
    Table table =
        new Table(
            section,
            "prices as of " + statement.plan().prices().asOf(),
            "item",
            "price",
            "supplier, date, source");
    List<Offer> offers =
        Stream.concat(
                statement.plan().resources().stream().map(statement.plan()::offerOf),
                statement.plan().shipping().stream())
            .distinct()
            .toList();
    for (Offer offer : offers) {
      table.row(
          offer.item(),
          content(offer) + " at " + offer.price(),
          offer.supplier()
              + ", "
              + offer.date().map(LocalDate::toString).orElse("no date")
              + ", "
              + offer.source().cite());
    }
  }

  static String content(Offer offer) {
    return offer.content().kind().equals(Kind.RATIO)
        ? offer.content() + (offer.content().si() == 1 ? " piece" : " pieces")
        : offer.content().toString();
  }
}
