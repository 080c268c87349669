package dev.kilnledger.thermal.chance;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.quantity.MassFraction;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/** How sure a firing is, by many draws of what is not known exactly. */
@Value.Immutable
@ValueStyle
public interface FiringChances extends Serializable {
  /** {@return the firing and its spreads} */
  UncertainFiring firing();

  /** {@return the seed of the draws: the same seed gives the same result} */
  long seed();

  /** {@return how many draws were asked for} */
  int drawsAsked();

  /** {@return how many were made: fewer where the thread was interrupted} */
  int draws();

  /** {@return the probability of each event; without the binder where it has no kinetics} */
  List<Chance> chances();

  /** {@return how long the core is hot enough at a stretch; empty if no draw was made} */
  Optional<Quantiles<Time>> soak();

  /** {@return the binder left after debinding; empty without kinetics or draws} */
  Optional<Quantiles<MassFraction>> binderLeft();

  /** {@return the relative density; empty without a sintering curve or draws} */
  Optional<Quantiles<VolumeFraction>> density();

  /** {@return what moves the soak, the widest swing first; what does not move it left out} */
  List<Swing<Time>> soakSwings();

  /** {@return what moves the binder left after debinding, the widest swing first} */
  List<Swing<MassFraction>> binderSwings();

  /** {@return what moves the relative density, the widest swing first; empty without a curve} */
  List<Swing<VolumeFraction>> densitySwings();

  /** {@return the temperature of the core over time, stage by stage, by up to 2048 of the draws} */
  List<CoreBand> coreBands();

  /** {@return how far the quick model is from the full one} */
  Optional<ShortcutCheck> shortcut();

  /** {@return one on each event, and what they stand on} */
  List<Finding> findings();

  /**
   * The probability of an event.
   *
   * @param event the event
   * @return the probability, empty where nothing can be said of it
   */
  default Optional<Chance> chance(FiringEvent event) {
    return chances().stream().filter(chance -> chance.event() == event).findFirst();
  }

  /**
   * Starts one.
   *
   * @return an empty builder
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link FiringChances} values. */
  final class Builder extends ImmutableFiringChances.Builder {
    Builder() {}
  }
}
