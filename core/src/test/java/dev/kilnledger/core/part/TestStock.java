package dev.kilnledger.core.part;

import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.gramsPerCubicCentimetre;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.joulesPerKilogramKelvin;
import static dev.kilnledger.units.Amounts.massFraction;
import static dev.kilnledger.units.Amounts.micrometresPerMetreKelvin;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.Amounts.volumeFraction;

import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.core.material.Binder;
import dev.kilnledger.core.material.CarbonProtection;
import dev.kilnledger.core.material.Composition;
import dev.kilnledger.core.material.Element;
import dev.kilnledger.core.material.Feedstock;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.io.Serializable;

/** Invented stock for tests: only the figures that a test passes in matter to it. */
public final class TestStock {
  private static final Source INVENTED = Source.user("invented for tests");

  private TestStock() {}

  /** A metal of a density in g/cm3 and a range of relative density after sintering. */
  public static Alloy metal(double density, double low, double expected, double high) {
    return Alloy.builder()
        .name("test copper")
        .composition(
            Composition.builder()
                .designation("test")
                .balance(Element.COPPER)
                .putNominal(Element.COPPER, massFraction(1))
                .source(INVENTED)
                .build())
        .fullDensity(sourced(gramsPerCubicCentimetre(density)))
        .solidus(sourced(celsius(1084)))
        .liquidus(sourced(celsius(1084)))
        .sinteringWindow(sourced(Span.of(celsius(950), celsius(1050))))
        .sinteringHold(sourced(Span.of(hours(1), hours(5))))
        .expectedRelativeDensity(sourced(fractions(low, expected, high)))
        .linearExpansion(sourced(micrometresPerMetreKelvin(17)))
        .heatCapacity(sourced(joulesPerKilogramKelvin(385)))
        .hotHeatCapacity(sourced(joulesPerKilogramKelvin(430)))
        .powderHardness(sourced(Span.of(ratio(40), ratio(60))))
        .carbonProtection(
            CarbonProtection.builder()
                .suitability(CarbonProtection.Suitability.PROTECTS)
                .decidingElement(Element.COPPER)
                .remark("for tests")
                .source(INVENTED)
                .build())
        .build();
  }

  /** A binder of a density in g/cm3 and a range of char. */
  public static Binder binder(double density, double low, double expected, double high) {
    return Binder.builder()
        .name("test binder")
        .density(sourced(Estimate.exactly(gramsPerCubicCentimetre(density))))
        .decomposition(sourced(Span.of(celsius(280), celsius(400))))
        .residue(
            sourced(Estimate.of(massFraction(low), massFraction(expected), massFraction(high))))
        .build();
  }

  /** Feedstock of a solids loading, and of a relative density without a band. */
  public static Feedstock loaded(double loading, double relativeDensity) {
    return loaded(loading, metal(8.96, relativeDensity, relativeDensity, relativeDensity));
  }

  /** Feedstock of a solids loading in a binder of 1.24 g/cm3 without char. */
  public static Feedstock loaded(double loading, Alloy metal) {
    return Feedstock.builder()
        .name("test feedstock")
        .alloy(metal)
        .binder(binder(1.24, 0, 0, 0))
        .solidsLoading(volumeFraction(loading))
        .source(INVENTED)
        .build();
  }

  /** Feedstock of a metal mass fraction. */
  public static Feedstock filled(double metalMassFraction, Alloy metal, Binder binder) {
    return Feedstock.builder()
        .name("test feedstock")
        .alloy(metal)
        .binder(binder)
        .metalMassFraction(massFraction(metalMassFraction))
        .source(INVENTED)
        .build();
  }

  /** A part without size, to be completed, in a box of 20 mm x 20 mm x 30 mm. */
  public static Part.Builder part() {
    return Part.builder()
        .name("test cam")
        .envelope(Envelope.of(millimetres(20), millimetres(20), millimetres(30)))
        .thickestSection(millimetres(6));
  }

  /** An estimate of a volume fraction. */
  public static Estimate<VolumeFraction> fractions(double low, double expected, double high) {
    return Estimate.of(volumeFraction(low), volumeFraction(expected), volumeFraction(high));
  }

  /** A fact of this stock. */
  public static <T extends Serializable> Sourced<T> sourced(T value) {
    return Sourced.of(value, INVENTED);
  }
}
