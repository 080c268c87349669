package dev.kilnledger.thermal.conduction;

import java.util.Arrays;
import java.util.List;

/**
 * A charge cut into cells, with the heat flows between them. Flows and volumes are in the measure
 * of {@link BodyShape#area}: per m2 of a slab, per radian and metre of a cylinder, per steradian of
 * a sphere. Within a layer the cells are even and the flow over a face is A (K(T_i) - K(T_i+1)) /
 * dx. Holds the state of one evaluation: not for several threads.
 */
final class ChargeGrid {
  private static final int FEWEST_IN_LAYER = 6;

  private final double[] area; // of the face outside each cell
  private final double[] conductance; // of that face, but for the conductivity; 0 between layers
  private final double[] conductances; // of both faces of each cell
  private final CellCurves stored; // J of each cell
  private final CellCurves conducted; // W/m, the integral of the conductivity
  private final int[] lastCells; // of all layers but the outermost
  private final LayerFace[] layerFaces; // outside of them
  private final HeatedSurface surface;
  private final HeatedSurface[] back; // one or none
  private final double mass;

  // The last evaluation: the heat in each cell over the reference of its material, J, and what it
  // takes up per kelvin, J/K; net heat flow into each cell, W, and its derivatives, W/K.
  final double[] heat;
  final double[] capacity;
  final double[] flow;
  final double[] flowPerInner;
  final double[] flowPerCell;
  final double[] flowPerOuter;

  ChargeGrid(Charge charge, int cells) {
    List<ChargeLayer> layers = charge.layers();
    int[] counts = shares(layers, cells);
    int n = Arrays.stream(counts).sum();
    double[] volume = new double[n];
    area = new double[n];
    double[] width = new double[n];
    conductance = new double[n];
    conductances = new double[n];
    Antiderivative[] enthalpy = new Antiderivative[n]; // J/m3
    Antiderivative[] conductivity = new Antiderivative[n];
    flow = new double[n];
    flowPerInner = new double[n];
    flowPerCell = new double[n];
    flowPerOuter = new double[n];
    double mass = 0;
    double inner = 0;
    int cell = 0;
    for (int l = 0; l < counts.length; l++) {
      ChargeLayer layer = layers.get(l);
      ChargeMaterial material = layer.material();
      double density = material.density().si();
      Antiderivative stores =
          material
              .heatCapacity()
              .map(c -> Antiderivative.ofSlope(c, density))
              .orElseGet(() -> Antiderivative.ofValue(material.enthalpy().orElseThrow(), density));
      Antiderivative conducts = Antiderivative.ofSlope(material.conductivity(), 1);
      double thickness = layer.thickness().si();
      for (int i = 0; i < counts[l]; i++) {
        double from = inner + thickness * i / counts[l];
        double to = inner + thickness * (i + 1) / counts[l];
        volume[cell] = charge.shape().volume(from, to);
        area[cell] = charge.shape().area(to);
        width[cell] = thickness / counts[l];
        conductance[cell] = area[cell] / width[cell];
        enthalpy[cell] = stores;
        conductivity[cell] = conducts;
        mass += density * volume[cell];
        cell++;
      }
      inner += thickness;
    }
    this.mass = mass;
    conductance[n - 1] = 0;
    lastCells = new int[counts.length - 1];
    layerFaces = new LayerFace[counts.length - 1];
    int last = -1;
    for (int l = 0; l < layerFaces.length; l++) {
      last += counts[l];
      conductance[last] = 0;
      lastCells[l] = last;
      layerFaces[l] =
          new LayerFace(
              width[last] / 2, conductivity[last], width[last + 1] / 2, conductivity[last + 1]);
    }
    for (int i = 0; i < n; i++) {
      conductances[i] = conductance[i] + (i == 0 ? 0 : conductance[i - 1]);
    }
    double[] ones = new double[n];
    Arrays.fill(ones, 1);
    stored = new CellCurves(enthalpy, volume);
    conducted = new CellCurves(conductivity, ones);
    heat = stored.value;
    capacity = stored.slope;
    surface = new HeatedSurface(charge.contact(), width[n - 1] / 2, conductivity[n - 1]);
    back =
        charge
            .back()
            .map(face -> new HeatedSurface(face.contact(), width[0] / 2, conductivity[0]))
            .stream()
            .toArray(HeatedSurface[]::new);
  }

  /** Cells go to the layers by the square root of the time that heat takes through each. */
  private static int[] shares(List<ChargeLayer> layers, int cells) {
    double[] weights =
        layers.stream()
            .mapToDouble(layer -> layer.thickness().si() * Math.sqrt(slowness(layer.material())))
            .toArray();
    double sum = Arrays.stream(weights).sum();
    return Arrays.stream(weights)
        .mapToInt(w -> Math.max(FEWEST_IN_LAYER, (int) Math.round(cells * w / sum)))
        .toArray();
  }

  /** One over the diffusivity, about. */
  private static double slowness(ChargeMaterial material) {
    double k = material.conductivity().values().get(0).si();
    double c =
        material
            .heatCapacity()
            .map(curve -> curve.values().get(0).si())
            .orElseGet(
                () -> {
                  PropertyCurve<?> curve = material.enthalpy().orElseThrow();
                  int last = curve.values().size() - 1;
                  return (curve.values().get(last).si() - curve.values().get(0).si())
                      / (curve.temperatures().get(last).si() - curve.temperatures().get(0).si());
                });
    return material.density().si() * c / k;
  }

  int size() {
    return flow.length;
  }

  double mass() {
    return mass;
  }

  /**
   * Evaluates heat and flows at given temperatures of the cells, of the kiln and behind the back.
   */
  void evaluate(double[] t, double kiln, double behind) {
    stored.evaluate(t);
    conducted.evaluate(t);
    double[] upTo = conducted.value;
    double[] conducts = conducted.slope;
    int n = t.length;
    double inwards = 0;
    for (int i = 0; i < n - 1; i++) {
      double outwards = conductance[i] * (upTo[i] - upTo[i + 1]);
      flow[i] = inwards - outwards;
      inwards = outwards;
    }
    flow[n - 1] = inwards;
    for (int i = 0; i < n - 1; i++) {
      flowPerInner[i + 1] = conductance[i] * conducts[i];
      flowPerOuter[i] = conductance[i] * conducts[i + 1];
    }
    for (int i = 0; i < n; i++) {
      flowPerCell[i] = -conductances[i] * conducts[i];
    }
    for (int l = 0; l < layerFaces.length; l++) {
      int i = lastCells[l];
      LayerFace face = layerFaces[l];
      face.settle(t[i], upTo[i], conducts[i], t[i + 1], upTo[i + 1], conducts[i + 1]);
      flow[i] -= area[i] * face.flux();
      flow[i + 1] += area[i] * face.flux();
      flowPerCell[i] -= area[i] * face.fluxPerInner();
      flowPerInner[i + 1] = area[i] * face.fluxPerInner();
      flowPerOuter[i] = -area[i] * face.fluxPerOuter();
      flowPerCell[i + 1] += area[i] * face.fluxPerOuter();
    }
    surface.settle(t[n - 1], upTo[n - 1], conducts[n - 1], kiln);
    flow[n - 1] += area[n - 1] * surface.flux();
    flowPerCell[n - 1] += area[n - 1] * surface.fluxPerCell();
    for (HeatedSurface face : back) {
      face.settle(t[0], upTo[0], conducts[0], behind);
      flow[0] += face.flux();
      flowPerCell[0] += face.fluxPerCell();
    }
  }

  /** The heat that went in through surface and back at the last evaluation, W. */
  double supply() {
    double supply = area[area.length - 1] * surface.flux();
    for (HeatedSurface face : back) {
      supply += face.flux();
    }
    return supply;
  }

  double surfaceTemperature() {
    return surface.temperature();
  }

  /** The temperature where the innermost layer ends, at the last evaluation. */
  double innermostFace() {
    return layerFaces.length == 0 ? surface.temperature() : layerFaces[0].temperature();
  }

  /** The temperature at the core: of the back's face, or by a parabola that is level there. */
  double core(double[] t) {
    return back.length > 0 ? back[0].temperature() : t[0] + (t[0] - t[1]) / 8;
  }
}
