package dev.kilnledger.core.mesh;

import static dev.kilnledger.core.mesh.ThreeMfModel.attribute;
import static dev.kilnledger.core.mesh.ThreeMfModel.where;
import static dev.kilnledger.core.mesh.ThreeMfPackage.problem;

import dev.kilnledger.core.reading.UnreadableInputException;
import java.util.Arrays;
import java.util.List;
import javax.xml.stream.XMLStreamReader;

/** Goes through the meshes of a 3MF model and hands on each facet wherever it is built. */
final class ThreeMfMeshes implements ThreeMfPackage.Elements {
  private final ThreeMfModel model;
  private final int most;
  private final FacetConsumer consumer;
  private List<Placement> placements = List.of();
  private double[] corners = new double[3 * 1024];
  private int count;

  ThreeMfMeshes(ThreeMfModel model, ThreeMfLimits limits, FacetConsumer consumer) {
    this.model = model;
    this.most = limits.corners();
    this.consumer = consumer;
  }

  @Override
  public void start(XMLStreamReader xml) throws UnreadableInputException {
    switch (xml.getLocalName()) {
      case "object" -> {
        placements = model.placements(attribute(xml, "id"));
        count = 0;
      }
      case "vertex" -> {
        if (!placements.isEmpty()) {
          vertex(xml);
        }
      }
      case "triangle" -> {
        if (!placements.isEmpty()) {
          triangle(xml);
        }
      }
      default -> {}
    }
  }

  private void vertex(XMLStreamReader xml) throws UnreadableInputException {
    if (count == most) {
      throw problem(where(xml), "an object has more than " + most + " corners", "up to that");
    }
    if (3 * count + 3 > corners.length) {
      corners = Arrays.copyOf(corners, (int) Math.min(3L * most, 2L * corners.length));
    }
    corners[3 * count] = coordinate(xml, "x");
    corners[3 * count + 1] = coordinate(xml, "y");
    corners[3 * count + 2] = coordinate(xml, "z");
    count++;
  }

  private static double coordinate(XMLStreamReader xml, String name)
      throws UnreadableInputException {
    String text = attribute(xml, name);
    double value = Decimals.parse(text);
    if (Double.isNaN(value)) {
      throw problem(where(xml), name + " is '" + text + "'", "a finite number");
    }
    return value;
  }

  private void triangle(XMLStreamReader xml) throws UnreadableInputException {
    int first = 3 * corner(xml, "v1");
    int second = 3 * corner(xml, "v2");
    int third = 3 * corner(xml, "v3");
    for (Placement placement : placements) {
      if (placement.mirrors()) {
        facet(placement, first, third, second);
      } else {
        facet(placement, first, second, third);
      }
    }
  }

  private int corner(XMLStreamReader xml, String name) throws UnreadableInputException {
    String text = attribute(xml, name);
    double value = Decimals.parse(text);
    if (!(value >= 0 && value < count && value == (int) value)) {
      throw problem(
          where(xml), name + " is '" + text + "'", "the number of a corner, 0 to " + (count - 1));
    }
    return (int) value;
  }

  private void facet(Placement p, int a, int b, int c) {
    double[] v = corners;
    consumer.facet(
        p.x(v[a], v[a + 1], v[a + 2]),
        p.y(v[a], v[a + 1], v[a + 2]),
        p.z(v[a], v[a + 1], v[a + 2]),
        p.x(v[b], v[b + 1], v[b + 2]),
        p.y(v[b], v[b + 1], v[b + 2]),
        p.z(v[b], v[b + 1], v[b + 2]),
        p.x(v[c], v[c + 1], v[c + 2]),
        p.y(v[c], v[c + 1], v[c + 2]),
        p.z(v[c], v[c + 1], v[c + 2]));
  }

  @Override
  public void end(String name) {
    if (name.equals("object")) {
      placements = List.of();
    }
  }
}
