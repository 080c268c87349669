package dev.kilnledger.thermal.firing;

import static dev.kilnledger.thermal.Workbench.kinetics;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.kilograms;
import static dev.kilnledger.units.Amounts.massFraction;
import static dev.kilnledger.units.Amounts.seconds;
import static dev.kilnledger.units.TradeUnits.GRAM_PER_HOUR;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.thermal.atmosphere.ReleaseStep;
import dev.kilnledger.thermal.burnout.BurnOutCurve;
import dev.kilnledger.thermal.burnout.BurnOutPoint;
import dev.kilnledger.thermal.kinetics.Frequencies;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Steps of gas from curves drawn by hand, of a kilogram of binder. */
class BinderGasTest {
  /** Times in s and what is then left. */
  private static List<ReleaseStep> steps(double... timeAndLeft) {
    List<BurnOutPoint> points = new ArrayList<>();
    for (int i = 0; i < timeAndLeft.length; i += 2) {
      points.add(
          BurnOutPoint.builder()
              .time(seconds(timeAndLeft[i]))
              .temperature(celsius(300))
              .remaining(massFraction(timeAndLeft[i + 1]))
              .rate(Frequencies.perSecond(0))
              .build());
    }
    BurnOutCurve curve =
        BurnOutCurve.builder().kinetics(kinetics()).points(points).peak(points.get(0)).build();
    return BinderGas.steps(curve, kilograms(1));
  }

  private static void assertStep(ReleaseStep step, double seconds, double gramsPerHour) {
    assertThat(step.duration().si()).isCloseTo(seconds, within(1e-9));
    assertThat(step.rate().in(GRAM_PER_HOUR)).isCloseTo(gramsPerHour, within(1e-8));
  }

  /** 300 g in 300 s are 3600 g/h, 100 g in 400 s 900 g/h, 200 g in 100 s 7200 g/h. */
  @Test
  void joinsPointsToStepsOfFiveMinutesOrMore() {
    List<ReleaseStep> steps =
        steps(0, 1, 100, 0.95, 299, 0.71, 300, 0.7, 599, 0.61, 700, 0.6, 800, 0.4);
    assertThat(steps).hasSize(3);
    assertStep(steps.get(0), 300, 3600);
    assertStep(steps.get(1), 400, 900);
    assertStep(steps.get(2), 100, 7200);
  }

  /** Half of it in 300 s are 6000 g/h; the other half, all but gone after 300 s more, in 8700 s. */
  @Test
  void drawsTheLastStepToTheEndWhereNextToNothingIsLeft() {
    List<ReleaseStep> steps = steps(0, 1, 300, 0.5, 600, 0.00009, 900, 0.00001, 9000, 0);
    assertThat(steps).hasSize(2);
    assertStep(steps.get(0), 300, 6000);
    assertStep(steps.get(1), 8700, 500 / 8700.0 * 3600);
  }

  /** A residue of a fifth does not leave: of what does, half in 300 s are 4800 g/h. */
  @Test
  void countsWhatLeavesAndNotTheResidue() {
    List<ReleaseStep> steps = steps(0, 1, 300, 0.6, 600, 0.20009, 2400, 0.2);
    assertThat(steps).hasSize(2);
    assertStep(steps.get(0), 300, 4800);
    assertStep(steps.get(1), 2100, 400 / 2100.0 * 3600);
  }

  /** From a ten-thousandth on it matters to a room. */
  @Test
  void takesATenThousandthForMoreThanNothing() {
    assertThat(steps(0, 1, 300, 1e-4, 700, 0)).hasSize(2);
    assertThat(steps(0, 1, 300, 0.9e-4, 700, 0)).hasSize(1);
  }
}
