package dev.kilnledger.core.equipment;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import dev.kilnledger.units.quantity.HeatTransferCoefficient;
import dev.kilnledger.units.quantity.HeatingRate;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import javax.measure.quantity.Area;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/** An electric kiln with a box-shaped chamber. */
@Value.Immutable
@ValueStyle
public interface Kiln extends Serializable {
  /** The lowest temperature at which a wall must conduct heat: that of an unheated room. */
  Amount<Temperature> FREEZING = Amounts.celsius(0);

  /** {@return the name, such as {@code "front loader, 12 litres"}} */
  String name();

  /** {@return the highest temperature it is rated for} */
  Amount<Temperature> peakTemperature();

  /**
   * {@return how long it may hold its highest temperature at a stretch; empty where the maker does
   * not say}
   */
  Optional<Amount<Time>> longestHoldAtPeak();

  /** {@return the usable chamber} */
  Envelope chamber();

  /** {@return the rated electrical power} */
  Amount<Power> power();

  /** {@return the rated voltage: phase to neutral with one phase, between phases with three} */
  Amount<ElectricPotential> voltage();

  /** {@return the number of phases, 1 or 3} */
  int phases();

  /** {@return how many ramps and holds its controller takes; empty if it cannot be programmed} */
  OptionalInt programmeSegments();

  /** {@return the fastest heating its maker allows, empty where none is stated} */
  Optional<Amount<HeatingRate>> fastestHeating();

  /**
   * {@return the wall from the inside outwards; may be empty where it is not known. Each layer's
   * conductivity must stay above zero from 0 °C to the peak temperature}
   */
  List<WallLayer> wall();

  /**
   * {@return how the outside gives its heat to the room; 10 W/(m2 K) by default, natural convection
   * and radiation near room temperature (common practice)}
   */
  @Value.Default
  default Amount<HeatTransferCoefficient> outsideFilm() {
    return Amounts.wattsPerSquareMetreKelvin(10);
  }

  /**
   * {@return where these facts come from, such as the data sheet with its date; empty, which is the
   * default, where nobody says}
   */
  Optional<Source> source();

  /** {@return the inner surface of the chamber} */
  default Amount<Area> innerSurface() {
    double x = chamber().x().si();
    double y = chamber().y().si();
    double z = chamber().z().si();
    return Amounts.squareMetres(2 * (x * y + y * z + z * x));
  }

  /** {@return the current at rated power: P / U, with three phases P / (sqrt(3) U)} */
  default Amount<ElectricCurrent> ratedCurrent() {
    double perPhase = phases() == 3 ? Math.sqrt(3) : 1;
    return Amounts.amperes(power().si() / (perPhase * voltage().si()));
  }

  /**
   * Starts one.
   *
   * @return a builder; name, peak temperature, chamber, power, voltage and phases are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Kiln} values. */
  final class Builder extends ImmutableKiln.Builder {
    Builder() {}
  }

  /**
   * Refuses impossible kilns.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems =
        new Problems("kiln " + name())
            .text("name", name())
            .positive("power", power())
            .positive("voltage", voltage())
            .require(
                phases() == 1 || phases() == 3, "phases is " + phases() + "; accepted is 1 or 3")
            .positive("outside film", outsideFilm());
    longestHoldAtPeak().ifPresent(hold -> problems.positive("longest hold at peak", hold));
    fastestHeating().ifPresent(rate -> problems.positive("fastest heating", rate));
    programmeSegments()
        .ifPresent(
            segments ->
                problems.require(
                    segments >= 1,
                    "programme segments is " + segments + "; accepted is 1 or more, or none"));
    wall().forEach(layer -> requireConducting(problems, layer));
    problems.refuseIfAny();
  }

  private void requireConducting(Problems problems, WallLayer layer) {
    Stream.of(FREEZING, peakTemperature())
        .filter(end -> layer.conductivityAt(end).si() <= 0)
        .forEach(
            end ->
                problems.require(
                    false,
                    "conductivity of "
                        + layer.material()
                        + " comes to "
                        + layer.conductivityAt(end).format(TradeUnits.WATT_PER_METRE_KELVIN, 4)
                        + " at "
                        + end
                        + "; accepted is a line above zero from "
                        + FREEZING
                        + " to the peak temperature"));
  }
}
