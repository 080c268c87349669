package dev.kilnledger.units.quantity;

import javax.measure.Quantity;

/**
 * Share of one constituent in the volume of a body or mixture, 1 meaning all of it; solids loading,
 * porosity and relative density are of this kind.
 */
public interface VolumeFraction extends Quantity<VolumeFraction> {}
