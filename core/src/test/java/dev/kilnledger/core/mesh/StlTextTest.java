package dev.kilnledger.core.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import dev.kilnledger.core.progress.Progress;
import dev.kilnledger.core.reading.ByteSource;
import dev.kilnledger.core.reading.InputProblem;
import dev.kilnledger.core.reading.UnreadableInputException;
import dev.kilnledger.units.Amounts;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Texts that only just are STL, or just are not. */
class StlTextTest {
  private static final String FACET =
      "facet normal 0 0 1\nouter loop\nvertex 0 0 0\nvertex 1 0 0\nvertex 0 1 0\nendloop\nendfacet\n";

  private static List<double[]> facets(String text) throws IOException {
    List<double[]> facets = new ArrayList<>();
    StlFile.of(ByteSource.of(text.getBytes(StandardCharsets.ISO_8859_1)), Amounts.millimetres(1))
        .forEach(
            (a, b, c, d, e, f, g, h, i) -> facets.add(new double[] {a, b, c, d, e, f, g, h, i}),
            Progress.unheard());
    return facets;
  }

  private static List<String> problems(String text) {
    UnreadableInputException refusal =
        catchThrowableOfType(UnreadableInputException.class, () -> facets(text));
    return refusal.problems().stream().map(InputProblem::text).toList();
  }

  @Test
  void solidNeedsNoName() throws IOException {
    assertThat(facets("solid\n" + FACET + "endsolid\nsolid\n" + FACET + "endsolid")).hasSize(2);
  }

  /** A line without a name must not take the next one with it, whatever ends it. */
  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r", "\r\n"})
  void linesEndAsOnAnyMachine(String end) throws IOException {
    String text = "solid\n" + FACET + "endsolid\nsolid s\n" + FACET + "endsolid s\n";
    assertThat(facets(text.replace("\n", end))).hasSize(2);
  }

  @Test
  void linesAreCountedByTheirEnds() {
    assertThat(problems("solid\n\nfacet normal 0 0 1\nouter\n\n\nvertex 0 0 0\n"))
        .containsExactly("STL file, line 7: 'vertex' stands there; accepted is loop");
    // the end of the file stands in the line that its last line feed begins
    assertThat(problems("solid\n" + FACET))
        .containsExactly("STL file, line 9: the file ends; accepted is endsolid before its end");
  }

  /** The first number that is none is told, and then nothing up to the next facet. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "vertex x 0 0",
        "vertex 0 x 0",
        "vertex 0 0 x",
        "vertex 0 0 0 vertex x 0 0",
      })
  void oneProblemIsToldOfEachFacet(String corners) {
    String wrong = "facet normal 0 0 1 outer loop " + corners + " vertex 0 0 0 endloop endfacet\n";
    assertThat(problems("solid s\n" + wrong + FACET + wrong + "endsolid s\n"))
        .containsExactly(
            "STL file, line 2: 'x' stands there; accepted is a finite number",
            "STL file, line 10: 'x' stands there; accepted is a finite number");
  }

  @Test
  void noMoreThanTwentyProblemsAreTold() {
    String wrong = "facet abnormal\n";
    assertThat(problems("solid s\n" + wrong.repeat(19) + "endsolid s\n")).hasSize(19);
    assertThat(problems("solid s\n" + wrong.repeat(20) + "endsolid s\n")).hasSize(20);
    List<String> many = problems("solid s\n" + wrong.repeat(50) + "endsolid s\n");
    assertThat(many).hasSize(20);
    assertThat(many.get(19))
        .isEqualTo("STL file, line 21: 'abnormal' stands there; accepted is normal");
  }

  /** (2 - 2^-23) x 2^127 by IEEE 754 is the largest of single precision, and finite. */
  @Test
  void largestNumberIsFinite() throws IOException {
    String text = "solid s\n" + FACET.replace("vertex 1", "vertex -3.40282347e38") + "endsolid s\n";
    assertThat(facets(text).get(0)[3]).isEqualTo(-(2 - 0x1p-23) * 0x1p127);
    assertThat(problems(text.replace("3.40282347e38", "3.40282357e38")))
        .containsExactly(
            "STL file, line 5: '-3.40282357e38' stands there; accepted is a finite number");
  }

  @Test
  void wordsAreToldInLettersThatCanBePrinted() {
    assertThat(problems("solid s\nfacet n\u007fr~!\u00e9l"))
        .containsExactly("STL file, line 2: 'n?r~!?l' stands there; accepted is normal");
  }

  @Test
  void wordsAreToldUpToSixtyFourLetters() {
    for (int length : new int[] {63, 64, 65, 200}) {
      assertThat(problems("solid s\nfacet " + "n".repeat(length)))
          .containsExactly(
              "STL file, line 2: '"
                  + "n".repeat(Math.min(64, length))
                  + "' stands there; accepted is normal");
    }
  }

  /** Beyond what is looked at to tell a text, a zero is a letter like any other. */
  @Test
  void zeroByteEndsNeitherWordNorLine() throws IOException {
    String longName = "solid " + "s".repeat(600);
    assertThat(facets(longName + "\0name\n" + FACET + "endsolid \0name\n")).hasSize(1);
    assertThat(problems(longName + "\n" + FACET.replace("outer", "outer\0") + "endsolid\n"))
        .containsExactly("STL file, line 3: 'outer?' stands there; accepted is outer");
  }
}
