package dev.kilnledger.core.document.internal;

import static dev.kilnledger.core.document.internal.Forms.TEXT;

import dev.kilnledger.core.reading.InputProblem;
import java.util.List;

/** The forms of what is wrong with an input. */
public final class ProblemForms {
  /** A list of problems. */
  public static final ObjectForm<List<InputProblem>> PROBLEMS = problemsForm();

  private ProblemForms() {}

  private static ObjectForm<List<InputProblem>> problemsForm() {
    ObjectForm<InputProblem> form = ObjectForm.named("problem", "One thing wrong with an input.");
    var where = form.required("where", TEXT, InputProblem::where);
    var path = form.withDefault("path", TEXT, "", InputProblem::path);
    var what = form.required("what", TEXT, InputProblem::what);
    var accepted = form.required("accepted", TEXT, InputProblem::accepted);
    form.read(
        values ->
            InputProblem.of(
                values.get(where), values.get(path), values.get(what), values.get(accepted)));
    ObjectForm<List<InputProblem>> list =
        ObjectForm.named("problems", "Everything that is wrong with an input.");
    var problems = list.required("problems", Forms.list(form), all -> all);
    return list.read(values -> values.get(problems));
  }
}
