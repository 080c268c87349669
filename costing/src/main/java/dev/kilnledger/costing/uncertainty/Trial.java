package dev.kilnledger.costing.uncertainty;

import java.util.List;
import java.util.function.DoubleSupplier;
import org.apache.commons.rng.UniformRandomProvider;

/** One trial after the other, on one thread: draws, computes, and writes down the outputs. */
interface Trial {
  void run(double[] outputs);

  /** Draws a value for each input. */
  final class Draws {
    private final DoubleSupplier[] samplers;

    /** The values drawn last. */
    final double[] values;

    Draws(List<UncertainInput> inputs, UniformRandomProvider random) {
      samplers =
          inputs.stream()
              .map(input -> Law.of(input.distribution()).sampler(random))
              .toArray(DoubleSupplier[]::new);
      values = new double[samplers.length];
    }

    double[] next() {
      for (int i = 0; i < samplers.length; i++) {
        values[i] = samplers[i].getAsDouble();
      }
      return values;
    }
  }
}
