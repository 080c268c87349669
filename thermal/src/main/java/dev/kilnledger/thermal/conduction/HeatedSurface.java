package dev.kilnledger.thermal.conduction;

/**
 * The balance of a face between a cell and surroundings of a temperature: what the contact passes
 * is what is conducted over the half cell, {@code h (Tg - T) + e s (Tg^4 - T^4) = g (K(T) -
 * K(cell))}, K being the integral of the conductivity. Solved for T, which lies between the two.
 */
final class HeatedSurface {
  /**
   * The last step of Newton's method, as a share of the temperature, after which the next would be
   * below 1e-12 of it.
   */
  static final double SETTLED = 1e-6;

  private static final double STEFAN_BOLTZMANN = 5.670374419e-8; // W/(m2 K4), CODATA 2018

  private final boolean perfect;
  private final double convection;
  private final double radiation;
  private final double conductance; // 1 / half cell, 1/m
  private final Antiderivative conductivity;
  private int piece;
  private double temperature;
  private double flux;
  private double fluxPerCell;

  HeatedSurface(SurfaceContact contact, double halfCell, Antiderivative conductivity) {
    perfect = contact.isPerfect();
    convection = contact.convection().map(h -> h.si()).orElse(0.0);
    radiation = STEFAN_BOLTZMANN * contact.emissivity().si();
    conductance = 1 / halfCell;
    this.conductivity = conductivity;
  }

  /**
   * Finds the face's temperature.
   *
   * @param cell the temperature of the cell, K
   * @param inside the integral of its conductivity up to there
   * @param cellSlope that conductivity
   * @param around the temperature of what surrounds the face, K
   */
  void settle(double cell, double inside, double cellSlope, double around) {
    double conducts = conductance * cellSlope;
    if (perfect) {
      temperature = around;
      piece = conductivity.piece(around, piece);
      flux = conductance * (conductivity.at(piece, around) - inside);
      fluxPerCell = -conducts;
      return;
    }
    double low = Math.min(cell, around);
    double high = Math.max(cell, around);
    double t = Math.min(Math.max(temperature, low), high);
    double passed = 0;
    double passedSlope = 0;
    double slope = 1;
    for (int i = 0; i < 100; i++) {
      double gas = around - t;
      double cube = radiation * t * t * t;
      passed = convection * gas + radiation * gas * (around + t) * (around * around + t * t);
      passedSlope = convection + 4 * cube;
      piece = conductivity.piece(t, piece);
      double open = passed - conductance * (conductivity.at(piece, t) - inside);
      slope = passedSlope + conductance * conductivity.slope(piece, t);
      if (open > 0) {
        low = t;
      } else {
        high = t;
      }
      double next = t + open / slope;
      boolean between = next >= low && next <= high;
      if (!between) {
        next = (low + high) / 2;
      }
      double change = next - t;
      t = next;
      if (Math.abs(change) <= SETTLED * Math.abs(t)) {
        passed -= between ? passedSlope * change : 0;
        break;
      }
    }
    temperature = t;
    flux = passed;
    fluxPerCell = -passedSlope * conducts / slope;
  }

  /** The temperature of the face, K. */
  double temperature() {
    return temperature;
  }

  /** The heat that goes in, W/m2. */
  double flux() {
    return flux;
  }

  /** How that changes with the temperature of the cell, W/(m2 K). */
  double fluxPerCell() {
    return fluxPerCell;
  }
}
