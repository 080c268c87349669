package dev.kilnledger.examples.sheet;

import dev.kilnledger.core.explanation.Explanation;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.core.material.Feedstock;
import dev.kilnledger.core.part.Passage;
import dev.kilnledger.costing.comparison.JobComparison;
import dev.kilnledger.costing.comparison.StatementComparison;
import dev.kilnledger.costing.ledger.Statement;
import dev.kilnledger.costing.outfit.OutfitPlan;
import dev.kilnledger.thermal.conduction.CoreHistory;
import dev.kilnledger.thermal.design.ProfileDesign;
import dev.kilnledger.thermal.energy.RouteEnergy;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.thermal.profile.Profile;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;

/**
 * What a JShell session shows results with: {@code show} prints them as tables at most 100 columns
 * wide, {@code csv} writes a sheet to a file. All of it in UTF-8.
 */
public final class Session {
  private Session() {}

  /**
   * Prints a sheet.
   *
   * @param sheet the sheet
   */
  public static void show(Sheet<?> sheet) {
    print(sheet.toString());
  }

  /**
   * Prints the facts of a feedstock, of its metal and of its binder.
   *
   * @param feedstock the feedstock
   */
  public static void show(Feedstock feedstock) {
    show(Facts.sheet(feedstock.name(), Facts.of(feedstock)));
    show(feedstock.alloy());
    show(Facts.sheet(feedstock.binder().name(), Facts.of(feedstock.binder())));
  }

  /**
   * Prints the facts of an alloy.
   *
   * @param alloy the alloy
   */
  public static void show(Alloy alloy) {
    show(Facts.sheet(alloy.name(), Facts.of(alloy)));
  }

  /**
   * Prints a part from green to sintered.
   *
   * @param passage its passage
   */
  public static void show(Passage passage) {
    show(Sheets.sheet(passage));
  }

  /**
   * Prints a firing profile.
   *
   * @param profile the profile
   */
  public static void show(Profile profile) {
    show(Sheets.sheet(profile));
  }

  /**
   * Prints the profiles of a route.
   *
   * @param route the route
   */
  public static void show(FiringRoute route) {
    route.stages().forEach(stage -> print(stage.name() + ": " + Sheets.sheet(stage.profile())));
  }

  /**
   * Prints what the core feels of its kiln.
   *
   * @param core the core's temperature over time
   */
  public static void show(CoreHistory core) {
    show(Sheets.sheet(core));
  }

  /**
   * Prints designed profiles, what sets them, and what no profile mends.
   *
   * @param design the design
   */
  public static void show(ProfileDesign design) {
    design.stages().forEach(stage -> show(Sheets.sheet(stage)));
    if (!design.unmended().isEmpty()) {
      show(design.unmended());
    }
  }

  /**
   * Prints what a firing takes in energy.
   *
   * @param energy the energy of the route
   */
  public static void show(RouteEnergy energy) {
    show(Sheets.sheet(energy));
  }

  /**
   * Prints findings.
   *
   * @param findings the findings
   */
  public static void show(Collection<? extends Finding> findings) {
    show(Sheets.sheet(findings));
  }

  /**
   * Prints what the parts cost, what is left, and what is not in the figures.
   *
   * @param statement the statement
   */
  public static void show(Statement statement) {
    show(Sheets.sheet(statement));
    show(Sheets.stocks(statement));
    show(Sheet.of("not in these figures, or assumed", statement.caveats()).text("", c -> c.text()));
  }

  /**
   * Prints a comparison of costs.
   *
   * @param comparison the comparison
   */
  public static void show(StatementComparison comparison) {
    print(comparison.text());
  }

  /**
   * Prints a comparison of jobs.
   *
   * @param comparison the comparison
   */
  public static void show(JobComparison comparison) {
    print(comparison.text());
  }

  /**
   * Prints a plan of outfits.
   *
   * @param plan the plan
   */
  public static void show(OutfitPlan plan) {
    show(Sheet.of("outfits", plan.explanation()).text("", line -> line));
  }

  /**
   * Prints a figure with all it stands on.
   *
   * @param explanation the figure
   */
  public static void show(Explanation explanation) {
    print(explanation.text());
  }

  /**
   * Prints anything else as its own text, such as an amount.
   *
   * @param value what to print
   */
  public static void show(Object value) {
    print(value.toString());
  }

  /**
   * Writes a sheet as comma-separated values, replacing the file; see {@link CsvText}.
   *
   * @param sheet the sheet
   * @param file the file
   * @throws IOException if it cannot be written
   */
  public static void csv(Sheet<?> sheet, Path file) throws IOException {
    Files.writeString(file, CsvText.of(sheet));
  }

  private static void print(String text) {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    out.println(text.stripTrailing() + "\n");
  }
}
