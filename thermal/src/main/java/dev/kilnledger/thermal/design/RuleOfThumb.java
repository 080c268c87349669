package dev.kilnledger.thermal.design;

import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.core.material.Binder;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.Relations;
import javax.measure.quantity.Temperature;

/**
 * Profiles as a practitioner would write them down from two facts of a material, to fill a firing
 * with before anything is designed. Common practice, held against nothing.
 */
public final class RuleOfThumb {
  private static final RuleOfThumb STANDARD = new RuleOfThumb();

  private RuleOfThumb() {}

  /** {@return the rules} */
  public static RuleOfThumb standard() {
    return STANDARD;
  }

  /**
   * A profile for debinding.
   *
   * @param binder the binder
   * @return 100 K/h to where it begins to leave, 10 K/h to where it is gone, and 2 h there
   */
  public Profile debinding(Binder binder) {
    Span<Temperature> range = binder.decomposition().value();
    return Profile.from(Amounts.celsius(20))
        .rampTo(range.low(), Amounts.kelvinPerHour(100))
        .rampTo(range.high(), Amounts.kelvinPerHour(10))
        .hold(Amounts.hours(2))
        .build();
  }

  /**
   * A profile for sintering.
   *
   * @param alloy the metal
   * @return 100 K/h to the middle of its sintering window, or to 20 K below its solidus where that
   *     is lower, and there the longest usual hold
   */
  public Profile sintering(Alloy alloy) {
    Span<Temperature> window = alloy.sinteringWindow().value();
    Amount<Temperature> middle =
        Relations.shifted(
            window.low(), Relations.difference(window.low(), window.high()).divide(2));
    Amount<Temperature> solid =
        Relations.shifted(alloy.solidus().value(), Amounts.kelvinDifference(-20));
    return Profile.from(Amounts.celsius(20))
        .rampTo(middle.isLessThan(solid) ? middle : solid, Amounts.kelvinPerHour(100))
        .hold(alloy.sinteringHold().value().high())
        .build();
  }
}
