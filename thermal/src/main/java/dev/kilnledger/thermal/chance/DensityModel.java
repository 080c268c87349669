package dev.kilnledger.thermal.chance;

import java.util.List;

/** The relative density at the end of sintering, as drawn. */
interface DensityModel {
  /** The least that it can be. */
  double least(Draw draw, List<Felt> stages);

  /** The most that it can be; the same where the model tells a number. */
  double most(Draw draw, List<Felt> stages);
}
