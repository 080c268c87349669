package dev.kilnledger.core.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReadingTest {
  private static final byte[] THREE = {7, 8, 9};

  @Test
  void sourcesAreReadAgainFromTheirStartAndKnowTheirSize(@TempDir Path folder) throws IOException {
    Path file = Files.write(folder.resolve("three"), THREE);
    for (ByteSource source : List.of(ByteSource.of(THREE), ByteSource.of(file))) {
      assertThat(source.size()).isEqualTo(3);
      for (int time = 0; time < 2; time++) {
        try (InputStream in = source.open()) {
          assertThat(in.readAllBytes()).isEqualTo(THREE);
        }
      }
    }
    ByteSource stream = () -> new ByteArrayInputStream(THREE);
    assertThat(stream.size()).isEqualTo(-1);
  }

  @Test
  void exceptionTellsEachProblemWithPlaceAndRemedy() {
    InputProblem mass =
        InputProblem.of("line 3, /mass", "/mass", "a mass of -1 g", "more than zero");
    InputProblem end = InputProblem.of("line 9", "the end", "a brace");
    UnreadableInputException both = new UnreadableInputException(List.of(mass, end));
    assertThat(both)
        .hasMessage(
            "line 3, /mass: a mass of -1 g; accepted is more than zero\n"
                + "line 9: the end; accepted is a brace");
    assertThat(both.problems()).containsExactly(mass, end);
    assertThat(mass.path()).isEqualTo("/mass");
    assertThat(end.path()).isEmpty();
    assertThat(new UnreadableInputException(end).problems()).containsExactly(end);
  }
}
