package dev.kilnledger.core.material;

/** Holds the standard library, which is put together when it is first asked for. */
final class StandardLibrary {
  static final MaterialLibrary MATERIALS =
      MaterialLibrary.builder()
          .alloys(StandardAlloys.ALL)
          .binders(StandardBinders.ALL)
          .feedstocks(StandardFeedstocks.ALL)
          .packingPowders(StandardPackingPowders.ALL)
          .getters(StandardGetters.ALL)
          .crucibleMaterials(StandardCrucibleMaterials.ALL)
          .nozzleMaterials(StandardNozzleMaterials.ALL)
          .build();

  private StandardLibrary() {}
}
