package dev.kilnledger.costing.job;

import dev.kilnledger.core.explanation.Explanation;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.source.Input;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.explanation.StatementExplainer;
import dev.kilnledger.costing.explanation.StatementFigure;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.thermal.atmosphere.OxygenBudget;
import dev.kilnledger.thermal.energy.RouteEnergy;
import dev.kilnledger.thermal.firing.StageForecast;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.units.Amount;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Opens every figure of a job's answer. Where an input of the ledger stems from another result, the
 * tree goes on there: the filament of a part opens down to solids loading and densities, the energy
 * of a firing to the walls and the charge, the getter to what is laid in at each stage.
 *
 * <p>Example: {@code JobExplainer.standard().cost(answer, StatementFigure.USAGE).grounds(
 * Standing.FROM_MEMORY)} lists all that the usage per part rests on and nobody looked up.
 */
public final class JobExplainer {
  private static final Source ROUTE = Source.user("the route");
  private static final JobExplainer STANDARD = new JobExplainer();

  private JobExplainer() {}

  /** {@return the explainer} */
  public static JobExplainer standard() {
    return STANDARD;
  }

  /**
   * Opens a sum of the statement.
   *
   * @param answer the answer
   * @param figure which sum
   * @return the sum in whole minor units, standing on the exact one
   */
  public Explanation cost(JobAnswer answer, StatementFigure figure) {
    return statements(answer).figure(answer.statement(), figure);
  }

  /**
   * Opens everything: the sums of the statement, the figures of the passage, what a firing takes,
   * and the findings.
   *
   * @param answer the answer
   * @return one tree for each figure
   */
  public List<Explanation> figures(JobAnswer answer) {
    return Stream.of(
            statements(answer).figures(answer.statement()),
            answer.passage().lines(),
            List.of(filament(answer)),
            firing(answer),
            answer.findings().stream().map(Finding::explanation).toList())
        .flatMap(List::stream)
        .toList();
  }

  /**
   * An explainer of statements that follows inputs into the other results of an answer.
   *
   * @param answer the answer
   * @return the explainer
   */
  public StatementExplainer statements(JobAnswer answer) {
    return new StatementExplainer((item, input) -> origin(answer, item, input));
  }

  /**
   * Opens the filament in a green part as a length.
   *
   * @param answer the answer
   * @return the length at the diameter that the printer takes
   */
  public Explanation filament(JobAnswer answer) {
    return answer
        .passage()
        .filamentLengthLine(
            answer.job().printer().filamentDiameter(), Source.user("as entered with the printer"));
  }

  /**
   * Opens what one firing takes.
   *
   * @param answer the answer
   * @return time, energy and getter, forecast or measured, and the carbon that each stage needs
   */
  public List<Explanation> firing(JobAnswer answer) {
    List<Explanation> figures =
        new ArrayList<>(List.of(duration(answer), energy(answer), getter(answer)));
    for (StageForecast stage : answer.forecast().stages()) {
      stage
          .oxygen()
          .flatMap(OxygenBudget::explanation)
          .ifPresent(needed -> figures.add(needed.as("carbon needed, " + stage.stage().name())));
    }
    return List.copyOf(figures);
  }

  private static Explanation duration(JobAnswer answer) {
    String what = "duration of the programmes";
    Amount<?> duration = answer.firing().duration();
    return isMeasured(answer)
        ? Explanation.given(what, duration, answer.firing().source())
        : sum(
            what,
            duration,
            answer.job().route().stages().stream()
                .map(stage -> Explanation.given(stage.name(), stage.profile().duration(), ROUTE))
                .toList());
  }

  private static Explanation energy(JobAnswer answer) {
    return answer
        .energy()
        .map(RouteEnergy::explanation)
        .orElseGet(
            () ->
                Explanation.given(
                    "energy of the route", answer.firing().energy(), answer.firing().source()));
  }

  private static Explanation getter(JobAnswer answer) {
    String what = "getter of the route";
    List<Explanation> fills = new ArrayList<>();
    for (FiringStage stage : answer.job().route().stages()) {
      stage
          .getter()
          .ifPresent(
              fill ->
                  fills.add(
                      Explanation.given(
                          stage.name() + ", " + fill.getter().name(), fill.mass(), ROUTE)));
    }
    return isMeasured(answer) || fills.isEmpty()
        ? Explanation.given(what, answer.firing().getter(), answer.firing().source())
        : sum(what, answer.firing().getter(), fills);
  }

  private static boolean isMeasured(JobAnswer answer) {
    return answer.job().measuredFiring().isPresent();
  }

  private static Explanation sum(String what, Amount<?> total, List<Explanation> stages) {
    return Explanation.builder()
        .what(what)
        .value(total)
        .formula("sum of the stages")
        .children(stages)
        .build();
  }

  private Optional<Explanation> origin(JobAnswer answer, String item, Input input) {
    Job job = answer.job();
    if (input.name().equals(Driver.FIRING_TIME.word())) {
      return rounded(input, duration(answer));
    }
    if (input.name().equals(Driver.PRINTED_MASS.word())) {
      return rounded(input, answer.passage().line("green mass"));
    }
    if (input.name().equals(Driver.EXTRUDED_VOLUME.word())) {
      Explanation length = filament(answer);
      return Optional.of(
          Explanation.computed(
              input.name(),
              input.value(),
              "green mass / strand density, rounded up",
              length.at("green mass"),
              length.at("strand density")));
    }
    if (!input.name().equals("quantity")) {
      return Optional.empty();
    }
    if (item.equals(job.filamentItem())) {
      return rounded(input, answer.passage().line("green mass"));
    }
    if (item.equals(job.energyItem())) {
      return rounded(input, energy(answer));
    }
    return job.getterItem().filter(item::equals).flatMap(getter -> rounded(input, getter(answer)));
  }

  /** An input that the job rounded up from another result, to count in decimals. */
  private static Optional<Explanation> rounded(Input input, Explanation from) {
    return Optional.of(
        Explanation.computed(input.name(), input.value(), from.what() + ", rounded up", from));
  }
}
