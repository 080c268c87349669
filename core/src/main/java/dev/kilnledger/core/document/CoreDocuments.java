package dev.kilnledger.core.document;

import dev.kilnledger.core.document.internal.DocumentForm;
import dev.kilnledger.core.document.internal.EquipmentForms;
import dev.kilnledger.core.document.internal.MaterialForms;
import dev.kilnledger.core.document.internal.ProblemForms;
import dev.kilnledger.core.equipment.EquipmentList;
import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.core.reading.InputProblem;
import java.util.List;

/**
 * The documents of materials and equipment, and of what is wrong with a document.
 *
 * <p>A material that is known may stand by its name instead of in full, and is written by its name
 * where it is equal to the one known.
 */
public final class CoreDocuments {
  private CoreDocuments() {}

  /**
   * A library of materials, kind {@code "materials"}.
   *
   * @param known the materials that may stand by their name, such as {@link
   *     MaterialLibrary#standard()}, or {@link MaterialLibrary#empty()} so that all stand in full
   * @return the document
   */
  public static Document<MaterialLibrary> materials(MaterialLibrary known) {
    return new DocumentForm<>("materials", 1, new MaterialForms(known).library());
  }

  /**
   * A list of equipment, kind {@code "equipment"}.
   *
   * @param known the materials that may stand by their name
   * @return the document
   */
  public static Document<EquipmentList> equipment(MaterialLibrary known) {
    return new DocumentForm<>("equipment", 1, new EquipmentForms(new MaterialForms(known)).list());
  }

  /** {@return what is wrong with an input, kind {@code "problems"}} */
  public static Document<List<InputProblem>> problems() {
    return new DocumentForm<>("problems", 1, ProblemForms.PROBLEMS);
  }
}
