package dev.kilnledger.examples;

import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.core.finding.Caution;
import dev.kilnledger.costing.outfit.BudgetAnswer;
import dev.kilnledger.costing.outfit.Option;
import dev.kilnledger.costing.outfit.Outfit;
import dev.kilnledger.costing.outfit.OutfitLine;
import dev.kilnledger.costing.outfit.OutfitPlan;
import dev.kilnledger.costing.outfit.OutfitPlanner;
import dev.kilnledger.costing.outfit.RejectionReason;
import dev.kilnledger.costing.outfit.Upgrade;
import java.util.Locale;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** The outfits of the window workshop; the sums are made by hand from the prices of the example. */
class ThreeBudgetsTest {
  private static final OutfitPlan PLAN = ThreeBudgets.plan();

  private static Outfit best(int answer) {
    return PLAN.answers().get(answer).best().orElseThrow();
  }

  private static Money euros(int amount) {
    return Money.of(CurrencyUnit.EUR, amount);
  }

  @Test
  void theSmallBudgetKeepsTheOldPrinterWithAHarderNozzle() {
    // Nozzle 25, kiln 1500, crucible 40, carbon 10, hood 350, alarm 35, filament 80, alumina 2 x
    // 15.
    assertThat(best(0).cost()).isEqualTo(euros(25 + 1500 + 40 + 10 + 350 + 35 + 80 + 30));
    assertThat(best(0).kept())
        .extracting(Option::name)
        .containsExactly("old printer", "workshop socket", "wire brush");
    assertThat(best(0).reached()).containsExactly("latch cam in bronze", "rosette in copper");
  }

  @Test
  void theMiddleBudgetBuysAPrinterForLargerParts() {
    assertThat(best(1).cost()).isEqualTo(euros(600 + 1500 + 40 + 10 + 350 + 35 + 80 + 30));
    assertThat(best(1).reached()).isEqualTo(best(0).reached());
    assertThat(best(1).unused()).extracting(Option::name).containsExactly("old printer");
    Upgrade upgrade = PLAN.upgrades().get(0);
    assertThat(upgrade.extraCost()).isEqualTo(euros(600));
    assertThat(upgrade.idle())
        .extracting(Option::name)
        .containsExactly("old printer", "hardened nozzle");
  }

  @Test
  void theLargeBudgetAddsSteelWithItsKilnCircuitAndCrucible() {
    assertThat(best(2).cost())
        .isEqualTo(euros(600 + 3900 + 5 * 60 + 150 + 160 + 10 + 350 + 35 + 80 + 30));
    Upgrade upgrade = PLAN.upgrades().get(1);
    assertThat(upgrade.gained()).containsExactly("hinge plate in steel");
    assertThat(upgrade.bought())
        .extracting(OutfitLine::option)
        .containsExactly("hot kiln", "25 A circuit", "25 A circuit", "alumina crucible");
    assertThat(upgrade.extraCost()).isEqualTo(euros(4510));
    assertThat(upgrade.spentInAll()).isEqualTo(euros(2645 + 4510));
    assertThat(upgrade.idle())
        .extracting(Option::name)
        .containsExactly("front loader", "workshop socket", "steel crucible");
  }

  @Test
  void tellsWhatIsRejectedWhy() {
    BudgetAnswer middle = PLAN.answers().get(1);
    assertThat(middle.rejected())
        .extracting(rejection -> rejection.option().name() + " " + rejection.reason())
        .containsExactly(
            "hot kiln OVER_BUDGET",
            "bead kiln FAILS_CHECKS",
            "25 A circuit BEATEN",
            "alumina crucible BEATEN",
            "tumbler BEATEN");
    assertThat(middle.rejected().get(1).message())
        .contains("for latch cam in bronze the kiln stops at 750 °C");
    assertThat(PLAN.rejected()).noneMatch(each -> each.reason() == RejectionReason.OVER_BUDGET);
    assertThat(best(2).cautions()).contains(Caution.CARBON_MONOXIDE, Caution.ELECTRICAL_LOAD);
  }

  @Test
  void aBudgetThatIsTooSmallLacksTheRestOfTheCheapest() {
    BudgetAnswer answer =
        OutfitPlanner.standard(WindowOutfits.routes())
            .plan(WindowOutfits.question(2000))
            .answers()
            .get(0);
    // The brass nozzle will do for copper: 2070 less the 25 of the hardened one.
    assertThat(answer.best()).isEmpty();
    assertThat(answer.shortfall()).contains(euros(45));
  }

  @Test
  void printsTheSameInEveryLocale() {
    String printed = ThreeBudgets.text(PLAN);
    assertThat(printed.lines()).allMatch(line -> line.length() <= 100);
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG"));
      assertThat(ThreeBudgets.text(ThreeBudgets.plan())).isEqualTo(printed);
    } finally {
      Locale.setDefault(before);
    }
  }
}
