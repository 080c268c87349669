package dev.kilnledger.core.document.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.core.document.DocumentLimits;
import dev.kilnledger.core.reading.ByteSource;
import dev.kilnledger.core.reading.InputProblem;
import dev.kilnledger.core.reading.UnreadableInputException;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.Kind;
import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;

class TableFormTest {
  /** How many of a thing for how much. */
  record Rate(int from, String price) {}

  /** What an offer may say of a thing. */
  record Offer(
      String name,
      Amount<Mass> content,
      Optional<String> code,
      Optional<Boolean> owned,
      List<Rate> rates,
      Optional<String> place) {}

  private static final TableForm<Offer> TABLE = table();

  private static TableForm<Offer> table() {
    ObjectForm<Rate> rate = ObjectForm.nameless();
    var from = rate.required("from", Forms.COUNT, Rate::from);
    ObjectForm<String> money = ObjectForm.nameless();
    var value = money.required("value", Forms.TEXT, each -> each);
    money.read(values -> values.get(value));
    var price = rate.required("price", money, Rate::price);
    rate.read(values -> new Rate(values.get(from), values.get(price)));
    ObjectForm<String> stored = ObjectForm.nameless();
    var place = stored.required("place", Forms.TEXT, each -> each);
    stored.read(values -> values.get(place));
    ObjectForm<Offer> form = ObjectForm.named("offer", "An offer.");
    var name = form.required("name", Forms.TEXT, Offer::name);
    var content = form.required("content", Forms.amount(Kind.MASS), Offer::content);
    var code = form.optional("code", Forms.TEXT, Offer::code);
    var owned = form.optional("owned", Forms.TRUTH, Offer::owned);
    var rates = form.list("rates", rate, Offer::rates);
    var store = form.optional("stored", stored, Offer::place);
    form.read(
        values ->
            new Offer(
                values.get(name),
                values.get(content),
                values.get(code),
                values.get(owned),
                values.get(rates),
                values.get(store)));
    return new TableForm<>(form)
        .required("name", Cell.TEXT)
        .required("content", Cell.AMOUNT)
        .optional("code", Cell.PLAIN)
        .optional("owned", Cell.TRUTH)
        .optional("rates", Cell.pairs("from", "price.value"))
        .optional("stored.place", Cell.TEXT);
  }

  private static Offer offer(String name, double grams) {
    return new Offer(
        name,
        Amounts.grams(grams),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        Optional.empty());
  }

  private static final Offer FULL =
      new Offer(
          "wire, thin",
          Amounts.grams(500),
          Optional.of("00712"),
          Optional.of(true),
          List.of(new Rate(5, "74.00"), new Rate(10, "70.00")),
          Optional.of("shelf"));

  private static List<Offer> read(String text, DocumentLimits limits) throws IOException {
    return TABLE.read(ByteSource.of(text.getBytes(StandardCharsets.UTF_8)), limits);
  }

  private static List<Offer> read(String text) throws IOException {
    return read(text, DocumentLimits.standard());
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
  void rowsAreWrittenWithTheColumnsThatHoldSomething() throws IOException {
    assertThat(TABLE.text(List.of(offer("powder", 2.5))))
        .isEqualTo("name,content\r\npowder,2.5 g\r\n");
    String full =
        """
        name,content,code,owned,rates,stored.place
        "wire, thin",500 g,00712,true,5: 74.00; 10: 70.00,shelf
        powder,2.5 g,,,,
        """
            .replace("\n", "\r\n");
    assertThat(TABLE.text(List.of(FULL, offer("powder", 2.5)))).isEqualTo(full);
    assertThat(read(full)).containsExactly(FULL, offer("powder", 2.5));
    assertThat(TABLE.text(List.of())).isEqualTo("name,content\r\n");
    assertThat(read("name,content\n")).isEmpty();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    TABLE.write(List.of(FULL, offer("powder", 2.5)), new BufferedOutputStream(bytes));
    assertThat(bytes.toString(StandardCharsets.UTF_8)).isEqualTo(full);
  }

  @Test
  void columnsComeInAnyOrderAndAfterAByteOrderMark() throws IOException {
    assertThat(read("\uFEFFcontent,name\n1 kg,powder\n")).containsExactly(offer("powder", 1000));
  }

  /** A ratio has no unit to write, and where there is no amount nothing is written. */
  @Test
  void ratiosStandAsNumbersAndAmountsMayBeMissing() throws IOException {
    record Share(Amount<Dimensionless> ratio, Optional<Amount<Mass>> mass) {}
    ObjectForm<Share> form = ObjectForm.named("share", "A share.");
    var ratio = form.required("ratio", Forms.amount(Kind.RATIO), Share::ratio);
    var mass = form.optional("mass", Forms.amount(Kind.MASS), Share::mass);
    form.read(values -> new Share(values.get(ratio), values.get(mass)));
    TableForm<Share> table =
        new TableForm<>(form).required("ratio", Cell.AMOUNT).optional("mass", Cell.AMOUNT);
    List<Share> shares =
        List.of(
            new Share(Amounts.ratio(0.5), Optional.of(Amounts.grams(2))),
            new Share(Amounts.ratio(7), Optional.empty()));
    String text = "ratio,mass\r\n0.5,2 g\r\n7,\r\n";
    assertThat(table.text(shares)).isEqualTo(text);
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    assertThat(table.read(ByteSource.of(bytes), DocumentLimits.standard())).isEqualTo(shares);
  }

  /** What spreadsheets take for a formula stands behind an apostrophe. */
  @Test
  void textsThatBeginLikeFormulasAreGuarded() throws IOException {
    for (String text : List.of("=1+1", "+1", "-1", "@a", "'a", "''", "'=1", "a'", "a=1")) {
      String written = TABLE.text(List.of(offer(text, 1)));
      boolean guarded = "=+-@'".indexOf(text.charAt(0)) >= 0;
      assertThat(written).isEqualTo("name,content\r\n" + (guarded ? "'" : "") + text + ",1 g\r\n");
      assertThat(read(written)).containsExactly(offer(text, 1));
    }
    // an apostrophe before anything else is part of the text
    assertThat(read("name,content\n'a,1 g\n")).containsExactly(offer("'a", 1));
  }

  @Test
  void headersAreCheckedFirst() {
    assertThat(problems(""))
        .containsExactly(
            "line 1: there is no header; accepted is name,content,code,owned,rates,stored.place");
    assertThat(problems("name,colour,name\na,b\n"))
        .containsExactly(
            "line 1, column 2: the column \"colour\" is not known; accepted is"
                + " name,content,code,owned,rates,stored.place, with commas between them",
            "line 1, column 3: the column name stands twice; accepted is once",
            "line 1: the column content is missing; accepted is a header with it");
  }

  @Test
  void cellsThatAreNotOfTheirFormAreTold() {
    assertThat(
            problems(
                """
                name,content,owned,rates
                a,1 g
                b,many g,true,
                c,1 g,yes,5
                d,7,false,x: 1
                ,1 g,,
                """))
        .satisfiesExactly(
            p ->
                assertThat(p)
                    .isEqualTo("line 2: 2 fields stand there; accepted is 4 as in the header"),
            p -> assertThat(p).startsWith("line 3, column content: \"many g\" stands there"),
            p -> assertThat(p).startsWith("line 4, column owned: \"yes\" stands there"),
            p -> assertThat(p).startsWith("line 4, column rates.0: the field price is missing"),
            p -> assertThat(p).startsWith("line 5, column content: unit one does not measure mass"),
            p -> assertThat(p).startsWith("line 5, column rates.0.from: \"x\" stands there"),
            p -> assertThat(p).startsWith("line 6: the field name is missing"));
  }

  @Test
  void tablesThatAreTooLargeOrNoTextAreRefused() throws IOException {
    String text = "name,content\nab,1 g\n"; // 20 bytes
    DocumentLimits.Builder limits = DocumentLimits.builder();
    assertThat(read(text, limits.bytes(20).build())).hasSize(1);
    assertThatThrownBy(() -> read(text, limits.bytes(19).build()))
        .hasMessage("table: it is too large; accepted is up to 19 bytes");
    byte[] bytes = {'n', (byte) 0xff, 'm'};
    assertThatThrownBy(() -> TABLE.read(ByteSource.of(bytes), DocumentLimits.standard()))
        .hasMessage("table: its bytes are no UTF-8; accepted is text in UTF-8");
  }
}
