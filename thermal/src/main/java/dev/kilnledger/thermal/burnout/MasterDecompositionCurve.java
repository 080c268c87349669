package dev.kilnledger.thermal.burnout;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.util.List;
import org.immutables.value.Value;

/**
 * Conversion tabulated against the natural logarithm of the reduced time, for decompositions that
 * no order describes. The name: Aggarwal, Park, Smid and German, master decomposition curve, 2006
 * (from memory); that conversion depends on J alone follows from one activation energy.
 *
 * <p>Between rows conversion is linear in the logarithm, never a spline, which would overshoot. The
 * table begins at 0 and ends at 1, so that nothing is extrapolated.
 *
 * <p>Example: rows of 0 at ln J = -28, 0.5 at -27 and 1 at -26 have 0.25 left at -26.5.
 */
@Value.Immutable
@ValueStyle
public non-sealed interface MasterDecompositionCurve extends ConversionCurve, Serializable {
  /**
   * {@return the rows, two or more, logarithms ascending, conversion from 0 to 1 without a fall}
   */
  @Value.Parameter
  List<CurvePoint> rows();

  /**
   * A tabulated curve.
   *
   * @param rows two or more, logarithms ascending, conversion from 0 to 1 without a fall
   * @return the curve
   * @throws IllegalArgumentException if the rows are otherwise, with all problems
   */
  static MasterDecompositionCurve of(List<CurvePoint> rows) {
    return ImmutableMasterDecompositionCurve.of(rows);
  }

  @Override
  default double unconverted(double logReducedTime) {
    int next = rowAfter(logReducedTime);
    if (next == 0) {
      return 1;
    }
    if (next == rows().size()) {
      return 0;
    }
    CurvePoint from = rows().get(next - 1);
    return 1
        - from.conversion().si()
        - slopeUpTo(next) * (logReducedTime - from.logReducedTime().si());
  }

  @Override
  default double conversionPerReducedTime(double logReducedTime) {
    int next = rowAfter(logReducedTime);
    return next == 0 || next == rows().size() ? 0 : slopeUpTo(next) / Math.exp(logReducedTime);
  }

  private int rowAfter(double logReducedTime) {
    int next = 0;
    while (next < rows().size() && rows().get(next).logReducedTime().si() <= logReducedTime) {
      next++;
    }
    return next;
  }

  private double slopeUpTo(int row) {
    CurvePoint from = rows().get(row - 1);
    CurvePoint to = rows().get(row);
    return (to.conversion().si() - from.conversion().si())
        / (to.logReducedTime().si() - from.logReducedTime().si());
  }

  /**
   * Refuses a table that does not go from 0 to 1.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems = new Problems("master decomposition curve");
    problems
        .require(rows().size() > 1, "rows are " + rows().size() + "; accepted is 2 or more")
        .refuseIfAny();
    CurvePoint first = rows().get(0);
    CurvePoint last = rows().get(rows().size() - 1);
    problems
        .require(
            first.conversion().si() == 0,
            "it begins at a conversion of " + first.conversion() + "; accepted is 0")
        .require(
            last.conversion().si() == 1,
            "it ends at a conversion of " + last.conversion() + "; accepted is 1");
    for (int i = 1; i < rows().size(); i++) {
      CurvePoint before = rows().get(i - 1);
      CurvePoint row = rows().get(i);
      problems.require(
          row.logReducedTime().isGreaterThan(before.logReducedTime())
              && !row.conversion().isLessThan(before.conversion()),
          "row "
              + (i + 1)
              + " has ln J "
              + row.logReducedTime()
              + " and conversion "
              + row.conversion()
              + " after "
              + before.logReducedTime()
              + " and "
              + before.conversion()
              + "; accepted are ascending ln J and a conversion that does not fall");
    }
    problems.refuseIfAny();
  }
}
