package dev.kilnledger.core.document.internal;

import static dev.kilnledger.core.document.internal.Forms.COUNT;
import static dev.kilnledger.core.document.internal.Forms.SOURCE;
import static dev.kilnledger.core.document.internal.Forms.TEXT;
import static dev.kilnledger.core.document.internal.Forms.amount;
import static dev.kilnledger.core.document.internal.Forms.sourced;

import dev.kilnledger.core.equipment.BoxCavity;
import dev.kilnledger.core.equipment.Cavity;
import dev.kilnledger.core.equipment.Crucible;
import dev.kilnledger.core.equipment.EquipmentList;
import dev.kilnledger.core.equipment.FilamentPreheater;
import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.equipment.Nozzle;
import dev.kilnledger.core.equipment.PartingLayer;
import dev.kilnledger.core.equipment.Printer;
import dev.kilnledger.core.equipment.RoundCavity;
import dev.kilnledger.core.equipment.Spacing;
import dev.kilnledger.core.equipment.SupplyCircuit;
import dev.kilnledger.core.equipment.WallLayer;
import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.units.Kind;
import java.util.Optional;
import java.util.OptionalInt;

/** The forms of equipment. */
public final class EquipmentForms {
  /** A box. */
  public static final ObjectForm<Envelope> ENVELOPE = envelopeForm();

  /** A kiln. */
  public static final ObjectForm<Kiln> KILN = kilnForm();

  /** The packing to keep around parts. */
  public static final ObjectForm<Spacing> SPACING = spacingForm();

  /** A circuit that feeds a kiln. */
  public static final ObjectForm<SupplyCircuit> SUPPLY_CIRCUIT = circuitForm();

  private final ObjectForm<Crucible> crucible;
  private final ObjectForm<Printer> printer;
  private final ObjectForm<EquipmentList> list;

  /**
   * The forms.
   *
   * @param materials the forms of what equipment is made of
   */
  public EquipmentForms(MaterialForms materials) {
    crucible = crucibleForm(materials);
    printer = printerForm(materials);
    list = listForm();
  }

  /** {@return the form of a crucible} */
  public ObjectForm<Crucible> crucible() {
    return crucible;
  }

  /** {@return the form of a printer} */
  public ObjectForm<Printer> printer() {
    return printer;
  }

  /** {@return the form of a list of equipment} */
  public ObjectForm<EquipmentList> list() {
    return list;
  }

  private static ObjectForm<Envelope> envelopeForm() {
    ObjectForm<Envelope> form = ObjectForm.named("envelope", "A box along the printer's axes.");
    var x = form.required("x", amount(Kind.LENGTH), Envelope::x);
    var y = form.required("y", amount(Kind.LENGTH), Envelope::y);
    var z = form.required("z", amount(Kind.LENGTH), Envelope::z);
    return form.read(values -> Envelope.of(values.get(x), values.get(y), values.get(z)));
  }

  private static ObjectForm<Spacing> spacingForm() {
    ObjectForm<Spacing> form =
        ObjectForm.named("spacing", "How much packing there must be at least around parts.");
    var wall = form.required("wall", amount(Kind.LENGTH), Spacing::wall);
    var parts = form.required("betweenParts", amount(Kind.LENGTH), Spacing::betweenParts);
    var floor = form.required("floor", amount(Kind.LENGTH), Spacing::floor);
    var layers = form.required("betweenLayers", amount(Kind.LENGTH), Spacing::betweenLayers);
    var cover = form.required("cover", amount(Kind.LENGTH), Spacing::cover);
    var headroom = form.defaulted("headroom", amount(Kind.LENGTH), Spacing::headroom);
    return form.read(
        values -> {
          Spacing.Builder spacing =
              Spacing.builder()
                  .wall(values.get(wall))
                  .betweenParts(values.get(parts))
                  .floor(values.get(floor))
                  .betweenLayers(values.get(layers))
                  .cover(values.get(cover));
          values.get(headroom).ifPresent(spacing::headroom);
          return spacing.build();
        });
  }

  private static ObjectForm<WallLayer> wallLayerForm() {
    ObjectForm<WallLayer> form = ObjectForm.named("wallLayer", "One layer of a kiln's wall.");
    var material = form.required("material", TEXT, WallLayer::material);
    var thickness = form.required("thickness", amount(Kind.LENGTH), WallLayer::thickness);
    var conductivity =
        form.required("conductivity", amount(Kind.THERMAL_CONDUCTIVITY), WallLayer::conductivity);
    var statedAt =
        form.optional(
            "conductivityStatedAt", amount(Kind.TEMPERATURE), WallLayer::conductivityStatedAt);
    var slope =
        form.defaulted(
            "conductivitySlope", amount(Kind.CONDUCTIVITY_SLOPE), WallLayer::conductivitySlope);
    var density = form.required("density", amount(Kind.DENSITY), WallLayer::density);
    var heat =
        form.required("heatCapacity", amount(Kind.SPECIFIC_HEAT_CAPACITY), WallLayer::heatCapacity);
    return form.read(
        values -> {
          WallLayer.Builder layer =
              WallLayer.builder()
                  .material(values.get(material))
                  .thickness(values.get(thickness))
                  .conductivity(values.get(conductivity))
                  .conductivityStatedAt(values.get(statedAt))
                  .density(values.get(density))
                  .heatCapacity(values.get(heat));
          values.get(slope).ifPresent(layer::conductivitySlope);
          return layer.build();
        });
  }

  private static ObjectForm<Kiln> kilnForm() {
    ObjectForm<Kiln> form = ObjectForm.named("kiln", "An electric kiln.");
    var name = form.required("name", TEXT, Kiln::name);
    var peak = form.required("peakTemperature", amount(Kind.TEMPERATURE), Kiln::peakTemperature);
    var hold = form.optional("longestHoldAtPeak", amount(Kind.TIME), Kiln::longestHoldAtPeak);
    var chamber = form.required("chamber", ENVELOPE, Kiln::chamber);
    var power = form.required("power", amount(Kind.POWER), Kiln::power);
    var voltage = form.required("voltage", amount(Kind.ELECTRIC_POTENTIAL), Kiln::voltage);
    var phases = form.required("phases", COUNT, Kiln::phases);
    var segments =
        form.optional(
            "programmeSegments",
            COUNT,
            kiln ->
                kiln.programmeSegments().isPresent()
                    ? Optional.of(kiln.programmeSegments().getAsInt())
                    : Optional.empty());
    var heating = form.optional("fastestHeating", amount(Kind.HEATING_RATE), Kiln::fastestHeating);
    var wall = form.list("wall", wallLayerForm(), Kiln::wall);
    var film =
        form.defaulted("outsideFilm", amount(Kind.HEAT_TRANSFER_COEFFICIENT), Kiln::outsideFilm);
    var source = form.optional("source", SOURCE, Kiln::source);
    return form.read(
        values -> {
          Kiln.Builder kiln =
              Kiln.builder()
                  .name(values.get(name))
                  .peakTemperature(values.get(peak))
                  .longestHoldAtPeak(values.get(hold))
                  .chamber(values.get(chamber))
                  .power(values.get(power))
                  .voltage(values.get(voltage))
                  .phases(values.get(phases))
                  .programmeSegments(
                      values.get(segments).map(OptionalInt::of).orElseGet(OptionalInt::empty))
                  .fastestHeating(values.get(heating))
                  .wall(values.get(wall))
                  .source(values.get(source));
          values.get(film).ifPresent(kiln::outsideFilm);
          return kiln.build();
        });
  }

  private static ObjectForm<SupplyCircuit> circuitForm() {
    ObjectForm<SupplyCircuit> form =
        ObjectForm.named("supplyCircuit", "The circuit that feeds a kiln.");
    var name = form.required("name", TEXT, SupplyCircuit::name);
    var voltage = form.required("voltage", amount(Kind.ELECTRIC_POTENTIAL), SupplyCircuit::voltage);
    var phases = form.required("phases", COUNT, SupplyCircuit::phases);
    var breaker =
        form.required("breakerRating", amount(Kind.ELECTRIC_CURRENT), SupplyCircuit::breakerRating);
    var share =
        form.defaulted("continuousShare", amount(Kind.RATIO), SupplyCircuit::continuousShare);
    return form.read(
        values -> {
          SupplyCircuit.Builder circuit =
              SupplyCircuit.builder()
                  .name(values.get(name))
                  .voltage(values.get(voltage))
                  .phases(values.get(phases))
                  .breakerRating(values.get(breaker));
          values.get(share).ifPresent(circuit::continuousShare);
          return circuit.build();
        });
  }

  private static Form<Cavity> cavityForm() {
    ObjectForm<RoundCavity> round = ObjectForm.nameless();
    var diameter = round.required("diameter", amount(Kind.LENGTH), RoundCavity::diameter);
    var roundHeight = round.required("height", amount(Kind.LENGTH), RoundCavity::height);
    round.read(values -> RoundCavity.of(values.get(diameter), values.get(roundHeight)));
    ObjectForm<BoxCavity> box = ObjectForm.nameless();
    var length = box.required("length", amount(Kind.LENGTH), BoxCavity::length);
    var width = box.required("width", amount(Kind.LENGTH), BoxCavity::width);
    var height = box.required("height", amount(Kind.LENGTH), BoxCavity::height);
    box.read(values -> BoxCavity.of(values.get(length), values.get(width), values.get(height)));
    return ChoiceForm.<Cavity>named("cavity")
        .with("round", RoundCavity.class, round)
        .with("box", BoxCavity.class, box);
  }

  private static ObjectForm<Crucible> crucibleForm(MaterialForms materials) {
    ObjectForm<Crucible> form =
        ObjectForm.named("crucible", "The vessel that holds the packing and the parts.");
    var name = form.required("name", TEXT, Crucible::name);
    var material = form.required("material", materials.crucibleMaterial(), Crucible::material);
    var cavity = form.required("cavity", cavityForm(), Crucible::cavity);
    var outside = form.optional("outside", ENVELOPE, Crucible::outside);
    var mass = form.required("mass", amount(Kind.MASS), Crucible::mass);
    var heat =
        form.required(
            "heatCapacity", sourced(amount(Kind.SPECIFIC_HEAT_CAPACITY)), Crucible::heatCapacity);
    return form.read(
        values ->
            Crucible.builder()
                .name(values.get(name))
                .material(values.get(material))
                .cavity(values.get(cavity))
                .outside(values.get(outside))
                .mass(values.get(mass))
                .heatCapacity(values.get(heat))
                .build());
  }

  private static ObjectForm<Nozzle> nozzleForm(MaterialForms materials) {
    ObjectForm<Nozzle> form = ObjectForm.named("nozzle", "The nozzle of a printer.");
    var material = form.required("material", materials.nozzleMaterial(), Nozzle::material);
    var bore = form.required("bore", amount(Kind.LENGTH), Nozzle::bore);
    return form.read(values -> Nozzle.of(values.get(material), values.get(bore)));
  }

  private static ObjectForm<FilamentPreheater> preheaterForm() {
    ObjectForm<FilamentPreheater> form =
        ObjectForm.named("filamentPreheater", "What warms the filament before the extruder.");
    var name = form.required("name", TEXT, FilamentPreheater::name);
    var temperature =
        form.required("temperature", amount(Kind.TEMPERATURE), FilamentPreheater::temperature);
    var power = form.required("power", amount(Kind.POWER), FilamentPreheater::power);
    return form.read(
        values ->
            FilamentPreheater.of(values.get(name), values.get(temperature), values.get(power)));
  }

  private static ObjectForm<PartingLayer> partingForm() {
    ObjectForm<PartingLayer> form =
        ObjectForm.named("partingLayer", "What keeps a part from sintering to its support.");
    var material = form.required("material", TEXT, PartingLayer::material);
    var limit =
        form.required(
            "temperatureLimit", sourced(amount(Kind.TEMPERATURE)), PartingLayer::temperatureLimit);
    return form.read(values -> PartingLayer.of(values.get(material), values.get(limit)));
  }

  private static ObjectForm<Printer> printerForm(MaterialForms materials) {
    ObjectForm<Printer> form = ObjectForm.named("printer", "A printer of filament.");
    var name = form.required("name", TEXT, Printer::name);
    var volume = form.required("buildVolume", ENVELOPE, Printer::buildVolume);
    var diameter =
        form.required("filamentDiameter", amount(Kind.LENGTH), Printer::filamentDiameter);
    var nozzle = form.required("nozzle", nozzleForm(materials), Printer::nozzle);
    var preheater = form.optional("preheater", preheaterForm(), Printer::preheater);
    var parting = form.optional("partingLayer", partingForm(), Printer::partingLayer);
    return form.read(
        values ->
            Printer.builder()
                .name(values.get(name))
                .buildVolume(values.get(volume))
                .filamentDiameter(values.get(diameter))
                .nozzle(values.get(nozzle))
                .preheater(values.get(preheater))
                .partingLayer(values.get(parting))
                .build());
  }

  private ObjectForm<EquipmentList> listForm() {
    ObjectForm<EquipmentList> form = ObjectForm.named("equipment", "Equipment to choose from.");
    var printers = form.list("printers", printer, EquipmentList::printers);
    var kilns = form.list("kilns", KILN, EquipmentList::kilns);
    var crucibles = form.list("crucibles", crucible, EquipmentList::crucibles);
    var circuits = form.list("supplyCircuits", SUPPLY_CIRCUIT, EquipmentList::supplyCircuits);
    return form.read(
        values ->
            EquipmentList.builder()
                .printers(values.get(printers))
                .kilns(values.get(kilns))
                .crucibles(values.get(crucibles))
                .supplyCircuits(values.get(circuits))
                .build());
  }
}
