package dev.kilnledger.examples.report;

import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.KELVIN_PER_HOUR;
import static dev.kilnledger.units.TradeUnits.KILOWATT_HOUR;
import static dev.kilnledger.units.TradeUnits.MINUTE;

import dev.kilnledger.costing.job.JobAnswer;
import dev.kilnledger.thermal.energy.EnergyLine;
import dev.kilnledger.thermal.energy.RouteEnergy;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.thermal.profile.SegmentRow;
import dev.kilnledger.units.Amount;
import java.util.Locale;
import javax.measure.quantity.Time;
import org.jsoup.nodes.Element;

/** The programmes of a route, segment by segment, and where its energy goes. */
final class FiringTables {
  private FiringTables() {}

  static void write(Element section, JobAnswer answer) {
    for (FiringStage stage : answer.job().route().stages()) {
      programme(section, stage);
    }
    answer.energy().ifPresent(energy -> energy(section, energy));
  }

  private static void programme(Element section, FiringStage stage) {
    String getter =
        stage
            .getter()
            .map(fill -> ", with " + fill.mass() + " of " + fill.getter().name())
            .orElse("");
    Table table =
        new Table(
            section,
            stage.name() + " in " + stage.packingMass() + " of " + stage.packing().name() + getter,
            "no.",
            "#from",
            "#to",
            "#rate",
            "#takes",
            "#until");
    for (SegmentRow row : stage.profile().rows()) {
      table.row(
          Integer.toString(row.number()),
          row.start().format(CELSIUS, 0),
          row.end().format(CELSIUS, 0),
          row.segment().isHold() ? "hold" : row.rate().format(KELVIN_PER_HOUR, 0),
          hours(row.duration()),
          hours(row.elapsed()));
    }
  }

  private static String hours(Amount<Time> time) {
    long minutes = Math.round(time.in(MINUTE));
    return String.format(Locale.ROOT, "%d:%02d h", minutes / 60, minutes % 60);
  }

  private static void energy(Element section, RouteEnergy energy) {
    Table table =
        new Table(
            section,
            "energy of one firing, until the elements are off",
            "stage",
            "goes to",
            "#energy");
    for (int stage = 0; stage < energy.balances().size(); stage++) {
      String name = energy.route().stages().get(stage).name();
      for (EnergyLine line : energy.balances().get(stage).lines()) {
        String use = line.use().name().toLowerCase(Locale.ROOT).replace('_', ' ');
        table.row(name, use + ", " + line.subject(), line.energy().format(KILOWATT_HOUR, 2));
      }
    }
    table.total("whole route", "", energy.total().format(KILOWATT_HOUR, 2));
  }
}
