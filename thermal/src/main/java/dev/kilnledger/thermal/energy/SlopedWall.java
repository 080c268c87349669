package dev.kilnledger.thermal.energy;

import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.thermal.internal.ConductivityLine;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The steady wall of a kiln whose layers' conductivities change with temperature, in SI units. For
 * a flux q the faces follow from the room inwards, {@code K(T_inner) = K(T_outer) + q L} with K the
 * integral of k; the flux between two temperatures is the root of that increasing function.
 */
final class SlopedWall {
  private static final double SETTLED = 1e-13; // of the flux

  private final List<ConductivityLine> lines;
  private final double[] lengths;
  private final double filmResistance;
  private final double ambient;

  SlopedWall(Kiln kiln, double ambient) {
    this.lines = kiln.wall().stream().map(layer -> new ConductivityLine(layer, kiln)).toList();
    this.lengths = kiln.wall().stream().mapToDouble(layer -> layer.thickness().si()).toArray();
    this.filmResistance = 1 / kiln.outsideFilm().si();
    this.ambient = ambient;
  }

  /** The flux from a chamber of a temperature, W/m2: Newton's method, bracketed. */
  double flux(double inside) {
    double difference = inside - ambient;
    double one = difference / resistance(ConductivityLine::least);
    double other = difference / resistance(ConductivityLine::greatest);
    double low = Math.min(one, other);
    double high = Math.max(one, other);
    double flux = (low + high) / 2;
    for (int i = 0; i < 100; i++) {
      double[] faces = faces(flux);
      double over = faces[0] - inside;
      if (over > 0) {
        high = flux;
      } else {
        low = flux;
      }
      double next = flux - over / resistanceAt(faces);
      if (!(next >= low && next <= high)) {
        next = (low + high) / 2;
      }
      boolean settled = Math.abs(next - flux) <= SETTLED * Math.abs(flux);
      flux = next;
      if (settled) {
        break;
      }
    }
    return flux;
  }

  /** The faces from the inside outwards, the skin last, where a flux passes. */
  double[] faces(double flux) {
    double[] faces = new double[lengths.length + 1];
    faces[lengths.length] = ambient + flux * filmResistance;
    for (int i = lengths.length - 1; i >= 0; i--) {
      ConductivityLine line = lines.get(i);
      faces[i] = line.temperatureOf(line.integral(faces[i + 1]) + flux * lengths[i]);
    }
    return faces;
  }

  /** The mean temperature of each layer between its faces. */
  double[] means(double[] faces) {
    double[] means = new double[lengths.length];
    for (int i = 0; i < means.length; i++) {
      means[i] = lines.get(i).meanTemperature(faces[i], faces[i + 1]);
    }
    return means;
  }

  /** The heat per area and kelvin with the whole wall at ambient temperature. */
  double coldTransmittance() {
    return 1 / resistance(line -> line.at(ambient));
  }

  /** How the innermost face changes with the flux, m2 K / W. */
  private double resistanceAt(double[] faces) {
    double change = filmResistance;
    for (int i = lengths.length - 1; i >= 0; i--) {
      ConductivityLine line = lines.get(i);
      change = (line.at(faces[i + 1]) * change + lengths[i]) / line.at(faces[i]);
    }
    return change;
  }

  private double resistance(ToDoubleFunction<ConductivityLine> conductivity) {
    double sum = filmResistance;
    for (int i = 0; i < lengths.length; i++) {
      sum += lengths[i] / conductivity.applyAsDouble(lines.get(i));
    }
    return sum;
  }
}
