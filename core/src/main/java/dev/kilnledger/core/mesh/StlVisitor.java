package dev.kilnledger.core.mesh;

import java.io.IOException;

/** Takes what an STL file holds, in its order. */
interface StlVisitor {
  /** The header of a binary file and how many facets it counts. */
  default void binary(byte[] header, long facets) throws IOException {}

  /** A text file begins. */
  default void text() throws IOException {}

  /** A facet: its corners, and the two bytes behind it in a binary file. */
  void facet(
      float x1,
      float y1,
      float z1,
      float x2,
      float y2,
      float z2,
      float x3,
      float y3,
      float z3,
      int attribute)
      throws IOException;
}
