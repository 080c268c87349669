package dev.kilnledger.thermal.energy;

import dev.kilnledger.core.source.Input;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.profile.Segment;
import dev.kilnledger.units.Amounts;
import java.util.Arrays;

/**
 * The part of a profile in which a kiln with a steady wall is heated; sums in SI units. Loss and
 * store are straight lines over temperature where the wall's conductivities are constant; where
 * they are not, a segment is cut into pieces of 10 K or less, over each of which the loss is taken
 * as straight: a share of the loss of some 1e-5, second order in the piece.
 */
final class PoweredPart {
  static final Source PROGRAMME = Source.user("the programme");
  private static final double PIECE = 10; // K

  private final SteadyWall wall;
  private final double chargeCapacity;
  private final double ambient;
  private final double storePerKelvin; // of a wall of constant conductivity, and of the charge
  private final double[] stored; // in a wall of changing conductivity
  private double lost; // through a wall of changing conductivity
  private double seconds;
  private double kelvinSeconds; // integral of T - T_ambient
  private double kelvin; // sum of dT
  private double peakWatts;
  private double coolingSeconds;
  private double freeCoolingSeconds; // not less than programmed in any segment

  PoweredPart(SteadyWall wall, double chargeCapacity, double ambient) {
    this.wall = wall;
    this.chargeCapacity = chargeCapacity;
    this.ambient = ambient;
    this.stored = new double[wall.layers()];
    this.storePerKelvin =
        wall.storePerKelvin().stream().mapToDouble(Double::doubleValue).sum() + chargeCapacity;
  }

  void add(Segment segment) {
    double duration = segment.duration().si();
    double from = segment.start().si();
    double rise = segment.end().si() - from;
    int pieces = wall.isConstant() ? 1 : (int) Math.max(1, Math.ceil(Math.abs(rise) / PIECE));
    double free = 0;
    for (int i = 0; i < pieces; i++) {
      Piece piece = new Piece(from + rise * i / pieces, rise / pieces, duration / pieces);
      if (segment.isCooling()) {
        free += piece.freeCooling();
      }
      add(piece);
    }
    if (segment.isCooling()) {
      coolingSeconds += duration;
      freeCoolingSeconds += Math.max(free, duration);
    }
  }

  private void add(Piece piece) {
    double atStart = piece.lossAtStart + piece.store * piece.rise / piece.duration;
    double atEnd = piece.lossAtEnd + piece.store * piece.rise / piece.duration;
    if (atStart <= 0 && atEnd <= 0) {
      return;
    }
    double zero = atStart / (atStart - atEnd); // only looked at where the signs differ
    double from = atStart < 0 ? zero : 0;
    double to = atEnd < 0 ? zero : 1;
    double share = to - from;
    seconds += piece.duration * share;
    kelvinSeconds += piece.duration * share * (piece.start + piece.rise * (from + to) / 2);
    kelvin += piece.rise * share;
    lost +=
        piece.duration
            * share
            * (piece.lossAtStart + (piece.lossAtEnd - piece.lossAtStart) * (from + to) / 2);
    for (int i = 0; i < stored.length; i++) {
      stored[i] += piece.wallStores[i] * share;
    }
    peakWatts = Math.max(peakWatts, Math.max(atStart, atEnd));
  }

  /** A piece of a segment along which the loss is straight. */
  private final class Piece {
    private final double start; // above ambient
    private final double rise;
    private final double duration;
    private final double lossAtStart; // W
    private final double lossAtEnd;
    private final double[] wallStores; // what each layer takes up, where conductivities change
    private final double store; // J/K

    Piece(double from, double rise, double duration) {
      this.start = from - ambient;
      this.rise = rise;
      this.duration = duration;
      this.wallStores = new double[stored.length];
      this.lossAtStart = wall.lossWatts(from, ambient);
      this.lossAtEnd = wall.lossWatts(from + rise, ambient);
      if (wall.isConstant() || rise == 0) {
        this.store = storePerKelvin;
        return;
      }
      double[] before = wall.storedJoules(from, ambient);
      double[] after = wall.storedJoules(from + rise, ambient);
      Arrays.setAll(wallStores, i -> after[i] - before[i]);
      this.store = Arrays.stream(wallStores).sum() / rise + chargeCapacity;
    }

    /** Without power the kiln follows C dT/dt = - loss, an exponential where that is straight. */
    double freeCooling() {
      return lossAtEnd > 0
          ? store * rise / (lossAtEnd - lossAtStart) * Math.log(lossAtStart / lossAtEnd)
          : Double.POSITIVE_INFINITY;
    }
  }

  double seconds() {
    return seconds;
  }

  double kelvinSeconds() {
    return kelvinSeconds;
  }

  double kelvin() {
    return kelvin;
  }

  double peakWatts() {
    return peakWatts;
  }

  double coolingSeconds() {
    return coolingSeconds;
  }

  double freeCoolingSeconds() {
    return freeCoolingSeconds;
  }

  /** The heat lost through the wall, J. */
  double lost() {
    return wall.isConstant() ? wall.lossPerKelvin() * kelvinSeconds : lost;
  }

  /** The heat that a layer has taken up, J. */
  double stored(int layer) {
    return wall.isConstant() ? wall.storePerKelvin().get(layer) * kelvin : stored[layer];
  }

  /** How much warmer all gets, on the whole, while heated. */
  Input warming() {
    return Input.of("dT", Amounts.kelvinDifference(kelvin), PROGRAMME);
  }

  /** How much hotter than the room it is, on average, while heated. */
  Input meanExcess() {
    double mean = seconds == 0 ? 0 : kelvinSeconds / seconds;
    return Input.of("dT_mean", Amounts.kelvinDifference(mean), PROGRAMME);
  }
}
