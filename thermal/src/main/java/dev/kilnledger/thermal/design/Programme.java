package dev.kilnledger.thermal.design;

import dev.kilnledger.thermal.design.ProgrammeForm.Ramps;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.thermal.profile.ProfileBuilder;
import dev.kilnledger.thermal.profile.Segment;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A profile in the whole numbers that a controller takes. A hold of no minutes keeps its place in
 * the list, so that moves can be told by their index, but is no segment.
 */
record Programme(ProgrammeForm form, int start, List<Move> moves) {
  /** Far below a minute, far above the rounding of the arithmetic. */
  private static final double ROUNDING = 1e-6;

  static Programme nearest(ProgrammeForm form, Profile profile) {
    int start = whole(profile.segments().get(0).start().in(form.scale().unit()));
    Programme programme = new Programme(form, start, List.of());
    for (Segment segment : profile.segments()) {
      int target = whole(segment.end().in(form.scale().unit()));
      programme = programme.then(target, segment.duration().in(TradeUnits.MINUTE));
    }
    return programme;
  }

  private static int whole(double number) {
    // absolute zero, -459.67 °F, would be rounded to what is colder; -273.15 °C is not
    return Math.max(-459, (int) Math.round(number));
  }

  /** This and one move more, in no less than the minutes given. */
  Programme then(int target, double minutes) {
    List<Move> more = new ArrayList<>(moves);
    more.add(new Move(target, pace(Math.abs(target - last()), minutes)));
    return new Programme(form, start, List.copyOf(more));
  }

  private int pace(int degrees, double minutes) {
    if (degrees > 0 && form.ramps() == Ramps.BY_RATE) {
      return Math.max(1, (int) Math.floor(degrees * 60 / minutes + ROUNDING));
    }
    return Math.max(degrees > 0 ? 1 : 0, (int) Math.ceil(minutes - ROUNDING));
  }

  int last() {
    return moves.isEmpty() ? start : moves.get(moves.size() - 1).target();
  }

  int before(int move) {
    return move == 0 ? start : moves.get(move - 1).target();
  }

  int degrees(int move) {
    return Math.abs(moves.get(move).target() - before(move));
  }

  boolean isHold(int move) {
    return degrees(move) == 0;
  }

  boolean isCooling(int move) {
    return moves.get(move).target() < before(move);
  }

  boolean isHeating(int move) {
    return moves.get(move).target() > before(move);
  }

  private boolean isByRate(int move) {
    return !isHold(move) && form.ramps() == Ramps.BY_RATE;
  }

  double minutes(int move) {
    int pace = moves.get(move).pace();
    return isByRate(move) ? degrees(move) * 60.0 / pace : pace;
  }

  double minutes() {
    double sum = 0;
    for (int move = 0; move < moves.size(); move++) {
      sum += minutes(move);
    }
    return sum;
  }

  int peak() {
    return moves.stream().mapToInt(Move::target).reduce(start, Math::max);
  }

  /** The fastest heating, in degrees an hour; zero if there is none. */
  double fastestHeating() {
    double fastest = 0;
    for (int move = 0; move < moves.size(); move++) {
      if (isHeating(move)) {
        fastest = Math.max(fastest, degrees(move) * 60 / minutes(move));
      }
    }
    return fastest;
  }

  /** One move faster by steps of the controller, slower where they are negative. */
  Optional<Programme> faster(int move, int steps) {
    int pace = moves.get(move).pace() + (isByRate(move) ? steps : -steps);
    return pace < (isHold(move) ? 0 : 1)
        ? Optional.empty()
        : Optional.of(with(move, new Move(moves.get(move).target(), pace)));
  }

  /** How many steps make a share of the time of a move, at least one. */
  int stepsFor(int move, double share) {
    return Math.max(1, (int) Math.round(moves.get(move).pace() * share));
  }

  /**
   * The end of a ramp and the holds that follow it hotter by some degrees, the rates of the ramps
   * on both sides kept; none where one of them would have no way to go.
   */
  Optional<Programme> shifted(int ramp, int degrees) {
    int target = moves.get(ramp).target() + degrees;
    if (Integer.signum(target - before(ramp)) != Integer.signum(target - degrees - before(ramp))) {
      return Optional.empty();
    }
    Programme shifted = retimed(ramp, before(ramp), target);
    int next = ramp + 1;
    while (next < moves.size() && isHold(next)) {
      shifted = shifted.with(next, new Move(target, moves.get(next).pace()));
      next++;
    }
    if (next == moves.size()) {
      return Optional.of(shifted);
    }
    int end = moves.get(next).target();
    return Integer.signum(end - target) == Integer.signum(end - before(next))
        ? Optional.of(shifted.with(next, retimed(next, target, end).moves.get(next)))
        : Optional.empty();
  }

  private Programme retimed(int ramp, int from, int to) {
    double minutes = minutes(ramp) * Math.abs(to - from) / degrees(ramp);
    int pace = isByRate(ramp) ? moves.get(ramp).pace() : pace(Math.abs(to - from), minutes);
    return with(ramp, new Move(to, pace));
  }

  private Programme with(int index, Move move) {
    List<Move> changed = new ArrayList<>(moves);
    changed.set(index, move);
    return new Programme(form, start, List.copyOf(changed));
  }

  /** One ramp no faster than another. */
  Programme asSlow(int ramp, int other) {
    double minutes = minutes(other) * degrees(ramp) / degrees(other);
    int target = moves.get(ramp).target();
    return minutes > minutes(ramp)
        ? with(ramp, new Move(target, pace(degrees(ramp), minutes)))
        : this;
  }

  /** The ramp and the next one as one ramp, as slow on the whole. */
  Programme joined(int ramp) {
    double minutes = minutes(ramp) + minutes(ramp + 1);
    List<Move> fewer = new ArrayList<>(moves);
    int target = fewer.remove(ramp + 1).target();
    fewer.set(ramp, new Move(target, pace(Math.abs(target - before(ramp)), minutes)));
    return new Programme(form, start, List.copyOf(fewer));
  }

  /** This without the holds of no minutes, but for one at the end of all heating. */
  Programme withoutIdleHolds() {
    List<Move> kept = new ArrayList<>();
    for (int i = 0; i < moves.size(); i++) {
      boolean beforeHeating = i + 1 < moves.size() && isHeating(i + 1);
      if (isSegment(i) || !beforeHeating) {
        kept.add(moves.get(i));
      }
    }
    return new Programme(form, start, List.copyOf(kept));
  }

  /** Whether a move is a segment: all but a hold of no minutes. */
  boolean isSegment(int move) {
    return moves.get(move).pace() > 0;
  }

  Profile profile() {
    ProfileBuilder profile = Profile.from(form.scale().degrees(start));
    for (int i = 0; i < moves.size(); i++) {
      Move move = moves.get(i);
      if (isHold(i)) {
        if (isSegment(i)) {
          profile.hold(Amounts.minutes(move.pace()));
        }
      } else if (isByRate(i)) {
        profile.rampTo(form.scale().degrees(move.target()), form.scale().perHour(move.pace()));
      } else {
        profile.rampOver(form.scale().degrees(move.target()), Amounts.minutes(move.pace()));
      }
    }
    return profile.build();
  }
}
