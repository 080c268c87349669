package dev.kilnledger.thermal.design;

import static dev.kilnledger.thermal.Workbench.copper;
import static dev.kilnledger.thermal.Workbench.kiln;
import static dev.kilnledger.thermal.Workbench.setup;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.thermal.check.FiringCheck;
import dev.kilnledger.thermal.design.ProgrammeForm.Ramps;
import dev.kilnledger.thermal.design.ProgrammeForm.Scale;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class TrialsTest {
  private final List<Double> heard = new ArrayList<>();

  private static Programme to(int peak, int minutes) {
    return new Programme(ProgrammeForm.of(Scale.CELSIUS, Ramps.BY_TIME), 20, List.of())
        .then(peak, minutes);
  }

  private Trials trials(int most) {
    DesignTask task =
        DesignTask.builder()
            .setup(setup(copper(), 1000).kiln(kiln(1300).wall(List.of()).build()).build())
            .mostEvaluations(most)
            .build();
    return new Trials(task, new FiringCheck(List.of()), new Demands(task), heard::add);
  }

  @Test
  void triesEachRouteOnce() {
    Trials trials = trials(10);
    Candidate candidate = trials.of(List.of(to(400, 300), to(1000, 500))).orElseThrow();
    assertThat(candidate.minutes()).isEqualTo(800);
    assertThat(candidate.route().stages().get(1).profile()).isEqualTo(to(1000, 500).profile());
    assertThat(trials.of(List.of(to(400, 300), to(1000, 500)))).containsSame(candidate);
    assertThat(trials.evaluations()).isEqualTo(1);
    assertThat(trials.of(List.of(to(400, 301), to(1000, 500)))).isPresent();
    assertThat(trials.evaluations()).isEqualTo(2);
    assertThat(trials.all()).hasSize(2);
  }

  /** Debinding lies below sintering; what does not is no route, and costs nothing. */
  @Test
  void triesNoRouteThatDebindsAsHotAsItSinters() {
    Trials trials = trials(10);
    assertThat(trials.of(List.of(to(700, 300), to(700, 500)))).isEmpty();
    assertThat(trials.of(List.of(to(701, 300), to(700, 500)))).isEmpty();
    assertThat(trials.evaluations()).isZero();
    assertThat(trials.all()).isEmpty();
    assertThat(trials.of(List.of(to(699, 300), to(700, 500)))).isPresent();
  }

  @Test
  void stopsWhereTheEvaluationsAreUsedUp() {
    Trials trials = trials(1);
    trials.of(List.of(to(400, 300), to(1000, 500)));
    assertThatThrownBy(() -> trials.of(List.of(to(400, 301), to(1000, 500))))
        .isInstanceOf(Trials.Stopped.class)
        .hasMessage("no evaluations left of 1");
    assertThat(trials.of(List.of(to(400, 300), to(1000, 500)))).as("known").isPresent();
  }

  @Test
  void stopsWhereInterruptedButForTheFirst() {
    Trials trials = trials(10);
    Thread.currentThread().interrupt();
    assertThat(trials.of(List.of(to(400, 300), to(1000, 500)))).isPresent();
    assertThatThrownBy(() -> trials.of(List.of(to(400, 301), to(1000, 500))))
        .isInstanceOf(Trials.Stopped.class)
        .hasMessage("interrupted");
    assertThat(Thread.interrupted()).as("the thread stays interrupted").isTrue();
  }

  /** A phase is expected to take forty trials: each takes a fortieth of what is left of it. */
  @Test
  void tellsHowFarAPhaseIs() {
    Trials trials = trials(10);
    trials.phase(0.2);
    trials.of(List.of(to(400, 300), to(1000, 500)));
    trials.of(List.of(to(400, 301), to(1000, 500)));
    trials.phase(1);
    trials.of(List.of(to(400, 302), to(1000, 500)));
    trials.finish();
    assertThat(heard)
        .usingComparatorForType(
            (a, b) -> Math.abs(a - b) < 1e-12 ? 0 : Double.compare(a, b), Double.class)
        .containsExactly(0.2 / 40, 0.2 - 0.2 * 39 / 40 * 39 / 40, 0.2 + 0.8 / 40, 1.0);
    assertThat(heard.get(1)).isCloseTo(0.009875, within(1e-12));
  }
}
