package dev.kilnledger.examples.report;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.costing.job.JobAnswer;
import java.util.List;
import java.util.Locale;
import org.jsoup.nodes.Element;

/** All findings, the worst first; those that passed are folded away. */
final class FindingsSection {
  private static final List<Severity> WORST_FIRST =
      List.of(Severity.STOP, Severity.WARNING, Severity.UNDETERMINED, Severity.NOTE);

  private FindingsSection() {}

  static String name(Severity severity) {
    return severity.name().toLowerCase(Locale.ROOT);
  }

  /** What the worst finding comes to. */
  static String verdict(Severity worst) {
    return switch (worst) {
      case STOP -> "Will not come out as planned:";
      case WARNING -> "May not come out:";
      case UNDETERMINED -> "Nothing speaks against it, but not all is known:";
      case NOTE, PASSED -> "Nothing speaks against it:";
    };
  }

  static void write(Element section, JobAnswer answer) {
    for (Severity severity : WORST_FIRST) {
      List<Finding> findings = of(answer, severity);
      if (!findings.isEmpty()) {
        section.appendElement("h3").text(meaning(severity) + " (" + findings.size() + ")");
        list(section, findings);
      }
    }
    List<Finding> passed = of(answer, Severity.PASSED);
    if (!passed.isEmpty()) {
      Element details = section.appendElement("details");
      details.appendElement("summary").text("Passed (" + passed.size() + ")");
      list(details, passed);
    }
  }

  private static List<Finding> of(JobAnswer answer, Severity severity) {
    return answer.findings().stream().filter(each -> each.severity() == severity).toList();
  }

  private static String meaning(Severity severity) {
    return switch (severity) {
      case STOP -> "Stop: will spoil the part or cannot be done";
      case WARNING -> "Warning: may spoil the part or the equipment";
      case UNDETERMINED -> "Undetermined: could not be checked";
      case NOTE -> "Note: worth knowing";
      case PASSED -> "Passed";
    };
  }

  private static void list(Element parent, List<Finding> findings) {
    Element list = parent.appendElement("ul").addClass("findings");
    for (Finding finding : findings) {
      Element item = list.appendElement("li").addClass(name(finding.severity()));
      item.appendElement("strong").text(name(finding.severity()));
      String about = finding.message().contains(finding.subject()) ? "" : finding.subject() + ": ";
      item.appendText(" " + Words.kept(about + finding.message()) + " ");
      item.appendElement("small").text(finding.code().code() + "; " + finding.basis().cite());
    }
  }
}
