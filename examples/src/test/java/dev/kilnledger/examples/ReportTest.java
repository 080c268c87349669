package dev.kilnledger.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.part.Part;
import dev.kilnledger.costing.job.Job;
import dev.kilnledger.costing.job.JobAnswer;
import dev.kilnledger.costing.job.WholeJob;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.examples.report.JobReport;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.xml.sax.helpers.DefaultHandler;

/** The report as markup: what is in it, that it stands alone, and that names do no harm. */
class ReportTest {
  private static final JobReport FULL = LatchCamReport.report();
  private static final JobReport PLAIN = JobReport.of("Invented.", answer(cams(100)));
  private static final String HOSTILE =
      "</title></svg><script>alert(1)</script> & \"x\" 'y' <img src=http://example.org onerror=z>";

  static Stream<Arguments> reports() {
    return Stream.of(
        Arguments.of("full", FULL),
        Arguments.of("answer alone", PLAIN),
        Arguments.of("one part", JobReport.of("Invented.", answer(cams(1)))),
        Arguments.of("hostile names", JobReport.of(HOSTILE, answer(hostile()))));
  }

  private static Job cams(long parts) {
    return WindowWorkshop.latchCams(parts);
  }

  private static JobAnswer answer(Job job) {
    return WholeJob.standard().answer(job);
  }

  private static Job hostile() {
    Job cams = cams(4000);
    PriceBook.Builder prices =
        PriceBook.builder().currency(cams.prices().currency()).asOf(cams.prices().asOf());
    for (Offer offer : cams.prices().offers()) {
      prices.addOffers(
          offer.item().equals("bronze filament")
              ? Offer.builder().from(offer).item(HOSTILE).supplier(HOSTILE).build()
              : offer);
    }
    return Job.builder()
        .from(cams)
        .part(Part.builder().from(cams.part()).name(HOSTILE).build())
        .kiln(Kiln.builder().from(cams.kiln()).name(HOSTILE).build())
        .filamentItem(HOSTILE)
        .prices(prices.build())
        .build();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("reports")
  void itIsWellFormedXmlToAStrictParser(String name, JobReport report) throws Exception {
    DocumentBuilder parser = DocumentBuilderFactory.newInstance().newDocumentBuilder();
    parser.setErrorHandler(new DefaultHandler());
    byte[] bytes = report.html().getBytes(StandardCharsets.UTF_8);
    assertThat(parser.parse(new ByteArrayInputStream(bytes)).getDocumentElement().getTagName())
        .isEqualTo("html");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("reports")
  void itStandsAloneAndRunsNothing(String name, JobReport report) {
    Document page = Jsoup.parse(report.html());
    assertThat(page.select("script, link, img, iframe, object, embed, image, foreignObject, use"))
        .isEmpty();
    assertThat(page.select("meta[http-equiv=Content-Security-Policy]").attr("content"))
        .isEqualTo("default-src 'none'; style-src 'unsafe-inline'; img-src data:");
    assertThat(page.select("style").outerHtml()).doesNotContain("@import").doesNotContain("url(");
    for (Element element : page.getAllElements()) {
      element
          .attributes()
          .forEach(
              attribute -> {
                assertThat(attribute.getKey()).doesNotStartWith("on").isNotEqualTo("src");
                if (attribute.getKey().endsWith("href")) {
                  assertThat(attribute.getValue()).startsWith("#");
                }
                if (attribute.getValue().contains("url(")) {
                  assertThat(attribute.getValue()).matches(".*url\\(\"?#.*");
                }
              });
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("reports")
  void idsAreUniqueAndEveryReferenceLeadsSomewhere(String name, JobReport report) {
    Document page = Jsoup.parse(report.html());
    List<String> ids = page.select("[id]").eachAttr("id");
    assertThat(ids).doesNotHaveDuplicates();
    List<String> references = new ArrayList<>();
    page.select("a[href]").forEach(link -> references.add(link.attr("href").substring(1)));
    page.select("[aria-labelledby]")
        .forEach(svg -> references.addAll(List.of(svg.attr("aria-labelledby").split(" "))));
    Pattern.compile("url\\((?:&quot;|\")?#([^)\"&]+)")
        .matcher(report.html())
        .results()
        .forEach(found -> references.add(found.group(1)));
    assertThat(ids).containsAll(references);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("reports")
  void headingsTablesAndFiguresCarryTheirWords(String name, JobReport report) {
    Document page = Jsoup.parse(report.html());
    assertThat(page.select("html").attr("lang")).isEqualTo("en");
    assertThat(page.select("meta[name=viewport]").attr("content")).startsWith("width=device-width");
    int level = 0;
    for (Element heading : page.select("h1, h2, h3, h4")) {
      int next = heading.tagName().charAt(1) - '0';
      assertThat(next).as(heading.text()).isLessThanOrEqualTo(level + 1);
      level = next;
    }
    assertThat(page.select("table")).isNotEmpty();
    for (Element table : page.select("table")) {
      assertThat(table.select("> caption").text()).isNotBlank();
      assertThat(table.select("th:not([scope])")).isEmpty();
      int columns = table.select("thead th").size();
      assertThat(table.select("tbody tr")).isNotEmpty();
      assertThat(table.select("tbody tr")).allMatch(row -> row.childrenSize() == columns);
    }
    for (Element figure : page.select("figure")) {
      assertThat(figure.select("figcaption").text()).matches(".*\\d.*").endsWith(".");
      assertThat(figure.select("svg[role=img]").eachAttr("class"))
          .containsExactly("wide", "narrow");
      for (Element svg : figure.select("svg")) {
        assertThat(svg.select("> title").text()).isNotBlank();
        assertThat(svg.select("> desc").text()).isNotBlank();
        assertThat(svg.select("text")).isNotEmpty();
        assertThat(svg.attr("viewBox")).matches("0 0 \\d+ \\d+");
      }
    }
  }

  @Test
  void everyFigureIsThereWhereItsDataAre() {
    assertThat(figures(FULL))
        .containsExactly(
            "figure-firing",
            "figure-power",
            "figure-first-and-next",
            "figure-purchases",
            "figure-break-even",
            "figure-uncertainty",
            "figure-inputs");
    assertThat(figures(PLAIN))
        .containsExactly(
            "figure-firing", "figure-power", "figure-first-and-next", "figure-purchases");
  }

  private static List<String> figures(JobReport report) {
    return Jsoup.parse(report.html()).select("figure").eachAttr("id");
  }

  @Test
  void whatIsNotKnownIsNotDrawnAndSaidSo() {
    Document plain = Jsoup.parse(PLAIN.html());
    assertThat(caption(plain, "firing"))
        .contains("How the binder leaves is not drawn: its kinetics are not known.")
        .contains("only an interval is known, 72 to 95 % by volume");
    assertThat(plain.select("#figure-firing svg.wide text").eachText())
        .contains("density, %", "lag, K")
        .doesNotContain("binder, %");
    assertThat(Jsoup.parse(FULL.html()).select("#figure-firing svg.wide text").eachText())
        .contains("binder, %");
  }

  /**
   * By hand: 80 + 0.30 x 9.69 + 10 + 600 + 1500 + 40 + 15 = 2247.907; 3.23 kWh, 20 g of 500 g
   * carbon, 17.4 g of 500 g filament, a 36th of a crucible and 35 g / 3 of alumina are 5.4391.
   * Making costs 2100 once, so that 45 n reaches it with n = 2100 / (45 - 5.4391) = 53.1 (cost,
   * volume, profit analysis, any textbook of cost accounting).
   */
  @Test
  void captionsTellTheFiguresOfTheAnswer() {
    Document page = Jsoup.parse(FULL.html());
    assertThat(caption(page, "first-and-next")).contains("EUR 2247.91").contains("EUR 5.44");
    assertThat(caption(page, "break-even")).contains("Without whole packs it would be at 54.");
    assertThat(caption(page, "power")).contains("of their 2.40 kW").contains("9.69 kWh");
    assertThat(caption(page, "firing")).contains("where 2.0 h are asked");
    assertThat(caption(page, "uncertainty")).contains("20000 trials from seed 7");
  }

  /** The programme goes to 820 °C; what is drawn may be off by a fifth of a pixel, or 1 K. */
  @Test
  void theHottestIsDrawnWhereTheAxisHasIt() {
    Element picture = Jsoup.parse(FULL.html()).select("#figure-firing svg.wide").get(0);
    double top = lines(picture).stream().mapToDouble(Drawn::highest).min().orElseThrow();
    assertThat(valueAt(picture, top, 100, 900)).isCloseTo(820, within(1.0));
  }

  /** The energy is summed for the picture from the power, and by the model from its lines. */
  @Test
  void theEnergyIsDrawnUpToWhatTheBalanceSays() {
    Element picture = Jsoup.parse(FULL.html()).select("#figure-power svg.wide").get(0);
    List<Drawn> lines = lines(picture);
    double end = lines.get(lines.size() - 1).highest();
    assertThat(valueAt(picture, end, 4, 8)).isCloseTo(9.69, within(0.05));
  }

  /**
   * By hand: 100 x 17.4 g take 4 spools of 500 g, 34 firings 5 packs of 500 g at 60 g each and 3
   * crucibles of 12 firings; a fill of 700 g and 33 losses of 35 g are 1855 g of alumina, 2 packs.
   */
  @Test
  void everyPurchaseHasItsMark() {
    Element picture = Jsoup.parse(FULL.html()).select("#figure-purchases svg.wide").get(0);
    assertThat(picture.select("text").eachText().stream().map(String::strip))
        .contains("bronze filament, 4 times", "carbon, 5 times", "crucible, 3 times")
        .contains("alumina, 2 times", "printer, 1 time", "kiln, 1 time");
  }

  /** An open line of a picture: the height of its highest point, in pixels from the top. */
  private record Drawn(double highest) {}

  private static List<Drawn> lines(Element picture) {
    return picture.select("path[style*=fill:none]").stream()
        .map(path -> path.attr("d").replaceAll("[MLZ]", " ").strip().split("\\s+"))
        .filter(numbers -> numbers.length > 20) // neither ticks nor the legend
        .map(
            numbers ->
                new Drawn(
                    IntStream.range(0, numbers.length / 2)
                        .mapToDouble(i -> Double.parseDouble(numbers[2 * i + 1]))
                        .min()
                        .orElseThrow()))
        .toList();
  }

  /** What a vertical axis says of a height, by two of its ticks. */
  private static double valueAt(Element picture, double height, int low, int high) {
    double from = tick(picture, low);
    double to = tick(picture, high);
    return low + (high - low) * (height - from) / (to - from);
  }

  private static double tick(Element picture, int value) {
    return picture.select("text").stream()
        .filter(text -> text.text().equals(Integer.toString(value)))
        .map(Element::nextElementSibling)
        .filter(line -> line != null && line.tagName().equals("line"))
        .filter(line -> line.attr("y1").equals(line.attr("y2")))
        .mapToDouble(line -> Double.parseDouble(line.attr("y1")))
        .findFirst()
        .orElseThrow();
  }

  private static String caption(Document page, String figure) {
    return page.select("#figure-" + figure + " figcaption").text().replace('\u00a0', ' ');
  }

  @Test
  void everyFindingCaveatAndCautionIsToldTheWorstFirst() {
    Document page = Jsoup.parse(FULL.html());
    String findings = page.select("#findings").text().replace('\u00a0', ' ');
    for (Finding finding : FULL.answer().findings()) {
      assertThat(findings).contains(finding.message()).contains(finding.basis().cite());
    }
    List<Severity> order =
        page.select("#findings li").eachAttr("class").stream()
            .map(name -> Severity.valueOf(name.toUpperCase(Locale.ROOT)))
            .toList();
    assertThat(order).isSortedAccordingTo((one, other) -> other.compareTo(one));
    assertThat(page.select("#findings > details li.passed")).isNotEmpty();
    assertThat(page.select("#findings > ul li.passed")).isEmpty();
    String whole = page.text();
    FULL.answer().statement().caveats().forEach(c -> assertThat(whole).contains(c.text()));
    FULL.answer().cautions().forEach(c -> assertThat(whole).contains(c.text()));
  }

  @Test
  void whatIsFromMemoryIsFlaggedFirst() {
    Element first = Jsoup.parse(FULL.html()).select("#sources details").get(0);
    assertThat(first.hasAttr("open")).isTrue();
    assertThat(first.select("summary").text()).startsWith("from memory");
    assertThat(first.select("tbody").text()).contains("binder density", "relative density");
  }

  @Test
  void namesAreShownAndNeverObeyed() {
    Document page = Jsoup.parse(JobReport.of(HOSTILE, answer(hostile())).html());
    assertThat(page.select("h1").text()).contains(HOSTILE);
    assertThat(page.select(".remark").text()).isEqualTo(HOSTILE);
    assertThat(page.select("script, img")).isEmpty();
    assertThat(page.select("#figure-purchases").text()).contains("</title></svg><script>");
    assertThat(caption(page, "purchases")).contains("The first 300 of 4000 parts are drawn");
  }

  @Test
  void theSameReportHasTheSameBytesInEveryLocale() {
    String page = FULL.html();
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG"));
      assertThat(LatchCamReport.report().html()).isEqualTo(page);
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void theProgramWritesTheFileItIsGiven(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("report.html");
    LatchCamReport.main(new String[] {file.toString()});
    assertThat(Files.readString(file)).isEqualTo(FULL.html());
    assertThatThrownBy(() -> LatchCamReport.main(new String[0]))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("there are 0 arguments; accepted is one, the file to write");
  }
}
