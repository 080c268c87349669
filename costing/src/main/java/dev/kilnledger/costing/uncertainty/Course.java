package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.costing.resource.Driver;

/** How often each event happens until so many parts are good, in one trial. */
interface Course {
  /** Whether the events for a number of parts differ from trial to trial. */
  boolean varies();

  /** Starts the course of a trial. */
  void start(double[] drawn);

  /** Goes on until so many parts are good, not fewer than before. */
  void until(long parts);

  /** How often a driver's event has happened; a share of a charge where charges are shared. */
  double events(Driver driver);

  /** The same as a whole number, over the parts per firing where charges are shared. */
  long numerator(Driver driver);

  /** How often a driver's event happens for each good part in the long run. */
  double perPart(Driver driver);
}
