package dev.kilnledger.core.document.internal;

import static dev.kilnledger.core.document.internal.Forms.TEXT;
import static dev.kilnledger.core.document.internal.Forms.amount;

import dev.kilnledger.core.part.Part;
import dev.kilnledger.units.Kind;

/** The forms of parts. */
public final class PartForms {
  /** A part. */
  public static final ObjectForm<Part> PART = partForm();

  private PartForms() {}

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
}
