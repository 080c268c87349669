package dev.kilnledger.costing.job;

import static dev.kilnledger.costing.document.Jobs.INVENTED;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kilograms;
import static dev.kilnledger.units.Amounts.kilowattHours;
import static dev.kilnledger.units.Amounts.litres;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.explanation.Explanation;
import dev.kilnledger.core.firing.FiringUse;
import dev.kilnledger.costing.document.Jobs;
import dev.kilnledger.costing.explanation.StatementFigure;
import dev.kilnledger.costing.ledger.Line;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Wearing;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.units.Amount;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** An input of the ledger that stems from passage or firing opens down to that very figure. */
class JobExplainerTest {
  private static final JobAnswer ANSWER =
      WholeJob.standard()
          .answer(
              Job.builder()
                  .from(Jobs.plain())
                  .addResources(
                      wearing("nozzle", Driver.EXTRUDED_VOLUME, litres(1)),
                      wearing("steel pot", Driver.FIRING_TIME, hours(500)),
                      wearing("bench printer", Driver.PRINTED_MASS, kilograms(50)))
                  .build());
  private static final JobAnswer MEASURED =
      WholeJob.standard().answer(measured(kilowattHours(12), grams(60)));

  private final JobExplainer explainer = JobExplainer.standard();

  private static Wearing wearing(String item, Driver driver, Amount<?> life) {
    return Wearing.builder().item(item).driver(driver).life(life).source(INVENTED).build();
  }

  private static Job measured(
      Amount<javax.measure.quantity.Energy> energy, Amount<javax.measure.quantity.Mass> getter) {
    return Job.builder()
        .from(Jobs.plain())
        .measuredFiring(
            FiringUse.builder()
                .duration(hours(30))
                .energy(energy)
                .getter(getter)
                .partsPerCharge(3)
                .source(INVENTED)
                .build())
        .build();
  }

  private Explanation packs(String item) {
    return explainer.cost(ANSWER, StatementFigure.USAGE).at("exact amount", item, "packs");
  }

  private static double si(Explanation figure) {
    return ((Amount<?>) figure.value()).si();
  }

  @Test
  void filamentEnergyAndGetterOpenToTheirOrigin() {
    Explanation filament = packs("bronze filament").at("quantity");
    assertThat(filament.formula()).contains("green mass, rounded up");
    assertThat(filament.at("green mass").value())
        .isEqualTo(ANSWER.passage().line("green mass").value());
    // Rounded up to a tenth of a gram, at most that much more.
    assertThat(si(filament) - si(filament.at("green mass"))).isBetween(0.0, 1e-4);
    Explanation energy = packs("electricity").at("quantity");
    assertThat(energy.formula()).contains("energy of the route, rounded up");
    assertThat(energy.at("energy of the route").value()).isEqualTo(ANSWER.firing().energy());
    Explanation getter = packs("carbon").at("quantity");
    assertThat(getter.formula()).contains("getter of the route, rounded up");
    assertThat(getter.at("getter of the route").value()).isEqualTo(grams(60));
    // What does not stem from the job is taken as given.
    assertThat(packs("bronze filament").at("stock").formula()).isEmpty();
    assertThat(packs("crucible").at("life").source()).contains(INVENTED);
    assertThat(packs("crucible").at("life").formula()).isEmpty();
  }

  @Test
  void measuredDriversOpenToTheirOrigin() {
    Explanation time = packs("steel pot").at(Driver.FIRING_TIME.word());
    assertThat(time.at("duration of the programmes").value()).isEqualTo(ANSWER.firing().duration());
    Explanation mass = packs("bench printer").at(Driver.PRINTED_MASS.word());
    assertThat(mass.at("green mass").value())
        .isEqualTo(ANSWER.passage().line("green mass").value());
    Explanation volume = packs("nozzle").at(Driver.EXTRUDED_VOLUME.word());
    assertThat(volume.formula()).contains("green mass / strand density, rounded up");
    // In whole cubic millimetres.
    assertThat(si(volume) - si(volume.at("green mass")) / si(volume.at("strand density")))
        .isBetween(0.0, 1e-9);
  }

  /** 17.33 h of debinding and 8.33 h of firing; 60 g of carbon in the second stage. */
  @Test
  void aFiringIsTheSumOfItsStages() {
    List<Explanation> firing = explainer.firing(ANSWER);
    assertThat(firing)
        .extracting(Explanation::what)
        .containsExactly(
            "duration of the programmes",
            "energy of the route",
            "getter of the route",
            "carbon needed, bronze firing");
    Explanation duration = firing.get(0);
    assertThat(duration.formula()).contains("sum of the stages");
    assertThat(duration.children()).hasSize(2);
    assertThat(si(duration) / 3600).isCloseTo(2 + 160 / 12.0 + 2 + 800 / 150.0 + 3, within(1e-9));
    assertThat(firing.get(2).children())
        .extracting(Explanation::what)
        .containsExactly("bronze firing, granular activated carbon");
  }

  @Test
  void aMeasuredFiringIsTakenAsGiven() {
    List<Explanation> firing = explainer.firing(MEASURED);
    assertThat(firing.subList(0, 3))
        .allSatisfy(
            figure -> {
              assertThat(figure.source()).contains(INVENTED);
              assertThat(figure.children()).isEmpty();
            });
    assertThat(firing.get(0).value()).isEqualTo(hours(30));
    assertThat(firing.get(1).value()).isEqualTo(kilowattHours(12));
    assertThat(firing.get(2).value()).isEqualTo(grams(60));
  }

  @Test
  void aRouteWithoutGetterIsNoSum() {
    FiringRoute route = Jobs.plain().route();
    FiringStage bare =
        FiringStage.sintering().from(route.stages().get(1)).getter(Optional.empty()).build();
    JobAnswer answer =
        WholeJob.standard()
            .answer(
                Job.builder()
                    .from(Jobs.plain())
                    .route(FiringRoute.of(route.stages().get(0), bare))
                    .build());
    Explanation getter = explainer.firing(answer).get(2);
    assertThat(getter.what()).isEqualTo("getter of the route");
    assertThat(si(getter)).isZero();
    assertThat(getter.formula()).isEmpty();
    assertThat(getter.source()).isPresent();
  }

  @Test
  void opensEverything() {
    List<Explanation> figures = explainer.figures(ANSWER);
    assertThat(figures)
        .extracting(Explanation::what)
        .contains("usage per part", "green mass", "filament length", "energy of the route");
    assertThat(figures)
        .hasSize(
            StatementFigure.values().length
                + ANSWER.passage().lines().size()
                + 1
                + explainer.firing(ANSWER).size()
                + ANSWER.findings().size());
  }

  /** Where a firing takes neither energy nor getter no line is paid for it, and no item needed. */
  @Test
  void paysForNothingThatAFiringDoesNotTake() {
    Job.Builder free = Job.builder().from(measured(kilowattHours(0), grams(0)));
    free.getterItem(Optional.empty());
    JobAnswer answer = WholeJob.standard().answer(free.parts(1).build());
    assertThat(answer.statement().allParts().lines())
        .extracting(Line::item)
        .contains("bronze filament")
        .doesNotContain("electricity", "carbon");
  }
}
