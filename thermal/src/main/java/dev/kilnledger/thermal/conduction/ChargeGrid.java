package dev.kilnledger.thermal.conduction;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A charge cut into cells, with the heat flows between them. Flows and volumes are in the measure
 * of {@link BodyShape#area}: per m2 of a slab, per radian and metre of a cylinder, per steradian of
 * a sphere. Within a layer the cells are even and the flow over a face is A (K(T_i) - K(T_i+1)) /
 * dx. Holds the state of one evaluation: not for several threads.
 */
final class ChargeGrid {
  private static final int FEWEST_IN_LAYER = 6;

  private final double[] volume;
  private final double[] area; // of the face outside each cell
  private final double[] width;
  private final double[] conductance; // of that face, but for the conductivity
  private final Antiderivative[] enthalpy; // J/m3 of each cell's material
  private final Antiderivative[] conductivity;
  private final int[] enthalpyPiece; // where each cell was found last
  private final int[] conductivityPiece;
  private final @Nullable LayerFace[] layerFace; // outside the last cell of a layer, else null
  private final HeatedSurface surface;
  private final HeatedSurface[] back; // one or none
  private final double mass;
  private final int innermost; // the last cell of the innermost layer

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
    volume = new double[n];
    area = new double[n];
    width = new double[n];
    conductance = new double[n];
    enthalpy = new Antiderivative[n];
    conductivity = new Antiderivative[n];
    enthalpyPiece = new int[n];
    conductivityPiece = new int[n];
    layerFace = new LayerFace[n];
    heat = new double[n];
    capacity = new double[n];
    flow = new double[n];
    flowPerInner = new double[n];
    flowPerCell = new double[n];
    flowPerOuter = new double[n];
    innermost = counts[0] - 1;
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
    int last = -1;
    for (int l = 0; l < counts.length - 1; l++) {
      last += counts[l];
      layerFace[last] =
          new LayerFace(
              width[last] / 2, conductivity[last], width[last + 1] / 2, conductivity[last + 1]);
    }
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
    return volume.length;
  }

  double mass() {
    return mass;
  }

  /** Evaluates heat and flows at given temperatures of the cells, of the kiln and behind the back. */
  void evaluate(double[] t, double kiln, double behind) {
    int n = t.length;
    flowPerInner[0] = 0;
    flowPerOuter[n - 1] = 0;
    double conducted = 0; // the integral of the conductivity up to each cell's temperature
    double conducts = 0;
    for (int i = 0; i < n; i++) {
      Antiderivative passes = conductivity[i];
      int piece = passes.piece(t[i], conductivityPiece[i]);
      conductivityPiece[i] = piece;
      double here = passes.at(piece, t[i]);
      double slopeHere = passes.slope(piece, t[i]);
      Antiderivative stores = enthalpy[i];
      int stored = stores.piece(t[i], enthalpyPiece[i]);
      enthalpyPiece[i] = stored;
      heat[i] = volume[i] * stores.at(stored, t[i]);
      capacity[i] = volume[i] * stores.slope(stored, t[i]);
      if (i == 0) {
        flow[0] = 0;
        flowPerCell[0] = 0;
        for (HeatedSurface face : back) {
          face.settle(t[0], here, slopeHere, behind);
          flow[0] = face.flux();
          flowPerCell[0] = face.fluxPerCell();
        }
      } else {
        double outwards;
        double perInner;
        double perOuter;
        LayerFace face = layerFace[i - 1];
        if (face == null) {
          outwards = conductance[i - 1] * (conducted - here);
          perInner = conductance[i - 1] * conducts;
          perOuter = -conductance[i - 1] * slopeHere;
        } else {
          face.settle(t[i - 1], conducted, conducts, t[i], here, slopeHere);
          outwards = area[i - 1] * face.flux();
          perInner = area[i - 1] * face.fluxPerInner();
          perOuter = area[i - 1] * face.fluxPerOuter();
        }
        flow[i - 1] -= outwards;
        flow[i] = outwards;
        flowPerCell[i - 1] -= perInner;
        flowPerOuter[i - 1] = -perOuter;
        flowPerInner[i] = perInner;
        flowPerCell[i] = perOuter;
      }
      conducted = here;
      conducts = slopeHere;
    }
    surface.settle(t[n - 1], conducted, conducts, kiln);
    flow[n - 1] += area[n - 1] * surface.flux();
    flowPerCell[n - 1] += area[n - 1] * surface.fluxPerCell();
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
    LayerFace face = layerFace[innermost];
    return face == null ? surface.temperature() : face.temperature();
  }

  /** The temperature at the core: of the back's face, or by a parabola that is level there. */
  double core(double[] t) {
    return back.length > 0 ? back[0].temperature() : t[0] + (t[0] - t[1]) / 8;
  }
}
