package dev.kilnledger.examples;

import static dev.kilnledger.units.Amounts.cubicCentimetres;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.TradeUnits.GRAM;
import static dev.kilnledger.units.TradeUnits.ONE;
import static org.joda.money.CurrencyUnit.EUR;

import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.core.part.MassBalancePassage;
import dev.kilnledger.core.part.Part;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.ledger.Ledger;
import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.resource.Consumed;
import dev.kilnledger.costing.resource.Driver;
import java.time.LocalDate;
import org.joda.money.Money;

/** The first program of the README: how large to print a part, and what it costs in filament. */
public final class FirstProgram {
  private FirstProgram() {}

  /**
   * Prints three lines.
   *
   * @param arguments none
   */
  public static void main(String[] arguments) {
    // spotless:off
    var copper = MaterialLibrary.standard().feedstock("copper in polylactide, generic");
    var knob = Part.builder().name("knob").finishedVolume(cubicCentimetres(3))
        .envelope(Envelope.of(millimetres(24), millimetres(24), millimetres(12)))
        .thickestSection(millimetres(6)).build();
    var passage = MassBalancePassage.standard().passage(knob, copper);
    var spool = Offer.builder().item("filament").supplier("invented").content(grams(500))
        .price(Money.of(EUR, 60)).source(Source.user("invented")).build();
    var use = Consumed.builder().item("filament").driver(Driver.PART)
        .quantity(passage.filamentMass()).source(Source.recomputed("the passage")).build();
    var plan = LedgerPlan.builder().partsPerFiring(1).addResources(use).prices(PriceBook.builder()
        .currency(EUR).asOf(LocalDate.of(2026, 11, 25)).addOffers(spool).build()).build();
    var cost = Ledger.standard().statement(plan, 20);
    System.out.println("print it " + passage.oversize().x().expected().format(ONE, 3) + " times as large");
    System.out.println("filament: " + passage.filamentMass().format(GRAM, 1) + " a part, first part "
        + cost.money(cost.firstPart().total()) + ", in the long run " + cost.money(cost.usage().total()));
    // spotless:on
  }
}
