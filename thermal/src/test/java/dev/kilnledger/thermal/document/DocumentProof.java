package dev.kilnledger.thermal.document;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.kilnledger.core.document.Document;
import dev.kilnledger.core.reading.InputProblem;
import dev.kilnledger.core.reading.UnreadableInputException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/** What every kind of document has to stand. */
final class DocumentProof {
  private DocumentProof() {}

  /** Written, read back equal, and written the same again. */
  static <T> void readBack(Document<T> document, T value) {
    String text = document.text(value);
    assertThat(read(document, text)).isEqualTo(value);
    assertThat(document.text(read(document, text))).isEqualTo(text);
  }

  /** Read back in any locale, and valid by the schema. */
  static <T> void roundTrip(Document<T> document, T value) {
    readBack(document, value);
    String text = document.text(value);
    assertThat(violations(document, text)).isEmpty();
    Locale before = Locale.getDefault();
    try {
      for (String locale : List.of("tr-TR", "ar-EG-u-nu-arab", "de-DE")) {
        Locale.setDefault(Locale.forLanguageTag(locale));
        assertThat(document.text(value)).isEqualTo(text);
        assertThat(read(document, text)).isEqualTo(value);
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  static <T> T read(Document<T> document, String text) {
    try {
      return document.read(text);
    } catch (UnreadableInputException e) {
      throw new AssertionError(e);
    }
  }

  static List<String> violations(Document<?> document, String text) {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(document.schema(), InputFormat.JSON)
        .validate(text, InputFormat.JSON)
        .stream()
        .map(Object::toString)
        .toList();
  }

  static List<String> problems(Document<?> document, String text) {
    try {
      document.read(text);
      throw new AssertionError("was read");
    } catch (UnreadableInputException e) {
      return e.problems().stream().map(InputProblem::text).toList();
    }
  }

  /** A document of the first version is read, and written back byte by byte. */
  static <T> T pinned(Document<T> document, String resource) {
    String text = resource(resource);
    T value = read(document, text);
    assertThat(document.text(value)).isEqualTo(text);
    assertThat(violations(document, text)).isEmpty();
    return value;
  }

  /**
   * The schema in the jar is the one of the forms. Run with {@code -Dkilnledger.write=true} to
   * write it anew.
   */
  static void shipped(Document<?> document) throws IOException {
    String name =
        "META-INF/kilnledger/" + document.kind() + "-" + document.schemaVersion() + ".schema.json";
    if (Boolean.getBoolean("kilnledger.write")) {
      Path file = Path.of("src/main/resources", name);
      Files.createDirectories(Objects.requireNonNull(file.getParent()));
      Files.writeString(file, document.schema());
      return;
    }
    assertThat(document.schema()).isEqualTo(resource("/" + name));
  }

  static String resource(String name) {
    try (InputStream in = DocumentProof.class.getResourceAsStream(name)) {
      return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }
}
