package dev.kilnledger.thermal.conduction;

import dev.kilnledger.core.internal.Problems;
import java.util.ArrayList;
import java.util.List;

/**
 * A body of one material of constant properties with a linear surface: size S in m, diffusivity a
 * in m2/s, Biot number h S / k (infinite for a surface of given temperature).
 */
record UniformBody(BodyShape shape, double size, double diffusivity, double biot) {
  static UniformBody of(Charge charge) {
    ChargeMaterial material = charge.layers().get(0).material();
    String others =
        "; accepted is one layer of constant properties whose surface convects or is prescribed;"
            + " EnthalpyConduction takes others";
    new Problems("charge " + charge.name())
        .require(charge.layers().size() == 1, charge.layers().size() + " layers" + others)
        .require(
            material.isConstant(),
            "the properties of " + material.name() + " depend on temperature" + others)
        .require(
            charge.contact().emissivity().si() == 0,
            "the surface takes up radiation, which is not linear" + others)
        .require(charge.back().isEmpty(), "the slab has a back face" + others)
        .refuseIfAny();
    double k = material.conductivity().values().get(0).si();
    double c = material.heatCapacity().orElseThrow().values().get(0).si();
    double size = charge.layers().get(0).thickness().si();
    double biot =
        charge.contact().convection().map(h -> h.si() * size / k).orElse(Double.POSITIVE_INFINITY);
    return new UniformBody(charge.shape(), size, k / (material.density().si() * c), biot);
  }

  boolean isClamped() {
    return Double.isInfinite(biot);
  }

  /** S^2 / a, s: what times are measured by. */
  double timeScale() {
    return size * size / diffusivity;
  }

  /** How fast a mode dies away, 1/s. */
  double decayRate(Eigenmode mode) {
    return mode.zeta() * mode.zeta() / timeScale();
  }

  /** How far the quasi-steady profile is behind the kiln, K per K/s, at a share of the radius. */
  double lagPerRate(double share) {
    return timeScale() / (shape.power + 1) * (1 / biot + (1 - share * share) / 2);
  }

  /** The mean of {@link #lagPerRate} over the volume. */
  double meanLagPerRate() {
    return timeScale() / (shape.power + 1) * (1 / biot + 1.0 / (shape.power + 3));
  }

  /**
   * As many modes as leave out less than a tolerance, and no more than a number.
   *
   * @param rateChange the largest change of rate, K/s
   * @param step the step at the start, K, whose modes fall off too slowly to be counted by size:
   *     enough are taken to tell it from a Fourier number of 1e-5 on
   */
  Eigenmode[] modes(double rateChange, double step, double tolerance, int most) {
    List<Eigenmode> modes = new ArrayList<>();
    double last;
    double exponent;
    do {
      Eigenmode mode = Eigenmode.of(shape, biot, modes.size());
      modes.add(mode);
      last = Math.abs(mode.coefficient() * rateChange / decayRate(mode));
      exponent = mode.zeta() * mode.zeta() * 1e-5;
    } while (modes.size() < most && (last > tolerance || (step != 0 && exponent < 37)));
    return modes.toArray(Eigenmode[]::new);
  }
}
