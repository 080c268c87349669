/** Firing profiles, the checks they must pass, and the energy of a firing. */
@SuppressWarnings("module") // the module that sees the forms is compiled later
module dev.kilnledger.thermal {
  requires transitive dev.kilnledger.core;
  requires static org.immutables.serial;
  requires static org.immutables.value.annotations;
  requires static org.jspecify;
  requires org.apache.commons.rng.api;
  requires org.apache.commons.rng.simple;
  requires org.apache.commons.statistics.distribution;

  exports dev.kilnledger.thermal.atmosphere;
  exports dev.kilnledger.thermal.burnout;
  exports dev.kilnledger.thermal.chance;
  exports dev.kilnledger.thermal.check;
  exports dev.kilnledger.thermal.conduction;
  exports dev.kilnledger.thermal.densification;
  exports dev.kilnledger.thermal.design;
  exports dev.kilnledger.thermal.document;
  exports dev.kilnledger.thermal.energy;
  exports dev.kilnledger.thermal.firing;
  exports dev.kilnledger.thermal.kiln;
  exports dev.kilnledger.thermal.kinetics;
  exports dev.kilnledger.thermal.load;
  exports dev.kilnledger.thermal.profile;
  exports dev.kilnledger.thermal.document.internal to
      dev.kilnledger.costing;
}
