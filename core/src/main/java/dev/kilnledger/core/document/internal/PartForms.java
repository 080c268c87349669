package dev.kilnledger.core.document.internal;

import static dev.kilnledger.core.document.internal.Forms.SOURCE;
import static dev.kilnledger.core.document.internal.Forms.TEXT;
import static dev.kilnledger.core.document.internal.Forms.amount;
import static dev.kilnledger.core.document.internal.Forms.estimate;
import static dev.kilnledger.core.document.internal.Forms.sourced;
import static dev.kilnledger.core.document.internal.Forms.span;

import dev.kilnledger.core.firing.FiringUse;
import dev.kilnledger.core.part.LinearShrinkage;
import dev.kilnledger.core.part.Outline;
import dev.kilnledger.core.part.Part;
import dev.kilnledger.core.part.PerAxis;
import dev.kilnledger.core.part.PrintConditions;
import dev.kilnledger.core.part.SelfWeightBeam;
import dev.kilnledger.core.part.Stage;
import dev.kilnledger.core.part.SupportFacts;
import dev.kilnledger.units.Kind;
import java.io.Serializable;

/** The forms of parts and of what is known of their printing, support and firing. */
public final class PartForms {
  /** A part. */
  public static final ObjectForm<Part> PART = partForm();

  /** What a part looks like from above. */
  public static final Form<Outline> OUTLINE = Forms.choice(Outline.class);

  /** Shrinkage along each axis. */
  public static final ObjectForm<LinearShrinkage> SHRINKAGE = shrinkageForm();

  /** How a part is printed and fired. */
  public static final ObjectForm<PrintConditions> CONDITIONS = conditionsForm();

  /** A part at one stage of its passage. */
  public static final ObjectForm<Stage> STAGE = stageForm();

  /** What one firing takes. */
  public static final ObjectForm<FiringUse> FIRING_USE = firingUseForm();

  private PartForms() {}

  /**
   * One value for each axis.
   *
   * @param <T> the value
   * @param value the form of each
   * @return the form
   */
  public static <T extends Serializable> ObjectForm<PerAxis<T>> perAxis(Form<T> value) {
    ObjectForm<PerAxis<T>> form = ObjectForm.nameless();
    var x = form.required("x", value, PerAxis::x);
    var y = form.required("y", value, PerAxis::y);
    var z = form.required("z", value, PerAxis::z);
    return form.read(values -> PerAxis.of(values.get(x), values.get(y), values.get(z)));
  }

  /**
   * How a part is held while its binder leaves.
   *
   * @param materials the forms of materials
   * @return the form
   */
  public static ObjectForm<SupportFacts> support(MaterialForms materials) {
    ObjectForm<SupportFacts> form =
        ObjectForm.named("support", "How a part is held while its binder leaves.");
    var overhang =
        form.optional("overhang", beam(SelfWeightBeam.Held.OVERHANG), SupportFacts::overhang);
    var span = form.optional("span", beam(SelfWeightBeam.Held.SPAN), SupportFacts::span);
    var complete = form.withDefault("complete", Forms.TRUTH, false, SupportFacts::complete);
    var bed =
        form.withDefault(
            "bed", Forms.choice(SupportFacts.Bed.class), SupportFacts.Bed.NONE, SupportFacts::bed);
    var powder = form.optional("powder", materials.packingPowder(), SupportFacts::powder);
    var softened =
        form.optional(
            "softenedStrength", sourced(span(Kind.PRESSURE)), SupportFacts::softenedStrength);
    var brown =
        form.optional("brownStrength", sourced(span(Kind.PRESSURE)), SupportFacts::brownStrength);
    return form.read(
        values ->
            SupportFacts.builder()
                .overhang(values.get(overhang))
                .span(values.get(span))
                .complete(values.get(complete))
                .bed(values.get(bed))
                .powder(values.get(powder))
                .softenedStrength(values.get(softened))
                .brownStrength(values.get(brown))
                .build());
  }

  private static ObjectForm<SelfWeightBeam> beam(SelfWeightBeam.Held held) {
    ObjectForm<SelfWeightBeam> form = ObjectForm.nameless();
    var length = form.required("length", amount(Kind.LENGTH), SelfWeightBeam::length);
    var thickness = form.required("thickness", amount(Kind.LENGTH), SelfWeightBeam::thickness);
    return form.read(
        values ->
            held == SelfWeightBeam.Held.OVERHANG
                ? SelfWeightBeam.overhang(values.get(length), values.get(thickness))
                : SelfWeightBeam.span(values.get(length), values.get(thickness)));
  }

  private static ObjectForm<Part> partForm() {
    ObjectForm<Part> form = ObjectForm.named("part", "The part wanted, as it is after sintering.");
    var name = form.required("name", TEXT, Part::name);
    var volume = form.optional("finishedVolume", amount(Kind.VOLUME), Part::finishedVolume);
    var mass = form.optional("finishedMass", amount(Kind.MASS), Part::finishedMass);
    var envelope = form.required("envelope", EquipmentForms.ENVELOPE, Part::envelope);
    var section = form.required("thickestSection", amount(Kind.LENGTH), Part::thickestSection);
    return form.read(
        values ->
            Part.builder()
                .name(values.get(name))
                .finishedVolume(values.get(volume))
                .finishedMass(values.get(mass))
                .envelope(values.get(envelope))
                .thickestSection(values.get(section))
                .build());
  }

  private static ObjectForm<LinearShrinkage> shrinkageForm() {
    ObjectForm<LinearShrinkage> form =
        ObjectForm.named("shrinkage", "Linear shrinkage as a share of the green length.");
    var x = form.required("x", estimate(Kind.RATIO), LinearShrinkage::x);
    var y = form.required("y", estimate(Kind.RATIO), LinearShrinkage::y);
    var z = form.required("z", estimate(Kind.RATIO), LinearShrinkage::z);
    return form.read(values -> LinearShrinkage.of(values.get(x), values.get(y), values.get(z)));
  }

  private static ObjectForm<PrintConditions> conditionsForm() {
    ObjectForm<PrintConditions> form =
        ObjectForm.named("conditions", "What printing and firing are known to do to a part.");
    var voids =
        form.defaulted("strandVoids", amount(Kind.VOLUME_FRACTION), PrintConditions::strandVoids);
    var density =
        form.optional(
            "finalRelativeDensity",
            sourced(estimate(Kind.VOLUME_FRACTION)),
            PrintConditions::finalRelativeDensity);
    var shrinkage =
        form.optional("measuredShrinkage", sourced(SHRINKAGE), PrintConditions::measuredShrinkage);
    return form.read(
        values -> {
          PrintConditions.Builder conditions =
              PrintConditions.builder()
                  .finalRelativeDensity(values.get(density))
                  .measuredShrinkage(values.get(shrinkage));
          values.get(voids).ifPresent(conditions::strandVoids);
          return conditions.build();
        });
  }

  private static ObjectForm<Stage> stageForm() {
    ObjectForm<Stage> form = ObjectForm.named("stage", "A part as green, brown or sintered.");
    var mass = form.required("mass", amount(Kind.MASS), Stage::mass);
    var volume = form.required("volume", amount(Kind.VOLUME), Stage::volume);
    var envelope = form.required("envelope", EquipmentForms.ENVELOPE, Stage::envelope);
    var porosity = form.required("porosity", amount(Kind.VOLUME_FRACTION), Stage::porosity);
    return form.read(
        values ->
            Stage.builder()
                .mass(values.get(mass))
                .volume(values.get(volume))
                .envelope(values.get(envelope))
                .porosity(values.get(porosity))
                .build());
  }

  private static ObjectForm<FiringUse> firingUseForm() {
    ObjectForm<FiringUse> form = ObjectForm.named("firingUse", "What one firing takes.");
    var duration = form.required("duration", amount(Kind.TIME), FiringUse::duration);
    var energy = form.required("energy", amount(Kind.ENERGY), FiringUse::energy);
    var getter = form.required("getter", amount(Kind.MASS), FiringUse::getter);
    var parts = form.required("partsPerCharge", Forms.COUNT, FiringUse::partsPerCharge);
    var source = form.required("source", SOURCE, FiringUse::source);
    return form.read(
        values ->
            FiringUse.builder()
                .duration(values.get(duration))
                .energy(values.get(energy))
                .getter(values.get(getter))
                .partsPerCharge(values.get(parts))
                .source(values.get(source))
                .build());
  }
}
