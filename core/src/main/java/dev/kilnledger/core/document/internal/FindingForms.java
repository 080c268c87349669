package dev.kilnledger.core.document.internal;

import static dev.kilnledger.core.document.internal.Forms.ANY_AMOUNT;
import static dev.kilnledger.core.document.internal.Forms.SOURCE;
import static dev.kilnledger.core.document.internal.Forms.TEXT;

import dev.kilnledger.core.finding.Caution;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.FindingCode;
import dev.kilnledger.core.finding.Severity;
import java.util.LinkedHashMap;
import java.util.Map;

/** The forms of findings and cautions. */
public final class FindingForms {
  /** How much a finding matters. */
  public static final Form<Severity> SEVERITY = Forms.choice(Severity.class);

  /** A hazard. */
  public static final Form<Caution> CAUTION = Forms.choice(Caution.class);

  private FindingForms() {}

  /**
   * A finding of one family of checks.
   *
   * @param codes the codes of the family
   * @return the form
   */
  public static ObjectForm<Finding> finding(FindingCode... codes) {
    Map<String, FindingCode> words = new LinkedHashMap<>();
    for (FindingCode code : codes) {
      words.put(code.code(), code);
    }
    ObjectForm<Finding> form = ObjectForm.named("finding", "What a check has found.");
    var code = form.required("code", Forms.choice(words), Finding::code);
    var severity = form.required("severity", SEVERITY, Finding::severity);
    var subject = form.required("subject", TEXT, Finding::subject);
    var message = form.required("message", TEXT, Finding::message);
    var measured = form.optional("measured", ANY_AMOUNT, Finding::measured);
    var limit = form.optional("limit", ANY_AMOUNT, Finding::limit);
    var basis = form.required("basis", SOURCE, Finding::basis);
    return form.read(
        values ->
            Finding.builder()
                .code(values.get(code))
                .severity(values.get(severity))
                .subject(values.get(subject))
                .message(values.get(message))
                .measured(values.get(measured))
                .limit(values.get(limit))
                .basis(values.get(basis))
                .build());
  }
}
