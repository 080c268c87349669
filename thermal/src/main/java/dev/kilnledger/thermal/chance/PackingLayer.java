package dev.kilnledger.thermal.chance;

import dev.kilnledger.thermal.conduction.ChargeLayer;
import dev.kilnledger.thermal.firing.StageForecast;

/** The packing powder in the charge of a stage. */
final class PackingLayer {
  private PackingLayer() {}

  static ChargeLayer of(StageForecast stage) {
    return stage.charge().layers().stream()
        .filter(layer -> layer.material().name().equals(stage.stage().packing().name()))
        .findFirst()
        .orElseThrow();
  }
}
