package dev.kilnledger.core.mesh;

import static dev.kilnledger.core.mesh.ThreeMfPackage.problem;

import dev.kilnledger.core.reading.UnreadableInputException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;

/** What a 3MF model is made of, without the meshes: unit, objects, and what of them is built. */
final class ThreeMfModel implements ThreeMfPackage.Elements {
  static final String CORE = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";
  private static final int DEEPEST = 64;

  private final ThreeMfLimits limits;
  private final Map<String, List<Copy>> objects = new LinkedHashMap<>();
  private final List<Copy> items = new ArrayList<>();
  private String unit = "millimeter";
  private @Nullable List<Copy> components;
  private boolean modelSeen;
  private final Map<String, List<Placement>> placements = new LinkedHashMap<>();
  private int stated;
  private int copies;

  ThreeMfModel(ThreeMfLimits limits) {
    this.limits = limits;
  }

  /** An object that is to be there, somewhere. */
  private static final class Copy {
    private final String object;
    private final Placement placement;

    Copy(String object, Placement placement) {
      this.object = object;
      this.placement = placement;
    }
  }

  @Override
  public void start(XMLStreamReader xml) throws UnreadableInputException {
    switch (xml.getLocalName()) {
      case "model" -> {
        modelSeen = true;
        model(xml);
      }
      case "object" -> object(xml);
      case "component" -> {
        if (components != null) {
          components.add(copy(xml));
        }
      }
      case "item" -> items.add(copy(xml));
      default -> {}
    }
  }

  private void object(XMLStreamReader xml) throws UnreadableInputException {
    String id = attribute(xml, "id");
    components = new ArrayList<>();
    if (objects.put(id, components) != null) {
      throw problem(where(xml), "object " + id + " stands twice", "each id once");
    }
    if (objects.size() > limits.objects()) {
      throw problem(where(xml), "there are too many objects", "up to " + limits.objects());
    }
  }

  private void model(XMLStreamReader xml) throws UnreadableInputException {
    String stated = xml.getAttributeValue(null, "unit");
    if (stated != null) {
      unit = stated;
    }
    String required = xml.getAttributeValue(null, "requiredextensions");
    if (required != null && !required.isBlank()) {
      throw problem(
          where(xml),
          "it requires the extensions " + required.trim(),
          "a model that the core specification is enough for");
    }
  }

  private Copy copy(XMLStreamReader xml) throws UnreadableInputException {
    String text = xml.getAttributeValue(null, "transform");
    Placement placement = text == null ? Placement.HERE : Placement.parse(text);
    if (placement == null) {
      throw problem(where(xml), "a transform is '" + text + "'", "twelve numbers");
    }
    for (int i = 0; i < xml.getAttributeCount(); i++) {
      if (xml.getAttributeLocalName(i).equals("path")) {
        throw problem(where(xml), "an object lies in another part", "objects in the same part");
      }
    }
    if (++stated > limits.copies()) {
      throw problem(
          where(xml), "there are too many items and components", "up to " + limits.copies());
    }
    return new Copy(attribute(xml, "objectid"), placement);
  }

  @Override
  public void end(String name) {
    if (name.equals("object")) {
      components = null;
    }
  }

  /** Follows items and components down to the meshes. */
  void resolve() throws UnreadableInputException {
    if (!modelSeen) {
      throw problem("model", "there is no model in it", "an element model of " + CORE);
    }
    for (Copy item : items) {
      place(item, Placement.HERE, 0);
    }
  }

  private void place(Copy copy, Placement outer, int depth) throws UnreadableInputException {
    List<Copy> parts = objects.get(copy.object);
    if (parts == null) {
      throw problem("model", "there is no object " + copy.object, "one of " + objects.keySet());
    }
    if (depth > DEEPEST) {
      throw problem(
          "model",
          "object " + copy.object + " lies too deep or in itself",
          "objects of objects up to " + DEEPEST + " deep");
    }
    if (++copies > limits.copies()) {
      throw problem("model", "there are too many copies of objects", "up to " + limits.copies());
    }
    Placement placement = copy.placement.within(outer);
    placements.computeIfAbsent(copy.object, unseen -> new ArrayList<>()).add(placement);
    for (Copy part : parts) {
      place(part, placement, depth + 1);
    }
  }

  /** Where an object is built; nowhere if it is not. */
  List<Placement> placements(String object) {
    return placements.getOrDefault(object, List.of());
  }

  String unit() {
    return unit;
  }

  static String attribute(XMLStreamReader xml, String name) throws UnreadableInputException {
    String value = xml.getAttributeValue(null, name);
    if (value == null) {
      throw problem(where(xml), xml.getLocalName() + " has no " + name, "a value for it");
    }
    return value;
  }

  static String where(XMLStreamReader xml) {
    return "model, line "
        + xml.getLocation().getLineNumber()
        + ", column "
        + xml.getLocation().getColumnNumber();
  }
}
