package dev.kilnledger.thermal.document.internal;

import static dev.kilnledger.core.document.internal.Forms.amount;

import dev.kilnledger.core.document.internal.MaterialForms;
import dev.kilnledger.core.document.internal.ObjectForm;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.units.Kind;

/** The forms of firings. */
public final class FiringForms {
  private FiringForms() {}

  /**
   * All that decides whether a firing can come out.
   *
   * @param materials the forms of materials
   * @return the form
   */
  public static ObjectForm<FiringSetup> setup(MaterialForms materials) {
    ObjectForm<FiringSetup> form =
        ObjectForm.named("firing", "A firing: its inputs, and the parts of one charge.");
    var section =
        form.required("thickestSection", amount(Kind.LENGTH), FiringSetup::thickestSection);
    var volume = form.optional("partsVolume", amount(Kind.VOLUME), FiringSetup::partsVolume);
    var mass = form.optional("greenMass", amount(Kind.MASS), FiringSetup::greenMass);
    FiringInputFields inputs = new FiringInputFields(form, materials);
    return form.read(
        values ->
            FiringSetup.builder()
                .from(inputs.inputs(values))
                .thickestSection(values.get(section))
                .partsVolume(values.get(volume))
                .greenMass(values.get(mass))
                .build());
  }
}
