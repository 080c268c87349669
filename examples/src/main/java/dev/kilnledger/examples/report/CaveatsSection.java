package dev.kilnledger.examples.report;

import dev.kilnledger.costing.job.JobAnswer;
import org.jsoup.nodes.Element;

/** What the figures leave out, and where the work can hurt someone. */
final class CaveatsSection {
  private CaveatsSection() {}

  static void write(Page page, JobAnswer answer) {
    Element caveats =
        page.section("caveats", "Not in these figures, or assumed").appendElement("ul");
    answer.statement().caveats().forEach(caveat -> caveats.appendElement("li").text(caveat.text()));
    Element section = page.section("cautions", "Cautions");
    section
        .appendElement("p")
        .appendElement("strong")
        .text("Local codes, safety data sheets and licensed practice decide.");
    Element cautions = section.appendElement("ul").addClass("cautions");
    answer
        .cautions()
        .forEach(
            caution -> {
              Element item = cautions.appendElement("li").text(caution.text() + " ");
              item.appendElement("small").text(caution.source().cite());
            });
  }
}
