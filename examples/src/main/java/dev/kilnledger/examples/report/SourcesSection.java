package dev.kilnledger.examples.report;

import dev.kilnledger.core.explanation.Explanation;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.source.Standing;
import dev.kilnledger.costing.job.JobAnswer;
import dev.kilnledger.costing.job.JobExplainer;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jsoup.nodes.Element;

/**
 * Everything that costs, passage and energy rest on, by how it was come by; what nobody looked up
 * comes first, and open. What a finding stands on is told with the finding.
 */
final class SourcesSection {
  private record Ground(String what, String value, String source) {}

  private SourcesSection() {}

  static void write(Element section, JobAnswer answer) {
    Map<Standing, Map<Ground, String>> grounds = new TreeMap<>();
    for (Explanation figure : JobExplainer.standard().figures(answer)) {
      if (!(figure.value() instanceof Severity)) {
        collect(grounds, figure, "");
      }
    }
    List<Standing> weakestFirst =
        List.of(
            Standing.FROM_MEMORY,
            Standing.COMMON_PRACTICE,
            Standing.USER,
            Standing.RECOMPUTED,
            Standing.QUOTED,
            Standing.PUBLISHED);
    for (Standing standing : weakestFirst) {
      Map<Ground, String> known = grounds.getOrDefault(standing, Map.of());
      if (!known.isEmpty()) {
        group(section, standing, known);
      }
    }
  }

  /** Whatever has a source, named with what it stands under, as "content" alone says little. */
  private static void collect(
      Map<Standing, Map<Ground, String>> grounds, Explanation node, String above) {
    String name = above.isEmpty() ? node.what() : above + " › " + node.what();
    node.source()
        .ifPresent(
            source -> {
              String condition = node.condition().isEmpty() ? "" : ", " + node.condition();
              grounds
                  .computeIfAbsent(source.standing(), any -> new LinkedHashMap<>())
                  .putIfAbsent(
                      new Ground(
                          node.what(),
                          node.formula().orElse(node.shown()) + condition,
                          source.text()),
                      name);
            });
    String near = above.substring(above.lastIndexOf('›') + 1).strip();
    String next = near.isEmpty() ? node.what() : near + " › " + node.what();
    node.children().forEach(child -> collect(grounds, child, next));
  }

  private static void group(Element section, Standing standing, Map<Ground, String> known) {
    boolean weak = standing == Standing.FROM_MEMORY;
    Element details = section.appendElement("details");
    if (weak) {
      details.attr("open", "open");
    }
    String heading = standing.words() + " (" + known.size() + ")";
    details
        .appendElement("summary")
        .text(weak ? heading + ": look up before it decides anything" : heading);
    Table table = new Table(details, heading, "figure", "value or formula", "source");
    known.forEach((ground, name) -> table.row(name, ground.value(), ground.source()));
  }
}
