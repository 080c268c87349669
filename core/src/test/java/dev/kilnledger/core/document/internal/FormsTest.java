package dev.kilnledger.core.document.internal;

import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.core.document.Document;
import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.core.part.SelfWeightBeam;
import dev.kilnledger.core.part.SupportFacts;
import dev.kilnledger.core.reading.InputProblem;
import dev.kilnledger.core.reading.UnreadableInputException;
import dev.kilnledger.core.source.Standing;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.Kind;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Each form alone, as the one field of a document. */
class FormsTest {
  private static <T> Document<T> document(Form<T> form) {
    ObjectForm<T> whole = ObjectForm.named("one", "One.");
    var it = whole.required("it", form, each -> each);
    return new DocumentForm<>("one", 1, whole.read(values -> values.get(it)));
  }

  private static String text(String it) {
    return "{\"document\": \"one\", \"schemaVersion\": 1, \"it\": " + it + "}";
  }

  private static <T> T read(Form<T> form, String it) {
    try {
      return document(form).read(text(it));
    } catch (UnreadableInputException e) {
      throw new AssertionError(e);
    }
  }

  private static List<String> problems(Form<?> form, String it) {
    try {
      document(form).read(text(it));
      throw new AssertionError("was read");
    } catch (UnreadableInputException e) {
      return e.problems().stream().map(InputProblem::text).toList();
    }
  }

  /** What cannot be read is told once, and the value that would hold it is not asked. */
  private static void toldOnce(Form<?> form, String it, String problem) {
    List<Object> asked = new ArrayList<>();
    Form<?> asking = recording(form, asked);
    assertThat(problems(asking, it)).singleElement().asString().endsWith(problem);
    assertThat(asked).isEmpty();
  }

  private static <T> Form<T> recording(Form<T> form, List<Object> asked) {
    return form.as(
        value -> {
          asked.add(value);
          return value;
        },
        value -> value);
  }

  private static ObjectForm<String> named() {
    ObjectForm<String> form = ObjectForm.nameless();
    var name = form.required("name", Forms.TEXT, each -> each);
    return form.read(values -> values.get(name));
  }

  @Test
  void whatIsOfAnotherTypeIsToldOnce() {
    Form<Map<String, Long>> map = Forms.map(key -> key, key -> key, Forms.WHOLE);
    toldOnce(Forms.list(Forms.TEXT), "5", "/it: 5 stands there; accepted is a list");
    toldOnce(map, "5", "/it: 5 stands there; accepted is an object");
    toldOnce(named(), "5", "/it: 5 stands there; accepted is an object");
    toldOnce(
        Forms.STANDING,
        "5",
        "/it: 5 stands there; accepted is one of published, quoted, recomputed, common-practice,"
            + " from-memory, user");
    toldOnce(
        Forms.amountOf(Kind.MASS, Kind.VOLUME),
        "5",
        "/it: 5 stands there; accepted is a number and a UCUM unit code of mass, volume");
    for (String half : List.of("{\"value\": 2}", "{\"unit\": \"kg\"}")) {
      toldOnce(
          Forms.amount(Kind.MASS),
          half,
          "/it: an object stands there; accepted is mass such as {\"value\": 1.5, \"unit\":"
              + " \"kg\"}");
    }
    toldOnce(
        Forms.amount(Kind.MASS),
        "[]",
        "/it: a list stands there; accepted is mass such as {\"value\": 1.5, \"unit\": \"kg\"}");
  }

  @Test
  void missingFieldsSayWhatWouldStandThere() {
    Form<Map<String, Long>> map = Forms.map(key -> key, key -> key, Forms.WHOLE);
    for (Form<?> form : List.of(map, named(), named().as(name -> name, name -> name))) {
      ObjectForm<Object> outer = ObjectForm.nameless();
      outer.required("inner", form, each -> null);
      assertThat(problems(outer, "{}"))
          .singleElement()
          .asString()
          .endsWith("/it: the field inner is missing; accepted is an object");
    }
  }

  @Test
  void whatAnotherValueRefusesIsTold() {
    Form<Integer> even =
        Forms.COUNT.as(
            count -> {
              if (count % 2 != 0) {
                throw new IllegalArgumentException("the count is odd; accepted is an even one");
              }
              return count / 2;
            },
            half -> 2 * half);
    assertThat(read(even, "6")).isEqualTo(3);
    assertThat(document(even).text(3)).contains("\"it\" : 6\n");
    assertThat(problems(even, "5"))
        .singleElement()
        .asString()
        .endsWith("/it: the count is odd; accepted is an even one");
  }

  @Test
  void keysThatAreRefusedAreTold() {
    Form<Map<Integer, Long>> map = Forms.map(Integer::valueOf, String::valueOf, Forms.WHOLE);
    assertThat(read(map, "{\"12\": 3}")).isEqualTo(Map.of(12, 3L));
    assertThat(problems(map, "{\"12\": 3, \"twelve\": 4}"))
        .singleElement()
        .asString()
        .endsWith("/it/twelve: For input string: \"twelve\"; accepted is a value that fits");
  }

  @Test
  void numbersAreWithinTheRangeOfADouble() {
    assertThat(read(Forms.NUMBER, "-1.5e300")).isEqualTo(-1.5e300);
    for (String number : List.of("1e999", "-1e999")) {
      assertThat(problems(Forms.NUMBER, number))
          .singleElement()
          .asString()
          .endsWith(
              "/it: "
                  + number
                  + " stands there; accepted is a number within the range of a double");
    }
  }

  @Test
  void decimalsKeepTheirDigitsAndAreNothingElse() {
    assertThat(read(Forms.DECIMAL, "\"12.50\"")).isEqualTo(new BigDecimal("12.50"));
    assertThat(document(Forms.DECIMAL).text(new BigDecimal("12.50"))).contains("\"12.50\"");
    for (String wrong : List.of("\"1e3\"", "\"12,5\"", "\"\"", "\"0x1\"", "12.5")) {
      assertThat(problems(Forms.DECIMAL, wrong))
          .singleElement()
          .asString()
          .endsWith(" stands there; accepted is a decimal number as text, such as \"12.50\"");
    }
  }

  @Test
  void constantsStandInSmallLettersWithHyphens() {
    Form<Standing> form = Forms.choice(Standing.class);
    assertThat(read(form, "\"common-practice\"")).isEqualTo(Standing.COMMON_PRACTICE);
    assertThat(document(form).text(Standing.FROM_MEMORY)).contains("\"from-memory\"");
  }

  @Test
  void knownValuesAreNamed() {
    Form<String> form = Forms.known(List.of("steel", "bronze"), each -> each, named());
    assertThat(read(form, "\"bronze\"")).isEqualTo("bronze");
    assertThat(read(form, "{\"name\": \"brass\"}")).isEqualTo("brass");
    assertThat(problems(form, "\"cheese\""))
        .singleElement()
        .asString()
        .endsWith(
            "/it: \"cheese\" is not known; accepted is an object, or one of the names \"bronze\","
                + " \"steel\"");
  }

  @Test
  void emptySetsAreLeftOut() {
    ObjectForm<Set<Standing>> form = ObjectForm.named("one", "One.");
    var it = form.set("it", Forms.STANDING, each -> each);
    form.read(values -> Set.copyOf(values.get(it)));
    Document<Set<Standing>> document = new DocumentForm<>("one", 1, form);
    assertThat(document.text(Set.of())).doesNotContain("it");
    assertThat(document.text(Set.of(Standing.USER))).contains("\"it\" : [");
  }

  @Test
  void refusalsWithoutASuggestionAskForAValueThatFits() {
    assertThat(
            Refusal.problems(
                "line 3",
                "/a",
                new IllegalArgumentException(
                    "it is bent; and it is cut; accepted" + " are whole ones")))
        .containsExactly(
            InputProblem.of("line 3", "/a", "it is bent", "a value that fits"),
            InputProblem.of("line 3", "/a", "it is cut", "whole ones"));
  }

  /** The one field of a beam that the form adds: which end of it is held. */
  @Test
  void beamsAreHeldAsTheirFieldSays() {
    SupportFacts facts =
        SupportFacts.builder()
            .overhang(SelfWeightBeam.overhang(Amounts.millimetres(12), Amounts.millimetres(3)))
            .span(SelfWeightBeam.span(Amounts.millimetres(40), Amounts.millimetres(5)))
            .build();
    Document<SupportFacts> document =
        document(PartForms.support(new MaterialForms(MaterialLibrary.empty())));
    String text = document.text(facts);
    assertThat(read(PartForms.support(new MaterialForms(MaterialLibrary.empty())), it(text)))
        .isEqualTo(facts);
  }

  /** The field of a written document. */
  private static String it(String text) {
    return text.substring(text.indexOf("\"it\" : ") + 7, text.lastIndexOf('}'));
  }
}
