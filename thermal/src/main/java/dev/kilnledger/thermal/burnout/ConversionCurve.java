package dev.kilnledger.thermal.burnout;

import java.io.Serializable;

/**
 * How far a reaction has gone after a reduced time J = integral of exp(-E / R T) dt, whatever way
 * the temperature went: a reaction order, or a tabulated master decomposition curve.
 *
 * <p>Numbers here are plain, for inner loops: J in seconds, given by its natural logarithm.
 */
public sealed interface ConversionCurve extends Serializable
    permits ReactionOrder, MasterDecompositionCurve {
  /**
   * The share not yet converted.
   *
   * @param logReducedTime ln(J / s), minus infinity at the start
   * @return from 1 down to 0
   */
  double unconverted(double logReducedTime);

  /**
   * The conversion per reduced time, d alpha / dJ. Times exp(-E / R T) it is d alpha / dt.
   *
   * @param logReducedTime ln(J / s), minus infinity at the start
   * @return in 1/s, zero or more
   */
  double conversionPerReducedTime(double logReducedTime);
}
