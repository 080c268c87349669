package dev.kilnledger.thermal.internal;

import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.equipment.WallLayer;

/**
 * The conductivity k of a wall's layer over temperature, in W/(m K) and K: the layer's straight
 * line between freezing and the kiln's peak, where the kiln has checked it, and constant beyond. So
 * it is above zero everywhere. What a face conducts is a difference of the integral K of k.
 */
public final class ConductivityLine {
  private final double low;
  private final double high;
  private final double atLow;
  private final double atHigh;
  private final double slope;

  /**
   * The line of a layer.
   *
   * @param layer a layer of the kiln's wall
   * @param kiln the kiln
   */
  public ConductivityLine(WallLayer layer, Kiln kiln) {
    low = Kiln.FREEZING.si();
    high = Math.max(low, kiln.peakTemperature().si());
    atLow = layer.conductivityAt(Kiln.FREEZING).si();
    slope = layer.conductivitySlope().si();
    atHigh = atLow + slope * (high - low);
  }

  /**
   * The conductivity at a temperature.
   *
   * @param temperature in K
   * @return W/(m K), above zero
   */
  public double at(double temperature) {
    return temperature <= low
        ? atLow
        : temperature >= high ? atHigh : atLow + slope * (temperature - low);
  }

  /** {@return the least conductivity at any temperature} */
  public double least() {
    return Math.min(atLow, atHigh);
  }

  /** {@return the greatest conductivity at any temperature} */
  public double greatest() {
    return Math.max(atLow, atHigh);
  }

  /**
   * The integral of the conductivity from freezing to a temperature.
   *
   * @param temperature in K
   * @return W/m
   */
  public double integral(double temperature) {
    if (temperature <= low) {
      return atLow * (temperature - low);
    }
    double line = Math.min(temperature, high) - low;
    double passed = line * (atLow + slope * line / 2);
    return temperature <= high ? passed : passed + atHigh * (temperature - high);
  }

  /**
   * The temperature up to which the integral has a value.
   *
   * @param integral W/m
   * @return the temperature, in K
   */
  public double temperatureOf(double integral) {
    if (integral <= 0) {
      return low + integral / atLow;
    }
    double atEnd = integral(high);
    return integral >= atEnd
        ? high + (integral - atEnd) / atHigh
        : low + 2 * integral / (atLow + Math.sqrt(atLow * atLow + 2 * slope * integral));
  }

  /**
   * The mean temperature of a layer through which heat flows steadily: its middle is nearer to the
   * face where it conducts better, as dx is in proportion to k dT.
   *
   * @param oneFace the temperature of a face, in K
   * @param otherFace that of the other
   * @return the integral of T k dT over that of k dT between two faces
   */
  public double meanTemperature(double oneFace, double otherFace) {
    double from = Math.min(oneFace, otherFace);
    double to = Math.max(oneFace, otherFace);
    double middle = (from + to) / 2;
    if (to == from) {
      return middle;
    }
    double[] ends = {
      from, Math.min(Math.max(low, from), to), Math.min(Math.max(high, from), to), to
    };
    double moment = 0;
    double whole = 0;
    for (int i = 1; i < ends.length; i++) {
      double width = ends[i] - ends[i - 1];
      double centre = (ends[i] + ends[i - 1]) / 2;
      double bend = i == 2 ? slope * width * width / 12 : 0;
      moment += width * (at(centre) * (centre - middle) + bend);
      whole += width * at(centre);
    }
    return middle + moment / whole;
  }
}
