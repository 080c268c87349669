package dev.kilnledger.thermal.firing;

import dev.kilnledger.thermal.atmosphere.ReleaseStep;
import dev.kilnledger.thermal.burnout.BurnOutCurve;
import dev.kilnledger.thermal.burnout.BurnOutPoint;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Mass;

/** The binder that leaves, as steps of five minutes or more at one rate. */
final class BinderGas {
  private static final double STEP = 300; // s
  private static final double GONE = 1e-4; // what is left then no longer matters to a room

  private BinderGas() {}

  static List<ReleaseStep> steps(BurnOutCurve curve, Amount<Mass> binder) {
    List<ReleaseStep> steps = new ArrayList<>();
    BurnOutPoint from = curve.points().get(0);
    for (BurnOutPoint to : curve.points()) {
      boolean last = to.remaining().si() - curve.end().remaining().si() < GONE;
      if (to.time().si() - from.time().si() >= STEP) {
        steps.add(step(from, last ? curve.end() : to, binder));
        from = to;
        if (last) {
          return steps;
        }
      }
    }
    steps.add(step(from, curve.end(), binder));
    return steps;
  }

  private static ReleaseStep step(BurnOutPoint from, BurnOutPoint to, Amount<Mass> binder) {
    double seconds = to.time().si() - from.time().si();
    double left = Math.max(0, from.remaining().si() - to.remaining().si());
    return ReleaseStep.of(
        Amounts.seconds(seconds), Amounts.gramsPerHour(left * binder.si() / seconds * 3.6e6));
  }
}
