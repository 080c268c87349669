package dev.kilnledger.examples.quoting;

import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.core.document.CoreDocuments;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.core.reading.ByteSource;
import dev.kilnledger.core.reading.InputProblem;
import dev.kilnledger.costing.document.AnswerFigures;
import dev.kilnledger.costing.document.CostingDocuments;
import dev.kilnledger.costing.document.JobReply;
import dev.kilnledger.costing.job.WholeJob;
import dev.kilnledger.examples.WindowWorkshop;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.function.Function;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The statuses are those of RFC 9110, section 15. */
class QuoteServerTest {
  private static final ServerLimits LIMITS = new ServerLimits(100_000, 2, 8, Duration.ofMinutes(1));
  private static final HttpClient CLIENT = HttpClient.newHttpClient();
  private static final String JOB =
      CostingDocuments.job(MaterialLibrary.standard()).text(WindowWorkshop.latchCams(100));

  private static QuoteServer server;

  @BeforeAll
  static void start() throws IOException {
    server =
        new QuoteServer(
            0,
            QuoteServer.standardDesk(LIMITS),
            LIMITS,
            failure -> {
              throw new AssertionError(failure);
            });
  }

  @AfterAll
  static void stop() {
    server.close();
  }

  private static HttpRequest.Builder to(QuoteServer server, String path) {
    return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + path))
        .timeout(Duration.ofMinutes(2));
  }

  private static HttpResponse<String> sent(HttpRequest.Builder request)
      throws IOException, InterruptedException {
    return CLIENT.send(request.build(), BodyHandlers.ofString());
  }

  private static HttpResponse<String> posted(QuoteServer server, String job)
      throws IOException, InterruptedException {
    return sent(
        to(server, "/quote")
            .header("Content-Type", "application/json")
            .POST(BodyPublishers.ofString(job)));
  }

  private static List<InputProblem> problems(HttpResponse<String> response) throws IOException {
    assertThat(response.headers().firstValue("Content-Type")).contains("application/json");
    assertThat(response.body()).doesNotContain("Exception").doesNotContain("\tat ");
    return CoreDocuments.problems()
        .read(ByteSource.of(response.body().getBytes(StandardCharsets.UTF_8)));
  }

  @Test
  void jobIsAnsweredWithCostAndFindings() throws IOException, InterruptedException {
    HttpResponse<String> response = posted(server, JOB);
    assertThat(response.statusCode()).isEqualTo(200);
    AnswerFigures figures =
        CostingDocuments.answer()
            .read(ByteSource.of(response.body().getBytes(StandardCharsets.UTF_8)));
    assertThat(figures)
        .isEqualTo(AnswerFigures.of(WholeJob.standard().answer(WindowWorkshop.latchCams(100))));
  }

  @Test
  void jobThatWillNotComeOutIsAnsweredAllTheSame() throws IOException, InterruptedException {
    HttpResponse<String> response =
        posted(server, JOB.replace("\"value\" : 1150", "\"value\" : 700"));
    assertThat(response.statusCode()).isEqualTo(200);
    assertThat(
            CostingDocuments.answer()
                .read(ByteSource.of(response.body().getBytes(StandardCharsets.UTF_8)))
                .worst())
        .isEqualTo(Severity.STOP);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "  ", "{", "quote me", "{} {}", "{\"a\" : 01}"})
  void whatIsNoJsonIsABadRequest(String text) throws IOException, InterruptedException {
    HttpResponse<String> response = posted(server, text);
    assertThat(response.statusCode()).isEqualTo(400);
    assertThat(problems(response)).isNotEmpty();
  }

  @Test
  void everyProblemOfAJobIsTold() throws IOException, InterruptedException {
    HttpResponse<String> response =
        posted(
            server,
            JOB.replace("\"parts\" : 100", "\"parts\" : \"many\"")
                .replace("\"energyItem\" : \"electricity\",", ""));
    assertThat(response.statusCode()).isEqualTo(422);
    assertThat(problems(response))
        .extracting(InputProblem::what)
        .containsExactly("\"many\" stands there", "the field energyItem is missing");
    assertThat(posted(server, "[]").statusCode()).isEqualTo(422);
  }

  @Test
  void otherMethodsPlacesAndTypesAreRefused() throws IOException, InterruptedException {
    HttpResponse<String> got = sent(to(server, "/quote").GET());
    assertThat(got.statusCode()).isEqualTo(405);
    assertThat(got.headers().firstValue("Allow")).contains("POST");
    assertThat(problems(got)).extracting(InputProblem::accepted).containsExactly("POST");
    assertThat(sent(to(server, "/quotes").GET()).statusCode()).isEqualTo(404);
    HttpRequest.Builder typeless = to(server, "/quote").POST(BodyPublishers.ofString(JOB));
    assertThat(sent(typeless).statusCode()).isEqualTo(415);
    for (String type : List.of("text/plain", "application/json; charset=latin1")) {
      HttpRequest.Builder request = to(server, "/quote").POST(BodyPublishers.ofString("{}"));
      assertThat(sent(request.header("Content-Type", type)).statusCode()).isEqualTo(415);
    }
    HttpRequest.Builder stated = to(server, "/quote").POST(BodyPublishers.ofString("{}"));
    assertThat(sent(stated.header("Content-Type", "application/json; charset=UTF-8")).statusCode())
        .isEqualTo(422);
  }

  @Test
  void whatIsTooLongIsNotRead() throws IOException, InterruptedException {
    String blanks = " ".repeat(LIMITS.bytes());
    HttpResponse<String> announced = posted(server, blanks + "{}");
    assertThat(announced.statusCode()).isEqualTo(413);
    assertThat(problems(announced))
        .extracting(InputProblem::accepted)
        .containsExactly("up to 100000 bytes");
    HttpRequest.Builder unannounced =
        to(server, "/quote")
            .header("Content-Type", "application/json")
            .POST(BodyPublishers.fromPublisher(BodyPublishers.ofString(blanks + "{}")));
    assertThat(sent(unannounced).statusCode()).isEqualTo(413);
  }

  @Test
  void aFailureIsToldToTheOperatorAlone() throws IOException, InterruptedException {
    List<Throwable> heard = Collections.synchronizedList(new ArrayList<>());
    Function<byte[], JobReply> broken =
        job -> {
          throw new IllegalStateException("secret");
        };
    try (QuoteServer failing = new QuoteServer(0, broken, LIMITS, heard::add)) {
      HttpResponse<String> response = posted(failing, "{}");
      assertThat(response.statusCode()).isEqualTo(500);
      assertThat(response.body()).doesNotContain("secret");
      assertThat(problems(response)).hasSize(1);
    }
    assertThat(heard).hasSize(1).allSatisfy(failure -> assertThat(failure).hasMessage("secret"));
  }

  /** One computes and one waits, both of them without end; a third is sent away. */
  @Test
  void moreThanItCanDoIsSentAway() throws IOException, InterruptedException {
    CountDownLatch started = new CountDownLatch(1);
    CountDownLatch end = new CountDownLatch(1);
    Function<byte[], JobReply> slow =
        job -> {
          started.countDown();
          try {
            end.await();
          } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
          }
          return JobReply.of(Optional.empty(), List.of(), "{}");
        };
    ServerLimits narrow = new ServerLimits(1000, 1, 1, Duration.ofSeconds(2));
    try (QuoteServer busy = new QuoteServer(0, slow, narrow, failure -> {})) {
      HttpRequest request =
          to(busy, "/quote")
              .header("Content-Type", "application/json")
              .POST(BodyPublishers.ofString("{}"))
              .build();
      List<CompletableFuture<HttpResponse<String>>> sent = new ArrayList<>();
      for (int at = 0; at < 3; at++) {
        sent.add(CLIENT.sendAsync(request, BodyHandlers.ofString()));
      }
      started.await();
      List<String> told = new ArrayList<>();
      for (CompletableFuture<HttpResponse<String>> response : sent) {
        assertThat(response.join().statusCode()).isEqualTo(503);
        told.add(problems(response.join()).get(0).what());
      }
      assertThat(told)
          .containsExactlyInAnyOrder(
              "too many jobs are waiting",
              "the job was not computed within 2000 ms",
              "the job was not computed within 2000 ms");
    } finally {
      end.countDown();
    }
  }

  @Test
  void theJobToTryItWithIsThatOfTheWorkshop() throws IOException {
    assertThat(Files.readString(Path.of("guides", "job.json"))).isEqualTo(JOB);
  }
}
