package dev.kilnledger.core.mesh;

/** Takes the facets of a mesh, one by one. */
@FunctionalInterface
public interface FacetConsumer {
  /**
   * Takes a facet: its corners in the unit of the mesh, counterclockwise as seen from outside.
   *
   * @param x1 x of the first corner
   * @param y1 y of the first corner
   * @param z1 z of the first corner
   * @param x2 x of the second corner
   * @param y2 y of the second corner
   * @param z2 z of the second corner
   * @param x3 x of the third corner
   * @param y3 y of the third corner
   * @param z3 z of the third corner
   */
  void facet(
      double x1,
      double y1,
      double z1,
      double x2,
      double y2,
      double z2,
      double x3,
      double y3,
      double z3);
}
