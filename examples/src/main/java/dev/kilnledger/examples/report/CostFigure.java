package dev.kilnledger.examples.report;

import dev.kilnledger.costing.ledger.Account;
import dev.kilnledger.costing.ledger.Line;
import dev.kilnledger.costing.ledger.Statement;
import dev.kilnledger.costing.ledger.Surcharge;
import java.awt.geom.Rectangle2D;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jfree.chart.annotations.CategoryTextAnnotation;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.CategoryAnchor;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.renderer.category.StackedBarRenderer;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.category.DefaultCategoryDataset;
import org.joda.money.BigMoney;

/** What the first part costs and what a later one does, item by item on top of each other. */
final class CostFigure {
  private static final String REST = "everything else";

  /** One bar: what it is, its sum, and what each item adds to it. */
  private record Bar(String name, BigMoney sum, Map<String, BigDecimal> items) {
    BigDecimal of(String item) {
      return items.getOrDefault(item, BigDecimal.ZERO);
    }
  }

  private final Statement statement;
  private final Bar first;
  private final List<Bar> later = new ArrayList<>();
  private final List<String> items;

  private CostFigure(Statement statement) {
    this.statement = statement;
    this.first = bar("part 1", statement.firstPart());
    if (statement.parts() >= 2) {
      later.add(bar("part 2", statement.secondPart()));
    }
    if (statement.parts() >= 3) {
      later.add(bar("part " + statement.parts(), statement.lastPart()));
    }
    later.add(average());
    later.add(bar("used up", statement.usage()));
    this.items = largestFirst();
  }

  static Figure of(Statement statement) {
    return new CostFigure(statement).figure();
  }

  private Figure figure() {
    return new Figure(
        "first-and-next",
        "The first part and those after it",
        "Part 1 costs "
            + money(first.sum())
            + " as everything is bought for it; "
            + (statement.parts() >= 2
                ? "part 2 costs " + money(statement.secondPart().total()) + " in cash, "
                : "")
            + "each of "
            + Words.count(statement.parts(), "part")
            + " "
            + money(statement.average())
            + " on average, and a part uses up "
            + money(statement.usage().total())
            + " in the long run. The two scales differ.",
        "Bars of money, divided by item in the order of the legend: above the first part, below,"
            + " on a scale of their own, later parts, the average, and what a part uses up.",
        this::panels);
  }

  private String money(BigMoney exact) {
    return statement.money(exact).toString();
  }

  private Bar average() {
    Map<String, BigDecimal> items = new LinkedHashMap<>();
    itemsOf(statement.allParts())
        .forEach(
            (item, sum) ->
                items.put(
                    item,
                    sum.divide(BigDecimal.valueOf(statement.parts()), MathContext.DECIMAL64)));
    return new Bar("average", statement.average(), items);
  }

  private static Bar bar(String name, Account account) {
    return new Bar(name, account.total(), itemsOf(account));
  }

  private static Map<String, BigDecimal> itemsOf(Account account) {
    Map<String, BigDecimal> items = new LinkedHashMap<>();
    for (Line line : account.lines()) {
      items.merge(line.item(), line.amount().getAmount(), BigDecimal::add);
    }
    for (Surcharge surcharge : account.surcharges()) {
      items.merge(surcharge.title(), surcharge.amount().getAmount(), BigDecimal::add);
    }
    return items;
  }

  /** The items by what all parts pay for them; those beyond the fills there are go into one. */
  private List<String> largestFirst() {
    Map<String, BigDecimal> all = itemsOf(statement.allParts());
    statement.usage().lines().forEach(line -> all.putIfAbsent(line.item(), BigDecimal.ZERO));
    List<String> sorted =
        new ArrayList<>(
            all.entrySet().stream()
                .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
                .map(Map.Entry::getKey)
                .toList());
    int most = Chart.FILLS.size();
    if (sorted.size() > most) {
      List<String> small = sorted.subList(most - 1, sorted.size());
      later.forEach(bar -> gather(bar, small));
      gather(first, small);
      small.clear();
      sorted.add(REST);
    }
    return sorted;
  }

  private static void gather(Bar bar, List<String> small) {
    BigDecimal rest = small.stream().map(bar::of).reduce(BigDecimal.ZERO, BigDecimal::add);
    bar.items().put(REST, rest);
  }

  private List<Panel> panels(Format format) {
    String currency = statement.plan().currency().getCode();
    CategoryPlot above = plot(List.of(first), "first part, " + currency, format);
    CategoryPlot below = plot(later, "later parts, " + currency, format);
    int legend = format == Format.WIDE ? 30 : 26 + 12 * items.size();
    return List.of(
        new Panel(Chart.withLegend(above), 110 + legend),
        new Panel(Chart.of(below), 60 + 36 * later.size()));
  }

  private CategoryPlot plot(List<Bar> bars, String axisName, Format format) {
    DefaultCategoryDataset data = new DefaultCategoryDataset();
    for (Bar bar : bars) {
      for (String item : items) {
        data.addValue(bar.of(item), name(item, format), bar.name());
      }
    }
    NumberAxis money = Chart.axis(axisName);
    double highest =
        bars.stream().mapToDouble(bar -> bar.sum().getAmount().doubleValue()).max().orElse(0);
    money.setRange(0, Math.max(highest, 0.01) * (format == Format.WIDE ? 1.18 : 1.5));
    CategoryAxis names = new CategoryAxis();
    names.setTickLabelFont(Chart.FONT);
    names.setTickLabelPaint(Chart.INK);
    names.setAxisLinePaint(Chart.INK);
    names.setLowerMargin(0.04);
    names.setUpperMargin(0.04);
    names.setCategoryMargin(0.3);
    StackedBarRenderer renderer = new StackedBarRenderer();
    renderer.setBarPainter(new StandardBarPainter());
    renderer.setShadowVisible(false);
    renderer.setDrawBarOutline(true);
    renderer.setDefaultLegendShape(new Rectangle2D.Double(-7, -6, 14, 12));
    renderer.setMaximumBarWidth(bars.size() == 1 ? 0.6 : 1);
    for (int i = 0; i < items.size(); i++) {
      renderer.setSeriesPaint(i, Chart.FILLS.get(i));
      renderer.setSeriesOutlinePaint(i, Chart.INK);
      renderer.setSeriesOutlineStroke(i, Chart.solid(0.8f));
    }
    CategoryPlot plot = new CategoryPlot(data, names, money, renderer);
    plot.setOrientation(PlotOrientation.HORIZONTAL);
    plot.setRangeAxisLocation(AxisLocation.BOTTOM_OR_LEFT);
    plot.setRangeGridlinePaint(Chart.GRID);
    plot.setRangeGridlineStroke(Chart.solid(1));
    plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    bars.forEach(bar -> plot.addAnnotation(sum(bar)));
    return plot;
  }

  private CategoryTextAnnotation sum(Bar bar) {
    CategoryTextAnnotation sum =
        new CategoryTextAnnotation(
            " " + money(bar.sum()), bar.name(), bar.sum().getAmount().doubleValue());
    sum.setFont(Chart.FONT);
    sum.setPaint(Chart.INK);
    sum.setCategoryAnchor(CategoryAnchor.MIDDLE);
    sum.setTextAnchor(TextAnchor.CENTER_LEFT);
    return sum;
  }

  private static String name(String item, Format format) {
    return Chart.cut(item, format == Format.WIDE ? 180 : 240);
  }
}
