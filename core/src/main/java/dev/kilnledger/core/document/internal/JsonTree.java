package dev.kilnledger.core.document.internal;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import dev.kilnledger.core.document.DocumentLimits;
import dev.kilnledger.core.reading.ByteSource;
import dev.kilnledger.core.reading.InputProblem;
import java.io.CharConversionException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads JSON into values that know their place; keys that stand twice are problems. */
final class JsonTree {
  private static final String ACCEPTED = "a JSON document in UTF-8";

  private final JsonParser parser;
  private final Reading reading;

  private JsonTree(JsonParser parser, Reading reading) {
    this.parser = parser;
    this.reading = reading;
  }

  /** The value of a document; null where it is no JSON or beyond the limits, told as a problem. */
  static @Nullable JsonValue read(ByteSource source, DocumentLimits limits, Reading reading)
      throws IOException {
    JsonFactory factory =
        JsonFactory.builder()
            .streamReadConstraints(
                StreamReadConstraints.builder()
                    .maxDocumentLength(limits.bytes())
                    .maxNestingDepth(limits.depth())
                    .maxStringLength(limits.textLength())
                    .maxNameLength(1000)
                    .maxNumberLength(100)
                    .build())
            .build();
    try (InputStream in = source.open();
        JsonParser parser = factory.createParser(in)) {
      JsonTree tree = new JsonTree(parser, reading);
      if (parser.nextToken() == null) {
        reading.problem("line 1, column 1, /", "the document is empty", "a JSON object");
        return null;
      }
      JsonValue value = tree.value("");
      if (parser.nextToken() != null) {
        reading.problem(tree.where(), "something follows the document", "its end");
      }
      return value;
    } catch (CharConversionException e) {
      reading.problem("document", "it is no JSON: " + e.getMessage(), ACCEPTED);
      return null;
    } catch (JacksonException e) {
      JsonLocation at = e.getLocation();
      String where =
          at == null ? "document" : "line " + at.getLineNr() + ", column " + at.getColumnNr();
      boolean limit = e instanceof StreamConstraintsException;
      reading.problem(
          where,
          (limit ? "it is too large: " : "it is no JSON: ") + e.getOriginalMessage(),
          limit
              ? "up to "
                  + limits.bytes()
                  + " bytes, "
                  + limits.depth()
                  + " deep, texts of up to "
                  + limits.textLength()
                  + " characters"
              : ACCEPTED);
      return null;
    }
  }

  private String where() {
    JsonLocation at = parser.currentTokenLocation();
    return "line " + at.getLineNr() + ", column " + at.getColumnNr();
  }

  private JsonValue value(String path) throws IOException {
    JsonLocation at = parser.currentTokenLocation();
    int line = at.getLineNr();
    int column = at.getColumnNr();
    return switch (parser.currentToken()) {
      case START_OBJECT -> JsonValue.object(fields(path), line, column);
      case START_ARRAY -> JsonValue.list(items(path), line, column);
      case VALUE_STRING -> scalar(JsonValue.Type.TEXT, line, column);
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> scalar(JsonValue.Type.NUMBER, line, column);
      case VALUE_TRUE, VALUE_FALSE -> scalar(JsonValue.Type.BOOLEAN, line, column);
      default -> scalar(JsonValue.Type.NULL, line, column);
    };
  }

  private JsonValue scalar(JsonValue.Type type, int line, int column) throws IOException {
    return JsonValue.scalar(type, whole(parser.getText()), line, column);
  }

  /** A half of a pair of surrogates is no character, and could not be written again. */
  private String whole(String text) {
    if (StandardCharsets.UTF_8.newEncoder().canEncode(text)) {
      return text;
    }
    reading.problem(where(), "half a Unicode character stands there", "whole ones");
    return new String(text.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8);
  }

  private Map<String, JsonValue> fields(String path) throws IOException {
    Map<String, JsonValue> fields = new LinkedHashMap<>();
    while (parser.nextToken() == JsonToken.FIELD_NAME) {
      String where = where();
      String name = whole(parser.currentName());
      parser.nextToken();
      String field = path + "/" + Form.escaped(name);
      if (fields.putIfAbsent(name, value(field)) != null) {
        reading.problem(
            InputProblem.of(where + ", " + field, field, "the field stands twice", "once"));
      }
    }
    return fields;
  }

  private List<JsonValue> items(String path) throws IOException {
    List<JsonValue> items = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      items.add(value(path + "/" + items.size()));
    }
    return items;
  }
}
