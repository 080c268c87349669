package dev.kilnledger.thermal.firing;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.thermal.atmosphere.CarbonAtmosphere;
import dev.kilnledger.thermal.atmosphere.CrucibleAir;
import dev.kilnledger.thermal.atmosphere.GetterBalance;
import dev.kilnledger.thermal.atmosphere.OxygenBudget;
import dev.kilnledger.thermal.atmosphere.Protection;
import dev.kilnledger.thermal.conduction.Charge;
import dev.kilnledger.thermal.conduction.CoreHistory;
import dev.kilnledger.thermal.energy.ChargeItem;
import dev.kilnledger.thermal.kiln.KilnRun;
import dev.kilnledger.thermal.kiln.TransientKiln;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.immutables.value.Value;

/**
 * One stage of a firing computed: the kiln, the core of the charge, and the gas in the crucible.
 * Each is computed when it is first asked for, and once.
 */
@Value.Immutable
@ValueStyle
public interface StageForecast extends Serializable {
  /** {@return the firing} */
  @Value.Parameter
  FiringSetup setup();

  /** {@return the stage} */
  @Value.Parameter
  FiringStage stage();

  /** {@return what the kiln does, minute by minute; empty where its wall is not known} */
  @Value.Lazy
  default Optional<KilnRun> kiln() {
    return setup().kiln().wall().isEmpty()
        ? Optional.empty()
        : Optional.of(
            TransientKiln.withSoak(setup().soakControl())
                .run(setup().kiln(), stage().profile(), items()));
  }

  /** {@return what the kiln heats in this stage; without the metal where its mass is not known} */
  default List<ChargeItem> items() {
    return ChargeItem.chargeOf(
        stage(),
        setup().crucible(),
        setup().alloy(),
        setup().metal().orElseGet(() -> Amounts.grams(0)));
  }

  /** {@return the programme, with the time each segment really takes} */
  default Profile programme() {
    return kiln().map(KilnRun::programmeAsRun).orElseGet(() -> stage().profile());
  }

  /**
   * {@return the temperature of the kiln from the start until it may be opened, within 0.05 K; the
   * programme alone where the kiln's wall is not known}
   */
  @Value.Lazy
  default Profile course() {
    return kiln().map(Course::of).orElseGet(() -> stage().profile());
  }

  /** {@return whether {@link #course()} goes on until the kiln is cold} */
  default boolean coolingKnown() {
    return kiln().isPresent();
  }

  /** {@return the charge in the crucible, as a body that conducts} */
  @Value.Lazy
  default Charge charge() {
    return ChargeInCrucible.of(setup(), stage());
  }

  /** {@return what the charge feels of the kiln, with the conductivity expected} */
  @Value.Lazy
  default CoreHistory core() {
    return ChargeInCrucible.history(charge(), course());
  }

  /** {@return the temperature of the core, within 0.02 K} */
  @Value.Lazy
  default Profile felt() {
    return Course.of(core());
  }

  /** {@return the temperature of the core where the charge conducts as badly as it well may} */
  @Value.Lazy
  default Profile feltAtSlowest() {
    return felt(charge().slow());
  }

  /** {@return the temperature of the core where the charge conducts as well as it well may} */
  @Value.Lazy
  default Profile feltAtQuickest() {
    return felt(charge().quick());
  }

  /**
   * What the core of another charge would feel in the same kiln.
   *
   * @param other the charge
   * @return the temperature of its core, within 0.02 K
   */
  default Profile felt(Charge other) {
    return Course.of(ChargeInCrucible.history(other, course()));
  }

  /**
   * {@return the gas between grains and parts in the closed crucible; empty where packing and metal
   * leave no room}
   */
  default Optional<Amount<Volume>> voidVolume() {
    Amount<Mass> metal = setup().metal().orElseGet(() -> Amounts.grams(0));
    double grains =
        stage().packingMass().si() / stage().packing().skeletalDensity().value().si()
            + metal.si() / setup().alloy().fullDensity().value().si();
    return grains < setup().crucible().cavity().volume().si()
        ? Optional.of(CrucibleAir.voidVolume(setup().crucible(), stage(), setup().alloy(), metal))
        : Optional.empty();
  }

  /**
   * {@return the oxygen against the carbon laid in, along what the kiln does; empty where there is
   * none, or no room for gas}
   */
  @Value.Lazy
  default Optional<OxygenBudget> oxygen() {
    return stage()
        .getter()
        .flatMap(
            getter ->
                voidVolume()
                    .map(
                        gas ->
                            GetterBalance.standard()
                                .budget(
                                    course(),
                                    getter,
                                    CrucibleAir.builder()
                                        .voidVolume(gas)
                                        .oxygenInflow(setup().oxygenInflow())
                                        .build(),
                                    setup().alloy())));
  }

  /**
   * {@return whether carbon keeps each element of the alloy bright where the core is hottest: first
   * at 0.35 bar of carbon monoxide, as where the nitrogen of the air stays, then at 1 bar, as where
   * the monoxide fills the crucible; empty where no carbon is laid in}
   */
  @Value.Lazy
  default List<Protection> protection() {
    return stage().getter().isEmpty()
        ? List.of()
        : Stream.of(0.35, 1.0)
            .map(
                bar ->
                    CarbonAtmosphere.standard()
                        .keepsBright(setup().alloy(), felt().peak(), Amounts.bars(bar)))
            .toList();
  }

  /**
   * A finding on this stage, told with its name.
   *
   * @param finding the finding of a model that does not know of stages
   * @return the same, with the stage named in front of its message
   */
  default Finding tell(Finding finding) {
    return Finding.builder()
        .from(finding)
        .message(stage().name() + ": " + finding.message())
        .build();
  }
}
