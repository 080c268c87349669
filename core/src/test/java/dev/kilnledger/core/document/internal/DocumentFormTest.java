package dev.kilnledger.core.document.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.kilnledger.core.document.Document;
import dev.kilnledger.core.document.DocumentLimits;
import dev.kilnledger.core.equipment.WallLayer;
import dev.kilnledger.core.reading.ByteSource;
import dev.kilnledger.core.reading.InputProblem;
import dev.kilnledger.core.reading.UnreadableInputException;
import dev.kilnledger.core.source.Standing;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.Kind;
import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DocumentFormTest {
  /** A value that has one of everything. */
  record Sample(
      String name,
      Amount<Length> length,
      Optional<Amount<?>> content,
      List<Standing> standings,
      LocalDate date,
      boolean owned,
      int count,
      Map<String, Long> counts,
      Shape shape) {}

  interface Shape {}

  record Round(Amount<Length> diameter) implements Shape {}

  record Square(Amount<Length> side) implements Shape {}

  private static final Document<Sample> DOCUMENT = new DocumentForm<>("sample", 3, form());

  private static ObjectForm<Sample> form() {
    ObjectForm<Round> roundForm = ObjectForm.nameless();
    var diameter = roundForm.required("diameter", Forms.amount(Kind.LENGTH), Round::diameter);
    roundForm.read(values -> new Round(values.get(diameter)));
    ObjectForm<Square> squareForm = ObjectForm.nameless();
    var side = squareForm.required("side", Forms.amount(Kind.LENGTH), Square::side);
    squareForm.read(values -> new Square(values.get(side)));
    ObjectForm<Sample> form = ObjectForm.named("sample", "A sample.");
    var name = form.required("name", Forms.TEXT, Sample::name);
    var length = form.required("length", Forms.amount(Kind.LENGTH), Sample::length);
    var content = form.optional("content", Forms.amountOf(Kind.MASS, Kind.VOLUME), Sample::content);
    var standings = form.list("standings", Forms.STANDING, Sample::standings);
    var date = form.required("date", Forms.DATE, Sample::date);
    var owned = form.withDefault("owned", Forms.TRUTH, false, Sample::owned);
    var count = form.required("count", Forms.COUNT, Sample::count);
    var counts =
        form.withDefault(
            "counts", Forms.map(key -> key, key -> key, Forms.WHOLE), Map.of(), Sample::counts);
    var shape =
        form.required(
            "shape",
            ChoiceForm.<Shape>named("shape")
                .with("round", Round.class, roundForm)
                .with("square", Square.class, squareForm),
            Sample::shape);
    return form.read(
        values -> {
          if (values.get(count) < 0) {
            throw new IllegalArgumentException(
                "sample: count is below zero; accepted is 0 or more");
          }
          return new Sample(
              values.get(name),
              values.get(length),
              values.get(content),
              values.get(standings),
              values.get(date),
              values.get(owned),
              values.get(count),
              values.get(counts),
              values.get(shape));
        });
  }

  private static final Sample SAMPLE =
      new Sample(
          "a \"name\" of 5 µm / ~1",
          Amounts.millimetres(1.75),
          Optional.of(Amounts.grams(500)),
          List.of(Standing.FROM_MEMORY, Standing.USER),
          LocalDate.of(2026, 11, 25),
          true,
          7,
          Map.of("b", 2L, "a/b", 1L),
          new Square(Amounts.inches(0.1)));

  private static final String GOOD =
      """
      {
        "document": "sample", "schemaVersion": 3,
        "name": "n", "length": {"value": 2, "unit": "mm"}, "date": "2026-11-25",
        "count": 1, "shape": {"type": "round", "diameter": {"value": 1e1, "unit": "um"}}
      }
      """;

  private static Sample read(String text) throws IOException {
    return DOCUMENT.read(ByteSource.of(text.getBytes(StandardCharsets.UTF_8)));
  }

  private static List<String> problems(String text) {
    try {
      read(text);
      throw new AssertionError("was read");
    } catch (UnreadableInputException e) {
      return e.problems().stream().map(InputProblem::text).toList();
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void whatIsWrittenIsReadBack() throws IOException {
    String text = DOCUMENT.text(SAMPLE);
    assertThat(read(text)).isEqualTo(SAMPLE);
    assertThat(DOCUMENT.text(read(text))).isEqualTo(text);
  }

  @Test
  void wireFormIsPinned() {
    assertThat(DOCUMENT.text(SAMPLE))
        .isEqualTo(
            """
            {
              "document" : "sample",
              "schemaVersion" : 3,
              "name" : "a \\"name\\" of 5 µm / ~1",
              "length" : { "value" : 1.75, "unit" : "mm" },
              "content" : { "value" : 500, "unit" : "g" },
              "standings" : [
                "from-memory",
                "user"
              ],
              "date" : "2026-11-25",
              "owned" : true,
              "count" : 7,
              "counts" : {
                "a/b" : 1,
                "b" : 2
              },
              "shape" : {
                "type" : "square",
                "side" : { "value" : 0.1, "unit" : "[in_i]" }
              }
            }
            """);
  }

  @Test
  void fieldsLeftOutStandForTheirDefaults() throws IOException {
    Sample sample = read(GOOD);
    assertThat(sample.owned()).isFalse();
    assertThat(sample.content()).isEmpty();
    assertThat(sample.standings()).isEmpty();
    assertThat(sample.shape()).isEqualTo(new Round(Amounts.micrometres(10)));
  }

  @Test
  void allProblemsAreToldTogetherWithTheirPlaces() {
    assertThat(
            problems(
                """
                {"document": "sample", "schemaVersion": 3,
                 "name": 5,
                 "length": {"value": 2, "unit": "g", "more": 1},
                 "content": {"value": 2, "unit": "s"},
                 "standings": ["user", "hearsay"],
                 "date": "25.11.2026",
                 "count": 1.5, "count": 2,
                 "colour/tone": "red",
                 "shape": {"type": "oval"}
                }
                """))
        .containsExactly(
            "line 7, column 16, /count: the field stands twice; accepted is once",
            "line 2, column 10, /name: 5 stands there; accepted is text",
            "line 3, column 46, /length/more: the field is not known; accepted is value and unit",
            "line 4, column 13, /content: \"2 s\" stands there; accepted is a number and a UCUM unit"
                + " code of mass, volume",
            "line 5, column 24, /standings/1: \"hearsay\" stands there; accepted is one of"
                + " published, quoted, recomputed, common-practice, from-memory, user",
            "line 6, column 10, /date: \"25.11.2026\" stands there; accepted is a date such as"
                + " \"2026-11-25\"",
            "line 7, column 11, /count: 1.5 stands there; accepted is a whole number up to"
                + " 2147483647",
            "line 9, column 20, /shape/type: \"oval\" stands there; accepted is one of round,"
                + " square",
            "line 8, column 17, /colour~1tone: the field is not known; accepted is name, length,"
                + " content, standings, date, owned, count, counts, shape");
  }

  @Test
  void missingFieldsAndWhatAValueRefusesAreTold() {
    assertThat(problems("{\"document\": \"sample\", \"schemaVersion\": 3, \"count\": 1}"))
        .hasSize(4)
        .allMatch(text -> text.contains("is missing"));
    assertThat(problems(GOOD.replace("\"count\": 1", "\"count\": -1")))
        .containsExactly("line 1, column 1, /: sample: count is below zero; accepted is 0 or more");
    assertThat(problems(GOOD.replace("\"unit\": \"mm\"", "\"unit\": \"g\"")).get(0))
        .startsWith("line 3, column 26, /length: ");
  }

  @Test
  void otherKindsAndVersionsAreRefusedBeforeAnythingElse() {
    assertThat(problems("{\"document\": \"other\", \"schemaVersion\": 9}"))
        .containsExactly(
            "line 1, column 14, /document: \"other\" stands there; accepted is sample",
            "line 1, column 40, /schemaVersion: 9 stands there; accepted is 3");
    assertThat(problems("[]"))
        .containsExactly("line 1, column 1, /: a list stands there; accepted is an object");
  }

  @Test
  void fieldsOfAnotherShapeAreTold() {
    assertThat(problems("{}"))
        .containsExactly(
            "line 1, column 1, /: the field document is missing; accepted is sample",
            "line 1, column 1, /: the field schemaVersion is missing; accepted is 3");
    assertThat(problems(GOOD.replace("{\"value\": 2, \"unit\": \"mm\"}", "5")))
        .containsExactly(
            "line 3, column 26, /length: 5 stands there; accepted is length such as {\"value\": 1.5,"
                + " \"unit\": \"m\"}");
    assertThat(problems(GOOD.replace("\"count\": 1", "\"count\": 1, \"standings\": \"user\"")))
        .singleElement()
        .asString()
        .endsWith("/standings: \"user\" stands there; accepted is a list");
    String shape = "{\"type\": \"round\", \"diameter\": {\"value\": 1e1, \"unit\": \"um\"}}";
    assertThat(problems(GOOD.replace(shape, "7")))
        .singleElement()
        .asString()
        .endsWith("/shape: 7 stands there; accepted is an object with a field type");
    assertThat(problems(GOOD.replace(shape, "{}")))
        .singleElement()
        .asString()
        .endsWith("/shape: the field type is missing; accepted is one of round, square");
    assertThat(problems(GOOD + "{}"))
        .containsExactly("line 6, column 1: something follows the document; accepted is its end");
  }

  @Test
  void longTextsAreToldByTheirBeginning() {
    String sixty = "x".repeat(60);
    assertThat(problems(GOOD.replace("2026-11-25", sixty)).get(0))
        .contains("/date: \"" + sixty + "\" stands there");
    assertThat(problems(GOOD.replace("2026-11-25", sixty + "x")).get(0))
        .contains("/date: \"" + sixty + "…\" stands there");
    // a pair of surrogates is not cut in halves
    String pair = "x".repeat(59) + "\ud83d\udd25";
    assertThat(problems(GOOD.replace("2026-11-25", pair)).get(0))
        .contains("/date: \"" + "x".repeat(59) + "…\" stands there");
  }

  @Test
  void bytesThatAreNoCharactersAreRefused() {
    // UTF-32 by its zeros, and then beyond the last character
    byte[] bytes = {0, 0, 0, '{', 0, 0x7f, 0x7f, 0x7f};
    assertThatThrownBy(() -> DOCUMENT.read(ByteSource.of(bytes)))
        .isInstanceOf(UnreadableInputException.class)
        .hasMessageStartingWith("document: it is no JSON: ")
        .hasMessageEndingWith("; accepted is a JSON document in UTF-8");
  }

  @Test
  void whatIsWrittenReachesTheStream() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DOCUMENT.write(SAMPLE, new BufferedOutputStream(bytes));
    assertThat(bytes.toString(StandardCharsets.UTF_8)).isEqualTo(DOCUMENT.text(SAMPLE));
  }

  @Test
  void emptyListsAreLeftOut() {
    Sample bare =
        new Sample(
            "n",
            Amounts.millimetres(2),
            Optional.empty(),
            List.of(),
            LocalDate.of(2026, 11, 25),
            false,
            1,
            Map.of(),
            new Round(Amounts.micrometres(10)));
    assertThat(DOCUMENT.text(bare))
        .doesNotContain("standings", "content")
        .contains("\"count\" : 1,");
  }

  @Test
  void objectsOnOneLineHoldTheirObjectsOnIt() {
    ObjectForm<Amount<Length>> inner = ObjectForm.nameless();
    var side = inner.required("side", Forms.amount(Kind.LENGTH), each -> each);
    inner.read(values -> values.get(side));
    ObjectForm<Amount<Length>> outer = ObjectForm.<Amount<Length>>nameless().onOneLine();
    var square = outer.required("square", inner, each -> each);
    outer.read(values -> values.get(square));
    ObjectForm<Amount<Length>> form = ObjectForm.named("two", "Two.");
    var one = form.required("one", outer, each -> each);
    form.read(values -> values.get(one));
    assertThat(new DocumentForm<>("two", 1, form).text(Amounts.millimetres(3)))
        .contains(
            "\"one\" : { \"square\" : { \"side\" : { \"value\" : 3, \"unit\" : \"mm\" } } }\n");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", " ", "{", "{\"a\": nope}", "{} {}", "{\"a\": 01}", "\u0000", "{\"a\": NaN}"})
  void whatIsNoJsonIsRefused(String text) {
    assertThat(problems(text)).isNotEmpty();
  }

  @Test
  void documentsWithoutEndAreRefused() {
    assertThat(problems("[".repeat(1000)).get(0)).contains("64 deep");
    assertThat(problems("{\"a\": \"" + "x".repeat(70_000) + "\"}").get(0))
        .contains("65536 characters");
    assertThat(problems("{\"a\": " + "1".repeat(5000) + "}").get(0)).contains("too large");
    DocumentLimits small = DocumentLimits.builder().bytes(1000).build();
    assertThatThrownBy(
            () ->
                DOCUMENT.read(
                    ByteSource.of(
                        ("[" + "1,".repeat(50_000) + "1]").getBytes(StandardCharsets.UTF_8)),
                    small))
        .isInstanceOf(UnreadableInputException.class)
        .hasMessageContaining("up to 1000 bytes");
    // 499 times twice, and neither kind nor version: a hundred of 501 are told
    assertThat(problems("{" + "\"a\":1,".repeat(500) + "\"b\":1}"))
        .hasSize(101)
        .last()
        .isEqualTo("document: 401 problems more are not told; accepted is none");
  }

  @Test
  void schemaAcceptsWhatIsWrittenAndRefusesWhatIsNot() {
    var schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(DOCUMENT.schema(), InputFormat.JSON);
    assertThat(schema.validate(DOCUMENT.text(SAMPLE), InputFormat.JSON)).isEmpty();
    assertThat(schema.validate(GOOD, InputFormat.JSON)).isEmpty();
    assertThat(schema.validate(GOOD.replace("\"count\"", "\"cuont\""), InputFormat.JSON))
        .hasSize(2);
    assertThat(schema.validate(GOOD.replace("round", "oval"), InputFormat.JSON)).isNotEmpty();
    assertThat(schema.validate(GOOD.replace("2,", "\"2\","), InputFormat.JSON)).isNotEmpty();
    for (String content : List.of("5", "{\"value\": 2}", "{\"value\": 2, \"unit\": 5}")) {
      String wrong = GOOD.replace("\"count\"", "\"content\": " + content + ", \"count\"");
      assertThat(schema.validate(wrong, InputFormat.JSON)).as(content).isNotEmpty();
    }
  }

  @Test
  void domainValueTellsAllItRefuses() {
    ObjectForm<WallLayer> form = ObjectForm.named("layer", "A layer.");
    var thickness = form.required("thickness", Forms.amount(Kind.LENGTH), WallLayer::thickness);
    form.read(
        values -> {
          throw new IllegalArgumentException(
              "layer: thickness is "
                  + values.get(thickness)
                  + "; accepted is more than zero; and density is 0; accepted is more than zero");
        });
    var document = new DocumentForm<>("layer", 1, form);
    assertThatThrownBy(
            () ->
                document.read(
                    ByteSource.of(
                        "{\"document\":\"layer\",\"schemaVersion\":1,\"thickness\":{\"value\":0,\"unit\":\"mm\"}}"
                            .getBytes(StandardCharsets.UTF_8))))
        .isInstanceOfSatisfying(
            UnreadableInputException.class, e -> assertThat(e.problems()).hasSize(2));
  }
}
