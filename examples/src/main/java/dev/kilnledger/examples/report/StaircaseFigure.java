package dev.kilnledger.examples.report;

import dev.kilnledger.costing.ledger.Account;
import dev.kilnledger.costing.ledger.Entry;
import dev.kilnledger.costing.ledger.Ledger;
import dev.kilnledger.costing.ledger.Line;
import dev.kilnledger.costing.ledger.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** The cash that has been paid by each part, and for which part each item is bought. */
final class StaircaseFigure {
  /** Beyond so many parts single steps are no longer seen. */
  private static final long MOST = 300;

  private final Statement statement;
  private final long last;
  private final XYSeries cash = new XYSeries("cash paid", false, true);
  private final Map<String, List<Long>> purchases = new LinkedHashMap<>();

  private StaircaseFigure(Statement statement) {
    this.statement = statement;
    this.last = Math.min(MOST, Math.max(2, statement.parts()));
    double sum = 0;
    for (long part = 1; part <= last; part++) {
      Account account = Ledger.standard().part(statement.plan(), part, statement.parts());
      cash.add((double) part, sum, false);
      sum += account.total().getAmount().doubleValue();
      cash.add((double) part, sum, false);
      for (Line line : account.lines()) {
        if (line.entry() == Entry.BOUGHT || line.entry() == Entry.SHIPPED) {
          purchases.computeIfAbsent(line.item(), any -> new ArrayList<>()).add(part);
        }
      }
    }
    cash.add(last + 1.0, sum, false);
  }

  static Figure of(Statement statement) {
    return new StaircaseFigure(statement).figure();
  }

  private Figure figure() {
    String upTo =
        last < statement.parts()
            ? "The first " + last + " of " + statement.parts() + " parts are drawn: by part "
            : "By part ";
    long again = purchases.values().stream().mapToLong(parts -> parts.size() - 1).sum();
    String next =
        statement
            .nextPurchase()
            .map(
                due ->
                    " After part "
                        + statement.parts()
                        + " the next purchase falls due for part "
                        + due.part()
                        + ": "
                        + String.join(", ", due.items())
                        + ".")
            .orElse("");
    return new Figure(
        "purchases",
        "When money is paid",
        upTo
            + last
            + " "
            + statement.plan().currency().getCode()
            + " "
            + Words.decimals(cash.getMaxY(), 2)
            + " have been paid, of which part 1 takes "
            + statement.money(statement.firstPart().total())
            + "; something is bought again "
            + Words.count(again, "time")
            + "."
            + next
            + " The scale of money does not begin at zero.",
        "Two panels over the number of the part: the cash paid so far as a staircase, against a"
            + " straight line of what is used up; and a row for each item with a mark at each part"
            + " for which it is bought.",
        this::panels);
  }

  private List<Panel> panels(Format format) {
    XYPlot paid = paid();
    XYPlot bought = bought(format);
    NumberAxis parts = Chart.axis("number of the part");
    parts.setRange(0, last + 1.5);
    CombinedDomainXYPlot combined = new CombinedDomainXYPlot(parts);
    combined.setGap(10);
    int strip = 26 * purchases.size() + 12;
    combined.add(paid, 230);
    combined.add(bought, strip);
    return List.of(new Panel(Chart.withLegend(combined), 310 + strip));
  }

  private XYPlot paid() {
    double first = statement.firstPart().total().getAmount().doubleValue();
    double usage = statement.usage().total().getAmount().doubleValue();
    XYSeries smooth = new XYSeries("part 1 and what is used up since", false, true);
    smooth.add(1, first);
    smooth.add((double) last, first + usage * (last - 1));
    XYSeriesCollection data = new XYSeriesCollection();
    data.addSeries(cash);
    data.addSeries(smooth);
    NumberAxis money = Chart.axis("paid so far, " + statement.plan().currency().getCode());
    double top = Math.max(cash.getMaxY(), smooth.getMaxY());
    double span = Math.max(top - first, 0.05 * top + 0.01);
    money.setRange(Math.max(0, first - 0.15 * span), top + 0.1 * span);
    XYPlot plot = Chart.lines(data, money);
    Chart.line(plot, 0, Chart.BLUE, Chart.solid(2));
    Chart.line(plot, 1, Chart.INK, Chart.dashed(1.2f, 6, 4));
    return plot;
  }

  /** Each item has a row: its name, and below that a mark for each purchase. */
  private XYPlot bought(Format format) {
    XYSeries marks = new XYSeries("bought", false, true);
    XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
    renderer.setSeriesShape(0, Chart.dot(3.2));
    renderer.setSeriesPaint(0, Chart.VERMILION);
    renderer.setSeriesVisibleInLegend(0, true);
    NumberAxis rows = Chart.axis("");
    rows.setTickLabelsVisible(false);
    rows.setTickMarksVisible(false);
    rows.setRange(-purchases.size() - 0.2, 0.2);
    XYPlot plot = Chart.lines(new XYSeriesCollection(marks), rows);
    plot.setRenderer(renderer);
    plot.setRangeGridlinesVisible(false);
    int row = 0;
    for (Map.Entry<String, List<Long>> item : purchases.entrySet()) {
      double below = -row - 0.75;
      item.getValue().forEach(part -> marks.add((double) part, below, false));
      String times = ", " + Words.count(item.getValue().size(), "time");
      plot.addAnnotation(
          Chart.words(
              " " + Chart.cut(item.getKey(), format.width() - 200) + times,
              0,
              -row - 0.28,
              TextAnchor.CENTER_LEFT));
      row++;
    }
    return plot;
  }
}
