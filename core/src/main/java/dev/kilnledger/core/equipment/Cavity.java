package dev.kilnledger.core.equipment;

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
}
