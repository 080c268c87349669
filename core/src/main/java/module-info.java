/**
 * Facts and their sources (materials, equipment), findings, and the passage of a part from green to
 * sintered.
 */
@SuppressWarnings("module") // the modules that see the internal package are compiled later
module dev.kilnledger.core {
  requires transitive dev.kilnledger.units;
  requires static org.immutables.serial;
  requires static org.immutables.value.annotations;
  requires static org.jspecify;
  requires org.apache.commons.statistics.distribution;

  exports dev.kilnledger.core.equipment;
  exports dev.kilnledger.core.finding;
  exports dev.kilnledger.core.firing;
  exports dev.kilnledger.core.material;
  exports dev.kilnledger.core.part;
  exports dev.kilnledger.core.progress;
  exports dev.kilnledger.core.source;
  exports dev.kilnledger.core.internal to
      dev.kilnledger.thermal,
      dev.kilnledger.costing;
}
