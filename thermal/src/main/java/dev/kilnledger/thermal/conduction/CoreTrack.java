package dev.kilnledger.thermal.conduction;

import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amounts;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Gathers the points of a history; times in s, temperatures in K. */
final class CoreTrack {
  /** How far the true curve may be from the straight line between two points, K. */
  static final double STRAIGHT = 2e-3;

  private final Charge charge;
  private final Profile profile;
  private final Source model;
  private final List<CorePoint> points = new ArrayList<>();
  private double lastCore;
  private double lastSurface;

  CoreTrack(Charge charge, Profile profile, Source model) {
    this.charge = charge;
    this.profile = profile;
    this.model = model;
  }

  /** Adds a point of a charge of one material, whose innermost face is not looked for. */
  void add(double time, double kiln, double surface, double core) {
    add(time, kiln, surface, surface, core);
  }

  void add(double time, double kiln, double surface, double innermostFace, double core) {
    points.add(
        ImmutableCorePoint.of(
            Amounts.seconds(time),
            Amounts.kelvin(kiln),
            Amounts.kelvin(surface),
            Amounts.kelvin(innermostFace),
            Amounts.kelvin(core)));
    lastCore = core;
    lastSurface = surface;
  }

  double lastCore() {
    return lastCore;
  }

  double lastSurface() {
    return lastSurface;
  }

  CoreHistory history() {
    return history(Optional.empty());
  }

  CoreHistory history(Optional<HeatBalance> heat) {
    CoreHistory.Builder history =
        CoreHistory.builder()
            .charge(charge)
            .profile(profile)
            .model(model)
            .points(points)
            .heat(heat);
    return history.addAllFindings(ConductionFindings.of(history.build())).build();
  }
}
