package dev.kilnledger.core.mesh;

/** Sums over facets, in the unit of the mesh. */
final class FacetSums implements FacetConsumer {
  /** A box of less is nothing, whatever the unit. */
  private static final double LEAST = 1e-60;

  private final EdgeSums edges = new EdgeSums();
  final double[] low = {
    Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY
  };
  final double[] high = {
    Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY
  };
  private double originX;
  private double originY;
  private double originZ;
  private long facets;
  private long flat;
  private double sixVolumes;
  private double twoAreas;

  @Override
  public void facet(
      double x1,
      double y1,
      double z1,
      double x2,
      double y2,
      double z2,
      double x3,
      double y3,
      double z3) {
    if (facets++ == 0) {
      // near the body, so that a body far from the origin does not cancel away
      originX = x1;
      originY = y1;
      originZ = z1;
    }
    include(0, x1, x2, x3);
    include(1, y1, y2, y3);
    include(2, z1, z2, z3);
    double ax = x2 - x1;
    double ay = y2 - y1;
    double az = z2 - z1;
    double bx = x3 - x1;
    double by = y3 - y1;
    double bz = z3 - z1;
    double nx = ay * bz - az * by;
    double ny = az * bx - ax * bz;
    double nz = ax * by - ay * bx;
    double area = Math.sqrt(nx * nx + ny * ny + nz * nz);
    twoAreas += area;
    if (area == 0) {
      flat++;
    }
    // v1 . (v2 x v3) summed over the facets is six volumes: divergence theorem
    sixVolumes += (x1 - originX) * nx + (y1 - originY) * ny + (z1 - originZ) * nz;
    edges.facet(
        EdgeSums.corner(x1, y1, z1), EdgeSums.corner(x2, y2, z2), EdgeSums.corner(x3, y3, z3));
  }

  private void include(int axis, double a, double b, double c) {
    low[axis] = Math.min(low[axis], Math.min(a, Math.min(b, c)));
    high[axis] = Math.max(high[axis], Math.max(a, Math.max(b, c)));
  }

  /** Whether all corners lie so near to the origin. */
  boolean isWithin(double furthest) {
    boolean within = true;
    for (int axis = 0; axis < 3; axis++) {
      within &= low[axis] >= -furthest && high[axis] <= furthest;
    }
    return within;
  }

  /** Whether there is a volume that is more than a rounding error of the box around it. */
  boolean hasInside() {
    double box = 1;
    for (int axis = 0; axis < 3; axis++) {
      box *= high[axis] - low[axis];
    }
    return box > LEAST && Math.abs(volume()) > 1e-12 * box;
  }

  EdgeSums edges() {
    return edges;
  }

  long facets() {
    return facets;
  }

  long flat() {
    return flat;
  }

  /** Below zero if the facets look inwards. */
  double volume() {
    return sixVolumes / 6;
  }

  double area() {
    return twoAreas / 2;
  }
}
