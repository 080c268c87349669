package dev.kilnledger.thermal.conduction;

/** The three bodies in which heat flows along one coordinate. */
public enum BodyShape {
  /** A plate heated from both faces; its coordinate runs from the mid-plane to a face. */
  SLAB(0),
  /** A long cylinder heated all around; its coordinate is the radius. */
  CYLINDER(1),
  /** A sphere heated all around; its coordinate is the radius. */
  SPHERE(2);

  /** The area at radius r grows as r to this power. */
  final int power;

  BodyShape(int power) {
    this.power = power;
  }

  /** r to the power, the area per unit of the coordinate system. */
  double area(double r) {
    return power == 0 ? 1 : power == 1 ? r : r * r;
  }

  /** The volume between two radii, in the measure of {@link #area}. */
  double volume(double inner, double outer) {
    return switch (this) {
      case SLAB -> outer - inner;
      case CYLINDER -> (outer - inner) * (outer + inner) / 2;
      case SPHERE -> (outer - inner) * (outer * outer + outer * inner + inner * inner) / 3;
    };
  }
}
