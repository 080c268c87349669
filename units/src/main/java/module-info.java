/**
 * Typed amounts: one small immutable value per measured figure, the kinds of quantity the trade
 * needs beyond JSR 385, the units it uses, and their UCUM text.
 */
module dev.kilnledger.units {
  requires transitive java.measure;
  requires transitive si.uom.quantity;
  requires static org.apiguardian.api;
  requires static org.jspecify;
  requires tech.units.indriya;
  requires systems.uom.ucum;

  exports dev.kilnledger.units;
  exports dev.kilnledger.units.quantity;
}
