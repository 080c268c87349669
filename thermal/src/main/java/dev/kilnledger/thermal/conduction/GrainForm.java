package dev.kilnledger.thermal.conduction;

/**
 * The form of a powder's grains, with the two constants of {@link ZehnerBauerSchluender}: form
 * factor, and share of the section in which flattened grains touch (VDI Heat Atlas, sec. D6.3; for
 * broken grains read in a published open model, for the others from memory).
 */
public enum GrainForm {
  /** Spheres. */
  SPHERES(1.25, 0.0077),
  /** Broken or irregular grains, as of most refractory powders. */
  BROKEN(1.4, 0.001),
  /** Cylinders. */
  CYLINDERS(2.5, 0);

  final double formFactor;
  final double flattening;

  GrainForm(double formFactor, double flattening) {
    this.formFactor = formFactor;
    this.flattening = flattening;
  }
}
