package dev.kilnledger.examples.sheet;

import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.CUBIC_CENTIMETRE;
import static dev.kilnledger.units.TradeUnits.GRAM;
import static dev.kilnledger.units.TradeUnits.GRAM_PER_CUBIC_CENTIMETRE;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static dev.kilnledger.units.TradeUnits.KELVIN_DIFFERENCE;
import static dev.kilnledger.units.TradeUnits.KELVIN_PER_HOUR;
import static dev.kilnledger.units.TradeUnits.KILOWATT_HOUR;
import static dev.kilnledger.units.TradeUnits.MILLIMETRE;
import static dev.kilnledger.units.TradeUnits.VOLUME_PERCENT;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.part.Passage;
import dev.kilnledger.core.part.Stage;
import dev.kilnledger.costing.ledger.Account;
import dev.kilnledger.costing.ledger.CostStep;
import dev.kilnledger.costing.ledger.Ledger;
import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.ledger.Line;
import dev.kilnledger.costing.ledger.Statement;
import dev.kilnledger.costing.resource.Stock;
import dev.kilnledger.thermal.conduction.CoreHistory;
import dev.kilnledger.thermal.conduction.CorePoint;
import dev.kilnledger.thermal.design.SegmentReason;
import dev.kilnledger.thermal.design.StageDesign;
import dev.kilnledger.thermal.energy.EnergyLine;
import dev.kilnledger.thermal.energy.RouteEnergy;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.thermal.profile.SegmentRow;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.joda.money.BigMoney;

/** Sheets of the library's results. */
public final class Sheets {
  private Sheets() {}

  /**
   * A part from green to sintered.
   *
   * @param passage its passage
   * @return one row for each stage
   */
  public static Sheet<?> sheet(Passage passage) {
    return Sheet.of(
            passage.part().name() + " in " + passage.feedstock().name(),
            List.of(
                new Named<>("green", passage.green()),
                new Named<>("brown", passage.brown()),
                new Named<>("sintered", passage.sintered())))
        .text("stage", Named<Stage>::name)
        .amount("mass", GRAM, 2, row -> row.what().mass())
        .amount("volume", CUBIC_CENTIMETRE, 2, row -> row.what().volume())
        .amount("density", GRAM_PER_CUBIC_CENTIMETRE, 2, row -> row.what().density())
        .amount("pores", VOLUME_PERCENT, 1, row -> row.what().porosity())
        .amount("x", MILLIMETRE, 1, row -> row.what().envelope().x())
        .amount("y", MILLIMETRE, 1, row -> row.what().envelope().y())
        .amount("z", MILLIMETRE, 1, row -> row.what().envelope().z());
  }

  /**
   * A firing profile as the kiln's programme has it.
   *
   * @param profile the profile
   * @return one row for each segment
   */
  public static Sheet<SegmentRow> sheet(Profile profile) {
    return Sheet.of("firing profile", profile.rows())
        .count("no.", SegmentRow::number)
        .amount("from", CELSIUS, 0, SegmentRow::start)
        .amount("to", CELSIUS, 0, SegmentRow::end)
        .amount("rate", KELVIN_PER_HOUR, 0, SegmentRow::rate)
        .amount("takes", HOUR, 2, SegmentRow::duration)
        .amount("until", HOUR, 2, SegmentRow::elapsed);
  }

  /**
   * What the core of a charge feels of its kiln, ready for a chart.
   *
   * @param core the core's temperature over time
   * @return one row for each point in time
   */
  public static Sheet<CorePoint> sheet(CoreHistory core) {
    return Sheet.of("core of the charge", core.points())
        .amount("time", HOUR, 2, CorePoint::time)
        .amount("kiln", CELSIUS, 0, CorePoint::kiln)
        .amount("core", CELSIUS, 0, CorePoint::core)
        .amount("lag", KELVIN_DIFFERENCE, 1, CorePoint::lag);
  }

  /**
   * Findings.
   *
   * @param findings the findings in their order
   * @return one row for each
   */
  public static Sheet<Finding> sheet(Collection<? extends Finding> findings) {
    return Sheet.<Finding>of("findings", findings)
        .text("severity", Finding::severity)
        .text("code", finding -> finding.code().code())
        .text("subject", Finding::subject)
        .text("message", Finding::message)
        .text("basis", finding -> finding.basis().standing().words());
  }

  /**
   * A designed profile with what keeps each segment from being faster.
   *
   * @param stage the stage designed
   * @return one row for each segment
   */
  public static Sheet<SegmentReason> sheet(StageDesign stage) {
    return Sheet.of(stage.stage().name() + ", designed", stage.segments())
        .count("no.", reason -> reason.row().number())
        .amount("from", CELSIUS, 0, reason -> reason.row().start())
        .amount("to", CELSIUS, 0, reason -> reason.row().end())
        .amount("rate", KELVIN_PER_HOUR, 0, reason -> reason.row().rate())
        .amount("takes", HOUR, 2, reason -> reason.row().duration())
        .text(
            "is no faster",
            reason -> reason.forbids().map(Finding::message).orElse("it would gain nothing"));
  }

  /**
   * What a firing takes in energy.
   *
   * @param energy the energy of the route
   * @return one row for each use in each stage
   */
  public static Sheet<?> sheet(RouteEnergy energy) {
    List<Named<EnergyLine>> lines = new ArrayList<>();
    for (int stage = 0; stage < energy.balances().size(); stage++) {
      String name = energy.route().stages().get(stage).name();
      energy.balances().get(stage).lines().forEach(line -> lines.add(new Named<>(name, line)));
    }
    return Sheet.of("energy of the route", lines)
        .text("stage", Named<EnergyLine>::name)
        .text("use", row -> row.what().use())
        .text("subject", row -> row.what().subject())
        .amount("energy", KILOWATT_HOUR, 2, row -> row.what().energy());
  }

  /**
   * What the first, the second and the last part cost, line by line, and what one part uses up.
   *
   * @param statement the statement
   * @return one row for each line, and one for each total
   */
  public static Sheet<?> sheet(Statement statement) {
    List<Entered> rows = new ArrayList<>();
    for (Account account : accounts(statement)) {
      account.lines().forEach(line -> rows.add(new Entered(account.title(), line)));
      rows.add(new Entered(account.title(), account));
    }
    return Sheet.of("cost of " + statement.parts() + " parts", rows)
        .text("account", Entered::account)
        .text("line", Entered::text)
        .money("amount", statement.plan().currency(), Entered::amount);
  }

  private static List<Account> accounts(Statement statement) {
    List<Account> accounts = new ArrayList<>(List.of(statement.firstPart()));
    if (statement.parts() > 1) {
      accounts.add(statement.secondPart());
    }
    if (statement.parts() > 2) {
      accounts.add(statement.lastPart());
    }
    accounts.add(statement.usage());
    return accounts;
  }

  /**
   * What is left on the shelf after the last part.
   *
   * @param statement the statement
   * @return one row for each item
   */
  public static Sheet<Stock> stocks(Statement statement) {
    return Sheet.of("left after part " + statement.parts(), statement.stocks())
        .text("item", Stock::item)
        .text("left", Stock::text)
        .text(
            "next bought for part",
            stock -> stock.nextPurchase().map(String::valueOf).orElse("never"));
  }

  /**
   * The staircase of cash, ready for a chart.
   *
   * @param plan what is counted and by which rules
   * @param parts through which part
   * @return one row for each part: what it costs, all so far, and their average
   */
  public static Sheet<CostStep> cash(LedgerPlan plan, long parts) {
    return Sheet.of("cash part by part", Ledger.standard().staircase(plan, 1, parts))
        .count("part", CostStep::part)
        .money("this part", plan.currency(), step -> step.cash().total())
        .money("all so far", plan.currency(), CostStep::through)
        .money("average", plan.currency(), CostStep::average);
  }

  /** Something with a name that stands beside it. */
  private record Named<T>(String name, T what) {}

  /** A line of an account, or its total. */
  private record Entered(String account, String text, BigMoney amount) {
    Entered(String account, Line line) {
      this(account, line.text(), line.amount());
    }

    Entered(String account, Account whole) {
      this(account, "in all", whole.total());
    }
  }
}
