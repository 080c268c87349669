package dev.kilnledger.costing.comparison;

import dev.kilnledger.core.explanation.Explanation;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.costing.explanation.StatementFigure;
import dev.kilnledger.costing.ledger.Caveat;
import dev.kilnledger.costing.ledger.Statement;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.joda.money.BigMoney;

/** Comparisons as text, the same on every machine. */
final class ComparisonText {
  private static final int WIDTH = 100;
  private static final int NAME = 28;
  private static final int COLUMN = 18;
  private static final int COLUMNS = (WIDTH - NAME) / COLUMN;

  private final StringBuilder text = new StringBuilder();

  private ComparisonText() {}

  static String of(StatementComparison comparison) {
    ComparisonText page = new ComparisonText();
    page.totals(comparison);
    for (ScenarioChanges changes : comparison.changes()) {
      page.heading(changes.scenario() + " against " + comparison.scenarios().get(0).name());
      int heading = page.text.length();
      page.causes(changes);
      page.unchanged(heading);
      page.figures(comparison, changes.scenario());
    }
    return page.text.toString();
  }

  static String of(JobComparison comparison) {
    ComparisonText page = new ComparisonText();
    page.totals(comparison.costs());
    for (ScenarioChanges changes : comparison.costs().changes()) {
      page.heading(changes.scenario() + " against " + comparison.costs().scenarios().get(0).name());
      int heading = page.text.length();
      page.causes(changes);
      page.job(comparison.changes(changes.scenario()), changes);
      page.unchanged(heading);
      page.figures(comparison.costs(), changes.scenario());
    }
    return page.text.toString();
  }

  private void job(JobChanges job, ScenarioChanges costs) {
    List<String> told = costs.inputs().stream().map(ComparisonText::unplaced).toList();
    job.facts().stream()
        .filter(change -> !told.contains(unplaced(change)))
        .forEach(change -> paragraph("  ", change.text()));
    job.passage().forEach(change -> paragraph("  ", fromTo(change)));
    job.firing().forEach(change -> paragraph("  ", fromTo(change)));
    job.findings().stream()
        .filter(ComparisonText::matters)
        .forEach(change -> paragraph("  ", change.text()));
  }

  /** The change wherever it is, as the same fact may stand below costs and passage. */
  private static String unplaced(Change change) {
    return Change.of("", change.before(), change.after()).text();
  }

  /** What passed before and passes now by other figures is not read aloud. */
  private static boolean matters(FindingChange change) {
    return change.severityChanged()
        || change.before().map(Finding::severity).filter(s -> s == Severity.PASSED).isEmpty();
  }

  /** A computed figure, whose sources are those of its inputs. */
  private static String fromTo(Change change) {
    return change.what()
        + ": from "
        + change.before().map(Explanation::shown).orElse("none")
        + " to "
        + change.after().map(Explanation::shown).orElse("none");
  }

  /** The baseline again in every block, as no more fit side by side. */
  private void totals(StatementComparison comparison) {
    List<Scenario<Statement>> scenarios = comparison.scenarios();
    for (int from = 1; from < scenarios.size(); from += COLUMNS - 1) {
      List<Scenario<Statement>> block = new ArrayList<>(List.of(scenarios.get(0)));
      block.addAll(scenarios.subList(from, Math.min(scenarios.size(), from + COLUMNS - 1)));
      if (from > 1) {
        text.append('\n');
      }
      row("", block.stream().map(Scenario::name).toList());
      for (StatementFigure figure : StatementFigure.values()) {
        row(
            figure.words(),
            block.stream().map(s -> s.result().money(figure.of(s.result())).toString()).toList());
      }
    }
  }

  private void causes(ScenarioChanges changes) {
    changes.rules().forEach(change -> paragraph("  ", change.text()));
    changes.inputs().forEach(change -> paragraph("  ", change.text()));
    for (Caveat caveat : changes.caveatsNew()) {
      paragraph("  ", "new caveat: " + caveat.text());
    }
    for (Caveat caveat : changes.caveatsGone()) {
      paragraph("  ", "caveat gone: " + caveat.text());
    }
  }

  /** Says so where nothing was written since. */
  private void unchanged(int since) {
    if (text.length() == since) {
      paragraph("  ", "Nothing was changed.");
    }
  }

  private void figures(StatementComparison comparison, String scenario) {
    for (StatementFigure figure : StatementFigure.values()) {
      ComparedLine total = comparison.total(scenario, figure);
      List<ComparedLine> changed =
          comparison.lines(scenario, figure).stream()
              .filter(line -> !line.effects().isEmpty())
              .toList();
      if (changed.isEmpty() && total.difference().isZero()) {
        continue;
      }
      paragraph("  ", figure.words() + ": " + told(total) + (changed.isEmpty() ? why(total) : ""));
      changed.forEach(line -> paragraph("    ", line.what() + ": " + told(line) + why(line)));
    }
  }

  private static String told(ComparedLine line) {
    BigMoney difference = line.difference();
    String amount = shown(line.after());
    if (difference.isZero()) {
      return amount + ", the same";
    }
    return amount + ", " + shown(difference.abs()) + (difference.isPositive() ? " more" : " less");
  }

  private static String why(ComparedLine line) {
    List<String> effects = new ArrayList<>();
    line.effects().forEach((effect, sum) -> effects.add(effect.words() + " " + signed(sum)));
    return ": " + String.join(", ", effects);
  }

  private static String signed(BigMoney money) {
    return money.isNegative() ? "minus " + shown(money.abs()) : "plus " + shown(money);
  }

  /** Four decimals at most, and never less than the currency has. */
  private static String shown(BigMoney money) {
    BigMoney rounded = money.getScale() > 4 ? money.rounded(4, RoundingMode.HALF_EVEN) : money;
    int least = money.getCurrencyUnit().getDecimalPlaces();
    int scale = Math.max(least, rounded.getAmount().stripTrailingZeros().scale());
    return rounded.withScale(scale, RoundingMode.HALF_EVEN).toString();
  }

  void heading(String words) {
    text.append('\n').append(words).append('\n');
  }

  private void row(String name, List<String> cells) {
    StringBuilder line = new StringBuilder(String.format(Locale.ROOT, "%-" + NAME + "s", name));
    for (String cell : cells) {
      String fitting = cell.length() < COLUMN ? cell : cell.substring(0, COLUMN - 1);
      line.append(String.format(Locale.ROOT, "%" + COLUMN + "s", fitting));
    }
    text.append(line.toString().stripTrailing()).append('\n');
  }

  /** Words filled to the width; further lines are indented by four more. */
  void paragraph(String indent, String words) {
    StringBuilder line = new StringBuilder(indent);
    int start = indent.length();
    for (String word : words.split(" ", -1)) {
      if (line.length() > start && line.length() + 1 + word.length() > WIDTH) {
        text.append(line).append('\n');
        line = new StringBuilder(indent + "    ");
        start = line.length();
      }
      line.append(line.length() > start ? " " : "").append(word);
    }
    text.append(line).append('\n');
  }
}
