package dev.kilnledger.core.material;

import java.util.List;

/** The alloys of the standard library, in the order in which they are listed. */
final class StandardAlloys {
  static final List<Alloy> ALL =
      List.of(
          StandardCopperAlloys.COPPER,
          StandardCopperAlloys.TIN_BRONZE,
          StandardIronAlloys.IRON,
          StandardIronAlloys.STEEL_4605,
          StandardStainlessSteels.STEEL_316L,
          StandardStainlessSteels.STEEL_17_4PH,
          StandardNickelAlloys.ALLOY_625,
          StandardTitaniumAlloys.GRADE_2,
          StandardTitaniumAlloys.ALLOY_6AL_4V,
          StandardTungsten.TUNGSTEN,
          StandardSilver.SILVER);

  private StandardAlloys() {}
}
