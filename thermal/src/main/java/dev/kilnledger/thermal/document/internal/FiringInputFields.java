package dev.kilnledger.thermal.document.internal;

import static dev.kilnledger.core.document.internal.Forms.amount;
import static dev.kilnledger.core.document.internal.Forms.sourced;
import static dev.kilnledger.core.document.internal.Forms.span;

import dev.kilnledger.core.document.internal.EquipmentForms;
import dev.kilnledger.core.document.internal.Field;
import dev.kilnledger.core.document.internal.FieldValues;
import dev.kilnledger.core.document.internal.Form;
import dev.kilnledger.core.document.internal.Forms;
import dev.kilnledger.core.document.internal.MaterialForms;
import dev.kilnledger.core.document.internal.ObjectForm;
import dev.kilnledger.core.equipment.Crucible;
import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.equipment.SupplyCircuit;
import dev.kilnledger.core.material.Feedstock;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.atmosphere.RoomAir;
import dev.kilnledger.thermal.burnout.BinderKinetics;
import dev.kilnledger.thermal.burnout.LossRateLimit;
import dev.kilnledger.thermal.conduction.PropertyCurve;
import dev.kilnledger.thermal.conduction.SurfaceContact;
import dev.kilnledger.thermal.densification.FittedSinteringCurve;
import dev.kilnledger.thermal.firing.FiringInputs;
import dev.kilnledger.thermal.kiln.SoakControl;
import dev.kilnledger.thermal.kiln.Thermocouple;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Kind;
import dev.kilnledger.units.quantity.ThermalConductivity;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import si.uom.quantity.MassFlowRate;

/** The fields that every object with the inputs of a firing has, in one order. */
public final class FiringInputFields {
  private final Field<Feedstock> feedstock;
  private final Field<FiringRoute> route;
  private final Field<Kiln> kiln;
  private final Field<Crucible> crucible;
  private final Field<Optional<SupplyCircuit>> supplyCircuit;
  private final Field<SoakControl> soakControl;
  private final Field<Optional<Thermocouple>> thermocouple;
  private final Field<Optional<Sourced<PropertyCurve<ThermalConductivity>>>> packingConductivity;
  private final Field<Optional<SurfaceContact>> contact;
  private final Field<Optional<Amount<Time>>> soak;
  private final Field<Optional<Amount<Temperature>>> soakTemperature;
  private final Field<List<BinderKinetics>> kinetics;
  private final Field<List<LossRateLimit>> lossLimits;
  private final Field<Optional<FittedSinteringCurve>> sinteringCurve;
  private final Field<Optional<Amount<VolumeFraction>>> targetDensity;
  private final Field<Optional<Sourced<Span<MassFlowRate>>>> oxygenInflow;
  private final Field<Optional<RoomAir>> room;

  /**
   * Declares the fields.
   *
   * @param form the form of the object, which may have further fields before and after
   * @param materials the forms of materials
   */
  public FiringInputFields(ObjectForm<? extends FiringInputs> form, MaterialForms materials) {
    this(materials, form);
  }

  private <T extends FiringInputs> FiringInputFields(MaterialForms materials, ObjectForm<T> form) {
    feedstock = form.required("feedstock", materials.feedstock(), FiringInputs::feedstock);
    route = form.required("route", new ProfileForms(materials).route(), FiringInputs::route);
    kiln = form.required("kiln", EquipmentForms.KILN, FiringInputs::kiln);
    crucible =
        form.required("crucible", new EquipmentForms(materials).crucible(), FiringInputs::crucible);
    supplyCircuit =
        form.optional("supplyCircuit", EquipmentForms.SUPPLY_CIRCUIT, FiringInputs::supplyCircuit);
    soakControl =
        form.withDefault(
            "soakControl",
            Forms.choice(SoakControl.class),
            SoakControl.BY_THE_CLOCK,
            FiringInputs::soakControl);
    thermocouple =
        form.optional(
            "thermocouple",
            Forms.choice(Thermocouple.class, Thermocouple::name),
            FiringInputs::thermocouple);
    packingConductivity =
        form.optional(
            "packingConductivity",
            sourced(curve(Kind.THERMAL_CONDUCTIVITY)),
            FiringInputs::packingConductivity);
    contact =
        form.optional(
            "contact",
            contactForm(),
            inputs -> Optional.of(inputs.contact()).filter(surface -> !surface.isPerfect()));
    soak = form.optional("soak", amount(Kind.TIME), FiringInputs::soak);
    soakTemperature =
        form.optional("soakTemperature", amount(Kind.TEMPERATURE), FiringInputs::soakTemperature);
    kinetics = form.list("kinetics", KineticsForms.KINETICS, FiringInputs::kinetics);
    lossLimits = form.list("lossLimits", KineticsForms.LOSS_LIMIT, FiringInputs::lossLimits);
    sinteringCurve =
        form.optional("sinteringCurve", SinteringForms.FITTED, FiringInputs::sinteringCurve);
    targetDensity =
        form.optional("targetDensity", amount(Kind.VOLUME_FRACTION), FiringInputs::targetDensity);
    oxygenInflow =
        form.optional("oxygenInflow", sourced(span(Kind.MASS_FLOW)), FiringInputs::oxygenInflow);
    room = form.optional("room", roomForm(), FiringInputs::room);
  }

  /**
   * What was read for the fields.
   *
   * @param values the values of the object
   * @return the inputs, to build the object from
   */
  public FiringInputs inputs(FieldValues values) {
    ReadInputs.Builder inputs =
        ReadInputs.builder()
            .feedstock(values.get(feedstock))
            .route(values.get(route))
            .kiln(values.get(kiln))
            .crucible(values.get(crucible))
            .supplyCircuit(values.get(supplyCircuit))
            .soakControl(values.get(soakControl))
            .thermocouple(values.get(thermocouple))
            .packingConductivity(values.get(packingConductivity))
            .soak(values.get(soak))
            .soakTemperature(values.get(soakTemperature))
            .kinetics(values.get(kinetics))
            .lossLimits(values.get(lossLimits))
            .sinteringCurve(values.get(sinteringCurve))
            .targetDensity(values.get(targetDensity))
            .oxygenInflow(values.get(oxygenInflow))
            .room(values.get(room));
    values.get(contact).ifPresent(inputs::contact);
    return inputs.build();
  }

  /** A point of a property curve. */
  private record Point<Q extends Quantity<Q>>(Amount<Temperature> temperature, Amount<Q> value) {}

  private static <Q extends Quantity<Q>> Form<PropertyCurve<Q>> curve(Kind<Q> kind) {
    ObjectForm<Point<Q>> point = ObjectForm.nameless();
    var temperature = point.required("temperature", amount(Kind.TEMPERATURE), Point::temperature);
    var value = point.required("value", amount(kind), Point::value);
    point.read(values -> new Point<>(values.get(temperature), values.get(value)));
    return Forms.list(point).as(FiringInputFields::joined, FiringInputFields::points);
  }

  private static <Q extends Quantity<Q>> PropertyCurve<Q> joined(List<Point<Q>> points) {
    return PropertyCurve.<Q>builder()
        .temperatures(points.stream().map(Point::temperature).toList())
        .values(points.stream().map(Point::value).toList())
        .build();
  }

  private static <Q extends Quantity<Q>> List<Point<Q>> points(PropertyCurve<Q> curve) {
    return IntStream.range(0, curve.values().size())
        .mapToObj(i -> new Point<>(curve.temperatures().get(i), curve.values().get(i)))
        .toList();
  }

  /** Contact without resistance is what stands where the field is left out. */
  private static ObjectForm<SurfaceContact> contactForm() {
    ObjectForm<SurfaceContact> form =
        ObjectForm.named("contact", "How a surface takes up heat from what surrounds it.");
    var convection =
        form.required(
            "convection",
            amount(Kind.HEAT_TRANSFER_COEFFICIENT),
            surface -> surface.convection().orElseThrow());
    var emissivity = form.required("emissivity", amount(Kind.RATIO), SurfaceContact::emissivity);
    return form.read(values -> SurfaceContact.of(values.get(convection), values.get(emissivity)));
  }

  private static ObjectForm<RoomAir> roomForm() {
    ObjectForm<RoomAir> form = ObjectForm.named("room", "A room and the clean air it gets.");
    var volume = form.required("volume", amount(Kind.VOLUME), RoomAir::volume);
    var supply = form.required("supply", amount(Kind.VOLUME_FLOW), RoomAir::supply);
    return form.read(values -> RoomAir.of(values.get(volume), values.get(supply)));
  }
}
