package dev.kilnledger.examples;

import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kelvinDifference;
import static dev.kilnledger.units.Amounts.kelvinPerMinute;
import static dev.kilnledger.units.Amounts.massFraction;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.Amounts.volumePercent;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static dev.kilnledger.units.TradeUnits.KELVIN_DIFFERENCE;
import static dev.kilnledger.units.TradeUnits.PERCENT;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.job.WholeJob;
import dev.kilnledger.thermal.burnout.PublishedKinetics;
import dev.kilnledger.thermal.chance.Chance;
import dev.kilnledger.thermal.chance.ChanceForecast;
import dev.kilnledger.thermal.chance.FiringChances;
import dev.kilnledger.thermal.chance.FiringEvent;
import dev.kilnledger.thermal.chance.Quantiles;
import dev.kilnledger.thermal.chance.Spread;
import dev.kilnledger.thermal.chance.Swing;
import dev.kilnledger.thermal.chance.UncertainFiring;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.TemperatureDifference;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * How sure the firing of the latch cams is: the kiln was surveyed, the binder's fastest loss is
 * known from one run of thermogravimetry, the powder has no sintering curve yet. Asked are 2 h at
 * 810 °C or above in the core, 10 K below the peak.
 */
public final class HowSureTheFiringIs {
  private static final Source INVENTED = Source.user("invented for this example");
  private static final Amount<TemperatureDifference> OFFSET = kelvinDifference(-6);

  private HowSureTheFiringIs() {}

  /**
   * Prints probabilities, what matters most, and what helps.
   *
   * @param arguments none
   */
  public static void main(String[] arguments) {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    out.print(text());
  }

  private static UncertainFiring firing() {
    FiringSetup planned =
        WholeJob.standard().answer(WindowWorkshop.latchCams(100)).forecast().setup();
    return UncertainFiring.builder()
        .setup(
            FiringSetup.builder()
                .from(planned)
                .kinetics(
                    PublishedKinetics.bracket(planned.binder(), celsius(365), kelvinPerMinute(10)))
                .soakTemperature(celsius(810))
                .soak(hours(2))
                .targetDensity(volumePercent(85))
                .build())
        .kilnOffset(Spread.normal(OFFSET, kelvinDifference(5), INVENTED))
        .drift(Spread.rectangular(kelvinDifference(0), kelvinDifference(5), INVENTED))
        .metalShare(Spread.rectangular(massFraction(0.88), massFraction(0.90), INVENTED))
        .binderEnergy(Spread.exactly(ratio(1), INVENTED))
        .build();
  }

  /** {@return what is printed} */
  static String text() {
    UncertainFiring firing = firing();
    FiringChances chances = ChanceForecast.standard().forecast(firing);
    TextPage page = new TextPage();
    page.title("How sure the firing of the latch cams is");
    page.paragraph("", "Workshop, survey of the kiln and thermogravimetry are invented.");
    page.row(
        "%d draws, seed %d; 5, 50 and 95 %% of them have up to the figures shown.",
        chances.draws(), chances.seed());

    page.heading("Probabilities");
    for (Chance chance : chances.chances()) {
      page.row(
          "%-44s %s",
          chance.event().words(),
          chance.isDetermined()
              ? chance.probability().low().format(PERCENT, 1)
                  + " +- "
                  + chance.standardError().format(PERCENT, 1)
              : chance.probability().format(PERCENT, 1));
    }
    quantiles(page, "core hot enough at a stretch", chances.soak(), HOUR, 2);

    page.heading("What matters most to the soak, each input alone from its 5 to its 95 % value");
    swings(page, chances.soakSwings(), HOUR, 2);

    page.heading("Findings");
    for (Finding finding : chances.findings()) {
      if (finding.severity() != Severity.PASSED) {
        page.paragraph("- " + finding.severity() + " ", finding.message());
      }
    }

    page.heading("What helps to a soak in 95 % of the firings");
    ChanceForecast forecast = ChanceForecast.standard();
    page.row(
        "a longer hold at the peak: %s",
        forecast
            .holdFor(firing, percent(95))
            .map(hold -> hold.format(HOUR, 2))
            .orElse("none does it"));
    page.row(
        "all programmes hotter: %s",
        forecast
            .correctionFor(firing, percent(95))
            .map(
                correction ->
                    "by "
                        + correction.format(KELVIN_DIFFERENCE, 0)
                        + ", and the metal then stays solid in "
                        + solid(firing, correction)
                        + " of them")
            .orElse("does not do it"));
    return page.toString();
  }

  /** How likely the metal stays solid in a kiln that is hotter throughout. */
  private static String solid(UncertainFiring firing, Amount<TemperatureDifference> hotter) {
    return ChanceForecast.standard()
        .forecast(
            UncertainFiring.builder()
                .from(firing)
                .kilnOffset(Spread.normal(OFFSET.add(hotter), kelvinDifference(5), INVENTED))
                .build())
        .chance(FiringEvent.METAL_SOLID)
        .orElseThrow()
        .probability()
        .low()
        .format(PERCENT, 1);
  }

  private static <Q extends Quantity<Q>> void quantiles(
      TextPage page, String what, Optional<Quantiles<Q>> quantiles, Unit<Q> unit, int decimals) {
    quantiles.ifPresent(three -> page.row("%-44s %s", what, three.format(unit, decimals)));
  }

  private static <Q extends Quantity<Q>> void swings(
      TextPage page, List<Swing<Q>> swings, Unit<Q> unit, int decimals) {
    for (Swing<Q> swing : swings.subList(0, Math.min(4, swings.size()))) {
      page.row(
          "%-44s %s to %s",
          swing.input().words(),
          swing.atLow().format(unit, decimals),
          swing.atHigh().format(unit, decimals));
    }
  }
}
