package dev.kilnledger.costing.comparison;

import dev.kilnledger.core.explanation.Explanation;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.ledger.Overhead;
import dev.kilnledger.costing.ledger.Statement;
import dev.kilnledger.costing.ledger.TaxPolicy;
import dev.kilnledger.costing.ledger.TaxRule;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.yield.Failures;
import dev.kilnledger.costing.yield.StageYield;
import dev.kilnledger.units.TradeUnits;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The rules by which two statements were counted, in words, and which of them differ. */
final class RuleChanges {
  private static final Source PLAN = Source.user("the plan");

  private RuleChanges() {}

  static List<Change> between(Statement from, Statement to) {
    Map<String, String> before = rules(from);
    Map<String, String> after = rules(to);
    return before.keySet().stream()
        .filter(name -> !String.valueOf(before.get(name)).equals(after.get(name)))
        .map(name -> Change.of("rule", rule(name, before), rule(name, after)))
        .toList();
  }

  private static Optional<Explanation> rule(String name, Map<String, String> rules) {
    return Optional.ofNullable(rules.get(name)).map(text -> Explanation.given(name, text, PLAN));
  }

  private static Map<String, String> rules(Statement statement) {
    LedgerPlan plan = statement.plan();
    Map<String, String> rules = new LinkedHashMap<>();
    rules.put("number of parts", String.valueOf(statement.parts()));
    rules.put("parts per firing", String.valueOf(plan.partsPerFiring()));
    rules.put("charging", plan.charging().words());
    rules.put("failures", failures(plan.failures()));
    rules.put("buying", plan.buying().words());
    rules.put("shipping", joined(plan.shipping().stream().map(Offer::text).toList()));
    rules.put("overhead", joined(plan.overheads().stream().map(RuleChanges::overhead).toList()));
    rules.put("tax", tax(plan.tax()));
    rules.put("leftovers", plan.leftovers().rule().words());
    rules.put("rounding", plan.rounding().name().toLowerCase(Locale.ROOT).replace('_', ' '));
    rules.put("currency", plan.currency().getCode());
    rules.put("day of the prices", plan.prices().asOf().toString());
    return rules;
  }

  private static String failures(Failures failures) {
    if (failures.isNone()) {
      return "none";
    }
    String trials =
        failures.trialParts() == 0
            ? ""
            : ", "
                + failures.trialParts()
                + " trial parts in "
                + failures.trialFirings()
                + " firings";
    return failures.stages().stream().map(RuleChanges::stage).collect(Collectors.joining(", "))
        + trials
        + ", as "
        + failures.rule().words();
  }

  private static String stage(StageYield stage) {
    return stage.stage().words()
        + " "
        + stage.parts().format(TradeUnits.PERCENT, 1)
        + " of parts and "
        + stage.charges().format(TradeUnits.PERCENT, 1)
        + " of charges";
  }

  private static String overhead(Overhead overhead) {
    return overhead.rate().format(TradeUnits.PERCENT, 1) + " on " + overhead.base().words();
  }

  private static String tax(TaxPolicy tax) {
    return tax.rule().words()
        + (tax.rule() == TaxRule.AS_PRICED ? "" : ", " + tax.rate().format(TradeUnits.PERCENT, 1));
  }

  private static String joined(List<String> texts) {
    return texts.isEmpty() ? "none" : String.join(", ", texts);
  }
}
