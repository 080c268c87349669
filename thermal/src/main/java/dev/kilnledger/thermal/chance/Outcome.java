package dev.kilnledger.thermal.chance;

/**
 * What came of one draw: soak in s, the kiln's highest temperature in K, shares of binder and
 * relative densities; not a number where nothing can be said.
 */
record Outcome(
    double soak, double hottest, double binderLeft, double leastDensity, double mostDensity) {}
