package dev.kilnledger.core.mesh;

import java.io.IOException;

/** Takes what an STL file holds, in its order. */
interface StlVisitor {
  /** The header of a binary file and how many facets it counts. */
  default void binary(byte[] header, long facets) throws IOException {}

  /** A text file begins. */
  default void text() throws IOException {}

  /** A facet: the corners one after the other, and the two bytes behind it in a binary file. */
  void facet(float[] corners, int attribute) throws IOException;
}
