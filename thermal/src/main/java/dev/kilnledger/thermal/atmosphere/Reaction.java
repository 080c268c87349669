package dev.kilnledger.thermal.atmosphere;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * How many of each species a reaction makes, below zero of those it uses up; in the order of the
 * species, as the last digit of a sum over them depends on it.
 */
record Reaction(Map<Species, Double> coefficients) {
  Reaction {
    coefficients = Collections.unmodifiableMap(new EnumMap<>(coefficients));
  }
}
