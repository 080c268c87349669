package dev.kilnledger.examples;

import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.core.document.Document;
import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.costing.document.AnswerFigures;
import dev.kilnledger.costing.document.CostingDocuments;
import dev.kilnledger.costing.document.JobDesk;
import dev.kilnledger.costing.document.JobReply;
import dev.kilnledger.costing.document.PriceListCsv;
import dev.kilnledger.costing.job.Job;
import dev.kilnledger.costing.job.WholeJob;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** The window workshop's job as somebody writes it by hand, and as quoting software sends it. */
class JobDocumentTest {
  private static final Document<Job> JOBS = CostingDocuments.job(MaterialLibrary.standard());

  private static String resource(String name) throws IOException {
    try (InputStream in = JobDocumentTest.class.getResourceAsStream(name)) {
      return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @Test
  void jobWrittenByHandIsTheOneInTheProgram() throws IOException {
    Job job = JOBS.read(resource("latch-cams.json"));
    assertThat(job).isEqualTo(WindowWorkshop.latchCams(100));
    assertThat(JOBS.read(JOBS.text(job))).isEqualTo(job);
  }

  @Test
  void pricesOfTheListAreThoseOfTheJob() throws IOException {
    assertThat(PriceListCsv.standard().read(resource("window-prices.csv")))
        .isEqualTo(WindowWorkshop.latchCams(1).prices().offers());
  }

  @Test
  void deskSendsBackTheFiguresOfTheAnswer() throws IOException {
    JobReply reply = JobDesk.standard().answer(resource("latch-cams.json"));
    assertThat(reply.isAnswered()).isTrue();
    assertThat(CostingDocuments.answer().read(reply.text()))
        .isEqualTo(AnswerFigures.of(WholeJob.standard().answer(WindowWorkshop.latchCams(100))));
  }
}
