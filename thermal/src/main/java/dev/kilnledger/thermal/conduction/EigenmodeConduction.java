package dev.kilnledger.thermal.conduction;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import dev.kilnledger.units.quantity.HeatingRate;
import dev.kilnledger.units.quantity.TemperatureDifference;
import java.util.Arrays;
import java.util.List;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;

/**
 * The exact solution for one material of constant properties under a surface that is prescribed or
 * takes up heat by convection.
 *
 * <p>Along a segment of rate r the charge tends to the quasi-steady profile, which is behind the
 * kiln by
 *
 * <pre>lag(x) = r S^2 / ((m+1) a) [1/Bi + (1 - (x/S)^2) / 2]</pre>
 *
 * with S the radius or half thickness, a the diffusivity, Bi = h S / k, and m = 0, 1, 2 for slab,
 * cylinder, sphere: at the core of a prescribed surface r L^2/2a, r R^2/4a, r R^2/6a. What is left
 * is a sum of modes that die away each at its own rate a (zeta/S)^2, so a segment of any length
 * takes one step; where the rate changes by dr, mode n jumps by C_n dr S^2 / (a zeta_n^2). The
 * quasi-steady part stays in closed form, as its own series would converge badly. (H. S. Carslaw
 * and J. C. Jaeger, Conduction of Heat in Solids, 2nd ed.; Duhamel's theorem for a surface that is
 * linear in pieces.)
 *
 * <p>Modes are taken until the next is smaller than the tolerance, at most 2000. With a charge that
 * starts at another temperature than the kiln, the answer holds from a Fourier number a t / S^2 of
 * about 1e-5 on.
 *
 * <p>Example: a cylinder of 50 mm radius, 0.3 W/(m K), 2000 kg/m3, 1000 J/(kg K), heated at 100
 * K/h, comes to lag 115.74 K; with h = 100 W/(m2 K) by another 13.89 K. For a lag of 25 K it takes
 * 21.6 K/h.
 */
public final class EigenmodeConduction implements Conduction {
  private static final int MOST_MODES = 2000;
  private static final Source MODEL =
      Source.recomputed(
          "exact series of conduction with constant properties (Carslaw and Jaeger), segment by"
              + " segment");

  private final double tolerance;

  /**
   * A model of stated accuracy.
   *
   * @param tolerance the size of the first mode left out, above zero
   * @throws IllegalArgumentException if the tolerance is not above zero
   */
  public EigenmodeConduction(Amount<TemperatureDifference> tolerance) {
    new Problems("eigenmode conduction").positive("tolerance", tolerance).refuseIfAny();
    this.tolerance = tolerance.si();
  }

  /** {@return the model with a tolerance of 1e-5 K, met only just after a change of rate} */
  public static EigenmodeConduction standard() {
    return new EigenmodeConduction(Amounts.kelvinDifference(1e-5));
  }

  /**
   * The temperature at any place and time.
   *
   * @param charge one material of constant properties, surface without radiation, no back face
   * @param profile the temperature around it
   * @return the solution
   * @throws IllegalArgumentException if the charge is of another kind, with all reasons
   */
  public EigenmodeSolution solve(Charge charge, Profile profile) {
    double start = charge.startTemperature().orElse(profile.start()).si();
    return new EigenmodeSolution(UniformBody.of(charge), profile, start, tolerance, MOST_MODES);
  }

  /**
   * {@inheritDoc}
   *
   * @throws IllegalArgumentException if the charge is not of one material of constant properties,
   *     takes up radiation or has a back face
   */
  @Override
  public CoreHistory forecast(Charge charge, Profile profile) {
    EigenmodeSolution solution = solve(charge, profile);
    double longest = UniformBody.of(charge).timeScale() / 4;
    CoreTrack track = new CoreTrack(charge, profile, MODEL);
    double[] corners = solution.corners();
    double start = charge.startTemperature().orElse(profile.start()).si();
    track.add(0, solution.kilnAt(0), solution.surfaceAt(0), start);
    for (int i = 1; i < corners.length; i++) {
      follow(solution, corners[i - 1], corners[i], longest, track);
    }
    return track.history();
  }

  /**
   * The core at the end of each segment, and no more: far quicker than a history, as most modes
   * have died away there and are not looked for.
   *
   * @param charge as for {@link #solve}
   * @param profile the temperature around it
   * @return the temperatures, one for each segment, each within the tolerance
   * @throws IllegalArgumentException if the charge is of another kind, with all reasons
   */
  public List<Amount<Temperature>> coreAtEnds(Charge charge, Profile profile) {
    double start = charge.startTemperature().orElse(profile.start()).si();
    double[] core =
        new CoreAtEnds(UniformBody.of(charge), tolerance, MOST_MODES).of(profile, start);
    return Arrays.stream(core).mapToObj(Amounts::kelvin).toList();
  }

  /** Takes points so close that what lies between them is nearly straight. */
  private static void follow(
      EigenmodeSolution solution, double start, double end, double longest, CoreTrack track) {
    double shortest = longest * 1e-6;
    double time = start;
    double step = longest;
    while (time < end) {
      boolean last = time + step >= end;
      double next = last ? end : time + step;
      double middle = time + (next - time) / 2;
      double core = solution.coreAt(next);
      double surface = solution.surfaceAt(next);
      double bend = Math.abs((track.lastCore() + core) / 2 - solution.coreAt(middle));
      bend =
          Math.max(
              bend, Math.abs((track.lastSurface() + surface) / 2 - solution.surfaceAt(middle)));
      if (bend > CoreTrack.STRAIGHT && next - time > shortest) {
        step = (next - time) / 2;
        continue;
      }
      track.add(next, solution.kilnAt(next), surface, core);
      time = next;
      step = Math.min(longest, bend < CoreTrack.STRAIGHT / 4 ? 2 * step : step);
    }
  }

  /**
   * How far the core comes to be behind the kiln at a rate that lasts.
   *
   * @param charge as for {@link #solve}
   * @param rate the rate of heating
   * @return the quasi-steady lag
   */
  public Amount<TemperatureDifference> steadyLag(Charge charge, Amount<HeatingRate> rate) {
    return Amounts.kelvinDifference(rate.si() * UniformBody.of(charge).lagPerRate(0));
  }

  /**
   * The rate at which the core comes to be a given lag behind the kiln.
   *
   * @param charge as for {@link #solve}
   * @param lag the lag, above zero
   * @return the rate
   * @throws IllegalArgumentException if the lag is not above zero
   */
  public Amount<HeatingRate> rateForLag(Charge charge, Amount<TemperatureDifference> lag) {
    new Problems("charge " + charge.name()).positive("lag", lag).refuseIfAny();
    return Amounts.kelvinPerHour(3600 * lag.si() / UniformBody.of(charge).lagPerRate(0));
  }

  /**
   * The time in which what is left of a change falls to 1/e in the end.
   *
   * @param charge as for {@link #solve}
   * @return S^2 / (a zeta_1^2)
   */
  public Amount<Time> timeConstant(Charge charge) {
    UniformBody body = UniformBody.of(charge);
    Eigenmode first = Eigenmode.of(body.shape(), body.biot(), 0);
    return Amounts.seconds(1 / body.decayRate(first)).to(TradeUnits.HOUR);
  }
}
