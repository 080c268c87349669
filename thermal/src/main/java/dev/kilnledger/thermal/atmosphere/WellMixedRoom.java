package dev.kilnledger.thermal.atmosphere;

import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.units.TradeUnits.CUBIC_METRE_PER_HOUR;
import static dev.kilnledger.units.TradeUnits.GRAM;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static dev.kilnledger.units.TradeUnits.PARTS_PER_MILLION;

import dev.kilnledger.core.finding.Caution;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.material.Binder;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.MolarMass;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.util.List;
import java.util.Optional;
import si.uom.quantity.Density;
import si.uom.quantity.VolumetricFlowRate;

/**
 * The concentration of what is given off in a room whose air is mixed at once:
 *
 * <pre>V dc/dt = G - Q c.</pre>
 *
 * Near the kiln it is higher. Shares of volume at 25 °C and 1 atm, 24.465 l/mol, as exposure limits
 * are stated. A planning figure: it replaces neither a gas alarm nor measurement, and the limits in
 * force are those of the place.
 *
 * <p>Example: 100 g of carbon monoxide in an hour, at a steady supply of 1000 m3/h, leads to 87
 * ppm.
 */
public final class WellMixedRoom {
  private static final double MOLAR_VOLUME = 8.314462618 * 298.15 / 101325; // m3/mol
  private static final int HALVINGS = 50;
  private static final Source MODEL =
      Source.recomputed("mass balance of a well-mixed room, V dc/dt = G - Q c");

  private WellMixedRoom() {}

  /** {@return the model} */
  public static WellMixedRoom standard() {
    return new WellMixedRoom();
  }

  /**
   * What a release does to the air of a room.
   *
   * @param release what is given off
   * @param room the room with its supply air
   * @return the concentration, and the supply air that each limit asks for
   */
  public RoomAnswer answer(GasRelease release, RoomAir room) {
    Substance substance = release.substance();
    RoomCurve curve = new RoomCurve(release.steps(), room.volume().si(), room.supply().si());
    RoomAnswer.Builder answer =
        RoomAnswer.builder()
            .release(release)
            .room(room)
            .peak(density(curve.highest(0)))
            .addCautions(
                substance.name().equals(Substance.carbonMonoxide().name())
                    ? Caution.CARBON_MONOXIDE
                    : Caution.BINDER_FUMES);
    for (int i = 0; i < curve.size(); i++) {
      answer.addPoints(
          RoomPoint.of(Amounts.hours(curve.time(i) / 3600), density(curve.concentration(i))));
    }
    Optional<Amount<MolarMass>> molarMass = substance.molarMass();
    molarMass.ifPresent(mass -> answer.peakShare(share(curve.highest(0), mass)));
    for (ExposureLimit limit : substance.limits()) {
      LimitAnswer held = hold(release, room, curve, limit, molarMass.orElseThrow());
      answer.addLimits(held);
      answer.addFindings(finding(release, room, held));
    }
    if (substance.limits().isEmpty()) {
      answer.addFindings(noLimit(release));
    }
    return answer.build();
  }

  /**
   * What a binder's burn-out does to the air of a room, for each product that the binder names. How
   * the mass divides among the products is not known, so each is taken to be all of it: the safe
   * side, and not to be added up.
   *
   * @param binder the binder with its products
   * @param burnOut the rate at which its mass leaves, step by step
   * @param room the room with its supply air
   * @return an answer for each product, and for binder without named products one for its vapour
   * @throws IllegalArgumentException if there is no step
   */
  public List<RoomAnswer> binderProducts(Binder binder, List<ReleaseStep> burnOut, RoomAir room) {
    List<String> products =
        binder.hazardousProducts().isEmpty()
            ? List.of("vapour of " + binder.name())
            : binder.hazardousProducts();
    return products.stream()
        .flatMap(product -> Substance.namedIn(product).stream())
        .distinct()
        .map(substance -> answer(GasRelease.of(substance, burnOut), room))
        .toList();
  }

  private static LimitAnswer hold(
      GasRelease release,
      RoomAir room,
      RoomCurve curve,
      ExposureLimit limit,
      Amount<MolarMass> molarMass) {
    double averagedOver = limit.averagedOver().si();
    double allowed = limit.concentration().value().si() * molarMass.si() / MOLAR_VOLUME; // kg/m3
    // with this much even a steady release at the highest rate stays at the limit
    double enough = release.peakRate().si() / allowed;
    double low = 0;
    double high = enough;
    if (highest(release, room, low, averagedOver) <= allowed) {
      high = 0;
    }
    for (int i = 0; i < HALVINGS && high - low > 1e-9 * enough; i++) {
      double middle = (low + high) / 2;
      if (highest(release, room, middle, averagedOver) <= allowed) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return LimitAnswer.of(
        limit,
        share(curve.highest(averagedOver), molarMass),
        Amounts.cubicMetresPerHour(high * 3600));
  }

  private static double highest(
      GasRelease release, RoomAir room, double supply, double averagedOver) {
    return new RoomCurve(release.steps(), room.volume().si(), supply).highest(averagedOver);
  }

  private static Finding finding(GasRelease release, RoomAir room, LimitAnswer held) {
    String name = release.substance().name();
    Amount<VolumetricFlowRate> supply = room.supply();
    ExposureLimit limit = held.limit();
    boolean atOnce = limit.averagedOver().si() == 0;
    return AtmosphereFinding.ROOM_CONCENTRATION
        .about(name)
        .severity(held.isKept() ? PASSED : atOnce ? STOP : WARNING)
        .measured(held.highest())
        .limit(limit.concentration().value())
        .basis(limit.concentration().source())
        .message(
            release.mass().format(GRAM, 1)
                + " of "
                + name
                + " lead to "
                + held.highest().format(PARTS_PER_MILLION, 1)
                + (atOnce ? " at most" : " as a mean over " + limit.averagedOver().format(HOUR, 2))
                + " with "
                + supply.format(CUBIC_METRE_PER_HOUR, 0)
                + " of supply air; "
                + limit.name()
                + " is "
                + limit.concentration().value().format(PARTS_PER_MILLION, 2)
                + ", kept from "
                + held.supplyNeeded().format(CUBIC_METRE_PER_HOUR, 0)
                + " on; lead the gas outside at the kiln, and see which limits are in force")
        .build();
  }

  private static Finding noLimit(GasRelease release) {
    return AtmosphereFinding.ROOM_CONCENTRATION
        .about(release.substance().name())
        .severity(UNDETERMINED)
        .measured(release.mass())
        .basis(MODEL)
        .message(
            "up to "
                + release.mass().format(GRAM, 1)
                + " of "
                + release.substance().name()
                + ", for which no limit is known here: see the safety data sheet")
        .build();
  }

  private static Amount<VolumeFraction> share(double density, Amount<MolarMass> molarMass) {
    return Amounts.partsPerMillion(1e6 * density / molarMass.si() * MOLAR_VOLUME);
  }

  private static Amount<Density> density(double kilogramsPerCubicMetre) {
    return Amounts.kilogramsPerCubicMetre(kilogramsPerCubicMetre);
  }
}
