package dev.kilnledger.benchmarks;

import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.conduction.BodyShape;
import dev.kilnledger.thermal.conduction.Charge;
import dev.kilnledger.thermal.conduction.ChargeLayer;
import dev.kilnledger.thermal.conduction.ChargeMaterial;
import dev.kilnledger.thermal.conduction.CoreHistory;
import dev.kilnledger.thermal.conduction.PropertyCurve;
import dev.kilnledger.thermal.conduction.SurfaceContact;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.SpecificHeatCapacity;
import dev.kilnledger.units.quantity.ThermalConductivity;

/**
 * A cylinder of packing powder of 50 mm radius with properties that depend on temperature, heated
 * by convection and radiation; invented. As a charge of the library, and as equations of finite
 * volumes for other integrators: the same cells, each face with the conductivity at the mean of its
 * two cells.
 */
final class PackedCylinder {
  static final int CELLS = 60;
  static final int QUARTERS_OF_AN_HOUR = 120;

  private static final double RADIUS = 0.05;
  private static final double DENSITY = 1300;
  private static final double[] CELSIUS = {20, 500, 1100};
  private static final double[] CONDUCTIVITY = {0.2, 0.3, 0.6};
  private static final double[] HEAT_CAPACITY = {800, 1100, 1200};
  private static final double CONVECTION = 10;
  private static final double EMISSIVITY = 0.8;
  private static final double STEFAN_BOLTZMANN = 5.670374419e-8;

  private PackedCylinder() {}

  static Charge charge() {
    PropertyCurve.Builder<ThermalConductivity> conductivity = PropertyCurve.builder();
    PropertyCurve.Builder<SpecificHeatCapacity> heatCapacity = PropertyCurve.builder();
    for (int i = 0; i < CELSIUS.length; i++) {
      conductivity.at(Amounts.celsius(CELSIUS[i]), Amounts.wattsPerMetreKelvin(CONDUCTIVITY[i]));
      heatCapacity.at(
          Amounts.celsius(CELSIUS[i]), Amounts.joulesPerKilogramKelvin(HEAT_CAPACITY[i]));
    }
    return charge(
        ChargeMaterial.builder()
            .name("packing powder")
            .density(Amounts.kilogramsPerCubicMetre(DENSITY))
            .conductivity(conductivity.build())
            .heatCapacity(heatCapacity.build())
            .source(Source.user("invented for the measurement"))
            .build(),
        SurfaceContact.of(
            Amounts.wattsPerSquareMetreKelvin(CONVECTION), Amounts.ratio(EMISSIVITY)));
  }

  /** {@return the same with constant properties and convection alone} */
  static Charge constant() {
    return charge(
        ChargeMaterial.builder()
            .name("packing powder")
            .density(Amounts.kilogramsPerCubicMetre(DENSITY))
            .conductivity(PropertyCurve.constant(Amounts.wattsPerMetreKelvin(0.3)))
            .heatCapacity(PropertyCurve.constant(Amounts.joulesPerKilogramKelvin(1100)))
            .source(Source.user("invented for the measurement"))
            .build(),
        SurfaceContact.of(Amounts.wattsPerSquareMetreKelvin(40)));
  }

  private static Charge charge(ChargeMaterial powder, SurfaceContact contact) {
    return Charge.builder()
        .name("packed cylinder")
        .shape(BodyShape.CYLINDER)
        .addLayers(ChargeLayer.of(powder, Amounts.metres(RADIUS)))
        .contact(contact)
        .build();
  }

  /** {@return the core each quarter of an hour after the start, K} */
  static double[] quarterly(CoreHistory history) {
    Profile core = history.core();
    double[] kelvin = new double[QUARTERS_OF_AN_HOUR];
    for (int i = 0; i < kelvin.length; i++) {
      kelvin[i] = core.temperatureAt(Amounts.seconds(900.0 * (i + 1))).si();
    }
    return kelvin;
  }

  /** {@return the largest difference of two courses, K} */
  static double error(double[] course, double[] other) {
    double largest = 0;
    for (int i = 0; i < course.length; i++) {
      largest = Math.max(largest, Math.abs(course[i] - other[i]));
    }
    return largest;
  }

  /** The equations dT/dt of the cells, under a kiln that follows one straight piece. */
  static final class Cells {
    private final double width = RADIUS / CELLS;
    private final double[] areaOverWidth = new double[CELLS]; // of the face outside each cell
    private final double[] mass = new double[CELLS];
    private double kilnStart;
    private double slope;
    private double from;
    private double face; // K, of the surface when it was last asked for

    Cells() {
      for (int i = 0; i < CELLS; i++) {
        double inner = i * width;
        double outer = inner + width;
        areaOverWidth[i] = outer / width;
        mass[i] = DENSITY * (outer * outer - inner * inner) / 2;
      }
    }

    /** Goes on to another piece, from a time and temperature at a rate. */
    void follow(double seconds, double kelvin, double kelvinPerSecond) {
      from = seconds;
      kilnStart = kelvin;
      slope = kelvinPerSecond;
    }

    static double core(double[] t) {
      return t[0] + (t[0] - t[1]) / 8;
    }

    void rates(double time, double[] t, double[] rate) {
      double inflow = 0; // W per radian and m, over the inner face of each cell
      for (int i = 0; i < CELLS; i++) {
        double outflow =
            i < CELLS - 1
                ? areaOverWidth[i]
                    * property(CONDUCTIVITY, (t[i] + t[i + 1]) / 2)
                    * (t[i] - t[i + 1])
                : -RADIUS * flux(t[i], kilnStart + slope * (time - from));
        rate[i] = (inflow - outflow) / (mass[i] * property(HEAT_CAPACITY, t[i]));
        inflow = outflow;
      }
    }

    /** What goes in over the surface, W/m2, its temperature being such that it is conducted on. */
    private double flux(double cell, double kiln) {
      double t = face == 0 ? cell : face;
      double flux = 0;
      double change = 1;
      for (int i = 0; i < 20 && Math.abs(change) > 1e-6; i++) {
        double conducts = property(CONDUCTIVITY, (t + cell) / 2) / (width / 2);
        double radiates = EMISSIVITY * STEFAN_BOLTZMANN * (kiln + t) * (kiln * kiln + t * t);
        flux = (CONVECTION + radiates) * (kiln - t);
        change =
            (flux - conducts * (t - cell))
                / (CONVECTION + 4 * EMISSIVITY * STEFAN_BOLTZMANN * t * t * t + conducts);
        t += change;
      }
      face = t;
      return flux;
    }

    private static double property(double[] table, double kelvin) {
      double celsius = kelvin - 273.15;
      if (celsius <= CELSIUS[0]) {
        return table[0];
      }
      if (celsius >= CELSIUS[2]) {
        return table[2];
      }
      int i = celsius < CELSIUS[1] ? 0 : 1;
      return table[i]
          + (table[i + 1] - table[i]) / (CELSIUS[i + 1] - CELSIUS[i]) * (celsius - CELSIUS[i]);
    }
  }
}
