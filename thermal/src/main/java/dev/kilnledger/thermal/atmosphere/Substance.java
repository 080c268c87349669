package dev.kilnledger.thermal.atmosphere;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.MolarMass;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/** A gas or vapour that may get into the room, with the limits of exposure known here. */
@Value.Immutable
@ValueStyle
public interface Substance extends Serializable {
  /** {@return the name, such as {@code "carbon monoxide"}} */
  @Value.Parameter
  String name();

  /**
   * {@return the molar mass, above zero; empty for mixtures, whose shares of volume stay unknown}
   */
  @Value.Parameter
  Optional<Amount<MolarMass>> molarMass();

  /** {@return the limits of exposure, none where none is known here} */
  @Value.Parameter
  List<ExposureLimit> limits();

  /**
   * A substance.
   *
   * @param name the name
   * @param molarMass the molar mass
   * @param limits the limits of exposure
   * @return the substance
   * @throws IllegalArgumentException if the name is blank, the molar mass not above zero, or there
   *     are limits but no molar mass
   */
  static Substance of(String name, Amount<MolarMass> molarMass, List<ExposureLimit> limits) {
    return ImmutableSubstance.of(name, Optional.of(molarMass), limits);
  }

  /**
   * A substance or mixture of which only the name is known.
   *
   * @param name the name
   * @return the substance
   * @throws IllegalArgumentException if the name is blank
   */
  static Substance named(String name) {
    return ImmutableSubstance.of(name, Optional.empty(), List.of());
  }

  /** {@return carbon monoxide with limits of the United States; look up the edition in force} */
  static Substance carbonMonoxide() {
    Source niosh = Source.published("NIOSH criteria document 1972, OSHA chemical sampling page");
    return of(
        "carbon monoxide",
        Species.CARBON_MONOXIDE.molarMass(),
        List.of(
            ExposureLimit.of("ACGIH TLV", workingDay(), ppm(25, niosh)),
            ExposureLimit.of("NIOSH REL", workingDay(), ppm(35, niosh)),
            ExposureLimit.of(
                "OSHA PEL", workingDay(), ppm(50, Source.published("29 CFR 1910.1000 table Z-1"))),
            ExposureLimit.of("NIOSH ceiling", atOnce(), ppm(200, niosh)),
            ExposureLimit.of(
                "immediately dangerous (NIOSH IDLH)",
                atOnce(),
                ppm(1200, Source.quoted("NIOSH list of IDLH values, in a secondary table")))));
  }

  /** {@return formaldehyde with limits of the United States and Ontario; as above} */
  static Substance formaldehyde() {
    Source osha = Source.published("29 CFR 1910.1048");
    Source ontario = Source.quoted("occupational exposure limits of Ontario, as listed publicly");
    return of(
        "formaldehyde",
        Amounts.gramsPerMole(30.026),
        List.of(
            ExposureLimit.of("OSHA PEL", workingDay(), ppm(0.75, osha)),
            ExposureLimit.of("OSHA STEL", shortTerm(), ppm(2, osha)),
            ExposureLimit.of("Ontario STEL", shortTerm(), ppm(1, ontario)),
            ExposureLimit.of("Ontario ceiling", atOnce(), ppm(1.5, ontario))));
  }

  /**
   * The substances that a binder's product names: those with limits known here, or the product
   * itself as it is called.
   *
   * @param product the product in words, such as {@code "formaldehyde, the main product"}
   * @return at least one substance
   * @throws IllegalArgumentException if the product is blank
   */
  static List<Substance> namedIn(String product) {
    List<Substance> known =
        Stream.of(carbonMonoxide(), formaldehyde())
            .filter(substance -> product.contains(substance.name()))
            .toList();
    return known.isEmpty() ? List.of(named(product)) : known;
  }

  private static Amount<Time> workingDay() {
    return Amounts.hours(8);
  }

  private static Amount<Time> shortTerm() {
    return Amounts.minutes(15);
  }

  private static Amount<Time> atOnce() {
    return Amounts.minutes(0);
  }

  private static Sourced<Amount<VolumeFraction>> ppm(double number, Source source) {
    return Sourced.of(Amounts.partsPerMillion(number), source);
  }

  /**
   * Refuses impossible substances.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems = new Problems("substance " + name()).text("name", name());
    molarMass().ifPresent(mass -> problems.positive("molar mass", mass));
    problems
        .require(
            limits().isEmpty() || molarMass().isPresent(),
            "there are limits but no molar mass; accepted is a molar mass with them")
        .refuseIfAny();
  }
}
