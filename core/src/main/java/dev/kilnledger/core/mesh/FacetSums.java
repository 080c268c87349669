package dev.kilnledger.core.mesh;

import java.util.List;

/** Sums over facets, in the unit of the mesh. */
final class FacetSums implements FacetConsumer {
  /** A box of less is nothing, whatever the unit. */
  private static final double LEAST = 1e-60;

  private final EdgeSums edges = new EdgeSums();
  private final Reach x = new Reach();
  private final Reach y = new Reach();
  private final Reach z = new Reach();
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
    x.include(x1, x2, x3);
    y.include(y1, y2, y3);
    z.include(z1, z2, z3);
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
    edges.facet(x1, y1, z1, x2, y2, z2, x3, y3, z3);
  }

  /** Whether all corners lie so near to the origin. */
  boolean isWithin(double furthest) {
    // what is not a number is in no comparison, but in the area
    boolean within = !Double.isNaN(twoAreas);
    for (Reach reach : reaches()) {
      within &= reach.low() >= -furthest && reach.high() <= furthest;
    }
    return within;
  }

  /** Whether there is a volume that is more than a rounding error of the box around it. */
  boolean hasInside() {
    double box = 1;
    for (Reach reach : reaches()) {
      box *= reach.length();
    }
    return box > LEAST && Math.abs(volume()) > 1e-12 * box;
  }

  /** How far it reaches along x, y and z. */
  List<Reach> reaches() {
    return List.of(x, y, z);
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
