package dev.kilnledger.costing.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.costing.ledger.Ledger;
import dev.kilnledger.costing.ledger.LedgerPlan;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The statements of two plans beside each other. */
final class ComparedPlans {
  private ComparedPlans() {}

  static StatementComparison compared(LedgerPlan baseline, LedgerPlan other, long parts) {
    return compared(baseline, parts, other, parts);
  }

  static StatementComparison compared(
      LedgerPlan baseline, long parts, LedgerPlan other, long otherParts) {
    return StatementComparer.standard()
        .compare(
            List.of(
                Scenario.of("as it is", Ledger.standard().statement(baseline, parts)),
                Scenario.of("other", Ledger.standard().statement(other, otherParts))));
  }

  /** Holds the effects of a line, in their order, each followed by its amount. */
  static void assertEffects(ComparedLine line, Object... effectsAndAmounts) {
    List<Object> told = new ArrayList<>();
    line.effects()
        .forEach(
            (effect, sum) -> {
              told.add(effect);
              told.add(sum.getAmount().stripTrailingZeros().toPlainString());
            });
    assertThat(told).isEqualTo(Arrays.asList(effectsAndAmounts));
  }
}
