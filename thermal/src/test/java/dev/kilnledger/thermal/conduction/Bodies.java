package dev.kilnledger.thermal.conduction;

import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.joulesPerKilogramKelvin;
import static dev.kilnledger.units.Amounts.kelvin;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.kilogramsPerCubicMetre;
import static dev.kilnledger.units.Amounts.metres;
import static dev.kilnledger.units.Amounts.minutes;
import static dev.kilnledger.units.Amounts.seconds;
import static dev.kilnledger.units.Amounts.wattsPerMetreKelvin;
import static dev.kilnledger.units.Amounts.wattsPerSquareMetreKelvin;

import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.SpecificHeatCapacity;
import dev.kilnledger.units.quantity.ThermalConductivity;
import javax.measure.quantity.Temperature;

/** Bodies and profiles of the tests, from numbers in SI. */
final class Bodies {
  static final Source SOURCE = Source.user("set by the test");

  private Bodies() {}

  static ChargeMaterial material(double k, double rho, double c) {
    return material(
        PropertyCurve.constant(wattsPerMetreKelvin(k)),
        rho,
        PropertyCurve.constant(joulesPerKilogramKelvin(c)));
  }

  static ChargeMaterial material(
      PropertyCurve<ThermalConductivity> k, double rho, PropertyCurve<SpecificHeatCapacity> c) {
    return ChargeMaterial.builder()
        .name("test material")
        .density(kilogramsPerCubicMetre(rho))
        .conductivity(k)
        .heatCapacity(c)
        .source(SOURCE)
        .build();
  }

  static Charge.Builder body(BodyShape shape, double size, ChargeMaterial material) {
    return Charge.builder()
        .name("test body")
        .shape(shape)
        .addLayers(ChargeLayer.of(material, metres(size)));
  }

  /** Diffusivity a: k = 2e6 a, rho c = 2e6 J/(m3 K). */
  static Charge.Builder body(BodyShape shape, double size, double a) {
    return body(shape, size, material(2e6 * a, 2000, 1000));
  }

  static SurfaceContact film(double h) {
    return SurfaceContact.of(wattsPerSquareMetreKelvin(h));
  }

  static Profile steady(double celsius, double seconds) {
    return Profile.from(celsius(celsius)).hold(seconds(seconds)).build();
  }

  static Profile steadyKelvin(double kelvin, double seconds) {
    return Profile.from(kelvin(kelvin)).hold(seconds(seconds)).build();
  }

  /** From 0 °C at a rate for some seconds. */
  static Profile ramp(double kelvinPerHour, double seconds) {
    return Profile.from(celsius(0))
        .rampOver(celsius(kelvinPerHour * seconds / 3600), seconds(seconds))
        .build();
  }

  /** Two ramps, two holds and a cooling (figures of the worked example). */
  static Profile firing() {
    return Profile.from(celsius(20))
        .rampTo(celsius(120), kelvinPerHour(100))
        .hold(minutes(60))
        .rampTo(celsius(400), kelvinPerHour(50))
        .hold(hours(2))
        .coolTo(celsius(200), kelvinPerHour(200))
        .build();
  }

  static double perShape(double slab, double cylinder, double sphere, BodyShape shape) {
    return switch (shape) {
      case SLAB -> slab;
      case CYLINDER -> cylinder;
      case SPHERE -> sphere;
    };
  }

  static double celsiusOf(Amount<Temperature> temperature) {
    return temperature.si() - 273.15;
  }
}
