package dev.kilnledger.thermal.chance;

import java.util.ArrayList;
import java.util.List;

/** The draws of one block: what came of each, and of the first few what the core felt. */
final class DrawnBlock {
  /** How many draws of each block are kept for the bands over time. */
  static final int CURVES = 32;

  private static final int LOOK_UP = 64; // how many draws between two looks for an interruption

  final List<Outcome> outcomes = new ArrayList<>();
  final List<List<Felt>> curves = new ArrayList<>();

  static DrawnBlock of(FiringResponse response, Inputs.Drawing drawing, int draws) {
    DrawnBlock block = new DrawnBlock();
    for (int i = 0; i < draws; i++) {
      if (i % LOOK_UP == 0 && Thread.currentThread().isInterrupted()) {
        break;
      }
      Draw draw = drawing.next();
      List<Felt> felt = response.felt(draw);
      block.outcomes.add(response.outcome(draw, felt));
      if (i < CURVES) {
        block.curves.add(felt);
      }
    }
    return block;
  }

  /** How many of all draws are in a block. */
  static int size(int block, int draws) {
    return (int) ((block + 1L) * draws / Blocks.COUNT - (long) block * draws / Blocks.COUNT);
  }
}
