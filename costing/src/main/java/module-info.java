/** Offers, resources and their wear, the ledger of the first n parts, and its break-even. */
module dev.kilnledger.costing {
  requires transitive dev.kilnledger.core;
  requires transitive dev.kilnledger.thermal;
  requires transitive org.joda.money;
  requires static org.immutables.serial;
  requires static org.immutables.value.annotations;
  requires static org.jspecify;
  requires org.apache.commons.rng.api;
  requires org.apache.commons.rng.sampling;
  requires org.apache.commons.rng.simple;
  requires org.apache.commons.statistics.distribution;

  exports dev.kilnledger.costing.accounting;
  exports dev.kilnledger.costing.breakeven;
  exports dev.kilnledger.costing.comparison;
  exports dev.kilnledger.costing.document;
  exports dev.kilnledger.costing.explanation;
  exports dev.kilnledger.costing.job;
  exports dev.kilnledger.costing.ledger;
  exports dev.kilnledger.costing.offer;
  exports dev.kilnledger.costing.outfit;
  exports dev.kilnledger.costing.purchase;
  exports dev.kilnledger.costing.quote;
  exports dev.kilnledger.costing.resource;
  exports dev.kilnledger.costing.uncertainty;
  exports dev.kilnledger.costing.yield;
}
