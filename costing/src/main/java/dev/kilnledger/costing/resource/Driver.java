package dev.kilnledger.costing.resource;

import dev.kilnledger.units.Kind;
import java.util.Optional;

/**
 * What uses a resource up: an event that is counted, or a measure of which each event takes a fixed
 * amount that the plan states.
 */
public enum Driver {
  /** Each part started, that is printed, whether it comes out good or not. */
  PART("part"),
  /** Each part that comes out good. */
  GOOD_PART("good part"),
  /** Each part that goes through debinding. */
  DEBOUND_PART("debound part"),
  /** Each part that goes through sintering. */
  SINTERED_PART("sintered part"),
  /** Each charge of debinding, where that is a firing of its own. */
  DEBINDING("debinding"),
  /** Each charge of sintering, from the first part of it on; debinding may be a part of it. */
  FIRING("firing"),
  /** The hours for which a printer runs. */
  PRINT_TIME("time of a print", PART, Kind.TIME),
  /** The hours for which a kiln sinters. */
  FIRING_TIME("time of a firing", FIRING, Kind.TIME),
  /** The mass printed. */
  PRINTED_MASS("mass of a print", PART, Kind.MASS),
  /** The volume that has gone through a nozzle. */
  EXTRUDED_VOLUME("volume of a print", PART, Kind.VOLUME);

  private final String word;
  private final Optional<Driver> event;
  private final Kind<?> kind;

  Driver(String word) {
    this.word = word;
    this.event = Optional.empty();
    this.kind = Kind.RATIO;
  }

  Driver(String word, Driver event, Kind<?> kind) {
    this.word = word;
    this.event = Optional.of(event);
    this.kind = kind;
  }

  /** {@return the word for people, in the singular} */
  public String word() {
    return word;
  }

  /** {@return the event that is counted: this one, or the one that takes the measure} */
  public Driver event() {
    return event.orElse(this);
  }

  /** {@return whether each event takes an amount of it, which the plan has to state} */
  public boolean isMeasured() {
    return event.isPresent();
  }

  /** {@return what it is measured in; a ratio where events are counted} */
  public Kind<?> kind() {
    return kind;
  }
}
