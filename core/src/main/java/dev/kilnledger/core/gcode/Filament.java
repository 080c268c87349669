package dev.kilnledger.core.gcode;

/** The filament of one tool, in millimetres. */
final class Filament {
  /** Drawn back and made good is not always the same number again. */
  private static final double ROUNDING = 1e-9;

  /** Where it would be had it only been fed and drawn back. */
  private double fed;

  /** The furthest it ever was: what is fed up to there has left the nozzle. */
  private double furthest;

  private long retractions;
  private double drawnBack;
  private boolean back;

  /** Moves it; answers whether something leaves the nozzle. */
  boolean move(double length) {
    fed += length;
    if (length < 0) {
      drawnBack -= length;
      if (!back) {
        retractions++;
      }
      back = true;
      return false;
    }
    boolean leaves = fed > furthest + ROUNDING;
    if (fed > furthest) {
      furthest = fed;
    }
    back &= !leaves;
    return leaves;
  }

  double net() {
    return furthest;
  }

  long retractions() {
    return retractions;
  }

  double drawnBack() {
    return drawnBack;
  }
}
