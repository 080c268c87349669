package dev.kilnledger.costing.outfit;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;

/** Choices made in some slots, and all that the choices still open need to know of them. */
final class Selection {
  /** How equals are told apart: fewest pieces of equipment, then the first in the catalogue. */
  private static final Comparator<Selection> RANK =
      Comparator.<Selection>comparingInt(selection -> selection.pieces)
          .thenComparing((one, other) -> Arrays.compare(one.chosen, other.chosen));

  private static final Comparator<Selection> CHEAPER_THEN_SCORE =
      Comparator.<Selection>comparingLong(selection -> selection.cost)
          .thenComparing(Comparator.<Selection>comparingLong(s -> s.score).reversed());

  /** By cost, score and rank: whoever beats a selection now or in every completion precedes it. */
  static final Comparator<Selection> OPEN = CHEAPER_THEN_SCORE.thenComparing(RANK);

  /** By cost, score, capability and rank: whoever beats a complete selection precedes it. */
  static final Comparator<Selection> COMPLETE =
      CHEAPER_THEN_SCORE
          .thenComparing((one, other) -> Arrays.compare(other.capability, one.capability))
          .thenComparing(RANK);

  /** In minor units of money. */
  final long cost;

  final long score;

  /** How many pieces of equipment it holds. */
  final int pieces;

  /** For each slot the place of its choice, -1 where it is open. */
  final int[] chosen;

  /** What it can do, or what its side of the equipment can do; the more the better. */
  final int[] capability;

  /** The states of the clauses; the more the better. */
  final int[] clauses;

  Selection(long cost, long score, int pieces, int[] chosen, int[] capability, int[] clauses) {
    this.cost = cost;
    this.score = score;
    this.pieces = pieces;
    this.chosen = chosen;
    this.capability = capability;
    this.clauses = clauses;
  }

  static Selection empty(Slots slots) {
    int[] open = new int[slots.count()];
    Arrays.fill(open, -1);
    return new Selection(0, 0, 0, open, new int[0], new int[slots.clauses.size()]);
  }

  /** This selection and one of other slots, with a capability of both. */
  Selection with(Selection other, int[] both) {
    int[] slots = new int[chosen.length];
    for (int i = 0; i < slots.length; i++) {
      slots[i] = Math.max(chosen[i], other.chosen[i]);
    }
    int[] states = new int[clauses.length];
    for (int i = 0; i < states.length; i++) {
      states[i] = Slots.Clause.together(clauses[i], other.clauses[i]);
    }
    return new Selection(
        Math.addExact(cost, other.cost),
        Math.addExact(score, other.score),
        pieces + other.pieces,
        slots,
        both,
        states);
  }

  /** This selection with a score for what it can do and that capability. */
  Selection scored(long more, int[] capability) {
    return new Selection(cost, Math.addExact(score, more), pieces, chosen, capability, clauses);
  }

  /** The numbers of the options chosen. */
  BitSet options(Slots slots) {
    BitSet options = new BitSet();
    for (int slot = 0; slot < chosen.length; slot++) {
      if (chosen[slot] >= 0 && slots.choices.get(slot)[chosen[slot]] != Slots.NONE) {
        options.set(slots.choices.get(slot)[chosen[slot]]);
      }
    }
    return options;
  }

  /**
   * Marks the clauses that the slots decided so far settle.
   *
   * @return whether none of them is broken
   */
  boolean settle(Slots slots, BitSet decided) {
    for (int i = 0; i < clauses.length; i++) {
      BitSet undecided = (BitSet) slots.clauses.get(i).slots().clone();
      undecided.andNot(decided);
      if (undecided.isEmpty()) {
        if (clauses[i] < 0) {
          return false;
        }
        clauses[i] = 0;
      }
    }
    return true;
  }
}
