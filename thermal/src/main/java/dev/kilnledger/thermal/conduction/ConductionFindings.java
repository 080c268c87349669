package dev.kilnledger.thermal.conduction;

import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static dev.kilnledger.units.TradeUnits.KELVIN_DIFFERENCE;
import static dev.kilnledger.units.TradeUnits.ONE;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.TemperatureDifference;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Temperature;

/** What a history tells about the core and about the range of its model. */
final class ConductionFindings {
  private static final Source TOLERANCE =
      Source.fromMemory(
          "IEC 60584-1 class 2, type K: the kiln is not known better than 2.5 K or 0.75 %");
  private static final Source BIOT =
      Source.published(
          "Incropera et al., Fundamentals of Heat and Mass Transfer, sec. 5.2: below a Biot number"
              + " of 0.1 the surface decides");

  private ConductionFindings() {}

  static List<Finding> of(CoreHistory history) {
    Charge charge = history.charge();
    List<Finding> findings = new ArrayList<>();
    findings.add(lag(history));
    findings.add(peak(history));
    findings.add(contact(charge));
    List<ChargeMaterial> materials =
        charge.layers().stream().map(ChargeLayer::material).distinct().toList();
    Span<Temperature> passed = temperatures(history);
    materials.forEach(material -> findings.add(stated(material, passed)));
    materials.stream()
        .filter(material -> material.conductivityFactor().si() > 1 || !material.conductivityKnown())
        .forEach(material -> findings.add(known(material)));
    return findings;
  }

  private static Finding lag(CoreHistory history) {
    CorePoint point = history.greatestLag();
    return ConductionFinding.CORE_LAG
        .about(history.charge().name())
        .severity(NOTE)
        .measured(point.lag())
        .message(
            "the core is up to "
                + point.lag().format(KELVIN_DIFFERENCE, 1)
                + " behind the kiln, "
                + point.time().format(HOUR, 2)
                + " after the start, at "
                + point.core().format(CELSIUS, 0))
        .basis(history.model())
        .build();
  }

  private static Finding peak(CoreHistory history) {
    Amount<TemperatureDifference> shortfall = history.peakShortfall();
    double celsius = history.profile().peak().in(CELSIUS);
    Amount<TemperatureDifference> limit = Amounts.kelvinDifference(Math.max(2.5, 0.0075 * celsius));
    boolean cold = shortfall.isGreaterThan(limit);
    return ConductionFinding.CORE_REACHES_PEAK
        .about(history.charge().name())
        .severity(cold ? WARNING : PASSED)
        .measured(shortfall)
        .limit(limit)
        .message(
            "the core gets to "
                + history.corePeak().format(CELSIUS, 1)
                + " where the kiln peaks at "
                + history.profile().peak().format(CELSIUS, 1)
                + (cold ? ": a longer hold is needed" : ""))
        .basis(TOLERANCE)
        .build();
  }

  private static Finding contact(Charge charge) {
    Finding.Builder finding = ConductionFinding.SURFACE_CONTACT.about(charge.name()).basis(BIOT);
    SurfaceContact contact = charge.contact();
    if (contact.isPerfect()) {
      return finding
          .severity(NOTE)
          .message(
              "the surface is taken to be as hot as the kiln: the real core lags somewhat more")
          .build();
    }
    if (contact.emissivity().si() > 0) {
      return finding
          .severity(PASSED)
          .message("the surface takes up heat by convection and radiation of the kiln")
          .build();
    }
    double inside = charge.layers().stream().mapToDouble(ConductionFindings::resistance).sum();
    Amount<Dimensionless> biot = Amounts.ratio(contact.convection().orElseThrow().si() * inside);
    boolean film = biot.si() < 0.1;
    return finding
        .severity(film ? NOTE : PASSED)
        .measured(biot)
        .limit(Amounts.ratio(0.1))
        .message(
            "the Biot number of the surface is "
                + biot.format(ONE, 3)
                + (film
                    ? ": the lag is the surface's, and only as good as its coefficient"
                    : ": the lag is mostly that of the inside"))
        .build();
  }

  /** At its best, m2 K / W of a plane layer. */
  private static double resistance(ChargeLayer layer) {
    double k =
        layer.material().conductivity().values().stream()
            .mapToDouble(Amount::si)
            .max()
            .orElseThrow();
    return layer.thickness().si() / k;
  }

  private static Finding stated(ChargeMaterial material, Span<Temperature> passed) {
    List<Span<Temperature>> left =
        Stream.of(
                material.conductivity().stated(),
                material.heatCapacity().flatMap(PropertyCurve::stated),
                material.enthalpy().flatMap(PropertyCurve::stated))
            .flatMap(java.util.Optional::stream)
            .filter(span -> !(span.contains(passed.low()) && span.contains(passed.high())))
            .toList();
    Finding.Builder finding =
        ConductionFinding.PROPERTIES_STATED.about(material.name()).basis(material.source());
    String told =
        "the charge passes " + passed.format(CELSIUS, 0) + ", properties of " + material.name();
    if (left.isEmpty()) {
      return finding.severity(PASSED).message(told + " are stated for that").build();
    }
    return finding
        .severity(UNDETERMINED)
        .limit(left.get(0).high())
        .message(
            told
                + " are stated for "
                + left.get(0).format(CELSIUS, 0)
                + " only: taken as constant beyond")
        .build();
  }

  private static Finding known(ChargeMaterial material) {
    Finding.Builder finding =
        ConductionFinding.CONDUCTIVITY_KNOWN
            .about(material.name())
            .severity(NOTE)
            .basis(material.source());
    if (!material.conductivityKnown()) {
      return finding
          .message(
              "the conductivity of "
                  + material.name()
                  + " is not known: its heat is counted, its resistance is not, and the core lags"
                  + " somewhat more")
          .build();
    }
    return finding
        .measured(material.conductivityFactor())
        .message(
            "the conductivity of "
                + material.name()
                + " is known within a factor of "
                + material.conductivityFactor().format(ONE, 2)
                + ": the lag may be as much longer or shorter; compute the slow charge as well")
        .build();
  }

  private static Span<Temperature> temperatures(CoreHistory history) {
    Amount<Temperature> coldest = history.points().get(0).core();
    Amount<Temperature> hottest = coldest;
    for (CorePoint point : history.points()) {
      Amount<Temperature> core = point.core();
      Amount<Temperature> surface = point.surface();
      coldest = core.isLessThan(coldest) ? core : coldest;
      coldest = surface.isLessThan(coldest) ? surface : coldest;
      hottest = core.isGreaterThan(hottest) ? core : hottest;
      hottest = surface.isGreaterThan(hottest) ? surface : hottest;
    }
    return Span.of(coldest, hottest);
  }
}
