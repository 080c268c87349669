package dev.kilnledger.core.document;

import dev.kilnledger.core.reading.ByteSource;
import dev.kilnledger.core.reading.UnreadableInputException;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * How one kind of value stands in a JSON document. The forms are stateless and may be shared.
 *
 * @param <T> the value
 */
public interface Document<T> {
  /** {@return the kind of document, as its field {@code "document"} states it} */
  String kind();

  /** {@return the version of its form, as its field {@code "schemaVersion"} states it} */
  int schemaVersion();

  /**
   * {@return the JSON Schema (2020-12) of the document; the jar holds the same text as {@code
   * META-INF/kilnledger/KIND-VERSION.schema.json}}
   */
  String schema();

  /**
   * Reads a document within the standard limits.
   *
   * @param source its bytes, UTF-8
   * @return the value
   * @throws UnreadableInputException if it is not such a document, with all problems
   * @throws IOException if the bytes cannot be read
   */
  default T read(ByteSource source) throws IOException {
    return read(source, DocumentLimits.standard());
  }

  /**
   * Reads a document from text within the standard limits.
   *
   * @param text the document
   * @return the value
   * @throws UnreadableInputException if it is not such a document, with all problems
   */
  default T read(String text) throws UnreadableInputException {
    try {
      return read(ByteSource.of(text.getBytes(StandardCharsets.UTF_8)));
    } catch (UnreadableInputException e) {
      throw e;
    } catch (IOException e) {
      throw new UncheckedIOException("bytes in memory can always be read", e);
    }
  }

  /**
   * Reads a document.
   *
   * @param source its bytes, UTF-8
   * @param limits how large and deep it may be
   * @return the value
   * @throws UnreadableInputException if it is not such a document, with all problems
   * @throws IOException if the bytes cannot be read
   */
  T read(ByteSource source, DocumentLimits limits) throws IOException;

  /**
   * Writes a document, indented, in UTF-8, the same for equal values.
   *
   * @param value the value
   * @param out takes the bytes; it is flushed and left open
   * @throws IOException if they cannot be written
   */
  void write(T value, OutputStream out) throws IOException;

  /**
   * The document as text.
   *
   * @param value the value
   * @return the text, with line feeds
   */
  String text(T value);
}
