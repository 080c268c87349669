package dev.kilnledger.thermal.conduction;

import static dev.kilnledger.thermal.conduction.Bodies.body;
import static dev.kilnledger.thermal.conduction.Bodies.celsiusOf;
import static dev.kilnledger.thermal.conduction.Bodies.film;
import static dev.kilnledger.thermal.conduction.Bodies.firing;
import static dev.kilnledger.thermal.conduction.Bodies.material;
import static dev.kilnledger.thermal.conduction.Bodies.perShape;
import static dev.kilnledger.thermal.conduction.Bodies.ramp;
import static dev.kilnledger.thermal.conduction.Bodies.steady;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kelvinDifference;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.metres;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.Amounts.seconds;
import static dev.kilnledger.units.Amounts.wattsPerMetreKelvin;
import static dev.kilnledger.units.Amounts.wattsPerSquareMetreKelvin;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static dev.kilnledger.units.TradeUnits.KELVIN_DIFFERENCE;
import static dev.kilnledger.units.TradeUnits.KELVIN_PER_HOUR;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.ThermalConductivity;
import javax.measure.quantity.Time;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class EigenmodeConductionTest {
  private static final EigenmodeConduction MODEL = EigenmodeConduction.standard();

  /** Carslaw and Jaeger, Conduction of Heat in Solids, 2nd ed.: series of a step, six decimals. */
  @ParameterizedTest
  @CsvSource({
    "0.05, 0.996869, 0.987099, 0.965999",
    "0.1, 0.949305, 0.848355, 0.707100",
    "0.2, 0.772312, 0.501487, 0.277078",
    "0.5, 0.370777, 0.088890, 0.014384",
    "1.0, 0.107977, 0.004932, 0.000103"
  })
  void coolsByTheSeriesOfAStep(double fourier, double slab, double cylinder, double sphere) {
    for (BodyShape shape : BodyShape.values()) {
      Charge charge = body(shape, 1, 1e-4).startTemperature(celsius(1)).build();
      Amount<Time> time = seconds(fourier * 1e4);
      double left = celsiusOf(MODEL.solve(charge, steady(0, 2e4)).core(time));
      // The first digit left out; and 5e-13 of rounding about 273 K.
      assertThat(left)
          .as(shape.name())
          .isCloseTo(perShape(slab, cylinder, sphere, shape), within(5.1e-7));
    }
  }

  /**
   * Carslaw and Jaeger: series of a surface heated at a constant rate, summed with many digits
   * elsewhere; half the last digit.
   */
  @ParameterizedTest
  @CsvSource({
    "600, 1.233903422, 3.087591832, 5.121979275",
    "1800, 18.11790443, 29.88502937, 36.15637587",
    "3600, 60.55968979, 79.18902196, 86.11123244",
    "14400, 358.3336423, 379.1666667, 386.1111111"
  })
  void warmsByTheSeriesOfARamp(double time, double slab, double cylinder, double sphere) {
    for (BodyShape shape : BodyShape.values()) {
      Charge charge = body(shape, 0.03, 3e-7).build();
      double core = celsiusOf(MODEL.solve(charge, ramp(100, 20000)).core(seconds(time)));
      double digits = time > 4000 ? 5.1e-8 : time > 1000 ? 5.1e-9 : 6e-10;
      assertThat(core)
          .as(shape.name())
          .isCloseTo(perShape(slab, cylinder, sphere, shape), within(digits));
    }
  }

  /** r L2/2a, r R2/4a, r R2/6a (Carslaw and Jaeger), 60 K/h, 2e-7 m2/s, 40 mm, at the core. */
  @ParameterizedTest
  @CsvSource({"SLAB, 66.6666666667", "CYLINDER, 33.3333333333", "SPHERE, 22.2222222222"})
  void comesToAQuasiSteadyLag(BodyShape shape, double lag) {
    Charge charge = body(shape, 0.04, 2e-7).build();
    assertThat(MODEL.steadyLag(charge, kelvinPerHour(60)).si()).isCloseTo(lag, within(1e-9));
    Profile profile = ramp(60, 30 * 3600);
    CoreHistory history = MODEL.forecast(charge, profile);
    assertThat(history.greatestLag().lag().si()).isCloseTo(lag, within(1e-4)); // exp(-33)
    // Mean lags are 2/3, 1/2 and 2/5 of that: r S2/a times 1/3, 1/8, 1/15.
    double share = perShape(2 / 3.0, 1 / 2.0, 2 / 5.0, shape);
    double mean = MODEL.solve(charge, profile).mean(profile.duration()).si();
    assertThat(profile.end().si() - mean).isCloseTo(lag * share, within(1e-4));
  }

  /** Carslaw and Jaeger: share of the final lag that a cylinder has reached. */
  @ParameterizedTest
  @CsvSource({"0.05, 0.199617", "0.1, 0.385190", "0.2, 0.651796", "0.5, 0.938518"})
  void approachesItsLag(double fourier, double share) {
    Charge charge = body(BodyShape.CYLINDER, 1, 1e-4).build();
    Profile profile = Profile.from(celsius(0)).rampTo(celsius(100), kelvinPerHour(36)).build();
    Amount<Time> time = seconds(fourier * 1e4);
    double lag = profile.temperatureAt(time).si() - MODEL.solve(charge, profile).core(time).si();
    assertThat(lag / 25).isCloseTo(share, within(5.1e-7)); // r R2 / 4a = 0.01 x 1e4 / 4
  }

  /**
   * The example of the class's documentation, by hand: r R2/4a, r R rho c/2h, R2/(a 2.404826^2).
   */
  @Test
  void lagsAPackedCrucibleAsInTheExample() {
    Charge.Builder charge = body(BodyShape.CYLINDER, 0.05, material(0.3, 2000, 1000));
    Charge bare = charge.build();
    Charge filmed = charge.contact(film(100)).build();
    Amount<Time> constant = MODEL.timeConstant(bare);
    double lag = MODEL.steadyLag(bare, kelvinPerHour(100)).in(KELVIN_DIFFERENCE);
    double more = MODEL.steadyLag(filmed, kelvinPerHour(100)).in(KELVIN_DIFFERENCE);
    assertThat(lag).isCloseTo(115.7407, within(5.1e-5));
    assertThat(more - lag).isCloseTo(13.8889, within(5.1e-5));
    assertThat(MODEL.rateForLag(bare, kelvinDifference(25)).in(KELVIN_PER_HOUR))
        .isCloseTo(21.6, within(1e-9));
    assertThat(constant.in(HOUR)).isCloseTo(0.80053, within(5.1e-6));
  }

  /**
   * A firing of five segments, each end computed by superposition of the ramps' series (Carslaw and
   * Jaeger) with many digits; half the last digit.
   */
  @Test
  void followsAFiringSegmentBySegment() {
    Charge charge = body(BodyShape.SLAB, 0.02, 3e-7).build();
    Profile profile = firing();
    EigenmodeSolution solution = MODEL.solve(charge, profile);
    double[] expected = {
      101.5059182715, 119.975594455, 390.7407407407, 399.9999843775, 236.9881634369
    };
    double time = 0;
    for (int i = 0; i < expected.length; i++) {
      time += profile.segments().get(i).duration().si();
      assertThat(celsiusOf(solution.core(seconds(time)))).isCloseTo(expected[i], within(1e-9));
    }
    assertThat(celsiusOf(solution.at(metres(0.02), hours(1)))).isCloseTo(120, within(1e-6));
    assertThat(solution.surface(hours(0.5))).isEqualTo(profile.temperatureAt(hours(0.5)));
  }

  /** The same firing as a sum of ramps that start one after another, for the other shapes. */
  @ParameterizedTest
  @CsvSource({"SLAB", "CYLINDER", "SPHERE"})
  void superposesRamps(BodyShape shape) {
    Charge charge = body(shape, 0.02, 3e-7).contact(film(20)).build();
    Profile profile = firing();
    EigenmodeSolution single = MODEL.solve(charge, ramp(3600, 1e5));
    double time = profile.duration().si() - 1800;
    double expected = 20;
    double start = 0;
    double rate = 0;
    for (var segment : profile.segments()) {
      double change = segment.rate().si() - rate;
      expected += change * celsiusOf(single.core(seconds(time - start)));
      rate += change;
      start += segment.duration().si();
    }
    double core = celsiusOf(MODEL.solve(charge, profile).core(seconds(time)));
    assertThat(core).isCloseTo(expected, within(1e-8)); // digits lost in the sum of large terms
  }

  /**
   * Incropera et al., example 5.4 (pipe wall as a slab of 40 mm, 60 °C oil from -20 °C, 480 s):
   * printed 42.9 °C, 7400 W/m2, 2.73e7 J/m by one rounded term; the full series by an independent
   * computation: 43.016 °C, 7318.7 W/m2, 2.7254e7 J per m of a pipe of 1 m.
   */
  @Test
  void warmsThePipeOfTheTextbook() {
    Charge charge =
        body(BodyShape.SLAB, 0.04, material(63.9, 7832, 434))
            .contact(film(500))
            .startTemperature(celsius(-20))
            .build();
    EigenmodeSolution solution = MODEL.solve(charge, steady(60, 480));
    Amount<Time> end = seconds(480);
    assertThat(celsiusOf(solution.core(end))).isCloseTo(43.016, within(5.1e-4));
    assertThat(500 * (60 - celsiusOf(solution.surface(end)))).isCloseTo(7318.7, within(0.051));
    double heat = Math.PI * 7832 * 434 * 0.04 * (celsiusOf(solution.mean(end)) + 20);
    assertThat(heat).isCloseTo(2.7254e7, within(51e2));
  }

  /**
   * Incropera et al., example 5.5 (sphere of 10 mm quenched in two steps). Air: 93.799 s by the
   * lumped balance, whose rate a sphere of Biot number 0.0025 misses by Bi/5: 0.05 s. Water: the
   * full series gives 2.9762 s to 50 °C at the centre (printed 3.1 s by one rounded term); a digit
   * of that is 0.008 K.
   */
  @Test
  void quenchesTheSphereOfTheTextbook() {
    Charge.Builder sphere = body(BodyShape.SPHERE, 0.005, material(20, 3000, 1000));
    Charge inAir = sphere.contact(film(10)).startTemperature(celsius(400)).build();
    EigenmodeSolution air = MODEL.solve(inAir, steady(20, 200));
    double before = celsiusOf(air.mean(seconds(93.799 - 0.001)));
    double after = celsiusOf(air.mean(seconds(93.799 + 0.06)));
    assertThat(before).isGreaterThan(335);
    assertThat(after).isLessThan(335);
    Charge inWater = sphere.contact(film(6000)).startTemperature(celsius(335)).build();
    double core = celsiusOf(MODEL.solve(inWater, steady(20, 10)).core(seconds(2.9762)));
    assertThat(core).isCloseTo(50, within(0.008));
  }

  /**
   * Cengel, Heat and Mass Transfer, steel shaft of 350 mm from 400 °C in 150 °C for 20 min: printed
   * 390 °C by one term at a Fourier number of 0.155, where one term is not enough: 385.733 °C by
   * the full series (independent computation).
   */
  @Test
  void doesNotTrustOneTermForTheShaftOfTheTextbook() {
    Charge shaft =
        body(BodyShape.CYLINDER, 0.175, material(14.9, 7900, 14.9 / 7900 / 3.95e-6))
            .contact(film(60))
            .startTemperature(celsius(400))
            .build();
    double core = celsiusOf(MODEL.solve(shaft, steady(150, 1200)).core(seconds(1200)));
    assertThat(core).isCloseTo(385.733, within(5.1e-4));
  }

  /**
   * Incropera et al., example 5.1 (thermocouple bead, lumped: 5.16479 s from 25 to 199 °C in 200
   * °C). At a Biot number of 0.007 the core of the sphere is 0.009 K behind that.
   */
  @Test
  void warmsTheBeadOfTheTextbook() {
    Charge bead =
        body(BodyShape.SPHERE, 7.0588e-4 / 2, material(20, 8500, 400))
            .contact(film(400))
            .startTemperature(celsius(25))
            .build();
    double core = celsiusOf(MODEL.solve(bead, steady(200, 10)).core(seconds(5.16479)));
    assertThat(core).isCloseTo(199, within(0.01));
  }

  /**
   * SFPE verification case 6, a square bar of Biot number 1 from 1000 °C: the product of two slabs.
   * Published by a numerical code (third column), the series by an independent computation.
   */
  @ParameterizedTest
  @CsvSource({
    "0.1, 986.26, 986.4",
    "0.2, 903.72, 903.8",
    "0.4, 690.48, 690.2",
    "0.6, 515.06, 514.7",
    "0.8, 383.19, 382.7",
    "1.0, 285.01, 284.5"
  })
  void coolsTheSquareBarOfTheVerificationCase(double fourier, double series, double published) {
    Charge slab =
        body(BodyShape.SLAB, 1, 1e-4).contact(film(200)).startTemperature(celsius(1)).build();
    double share = celsiusOf(MODEL.solve(slab, steady(0, 2e4)).core(seconds(fourier * 1e4)));
    assertThat(1000 * share * share).isCloseTo(series, within(0.0051));
    assertThat(1000 * share * share).isCloseTo(published, within(0.6)); // as the two differ
  }

  @Test
  void takesAsManyModesAsItsToleranceAsks() {
    Charge charge = body(BodyShape.CYLINDER, 0.03, 3e-7).contact(film(50)).build();
    Profile profile = firing();
    EigenmodeSolution rough = new EigenmodeConduction(kelvinDifference(0.1)).solve(charge, profile);
    EigenmodeSolution fine = MODEL.solve(charge, profile);
    assertThat(rough.modeCount()).isLessThan(fine.modeCount());
    for (double hour : new double[] {0.01, 0.5, 1.01, 3, 8.1}) {
      assertThat(rough.core(hours(hour)).si()).isCloseTo(fine.core(hours(hour)).si(), within(0.1));
    }
  }

  @Test
  void refusesWhatItCannotTakeWithAllReasons() {
    Charge charge =
        body(
                BodyShape.SLAB,
                0.03,
                material(
                    PropertyCurve.<ThermalConductivity>builder()
                        .at(celsius(0), wattsPerMetreKelvin(1))
                        .at(celsius(100), wattsPerMetreKelvin(2))
                        .build(),
                    2000,
                    material(1, 1, 1000).heatCapacity().orElseThrow()))
            .addLayers(ChargeLayer.of(material(1, 1, 1), metres(0.01)))
            .contact(SurfaceContact.of(wattsPerSquareMetreKelvin(10), ratio(0.5)))
            .back(BackFace.of(SurfaceContact.perfect(), celsius(0)))
            .build();
    assertThatThrownBy(() -> MODEL.forecast(charge, firing()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContainingAll(
            "2 layers", "depend on temperature", "radiation", "back face", "EnthalpyConduction");
    Charge plain = body(BodyShape.SLAB, 0.03, 3e-7).build();
    assertThatThrownBy(() -> MODEL.rateForLag(plain, kelvinDifference(0)))
        .hasMessageContaining("lag is 0 K; accepted is more than zero");
    assertThatThrownBy(() -> new EigenmodeConduction(kelvinDifference(0)))
        .hasMessageContaining("tolerance is 0 K");
    EigenmodeSolution solution = MODEL.solve(plain, firing());
    assertThatThrownBy(() -> solution.core(hours(100))).hasMessageContaining("time is 100 h");
    assertThatThrownBy(() -> solution.at(metres(1), hours(1)))
        .hasMessageContaining("radius is 1 m; accepted is from 0 m to 0.03 m");
  }

  /**
   * The mean over the volume is the integral of the temperature over s, s2 or s3 of the share s of
   * the radius, here by Simpson's rule; the ends of the radius are core and surface. Through a
   * film, after a ramp and a hold.
   */
  @ParameterizedTest
  @EnumSource(BodyShape.class)
  void hasTheMeanOfItsTemperatures(BodyShape shape) {
    Charge charge = body(shape, 0.03, 3e-7).contact(film(20)).build();
    EigenmodeSolution solution = EigenmodeConduction.standard().solve(charge, firing());
    int power = (int) perShape(0, 1, 2, shape);
    for (double hours : new double[] {0.5, 1.3, 7, 10}) {
      double sum = 0;
      int panels = 200;
      for (int i = 0; i <= panels; i++) {
        double share = (double) i / panels;
        double weight = i == 0 || i == panels ? 1 : i % 2 == 0 ? 2 : 4;
        double kelvin = solution.at(metres(0.03 * share), hours(hours)).si();
        sum += weight * kelvin * (power + 1) * Math.pow(share, power);
      }
      // Simpson's rule of 200 panels on the first modes: below 1e-7 K
      assertThat(solution.mean(hours(hours)).si()).isCloseTo(sum / (3 * panels), within(1e-5));
      assertThat(solution.at(metres(0), hours(hours)).si())
          .isCloseTo(solution.core(hours(hours)).si(), within(1e-9));
      assertThat(solution.at(metres(0.03), hours(hours)).si())
          .isCloseTo(solution.surface(hours(hours)).si(), within(1e-9));
    }
  }
}
