package dev.kilnledger.examples.catalogue;

import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.units.Amount;
import java.util.List;
import javax.measure.quantity.Mass;
import org.joda.money.BigMoney;

/**
 * What a part of the catalogue costs, and whether it will come out.
 *
 * @param filament what it takes of filament
 * @param firstPart what the first one costs where everything has to be bought
 * @param usage what one uses up in the long run
 * @param worst the worst of the findings
 * @param codes the codes of the findings of that severity; empty where all passed
 */
public record PricedRow(
    Amount<Mass> filament,
    BigMoney firstPart,
    BigMoney usage,
    Severity worst,
    List<String> codes) {}
