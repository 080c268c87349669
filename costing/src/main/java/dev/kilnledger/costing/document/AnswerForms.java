package dev.kilnledger.costing.document;

import static dev.kilnledger.core.document.internal.FindingForms.CAUTION;
import static dev.kilnledger.core.document.internal.FindingForms.SEVERITY;
import static dev.kilnledger.core.document.internal.Forms.ANY_AMOUNT;
import static dev.kilnledger.core.document.internal.Forms.SOURCE;
import static dev.kilnledger.core.document.internal.Forms.TEXT;
import static dev.kilnledger.core.document.internal.Forms.amount;
import static dev.kilnledger.core.document.internal.Forms.estimate;
import static dev.kilnledger.core.document.internal.Forms.span;

import dev.kilnledger.core.document.internal.Forms;
import dev.kilnledger.core.document.internal.ObjectForm;
import dev.kilnledger.core.document.internal.PartForms;
import dev.kilnledger.units.Kind;

/** The forms of an answer's figures. */
final class AnswerForms {
  static final ObjectForm<AnswerFigures> ANSWER = answerForm();

  private AnswerForms() {}

  /** A code of a later version is a code as well: it is kept as text. */
  private static ObjectForm<FindingFigures> findingForm() {
    ObjectForm<FindingFigures> form = ObjectForm.named("finding", "What a check has found.");
    var code = form.required("code", TEXT, FindingFigures::code);
    var severity = form.required("severity", SEVERITY, FindingFigures::severity);
    var subject = form.required("subject", TEXT, FindingFigures::subject);
    var message = form.required("message", TEXT, FindingFigures::message);
    var measured = form.optional("measured", ANY_AMOUNT, FindingFigures::measured);
    var limit = form.optional("limit", ANY_AMOUNT, FindingFigures::limit);
    var basis = form.required("basis", SOURCE, FindingFigures::basis);
    return form.read(
        values ->
            FindingFigures.builder()
                .code(values.get(code))
                .severity(values.get(severity))
                .subject(values.get(subject))
                .message(values.get(message))
                .measured(values.get(measured))
                .limit(values.get(limit))
                .basis(values.get(basis))
                .build());
  }

  private static ObjectForm<PassageFigures> passageForm() {
    ObjectForm<PassageFigures> form =
        ObjectForm.named("passage", "A part from green over brown to sintered.");
    var green = form.required("green", PartForms.STAGE, PassageFigures::green);
    var brown = form.required("brown", PartForms.STAGE, PassageFigures::brown);
    var sintered = form.required("sintered", PartForms.STAGE, PassageFigures::sintered);
    var metal = form.required("metal", amount(Kind.MASS), PassageFigures::metal);
    var residue = form.required("residue", amount(Kind.MASS), PassageFigures::residue);
    var shrinkage = form.required("shrinkage", PartForms.SHRINKAGE, PassageFigures::shrinkage);
    var oversize =
        form.required(
            "oversize", PartForms.perAxis(estimate(Kind.RATIO)), PassageFigures::oversize);
    var deviation =
        form.required("deviation", PartForms.perAxis(span(Kind.LENGTH)), PassageFigures::deviation);
    var mass = form.required("filamentMass", amount(Kind.MASS), PassageFigures::filamentMass);
    var length =
        form.required("filamentLength", amount(Kind.LENGTH), PassageFigures::filamentLength);
    return form.read(
        values ->
            PassageFigures.builder()
                .green(values.get(green))
                .brown(values.get(brown))
                .sintered(values.get(sintered))
                .metal(values.get(metal))
                .residue(values.get(residue))
                .shrinkage(values.get(shrinkage))
                .oversize(values.get(oversize))
                .deviation(values.get(deviation))
                .filamentMass(values.get(mass))
                .filamentLength(values.get(length))
                .build());
  }

  private static ObjectForm<AnswerFigures> answerForm() {
    ObjectForm<AnswerFigures> form =
        ObjectForm.named("answer", "What a job comes to: findings, passage, firing and costs.");
    var part = form.required("part", TEXT, AnswerFigures::part);
    var asOf = form.required("asOf", Forms.DATE, AnswerFigures::asOf);
    var worst = form.required("worst", SEVERITY, AnswerFigures::worst);
    var findings = form.list("findings", findingForm(), AnswerFigures::findings);
    var cautions = form.set("cautions", CAUTION, AnswerFigures::cautions);
    var passage = form.required("passage", passageForm(), AnswerFigures::passage);
    var firing = form.required("firing", PartForms.FIRING_USE, AnswerFigures::firing);
    var statement = form.required("statement", StatementForms.STATEMENT, AnswerFigures::statement);
    return form.read(
        values ->
            AnswerFigures.builder()
                .part(values.get(part))
                .asOf(values.get(asOf))
                .worst(values.get(worst))
                .findings(values.get(findings))
                .cautions(values.get(cautions))
                .passage(values.get(passage))
                .firing(values.get(firing))
                .statement(values.get(statement))
                .build());
  }
}
