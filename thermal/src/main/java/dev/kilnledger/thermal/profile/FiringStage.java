package dev.kilnledger.thermal.profile;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.material.Getter;
import dev.kilnledger.core.material.PackingPowder;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import java.io.Serializable;
import java.util.Optional;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/** One firing of a route: its profile, and what the part is packed in. */
@Value.Immutable
@ValueStyle
public interface FiringStage extends Serializable {
  /** The longest time that a stage may take. */
  Amount<Time> LONGEST = Amounts.days(365);

  /** The highest temperature that a stage may have; nothing is solid there. */
  Amount<Temperature> HOTTEST = Amounts.celsius(5000);

  /** What a stage is for. */
  enum Purpose {
    /** Burning the binder out. */
    DEBINDING("debinding", PackingPowder.Use.DEBINDING),
    /** Sintering the powder to metal. */
    SINTERING("sintering", PackingPowder.Use.SINTERING);

    private final String words;
    private final PackingPowder.Use packingUse;

    Purpose(String words, PackingPowder.Use packingUse) {
      this.words = words;
      this.packingUse = packingUse;
    }

    /** {@return the purpose in words, lower case} */
    public String words() {
      return words;
    }

    /** {@return the use that a packing powder must be good for} */
    public PackingPowder.Use packingUse() {
      return packingUse;
    }
  }

  /** {@return what it is for} */
  Purpose purpose();

  /** {@return its name in findings; the purpose in words by default} */
  @Value.Default
  default String name() {
    return purpose().words();
  }

  /** {@return the programme of the kiln} */
  Profile profile();

  /** {@return the powder around the part} */
  PackingPowder packing();

  /** {@return the mass of the powder, above zero} */
  Amount<Mass> packingMass();

  /** {@return the getter laid in, if any} */
  Optional<GetterFill> getter();

  /**
   * Starts a debinding stage.
   *
   * @return a builder; profile, packing and packing mass are required
   */
  static Builder debinding() {
    return new Builder().purpose(Purpose.DEBINDING);
  }

  /**
   * Starts a sintering stage.
   *
   * @return a builder; profile, packing and packing mass are required
   */
  static Builder sintering() {
    return new Builder().purpose(Purpose.SINTERING);
  }

  /** Builds {@link FiringStage} values. */
  final class Builder extends ImmutableFiringStage.Builder {
    Builder() {}

    /**
     * Lays in a getter.
     *
     * @param getter the getter
     * @param mass how much of it, above zero
     * @return this
     * @throws IllegalArgumentException if the mass is not above zero
     */
    public Builder getter(Getter getter, Amount<Mass> mass) {
      return getter(GetterFill.of(getter, mass));
    }
  }

  /**
   * Refuses a blank name, a packing without mass, and more than a year or hotter than any solid,
   * which nobody fires and a kiln would be followed through step by step.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("stage " + name())
        .text("name", name())
        .positive("packing mass", packingMass())
        .require(
            !profile().duration().isGreaterThan(LONGEST),
            "the profile takes "
                + profile().duration().format(TradeUnits.DAY, 0)
                + "; accepted is up to "
                + LONGEST)
        .require(
            !profile().peak().isGreaterThan(HOTTEST),
            "the profile peaks at "
                + profile().peak().format(TradeUnits.CELSIUS, 0)
                + "; accepted is up to "
                + HOTTEST)
        .refuseIfAny();
  }
}
