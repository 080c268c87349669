package dev.kilnledger.thermal.conduction;

import static dev.kilnledger.thermal.conduction.Bodies.body;
import static dev.kilnledger.thermal.conduction.Bodies.celsiusOf;
import static dev.kilnledger.thermal.conduction.Bodies.film;
import static dev.kilnledger.thermal.conduction.Bodies.firing;
import static dev.kilnledger.thermal.conduction.Bodies.perShape;
import static dev.kilnledger.thermal.conduction.Bodies.ramp;
import static dev.kilnledger.thermal.conduction.Bodies.steady;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.kelvinDifference;
import static dev.kilnledger.units.Amounts.minutes;
import static dev.kilnledger.units.Amounts.seconds;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.thermal.profile.ProfileBuilder;
import dev.kilnledger.thermal.profile.Segment;
import dev.kilnledger.units.Amount;
import java.util.List;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The core at the ends of segments, against the tables and the model of the whole history. */
class CoreAtEndsTest {
  private static final double TOLERANCE = 1e-5; // K, of the standard model
  private static final EigenmodeConduction MODEL = EigenmodeConduction.standard();

  private static void sameAsTheHistory(Charge charge, Profile profile) {
    EigenmodeSolution whole = MODEL.solve(charge, profile);
    List<Amount<Temperature>> ends = MODEL.coreAtEnds(charge, profile);
    assertThat(ends).hasSize(profile.segments().size());
    double time = 0;
    for (int i = 0; i < ends.size(); i++) {
      time += profile.segments().get(i).duration().si();
      assertThat(ends.get(i).si())
          .as("end of segment %d", i + 1)
          .isCloseTo(whole.core(seconds(time)).si(), within(2 * TOLERANCE));
    }
  }

  /** Carslaw and Jaeger, Conduction of Heat in Solids, 2nd ed.: series of a step, six decimals. */
  @ParameterizedTest
  @CsvSource({
    "0.1, 0.949305, 0.848355, 0.707100",
    "0.2, 0.772312, 0.501487, 0.277078",
    "1.0, 0.107977, 0.004932, 0.000103"
  })
  void coolsByTheSeriesOfAStep(double fourier, double slab, double cylinder, double sphere) {
    EigenmodeConduction fine = new EigenmodeConduction(kelvinDifference(1e-9));
    for (BodyShape shape : BodyShape.values()) {
      Charge charge = body(shape, 1, 1e-4).startTemperature(celsius(1)).build();
      double left = celsiusOf(fine.coreAtEnds(charge, steady(0, fourier * 1e4)).get(0));
      // the last digit of the table
      assertThat(left)
          .as(shape.name())
          .isCloseTo(perShape(slab, cylinder, sphere, shape), within(5.1e-7));
    }
  }

  /** Carslaw and Jaeger: a surface heated at 100 K/h; half the last digit, and the tolerance. */
  @ParameterizedTest
  @CsvSource({
    "1800, 18.11790443, 29.88502937, 36.15637587",
    "14400, 358.3336423, 379.1666667, 386.1111111"
  })
  void warmsByTheSeriesOfARamp(double time, double slab, double cylinder, double sphere) {
    for (BodyShape shape : BodyShape.values()) {
      Charge charge = body(shape, 0.03, 3e-7).build();
      double core = celsiusOf(MODEL.coreAtEnds(charge, ramp(100, time)).get(0));
      assertThat(core)
          .as(shape.name())
          .isCloseTo(perShape(slab, cylinder, sphere, shape), within(TOLERANCE));
    }
  }

  @ParameterizedTest
  @EnumSource
  void isThatOfTheWholeHistory(BodyShape shape) {
    sameAsTheHistory(body(shape, 0.03, 3e-7).build(), firing());
    sameAsTheHistory(
        body(shape, 0.05, 2e-7).contact(film(20)).startTemperature(celsius(300)).build(), firing());
  }

  /** Segments of the same length after one another, and of different ones. */
  @Test
  void isThatOfTheWholeHistoryInManyShortSegments() {
    ProfileBuilder steps = Profile.from(celsius(20));
    for (int i = 1; i <= 20; i++) {
      steps.rampOver(celsius(20 + 40 * i), minutes(i % 5 == 0 ? 3 : 7)).hold(minutes(7));
    }
    Profile profile = steps.rampOver(celsius(100), minutes(30)).build();
    assertThat(profile.segments().stream().filter(Segment::isCooling)).hasSize(1);
    sameAsTheHistory(body(BodyShape.CYLINDER, 0.03, 3e-7).build(), profile);
    sameAsTheHistory(body(BodyShape.SLAB, 0.03, 3e-7).contact(film(50)).build(), profile);
  }
}
