package dev.kilnledger.costing.document;

import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.core.document.CoreDocuments;
import dev.kilnledger.core.document.DocumentLimits;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.reading.ByteSource;
import dev.kilnledger.core.reading.InputProblem;
import dev.kilnledger.costing.job.WholeJob;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class JobDeskTest {
  private static final JobDesk DESK = JobDesk.standard();
  private static final String JOB = CostingDocuments.job(Jobs.STANDARD).text(Jobs.plain());

  private static List<InputProblem> refused(String job) {
    JobReply reply = DESK.answer(job);
    assertThat(reply.isAnswered()).isFalse();
    assertThat(DocumentProof.read(CoreDocuments.problems(), reply.text()))
        .isEqualTo(reply.problems());
    return reply.problems();
  }

  @Test
  void jobIsAnsweredByItsFigures() {
    JobReply reply = DESK.answer(JOB);
    assertThat(reply.problems()).isEmpty();
    AnswerFigures figures = DocumentProof.read(CostingDocuments.answer(), reply.text());
    assertThat(figures)
        .isEqualTo(AnswerFigures.of(WholeJob.standard().answer(Jobs.plain())))
        .isEqualTo(AnswerFigures.of(reply.answer().orElseThrow()));
  }

  /** 80 + 600 + 1500 + 40 + 15 + 10 for what is bought in packs, and the energy on top. */
  @Test
  void figuresAreThoseOfTheLedger() {
    AnswerFigures figures = AnswerFigures.of(DESK.answer(JOB).answer().orElseThrow());
    AccountFigures first = figures.statement().firstPart();
    assertThat(
            first.lines().stream()
                .filter(line -> !line.item().equals("electricity"))
                .mapToInt(line -> line.amount().getAmountMinorInt())
                .sum())
        .isEqualTo(224_500);
    assertThat(first.total().exact())
        .isEqualTo(
            first.lines().stream()
                .map(LineFigures::amount)
                .reduce((a, b) -> a.plus(b))
                .orElseThrow());
  }

  @Test
  void jobThatWillNotComeOutIsAnsweredAllTheSame() {
    JobReply reply = DESK.answer(JOB.replace("\"value\" : 1150", "\"value\" : 700"));
    assertThat(reply.isAnswered()).isTrue();
    assertThat(DocumentProof.read(CostingDocuments.answer(), reply.text()).worst())
        .isEqualTo(Severity.STOP);
  }

  @Test
  void problemsTellWhereTheyAreForPeopleAndPrograms() {
    assertThat(
            refused(
                JOB.replace("\"parts\" : 100", "\"parts\" : \"many\"")
                    .replace("\"energyItem\" : \"electricity\",", "")))
        .containsExactly(
            InputProblem.of(
                "line 4, column 13, /parts", "/parts", "\"many\" stands there", "a whole number"),
            InputProblem.of("line 1, column 1, /", "", "the field energyItem is missing", "text"));
  }

  /** What only the computation finds out is a problem of the job as a whole. */
  @Test
  void jobThatCannotBeComputedIsRefused() {
    assertThat(refused(JOB.replace("\"energyItem\" : \"electricity\"", "\"energyItem\" : \"gas\"")))
        .singleElement()
        .satisfies(problem -> assertThat(problem.where()).isEqualTo("job"))
        .satisfies(problem -> assertThat(problem.what()).contains("no offer of \"gas\""))
        .satisfies(problem -> assertThat(problem.accepted()).contains("electricity"));
    assertThat(refused(JOB.replace("\"getterItem\" : \"carbon\",", "")))
        .singleElement()
        .satisfies(problem -> assertThat(problem.what()).contains("no getter item"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "null",
        "[]",
        "{}",
        "not JSON",
        "{\"document\": \"job\"}",
        "{\"document\": \"job\", \"schemaVersion\": 2}",
        "{\"document\": \"\\ud800\", \"schemaVersion\": 1}",
        "{\"\\ud800\": 1}",
        "\u0000",
      })
  void whatIsNoJobIsRefused(String job) {
    assertThat(refused(job)).isNotEmpty();
  }

  @Test
  void hostileJobsAreRefused() throws IOException {
    assertThat(refused("[".repeat(100_000))).hasSize(1);
    assertThat(refused(JOB.replace("\"value\" : 2.4", "\"value\" : 1e999"))).hasSize(1);
    assertThat(refused(JOB.replace("\"parts\" : 100", "\"parts\" : 1" + "0".repeat(30))))
        .hasSize(1);
    assertThat(refused(JOB.replace("latch cam", "x".repeat(70_000)))).hasSize(1);
    JobReply reply =
        DESK.answer(
            ByteSource.of(JOB.getBytes(StandardCharsets.UTF_8)),
            DocumentLimits.builder().bytes(500).build());
    assertThat(reply.problems()).singleElement().asString().contains("up to 500 bytes");
    // two bytes of a mark that promises UTF-32, and nothing of it
    assertThat(
            DESK.answer(
                    ByteSource.of(new byte[] {0, 0, (byte) 0xFF, (byte) 0xFE}),
                    DocumentLimits.standard())
                .isAnswered())
        .isFalse();
  }

  /** As many parts as a long holds, and prices of hundreds of digits: counted or refused. */
  @Test
  void hugeFiguresAreCountedOrRefused() {
    assertThat(DESK.answer(JOB.replace("\"parts\" : 100", "\"parts\" : 1000000000")).isAnswered())
        .isTrue();
    DESK.answer(JOB.replace("\"parts\" : 100", "\"parts\" : " + Long.MAX_VALUE));
    JobReply dear = DESK.answer(JOB.replace("\"80.00\"", "\"8" + "0".repeat(150) + "\""));
    assertThat(dear.isAnswered()).isTrue();
    DocumentProof.read(CostingDocuments.answer(), dear.text());
  }
}
