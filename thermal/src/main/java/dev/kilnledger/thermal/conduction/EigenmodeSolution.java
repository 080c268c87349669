package dev.kilnledger.thermal.conduction;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.thermal.profile.Segment;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.util.Arrays;
import java.util.List;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;

/**
 * The temperature in a charge of one material of constant properties at any radius and time of a
 * profile, in closed form; see {@link EigenmodeConduction}. Immutable.
 *
 * <p>Example: a slab of 20 mm half thickness and a diffusivity of 0.3 mm2/s, from 20 to 120 °C at
 * 100 K/h, held for 1 h, to 400 °C at 50 K/h, held for 2 h, and to 200 °C at 200 K/h, has at its
 * core 101.506, 119.976, 390.741, 399.99998 and 236.988 °C at the five ends: on cooling it is
 * hotter than the kiln.
 */
public final class EigenmodeSolution {
  private static final double FORGOTTEN = 40; // exp(-40) = 4e-18

  private final UniformBody body;
  private final Eigenmode[] modes;
  private final Profile profile;
  private final double[] starts; // s, of each segment and the end of the last
  private final double[] kiln; // K, at each of the starts
  private final double[][] deviations; // K, of each mode at the start of each segment
  private final double[] atCore;
  private final double[] atSurface;

  EigenmodeSolution(UniformBody body, Profile profile, double charge, double tolerance, int most) {
    this.body = body;
    this.profile = profile;
    List<Segment> segments = profile.segments();
    int count = segments.size();
    starts = new double[count + 1];
    kiln = new double[count + 1];
    double[] rates = new double[count];
    kiln[0] = segments.get(0).start().si();
    double largest = 0;
    for (int i = 0; i < count; i++) {
      Segment segment = segments.get(i);
      starts[i + 1] = starts[i] + segment.duration().si();
      kiln[i + 1] = segment.end().si();
      rates[i] = (kiln[i + 1] - kiln[i]) / segment.duration().si();
      largest = Math.max(largest, Math.abs(rates[i] - (i == 0 ? 0 : rates[i - 1])));
    }
    modes = body.modes(largest, kiln[0] - charge, tolerance, most);
    atCore = new double[modes.length];
    Arrays.fill(atCore, 1);
    atSurface = Arrays.stream(modes).mapToDouble(Eigenmode::surface).toArray();
    deviations = new double[count][modes.length];
    for (int n = 0; n < modes.length; n++) {
      double decay = body.decayRate(modes[n]);
      double perRate = modes[n].coefficient() / decay;
      double deviation = -modes[n].coefficient() * (kiln[0] - charge);
      double before = 0;
      for (int i = 0; i < count; i++) {
        deviation += perRate * (rates[i] - before);
        deviations[i][n] = deviation;
        deviation *= Math.exp(-decay * (starts[i + 1] - starts[i]));
        before = rates[i];
      }
    }
  }

  /** {@return how many modes are summed} */
  public int modeCount() {
    return modes.length;
  }

  /**
   * The temperature at the centre or mid-plane.
   *
   * @param time since the start, within the profile
   * @return the temperature
   * @throws IllegalArgumentException if the time lies outside the profile
   */
  public Amount<Temperature> core(Amount<Time> time) {
    return Amounts.kelvin(coreAt(checked(time)));
  }

  /**
   * The temperature of the surface.
   *
   * @param time since the start, within the profile
   * @return the temperature
   * @throws IllegalArgumentException if the time lies outside the profile
   */
  public Amount<Temperature> surface(Amount<Time> time) {
    return Amounts.kelvin(surfaceAt(checked(time)));
  }

  /**
   * The mean temperature over the volume, by which the heat stored is told.
   *
   * @param time since the start, within the profile
   * @return the temperature
   * @throws IllegalArgumentException if the time lies outside the profile
   */
  public Amount<Temperature> mean(Amount<Time> time) {
    double[] weights = Arrays.stream(modes).mapToDouble(Eigenmode::mean).toArray();
    return Amounts.kelvin(sum(checked(time), body.meanLagPerRate(), weights));
  }

  /**
   * The temperature at a radius, or distance from the mid-plane.
   *
   * @param radius from zero to the half size of the charge
   * @param time since the start, within the profile
   * @return the temperature
   * @throws IllegalArgumentException if radius or time lie outside
   */
  public Amount<Temperature> at(Amount<Length> radius, Amount<Time> time) {
    new Problems("eigenmode solution")
        .within("radius", radius, Amounts.metres(0), Amounts.metres(body.size()))
        .refuseIfAny();
    double share = radius.si() / body.size();
    double[] weights =
        Arrays.stream(modes).mapToDouble(mode -> mode.at(body.shape(), share)).toArray();
    return Amounts.kelvin(sum(checked(time), body.lagPerRate(share), weights));
  }

  double coreAt(double time) {
    return sum(time, body.lagPerRate(0), atCore);
  }

  double surfaceAt(double time) {
    return body.isClamped() ? kilnAt(time) : sum(time, body.lagPerRate(1), atSurface);
  }

  double kilnAt(double time) {
    int i = segmentAt(time);
    return kiln[i] + rate(i) * (time - starts[i]);
  }

  /** The times at which segments start, and the end of the last, s. */
  double[] corners() {
    return starts.clone();
  }

  private double checked(Amount<Time> time) {
    new Problems("eigenmode solution")
        .within("time", time, Amounts.hours(0), profile.duration())
        .refuseIfAny();
    return time.si();
  }

  private double sum(double time, double lagPerRate, double[] weights) {
    int i = segmentAt(time);
    double passed = time - starts[i];
    double sum = 0;
    for (int n = 0; n < modes.length; n++) {
      double exponent = body.decayRate(modes[n]) * passed;
      if (exponent > FORGOTTEN) {
        break; // and so are all higher modes
      }
      sum += deviations[i][n] * weights[n] * Math.exp(-exponent);
    }
    return kiln[i] + rate(i) * (passed - lagPerRate) + sum;
  }

  private double rate(int i) {
    return (kiln[i + 1] - kiln[i]) / (starts[i + 1] - starts[i]);
  }

  private int segmentAt(double time) {
    int found = Arrays.binarySearch(starts, 1, starts.length - 1, time);
    // Where two segments meet the earlier one is taken: its modes have died away most.
    return found >= 0 ? found - 1 : -found - 2;
  }
}
