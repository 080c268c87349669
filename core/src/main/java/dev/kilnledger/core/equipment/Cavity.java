package dev.kilnledger.core.equipment;

import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;

/** The inside of a crucible: round or box-shaped. */
public sealed interface Cavity extends Serializable permits RoundCavity, BoxCavity {
  /** {@return the inner height} */
  Amount<Length> height();

  /** {@return the inner volume} */
  Amount<Volume> volume();

  /**
   * Whether a body lies inside with a clearance to every wall, as it stands or turned about the
   * vertical by a quarter.
   *
   * @param body the body's envelope
   * @param clearance how much packing there must be around it
   * @return true if it fits
   */
  boolean holds(Envelope body, Amount<Length> clearance);
}
