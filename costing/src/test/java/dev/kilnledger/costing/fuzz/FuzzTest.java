package dev.kilnledger.costing.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Base64;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Each reader answers hostile input as it documents. {@code -Dfuzz.inputs=} sets how many inputs
 * there are in total, {@code -Dfuzz.seed=} which.
 */
class FuzzTest {
  private static final long INPUTS = Long.getLong("fuzz.inputs", 20_000);
  private static final long SEED = Long.getLong("fuzz.seed", 20261125);

  @ParameterizedTest
  @EnumSource(Reader.class)
  void answersMutatedInputAsItDocuments(Reader reader) throws InterruptedException {
    Fuzz.Outcome outcome = Fuzz.run(reader, reader.of(INPUTS), SEED);
    assertThat(outcome.defect()).isEmpty();
    assertThat(outcome.accepted()).as("inputs that are well formed").isPositive();
  }

  /** Inputs that once were answered otherwise. */
  @ParameterizedTest
  @CsvFileSource(resources = "/fuzz-cases.csv", numLinesToSkip = 1, delimiter = '|')
  void answersWhatWasFound(Reader reader, String was, String input) {
    assertThat(Fuzz.wrong(reader, Base64.getDecoder().decode(input))).as(was).isEmpty();
  }
}
