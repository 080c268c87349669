package dev.kilnledger.thermal.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** One thing that can be changed about a programme, in one direction, by whole steps. */
record Lever(Kind kind, int move) {
  /**
   * Minutes below which a change is no gain: of ramps told by their rate, the least may gain less.
   */
  static final double LEAST_GAIN = 0.02;

  /** How far a peak may go at once. */
  private static final int PEAK_DEGREES = 100;

  enum Kind {
    /** A move takes less time. */
    FASTER,
    /** A move takes more time. */
    SLOWER,
    /** A ramp ends hotter, the rates around it kept. */
    HOTTER,
    /** A ramp ends colder, the rates around it kept. */
    COLDER,
    /** A ramp ends hotter, at the slower of the rates around its end. */
    HOTTER_AT_SLOWER,
    /** A ramp ends colder, the next one at the slower of the rates around its end. */
    COLDER_AT_SLOWER
  }

  Optional<Programme> pulled(Programme programme, int steps) {
    return switch (kind) {
      case FASTER -> programme.faster(move, steps);
      case SLOWER -> programme.faster(move, -steps);
      case HOTTER -> programme.shifted(move, steps);
      case COLDER -> programme.shifted(move, -steps);
      case HOTTER_AT_SLOWER -> programme.asSlow(move, move + 1).shifted(move, steps);
      case COLDER_AT_SLOWER -> programme.asSlow(move + 1, move).shifted(move, -steps);
    };
  }

  /**
   * The fewest steps by which a programme takes no more than some minutes; none where this lever
   * does not lead there.
   */
  OptionalInt stepsTo(Programme programme, double minutes) {
    int high = 1;
    Optional<Programme> pulled = pulled(programme, high);
    while (pulled.isPresent() && pulled.get().minutes() > minutes) {
      if (pulled.get().minutes() > programme.minutes()) {
        return OptionalInt.empty(); // the wrong way
      }
      high *= 2;
      pulled = pulled(programme, high);
    }
    int low = high / 2;
    while (high - low > 1) {
      int middle = (low + high) / 2;
      boolean enough =
          pulled(programme, middle).map(tried -> tried.minutes() <= minutes).orElse(true);
      low = enough ? low : middle;
      high = enough ? middle : high;
    }
    return pulled(programme, high).isPresent() ? OptionalInt.of(high) : OptionalInt.empty();
  }

  /** How many steps make a share of what there is: of a move's time, of the ramp that shrinks. */
  int stride(Programme programme, double share) {
    if (isPace()) {
      return programme.stepsFor(move, share);
    }
    if (!isBetweenRamps(programme)) {
      return Math.max(1, (int) Math.round(PEAK_DEGREES * share));
    }
    boolean colder = kind == Kind.COLDER || kind == Kind.COLDER_AT_SLOWER;
    return Math.max(1, (int) Math.round(programme.degrees(colder ? move : move + 1) * share));
  }

  boolean isBetweenRamps(Programme programme) {
    return !isPace() && move + 1 < programme.moves().size() && programme.isHeating(move + 1);
  }

  /** What can be changed up to the end of the last heating and the hold after it, in order. */
  static List<Lever> ofHeating(Programme programme) {
    List<Lever> levers = new ArrayList<>();
    for (int move = 0; move < programme.moves().size(); move++) {
      if (!programme.isCooling(move)) {
        levers.add(new Lever(Kind.FASTER, move));
        levers.add(new Lever(Kind.SLOWER, move));
        if (programme.isHeating(move)) {
          levers.add(new Lever(Kind.HOTTER, move));
          levers.add(new Lever(Kind.COLDER, move));
        }
      }
    }
    return levers;
  }

  /** What moves a corner and leaves the temperatures between its places to the slower ramp. */
  static List<Lever> handingOver(Programme programme) {
    List<Lever> levers = new ArrayList<>();
    for (int move = 0; move + 1 < programme.moves().size(); move++) {
      if (programme.isHeating(move) && programme.isHeating(move + 1)) {
        levers.add(new Lever(Kind.HOTTER_AT_SLOWER, move));
        levers.add(new Lever(Kind.COLDER_AT_SLOWER, move));
      }
    }
    return levers;
  }

  boolean isPace() {
    return kind == Kind.FASTER || kind == Kind.SLOWER;
  }

  boolean undoes(Lever other) {
    return move == other.move && isPace() == other.isPace();
  }

  /** Where it acts along the programme: a corner lies between its ramp and the next move. */
  int place() {
    return 2 * move + (isPace() ? 0 : 1);
  }
}
