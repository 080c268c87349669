package dev.kilnledger.thermal.conduction;

/**
 * One mode of conduction in a body of one material: eigenvalue zeta, the coefficient C of the
 * expansion of 1, and the mode's values at the surface and in the mean.
 *
 * <p>Slab {@code zeta tan zeta = Bi}, {@code C = 4 sin z / (2z + sin 2z)}; cylinder {@code zeta J1
 * = Bi J0}, {@code C = (2/z) J1 / (J0^2 + J1^2)}; sphere {@code 1 - zeta cot zeta = Bi}, {@code C =
 * 4 (sin z - z cos z) / (2z - sin 2z)} (Incropera et al., Fundamentals of Heat and Mass Transfer,
 * sec. 5.5 and 5.6; Carslaw and Jaeger). A surface of given temperature is Bi = infinity.
 */
record Eigenmode(double zeta, double coefficient, double surface, double mean) {
  /**
   * The mode of a number from 0 up.
   *
   * @param biot h S / k, above zero, infinity for a surface of given temperature
   */
  static Eigenmode of(BodyShape shape, double biot, int number) {
    double z = eigenvalue(shape, biot, number);
    return switch (shape) {
      case SLAB ->
          new Eigenmode(
              z, 4 * Math.sin(z) / (2 * z + Math.sin(2 * z)), Math.cos(z), Math.sin(z) / z);
      case CYLINDER -> {
        double j0 = Bessel.j0(z);
        double j1 = Bessel.j1(z);
        yield new Eigenmode(z, 2 / z * j1 / (j0 * j0 + j1 * j1), j0, 2 * j1 / z);
      }
      case SPHERE -> {
        double moment = Math.sin(z) - z * Math.cos(z);
        yield new Eigenmode(
            z, 4 * moment / (2 * z - Math.sin(2 * z)), Math.sin(z) / z, 3 * moment / (z * z * z));
      }
    };
  }

  /** The mode at a share of the radius, 1 at the core. */
  double at(BodyShape shape, double share) {
    double x = zeta * share;
    return switch (shape) {
      case SLAB -> Math.cos(x);
      case CYLINDER -> Bessel.j0(x);
      case SPHERE -> x == 0 ? 1 : Math.sin(x) / x;
    };
  }

  private static double eigenvalue(BodyShape shape, double biot, int number) {
    double low = number * Math.PI;
    return switch (shape) {
      case SLAB ->
          Double.isInfinite(biot)
              ? low + Math.PI / 2
              : root(z -> biot * Math.cos(z) - z * Math.sin(z), low, low + Math.PI / 2);
      case CYLINDER ->
          Double.isInfinite(biot)
              ? root(Bessel::j0, low + Math.PI / 2, low + Math.PI)
              // One root lies between a zero of J1 and the next of J0, and none on the way there
              // from these ends, where both terms have the same sign.
              : root(z -> biot * Bessel.j0(z) - z * Bessel.j1(z), low, low + Math.PI);
      case SPHERE ->
          Double.isInfinite(biot)
              ? low + Math.PI
              : root(
                  z -> z * Math.cos(z) + (biot - 1) * Math.sin(z),
                  Math.max(low, 1e-12), // zero itself is a root, but no mode
                  low + Math.PI);
    };
  }

  private interface Function {
    double at(double x);
  }

  /**
   * The root between two places where a function differs in sign, to the last digits, by the method
   * of Illinois; by halving should that be slow.
   */
  private static double root(Function function, double low, double high) {
    double a = low;
    double b = high;
    double atA = function.at(a);
    double atB = function.at(b);
    for (int i = 0; i < 100; i++) {
      double x = i < 40 ? b - atB * (b - a) / (atB - atA) : (a + b) / 2;
      double atX = function.at(x);
      if (atX == 0 || Math.abs(x - b) <= 2 * Math.ulp(x)) {
        return x;
      }
      if (Math.signum(atX) == Math.signum(atB)) {
        atA /= 2;
      } else {
        a = b;
        atA = atB;
      }
      b = x;
      atB = atX;
    }
    return b;
  }
}
