package dev.kilnledger.examples;

import dev.kilnledger.core.finding.Caution;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.costing.outfit.BudgetAnswer;
import dev.kilnledger.costing.outfit.Capability;
import dev.kilnledger.costing.outfit.GroupList;
import dev.kilnledger.costing.outfit.Outfit;
import dev.kilnledger.costing.outfit.OutfitPlan;
import dev.kilnledger.costing.outfit.OutfitPlanner;
import dev.kilnledger.costing.outfit.Upgrade;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.Set;

/** Prints what three budgets equip the window workshop with, and the steps between them. */
public final class ThreeBudgets {
  private final TextPage page = new TextPage();

  private ThreeBudgets() {}

  /**
   * Prints the outfits.
   *
   * @param arguments none
   */
  public static void main(String[] arguments) {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    out.print(text(plan()));
  }

  /** {@return the plan that is printed} */
  static OutfitPlan plan() {
    return OutfitPlanner.standard(WindowOutfits.routes())
        .plan(WindowOutfits.question(2100, 2700, 6000));
  }

  /** {@return a plan as text, at most 100 columns wide} */
  static String text(OutfitPlan plan) {
    ThreeBudgets text = new ThreeBudgets();
    text.page.title("Outfits for the window workshop");
    text.page.row("Equipment, prices and routes are invented for this example.");
    text.page.heading("Outfits that no other one beats");
    for (Outfit outfit : plan.front()) {
      text.page.paragraph("  - ", outfit.text() + ": " + String.join(", ", outfit.reached()));
    }
    plan.answers().forEach(text::answer);
    for (Upgrade upgrade : plan.upgrades()) {
      text.page.heading("From " + upgrade.before().cost() + " to " + upgrade.after().cost());
      upgrade.explanation().forEach(line -> text.page.paragraph("  - ", line));
    }
    Set<Caution> cautions = EnumSet.noneOf(Caution.class);
    plan.front().forEach(outfit -> cautions.addAll(outfit.cautions()));
    text.page.heading("Cautions: local codes, safety data sheets and licensed practice decide");
    cautions.forEach(caution -> text.page.paragraph("  ! ", caution.text()));
    return text.page.toString();
  }

  private void answer(BudgetAnswer answer) {
    page.heading("A budget of " + answer.budget());
    answer.best().ifPresent(this::outfit);
    answer.rejected().forEach(rejection -> page.paragraph("  not ", rejection.text()));
  }

  private void outfit(Outfit outfit) {
    for (GroupList group : outfit.groups()) {
      page.paragraph("  - ", group.text());
    }
    page.row("  in all %s", outfit.cost());
    if (!outfit.unused().isEmpty()) {
      page.row(
          "  unused %s", String.join(", ", outfit.unused().stream().map(o -> o.name()).toList()));
    }
    for (Capability capability : outfit.capabilities()) {
      page.paragraph("  * ", capability.text());
      capability.findings().stream()
          .filter(found -> capability.reached() && found.severity() != Severity.NOTE)
          .forEach(found -> page.paragraph("    open: ", found.message()));
    }
  }
}
