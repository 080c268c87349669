package dev.kilnledger.costing.outfit;

import dev.kilnledger.core.equipment.Crucible;
import dev.kilnledger.core.equipment.EquipmentCheck;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.part.Passage;
import dev.kilnledger.units.Amount;
import javax.measure.quantity.Length;

/** How many parts a crucible holds. */
@FunctionalInterface
public interface PartsPerCharge {
  /** Above this number no part is counted. */
  int MOST = 10_000;

  /**
   * The most parts that one charge holds.
   *
   * @param passage the part's passage
   * @param crucible the crucible
   * @param clearance how much packing there must be on every side
   * @return the parts, zero if not even one fits
   */
  int most(Passage passage, Crucible crucible, Amount<Length> clearance);

  /**
   * {@return a count by volume alone, as {@link EquipmentCheck#charging} compares it, up to {@link
   * #MOST}; whether so many can be arranged is not known}
   */
  static PartsPerCharge byVolume() {
    return (passage, crucible, clearance) ->
        Bisection.largest(
            MOST,
            parts ->
                EquipmentCheck.standard().charging(passage, crucible, clearance, parts).severity()
                    != Severity.STOP);
  }
}
