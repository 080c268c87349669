package dev.kilnledger.thermal.chance;

import java.util.List;
import java.util.Optional;

/** The quick model of a firing: what comes of a draw, without computing kiln and charge again. */
final class FiringResponse {
  private final List<StageResponse> stages;
  private final int debinding; // how many of the stages, which come first
  private final int hottest;
  private final double soakTemperature;
  private final Optional<BinderModel> binder;
  private final DensityModel density;

  FiringResponse(
      List<StageResponse> stages,
      int debinding,
      int hottest,
      double soakTemperature,
      Optional<BinderModel> binder,
      DensityModel density) {
    this.stages = stages;
    this.debinding = debinding;
    this.hottest = hottest;
    this.soakTemperature = soakTemperature;
    this.binder = binder;
    this.density = density;
  }

  List<StageResponse> stages() {
    return stages;
  }

  /** What the core feels, stage by stage. */
  List<Felt> felt(Draw draw) {
    return stages.stream().map(stage -> stage.felt(draw)).toList();
  }

  Outcome outcome(Draw draw) {
    return outcome(draw, felt(draw));
  }

  Outcome outcome(Draw draw, List<Felt> felt) {
    List<Felt> sintering = felt.subList(debinding, felt.size());
    return new Outcome(
        felt.get(hottest).longestAbove(soakTemperature),
        stages.get(hottest).peak(draw),
        binder.isPresent() ? binder.get().left(draw, felt.subList(0, debinding)) : Double.NaN,
        density.least(draw, sintering),
        density.most(draw, sintering));
  }
}
