package dev.kilnledger.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.kilnledger.core.part.Part;
import dev.kilnledger.costing.job.Job;
import dev.kilnledger.costing.job.WholeJob;
import dev.kilnledger.examples.report.JobReport;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The report opened in a headless Chromium: the one of the system property {@code
 * kilnledger.browser}, or found on the path. Without one these tests are skipped.
 */
class ReportInBrowserTest {
  private static final List<String> NAMES =
      List.of("chromium", "chromium-browser", "google-chrome", "google-chrome-stable");
  private static final int[] WIDTHS = {380, 701, 1280};

  @TempDir private Path folder;
  private String browser = "";

  @BeforeEach
  void findABrowser() {
    Optional<String> found =
        Optional.ofNullable(System.getProperty("kilnledger.browser"))
            .or(
                () ->
                    Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                        .flatMap(place -> NAMES.stream().map(name -> Path.of(place, name)))
                        .filter(Files::isExecutable)
                        .map(Path::toString)
                        .findFirst());
    assumeTrue(
        found.isPresent(),
        "no browser on the path; accepted is one of "
            + NAMES
            + ", or another Chromium in the property kilnledger.browser");
    browser = found.orElseThrow();
  }

  @Test
  void itOpensWithEveryPictureAndWithoutAWordOnTheConsole() throws Exception {
    Opened opened = open("report.html", LatchCamReport.report().html());
    assertThat(opened.console()).isEmpty();
    assertThat(opened.page().select("figure svg.wide[role=img]")).hasSize(7);
    assertThat(opened.page().title()).isEqualTo("100 × latch cam, tin bronze 90/10");
  }

  /** Shows that the console is really heard, and that the page's own policy keeps scripts out. */
  @Test
  void aScriptSmuggledInWouldNotRunAndWouldBeHeardOf() throws Exception {
    String smuggled =
        LatchCamReport.report()
            .html()
            .replace("</main>", "</main><script>document.title = 'ran'</script>");
    Opened opened = open("smuggled.html", smuggled);
    assertThat(opened.console()).anyMatch(line -> line.contains("Content Security Policy"));
    assertThat(opened.page().title()).isNotEqualTo("ran");
  }

  @Test
  void noWordIsClippedCoveredPaleOrTinyAtAnyWidth() throws Exception {
    Document looked = lookAt(LatchCamReport.report());
    assertThat(looked.select("#seen li"))
        .hasSize(7 * WIDTHS.length)
        .allMatch(seen -> seen.text().matches("380 .* narrow|(701|1280) .* wide"));
    assertThat(looked.select("#wrong li").eachText()).isEmpty();
  }

  @Test
  void longNamesAndManyPartsFitAsWell() throws Exception {
    Job cams = WindowWorkshop.latchCams(2500);
    Job job =
        Job.builder()
            .from(cams)
            .part(
                Part.builder()
                    .from(cams.part())
                    .name("latch cam for the upper casement of the north window ".repeat(3).strip())
                    .build())
            .build();
    Document looked = lookAt(JobReport.of("Invented.", WholeJob.standard().answer(job)));
    assertThat(looked.select("#seen li")).hasSize(4 * WIDTHS.length);
    assertThat(looked.select("#wrong li").eachText()).isEmpty();
  }

  /** Shows that the looking finds what it looks for. */
  @Test
  void whatIsWrongIsFound() throws Exception {
    String broken =
        LatchCamReport.report()
            .html()
            .replace("</style>", "figcaption { color: #999999; white-space: nowrap; }</style>")
            .replaceFirst("(<text[^>]*? x=\")[^\"]*", "$1-30");
    Document looked = lookAt(broken);
    assertThat(looked.select("#wrong li").eachText())
        .anyMatch(line -> line.contains("FIGCAPTION has a contrast of 2.8"))
        .anyMatch(line -> line.contains("FIGCAPTION is wider than its place"))
        .anyMatch(line -> line.endsWith("is clipped"));
  }

  private Document lookAt(JobReport report) throws Exception {
    return lookAt(report.html());
  }

  /** Opens a page in a frame of each width and measures its words. */
  private Document lookAt(String page) throws Exception {
    Document around = Document.createShell("");
    around.head().appendElement("meta").attr("charset", "utf-8");
    IntStream.of(WIDTHS)
        .forEach(
            width ->
                around
                    .body()
                    .appendElement("iframe")
                    .attr("style", "border:0;height:3000px;width:" + width + "px")
                    .attr("srcdoc", page));
    around.head().appendElement("script").attr("src", "measure.js");
    try (InputStream script = getClass().getResourceAsStream("/report/measure.js")) {
      Files.copy(script, folder.resolve("measure.js"));
    }
    Opened opened = open("frames.html", "<!DOCTYPE html>" + around.html());
    assertThat(opened.page().select("#wrong")).as(opened.console().toString()).hasSize(1);
    return opened.page();
  }

  /** A page as a browser has it, and what its console said. */
  private record Opened(Document page, List<String> console) {}

  private Opened open(String name, String html) throws IOException, InterruptedException {
    Path file = Files.writeString(folder.resolve(name), html);
    Path page = folder.resolve(name + ".out");
    Path log = folder.resolve(name + ".log");
    Process process =
        new ProcessBuilder(
                browser,
                "--headless=new",
                "--no-sandbox", // the page is our own, and a build may run as root
                "--disable-gpu",
                "--disable-dev-shm-usage",
                "--hide-scrollbars",
                "--no-first-run",
                "--user-data-dir=" + folder.resolve("profile"),
                "--window-size=1400,3000",
                "--enable-logging=stderr",
                "--dump-dom",
                file.toUri().toString())
            .redirectOutput(page.toFile())
            .redirectError(log.toFile())
            .start();
    try {
      assertThat(process.waitFor(2, TimeUnit.MINUTES)).as("the browser has ended").isTrue();
    } finally {
      process.destroyForcibly();
    }
    List<String> console =
        Files.readString(log, StandardCharsets.UTF_8)
            .lines()
            .filter(line -> line.contains("CONSOLE"))
            .toList();
    return new Opened(Jsoup.parse(Files.readString(page)), console);
  }
}
