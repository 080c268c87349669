package dev.kilnledger.thermal.conduction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EigenmodeTest {
  /**
   * Incropera et al., Fundamentals of Heat and Mass Transfer, table 5.1, with more digits by an
   * independent root finder; half a digit of what is printed.
   */
  @ParameterizedTest
  @CsvSource({
    "SLAB, 0.01, 0.099833639, 1.0016608",
    "SLAB, 0.1, 0.31105285, 1.0160942",
    "SLAB, 1, 0.86033359, 1.119132",
    "SLAB, 5, 1.3138377, 1.2402493",
    "SLAB, 10, 1.42887, 1.2619626",
    "SLAB, 100, 1.5552451, 1.2730876",
    "CYLINDER, 0.01, 0.14124476, 1.0024958",
    "CYLINDER, 0.1, 0.44168178, 1.0245794",
    "CYLINDER, 1, 1.2557837, 1.2070921",
    "CYLINDER, 5, 1.9898147, 1.5028691",
    "CYLINDER, 10, 2.1794966, 1.5676918",
    "CYLINDER, 100, 2.3809017, 1.6015239",
    "SPHERE, 0.01, 0.17303199, 1.0029981",
    "SPHERE, 0.1, 0.54228089, 1.0297977",
    "SPHERE, 1, 1.5707963, 1.2732395",
    "SPHERE, 5, 2.5704316, 1.7870009",
    "SPHERE, 10, 2.8363004, 1.9249086",
    "SPHERE, 100, 3.110187, 1.9990335"
  })
  void hasTheFirstEigenvalueAndCoefficientOfTheTable(
      BodyShape shape, double biot, double zeta, double coefficient) {
    Eigenmode first = Eigenmode.of(shape, biot, 0);
    assertThat(first.zeta()).isCloseTo(zeta, within(5.1e-8 * Math.max(1, 10 * zeta)));
    assertThat(first.coefficient()).isCloseTo(coefficient, within(5.1e-7));
  }

  /** Zeros of J0: Abramowitz and Stegun, table 9.5, ten decimals. */
  @ParameterizedTest
  @CsvSource({
    "0, 2.4048255577, 0.5191474973",
    "1, 5.5200781103, -0.3402648065",
    "2, 8.6537279129, 0.2714522999",
    "9, 30.6346064684, -0.1441659777",
    "19, 62.0484691902, -0.1012934989"
  })
  void hasTheZerosOfBesselFunctions(int number, double zero, double j1) {
    assertThat(Eigenmode.of(BodyShape.CYLINDER, Double.POSITIVE_INFINITY, number).zeta())
        .isCloseTo(zero, within(5.1e-11));
    assertThat(Bessel.j1(zero)).isCloseTo(j1, within(1e-10));
  }

  /** Abramowitz and Stegun, table 9.1, on both sides of the change of method at 25. */
  @ParameterizedTest
  @CsvSource({"0, 1, 0", "1, 0.7651976866, 0.4400505857", "10, -0.2459357645, 0.0434727462"})
  void hasTheValuesOfBesselFunctions(double x, double j0, double j1) {
    assertThat(Bessel.j0(x)).isCloseTo(j0, within(5.1e-11));
    assertThat(Bessel.j1(x)).isCloseTo(j1, within(5.1e-11));
  }

  /** The two methods meet: derivative of J0 is -J1, both continuous; rounding of the integral. */
  @ParameterizedTest
  @CsvSource({"25"})
  void joinsItsTwoMethods(double x) {
    double below = Math.nextDown(x);
    assertThat(Bessel.j0(below)).isCloseTo(Bessel.j0(x), within(2e-15));
    assertThat(Bessel.j1(below)).isCloseTo(Bessel.j1(x), within(2e-15));
  }

  /** Each mode lies between the zeros that bracket it: none is missed or counted twice. */
  @ParameterizedTest
  @CsvSource({"SLAB", "CYLINDER", "SPHERE"})
  void missesNoMode(BodyShape shape) {
    for (double biot : new double[] {1e-4, 0.5, 1, 3, 1e4}) {
      double last = 0;
      for (int n = 0; n < 300; n++) {
        double zeta = Eigenmode.of(shape, biot, n).zeta();
        assertThat(zeta).isBetween(n * Math.PI, (n + 1) * Math.PI).isGreaterThan(last);
        last = zeta;
      }
    }
  }
}
