package dev.kilnledger.costing.outfit;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A piece of equipment and the option that brings it.
 *
 * @param option the option's number, {@link Slots#NONE} where it is there without one
 * @param value the piece
 */
record Piece<T>(int option, T value) {
  static <T> List<Piece<T>> in(List<Option> options, Function<Option, Optional<T>> of) {
    List<Piece<T>> pieces = new ArrayList<>();
    for (int i = 0; i < options.size(); i++) {
      int option = i;
      of.apply(options.get(i)).ifPresent(value -> pieces.add(new Piece<>(option, value)));
    }
    return pieces;
  }

  /** The pieces that options bring, after the lack of one. */
  static <T> List<Piece<Optional<T>>> inOrNone(
      List<Option> options, Function<Option, Optional<T>> of) {
    List<Piece<Optional<T>>> pieces = new ArrayList<>();
    pieces.add(new Piece<>(Slots.NONE, Optional.empty()));
    in(options, of)
        .forEach(piece -> pieces.add(new Piece<>(piece.option(), Optional.of(piece.value()))));
    return pieces;
  }

  /** Whether it is there once some options are chosen. */
  boolean isIn(BitSet options) {
    return option == Slots.NONE || options.get(option);
  }
}
