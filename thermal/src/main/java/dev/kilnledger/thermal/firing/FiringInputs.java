package dev.kilnledger.thermal.firing;

import dev.kilnledger.core.equipment.Crucible;
import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.equipment.SupplyCircuit;
import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.core.material.Binder;
import dev.kilnledger.core.material.Feedstock;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.atmosphere.RoomAir;
import dev.kilnledger.thermal.burnout.BinderKinetics;
import dev.kilnledger.thermal.burnout.LossRateLimit;
import dev.kilnledger.thermal.conduction.PropertyCurve;
import dev.kilnledger.thermal.conduction.SurfaceContact;
import dev.kilnledger.thermal.densification.FittedSinteringCurve;
import dev.kilnledger.thermal.kiln.SoakControl;
import dev.kilnledger.thermal.kiln.Thermocouple;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.ThermalConductivity;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.immutables.value.Value;
import si.uom.quantity.MassFlowRate;

/**
 * What a firing is computed from, whoever asks: what is fired, how, and in what.
 *
 * <p>Feedstock, route, kiln and crucible are needed. All the rest is what only the user can know;
 * where it is missing, the answer that needs it is undetermined or an interval, as told with each.
 */
public interface FiringInputs extends Serializable {
  /** {@return the feedstock the part is printed from} */
  Feedstock feedstock();

  /** {@return the stages the part goes through} */
  FiringRoute route();

  /**
   * {@return the kiln, the same for all stages; where its wall is not known, it is taken to follow}
   */
  Kiln kiln();

  /** {@return the crucible, the same for all stages} */
  Crucible crucible();

  /** {@return the circuit that feeds the kiln; empty where it is not known} */
  Optional<SupplyCircuit> supplyCircuit();

  /** {@return what the controller does where the kiln is late; by the clock unless stated} */
  @Value.Default
  default SoakControl soakControl() {
    return SoakControl.BY_THE_CLOCK;
  }

  /** {@return the thermocouple of the kiln; empty where it is not known} */
  Optional<Thermocouple> thermocouple();

  /**
   * {@return the conductivity of the packing as measured, taken as certain; where empty, that of
   * loose powders in air, known within a factor of 1.5}
   */
  Optional<Sourced<PropertyCurve<ThermalConductivity>>> packingConductivity();

  /** {@return how the crucible takes up heat; without resistance unless stated} */
  @Value.Default
  default SurfaceContact contact() {
    return SurfaceContact.perfect();
  }

  /**
   * {@return how long the core has to be hot at a stretch; where empty, the shortest usual hold of
   * the alloy}
   */
  Optional<Amount<Time>> soak();

  /**
   * {@return how hot the core has to be for that; where empty, the low end of the alloy's sintering
   * window, or 5 K below the peak where the programme goes no higher}
   */
  Optional<Amount<Temperature>> soakTemperature();

  /**
   * {@return how the binder decomposes, by the user's own thermogravimetry: one kinetics, or
   * several of which one is right; where empty, those published for the binder, if there are any}
   */
  List<BinderKinetics> kinetics();

  /**
   * {@return how fast the binder may leave, as known for any wall: carried over to the thickest
   * section; where empty, a rule of thumb on the heating rate stands in}
   */
  List<LossRateLimit> lossLimits();

  /**
   * {@return the sintering curve fitted to the user's own runs; where empty, the density is an
   * interval over what is published}
   */
  Optional<FittedSinteringCurve> sinteringCurve();

  /** {@return the relative density wanted; where empty, the lowest to be expected of the alloy} */
  Optional<Amount<VolumeFraction>> targetDensity();

  /**
   * {@return the oxygen that gets in through lid and packing while the crucible is hot, with its
   * range; where empty, nothing can be said for sure of the getter}
   */
  Optional<Sourced<Span<MassFlowRate>>> oxygenInflow();

  /** {@return the room in which the kiln stands; empty where it is not known} */
  Optional<RoomAir> room();

  /** {@return the metal of the feedstock} */
  default Alloy alloy() {
    return feedstock().alloy();
  }

  /** {@return the binder of the feedstock} */
  default Binder binder() {
    return feedstock().binder();
  }
}
