package dev.kilnledger.examples.sheet;

import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.GRAM_PER_CUBIC_CENTIMETRE;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static dev.kilnledger.units.TradeUnits.JOULE_PER_KILOGRAM_KELVIN;
import static dev.kilnledger.units.TradeUnits.MASS_PERCENT;
import static dev.kilnledger.units.TradeUnits.MICROMETRE_PER_METRE_KELVIN;
import static dev.kilnledger.units.TradeUnits.ONE;
import static dev.kilnledger.units.TradeUnits.VOLUME_PERCENT;

import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.core.material.Binder;
import dev.kilnledger.core.material.CarbonProtection;
import dev.kilnledger.core.material.Composition;
import dev.kilnledger.core.material.CrucibleMaterial;
import dev.kilnledger.core.material.Element;
import dev.kilnledger.core.material.Feedstock;
import dev.kilnledger.core.material.Getter;
import dev.kilnledger.core.material.NozzleMaterial;
import dev.kilnledger.core.material.PackingPowder;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.Unit;

/** The facts of a material, each with its condition and source. */
public final class Facts {
  private final List<Fact> facts = new ArrayList<>();

  private Facts() {}

  /**
   * One fact.
   *
   * @param what what it is
   * @param value the value with its unit
   * @param condition under which condition it holds; empty where it needs none
   * @param source where it is from
   */
  public record Fact(String what, String value, String condition, Source source) {}

  /**
   * Facts as a sheet.
   *
   * @param title what they are about
   * @param facts the facts
   * @return one row for each
   */
  public static Sheet<Fact> sheet(String title, List<Fact> facts) {
    return Sheet.of(title, facts)
        .text("fact", Fact::what)
        .text("value", Fact::value)
        .text("condition", Fact::condition)
        .text("source", fact -> fact.source().cite());
  }

  /**
   * The facts of an alloy.
   *
   * @param alloy the alloy
   * @return its facts
   */
  public static List<Fact> of(Alloy alloy) {
    Facts of = new Facts();
    of.composition(alloy.composition());
    of.amount("full density", alloy.fullDensity(), GRAM_PER_CUBIC_CENTIMETRE);
    of.amount("solidus", alloy.solidus(), CELSIUS);
    of.amount("liquidus", alloy.liquidus(), CELSIUS);
    of.span("sintering window", alloy.sinteringWindow(), CELSIUS);
    alloy.usualPeak().ifPresent(peak -> of.amount("usual peak", peak, CELSIUS));
    of.span("sintering hold", alloy.sinteringHold(), HOUR);
    of.estimate("relative density reached", alloy.expectedRelativeDensity(), VOLUME_PERCENT);
    of.amount("linear expansion", alloy.linearExpansion(), MICROMETRE_PER_METRE_KELVIN);
    of.amount("heat capacity", alloy.heatCapacity(), JOULE_PER_KILOGRAM_KELVIN);
    of.amount("heat capacity, hot", alloy.hotHeatCapacity(), JOULE_PER_KILOGRAM_KELVIN);
    of.span("hardness of the powder (Vickers)", alloy.powderHardness(), ONE);
    of.protection(alloy.carbonProtection());
    alloy
        .mixtureTolerance()
        .ifPresent(off -> of.amount("density differs from the mixture rule by up to", off, ONE));
    return of.facts;
  }

  /**
   * The facts of a binder.
   *
   * @param binder the binder
   * @return its facts
   */
  public static List<Fact> of(Binder binder) {
    Facts of = new Facts();
    of.estimate("density", binder.density(), GRAM_PER_CUBIC_CENTIMETRE);
    of.span("decomposes", binder.decomposition(), CELSIUS);
    of.estimate("leaves a residue of", binder.residue(), MASS_PERCENT);
    return of.facts;
  }

  /**
   * The facts of a feedstock itself; those of its alloy and binder stand with them.
   *
   * @param feedstock the feedstock
   * @return its facts
   */
  public static List<Fact> of(Feedstock feedstock) {
    Facts of = new Facts();
    Source source = feedstock.source();
    Source mixed = Source.recomputed("the rule of mixtures over alloy and binder");
    of.fact("alloy", feedstock.alloy().name(), "", source);
    of.fact("binder", feedstock.binder().name(), "", source);
    feedstock
        .statedMetalMassFraction()
        .ifPresent(f -> of.fact("metal, stated", shown(f, MASS_PERCENT), "", source));
    feedstock
        .statedBinderMassFraction()
        .ifPresent(f -> of.fact("binder, stated", shown(f, MASS_PERCENT), "", source));
    feedstock
        .statedSolidsLoading()
        .ifPresent(f -> of.fact("solids loading, stated", shown(f, VOLUME_PERCENT), "", source));
    feedstock
        .metalMassFractionRange()
        .ifPresent(range -> of.span("metal, range", range, MASS_PERCENT));
    of.fact("metal", feedstock.metalMassFraction().format(MASS_PERCENT, 1), "", mixed);
    of.fact("solids loading", feedstock.solidsLoading().format(VOLUME_PERCENT, 1), "", mixed);
    of.fact("density", feedstock.density().format(GRAM_PER_CUBIC_CENTIMETRE, 2), "", mixed);
    return of.facts;
  }

  /**
   * The facts of a packing powder.
   *
   * @param powder the powder
   * @return its facts
   */
  public static List<Fact> of(PackingPowder powder) {
    Facts of = new Facts();
    of.amount("skeletal density", powder.skeletalDensity(), GRAM_PER_CUBIC_CENTIMETRE);
    of.span("apparent density", powder.apparentDensity(), GRAM_PER_CUBIC_CENTIMETRE);
    of.span("tap density", powder.tapDensity(), GRAM_PER_CUBIC_CENTIMETRE);
    of.amount("stands up to", powder.temperatureLimit(), CELSIUS);
    of.amount("heat capacity", powder.heatCapacity(), JOULE_PER_KILOGRAM_KELVIN);
    return of.facts;
  }

  /**
   * The facts of a getter.
   *
   * @param getter the getter
   * @return its facts
   */
  public static List<Fact> of(Getter getter) {
    Facts of = new Facts();
    of.span("bulk density", getter.bulkDensity(), GRAM_PER_CUBIC_CENTIMETRE);
    of.span("ash", getter.ash(), MASS_PERCENT);
    of.span("starts to oxidise", getter.oxidationOnset(), CELSIUS);
    of.amount("heat capacity", getter.heatCapacity(), JOULE_PER_KILOGRAM_KELVIN);
    return of.facts;
  }

  /**
   * The facts of a crucible material.
   *
   * @param material the material
   * @return its facts
   */
  public static List<Fact> of(CrucibleMaterial material) {
    Facts of = new Facts();
    of.amount("serves up to", material.serviceLimit(), CELSIUS);
    material
        .cyclicLimit()
        .ifPresent(limit -> of.amount("fired again and again, up to", limit, CELSIUS));
    return of.facts;
  }

  /**
   * The facts of a nozzle material.
   *
   * @param material the material
   * @return its facts
   */
  public static List<Fact> of(NozzleMaterial material) {
    Facts of = new Facts();
    of.span("hardness (Vickers)", material.hardness(), ONE);
    return of.facts;
  }

  /**
   * The facts of an element.
   *
   * @param element the element
   * @return its facts
   */
  public static List<Fact> of(Element element) {
    Facts of = new Facts();
    of.amount("density", element.density(), GRAM_PER_CUBIC_CENTIMETRE);
    element.meltingPoint().ifPresent(point -> of.amount("melting point", point, CELSIUS));
    return of.facts;
  }

  private void composition(Composition composition) {
    String ranges =
        composition.ranges().entrySet().stream()
            .map(range -> range.getKey().symbol() + " " + shown(range.getValue(), MASS_PERCENT))
            .collect(Collectors.joining(", "));
    fact(
        "composition",
        composition.balance().symbol() + " the rest" + (ranges.isEmpty() ? "" : ", " + ranges),
        composition.designation(),
        composition.source());
    String nominal =
        composition.nominal().entrySet().stream()
            .sorted(Map.Entry.comparingByKey())
            .map(part -> part.getKey().symbol() + " " + shown(part.getValue(), MASS_PERCENT))
            .collect(Collectors.joining(", "));
    if (!nominal.isEmpty()) {
      fact("nominal composition", nominal, "", composition.source());
    }
  }

  private void protection(CarbonProtection protection) {
    fact(
        "kept bright by carbon",
        protection.suitability().name().toLowerCase(Locale.ROOT).replace('_', ' '),
        protection.decidingElement().symbol() + " decides",
        protection.source());
    protection
        .reducesAbove()
        .ifPresent(above -> amount("carbon takes the oxygen above", above, CELSIUS));
  }

  private <Q extends Quantity<Q>> void amount(String what, Sourced<Amount<Q>> fact, Unit<Q> unit) {
    sourced(what, fact, amount -> shown(amount, unit));
  }

  private <Q extends Quantity<Q>> void span(String what, Sourced<Span<Q>> fact, Unit<Q> unit) {
    sourced(what, fact, span -> shown(span, unit));
  }

  private <Q extends Quantity<Q>> void estimate(
      String what, Sourced<Estimate<Q>> fact, Unit<Q> unit) {
    sourced(
        what,
        fact,
        estimate -> shown(estimate.expected(), unit) + " (" + shown(estimate.span(), unit) + ")");
  }

  private <T extends Serializable> void sourced(
      String what, Sourced<T> fact, Function<T, String> shown) {
    fact(what, shown.apply(fact.value()), fact.condition(), fact.source());
  }

  private void fact(String what, String value, String condition, Source source) {
    facts.add(new Fact(what, value, condition, source));
  }

  private static <Q extends Quantity<Q>> String shown(Span<Q> span, Unit<Q> unit) {
    return span.low().equals(span.high())
        ? shown(span.low(), unit)
        : span.format(unit, Math.max(decimals(span.low(), unit), decimals(span.high(), unit)));
  }

  /**
   * An amount with as many decimals as it was given with, and no more than six digits in all.
   *
   * @param <Q> the quantity
   * @param amount the amount
   * @param unit the unit to show it in
   * @return the number and the unit
   */
  public static <Q extends Quantity<Q>> String shown(Amount<Q> amount, Unit<Q> unit) {
    return amount.format(unit, decimals(amount, unit));
  }

  private static <Q extends Quantity<Q>> int decimals(Amount<Q> amount, Unit<Q> unit) {
    BigDecimal number =
        BigDecimal.valueOf(amount.in(unit)).round(new MathContext(6)).stripTrailingZeros();
    return Math.max(0, number.scale());
  }
}
