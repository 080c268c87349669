package dev.kilnledger.costing.uncertainty;

/** A formula of uncertain inputs. It is called by several threads at once and keeps no state. */
@FunctionalInterface
public interface Model {
  /**
   * The value of the formula.
   *
   * @param values a value for each input, in their order; not to be changed
   * @return the value, a number
   */
  double at(double[] values);
}
