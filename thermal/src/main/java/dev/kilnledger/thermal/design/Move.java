package dev.kilnledger.thermal.design;

/**
 * One line of a programme in whole numbers: a target, and the minutes or, for a ramp told by its
 * rate, the degrees an hour. A target equal to the one before makes a hold.
 */
record Move(int target, int pace) {}
