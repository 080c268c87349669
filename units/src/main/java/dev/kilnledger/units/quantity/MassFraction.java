package dev.kilnledger.units.quantity;

import javax.measure.Quantity;

/** Share of one constituent in the mass of a mixture, 1 meaning all of it. */
public interface MassFraction extends Quantity<MassFraction> {}
