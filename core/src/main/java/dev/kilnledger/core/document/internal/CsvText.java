package dev.kilnledger.core.document.internal;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Records of fields as text by RFC 4180: commas between fields, quotes around fields that hold
 * commas, quotes or line ends, quotes in them doubled. Lines end with a carriage return and a line
 * feed, or, when read, with a line feed alone.
 */
final class CsvText {
  /** A line of fields; a field in quotes may reach over several lines. */
  record Row(int line, List<String> fields) {}

  /** What stands behind the text: no part of a plain field, and no quote. */
  private static final char END = '\0';

  private final String text;
  private final int longest;
  private final Reading reading;
  private final List<Row> rows = new ArrayList<>();
  private int at;
  private int line = 1;
  private int lineStart;

  private CsvText(String text, int longest, Reading reading) {
    this.text = text;
    this.longest = longest;
    this.reading = reading;
  }

  /** The records of a text; those that are none are told as problems and left out. */
  static List<Row> read(String text, int longest, Reading reading) {
    CsvText csv = new CsvText(text, longest, reading);
    while (csv.at < text.length()) {
      csv.row();
    }
    return csv.rows;
  }

  private void row() {
    int first = line;
    List<String> fields = new ArrayList<>();
    while (true) {
      String field = here() == '"' ? quoted() : plain();
      if (field == null) {
        return;
      }
      if (field.length() > longest) {
        refuse("a field of " + field.length() + " characters stands there", "up to " + longest);
        return;
      }
      fields.add(field);
      if (atEnd()) {
        endLine();
        rows.add(new Row(first, fields));
        return;
      }
      if (here() != ',') {
        tellWhatFollows(field);
        return;
      }
      at++;
    }
  }

  private void tellWhatFollows(String field) {
    if (here() == '"') {
      refuse(
          "a quote stands inside a field without quotes",
          "the field in quotes, with the quote doubled");
    } else if (at > 0 && text.charAt(at - 1) == '"') {
      refuse("something follows the closing quote of \"" + shown(field) + "\"", "a comma");
    } else {
      refuse("a control character stands there", "printable text, or the field in quotes");
    }
  }

  private String plain() {
    int start = at;
    while (here() != ',' && here() != '"' && here() >= ' ') {
      at++;
    }
    return text.substring(start, at);
  }

  /** The field in quotes; null where they are never closed, which is told. */
  private @Nullable String quoted() {
    StringBuilder field = new StringBuilder();
    int opened = at;
    int openedLine = line;
    int openedStart = lineStart;
    at++;
    while (at < text.length()) {
      char c = text.charAt(at++);
      if (c == '\n') {
        line++;
        lineStart = at;
      }
      if (c != '"') {
        field.append(c);
      } else if (here() == '"') {
        field.append('"');
        at++;
      } else {
        return field.toString();
      }
    }
    at = opened;
    line = openedLine;
    lineStart = openedStart;
    refuse("a quote is opened and never closed", "a closing quote");
    at = text.length();
    return null;
  }

  private void refuse(String what, String accepted) {
    reading.problem(
        "line " + line + ", character " + (at - lineStart + 1), what, accepted + " (RFC 4180)");
    int end = text.indexOf('\n', at);
    at = end < 0 ? text.length() : end;
    endLine();
  }

  private boolean atEnd() {
    return at >= text.length()
        || here() == '\n'
        || (here() == '\r' && at + 1 < text.length() && text.charAt(at + 1) == '\n');
  }

  private void endLine() {
    if (here() == '\r') {
      at++;
    }
    if (here() == '\n') {
      at++;
    }
    line++;
    lineStart = at;
  }

  private char here() {
    return at < text.length() ? text.charAt(at) : END;
  }

  private static String shown(String field) {
    return field.length() <= 20 ? field : field.substring(0, 20) + "…";
  }

  /** Adds a record. */
  static void write(List<String> fields, StringBuilder out) {
    for (int i = 0; i < fields.size(); i++) {
      out.append(i == 0 ? "" : ",").append(field(fields.get(i)));
    }
    out.append("\r\n");
  }

  private static String field(String field) {
    boolean plain =
        field.equals(field.strip())
            && field.chars().allMatch(c -> c >= ' ' && c != ',' && c != '"');
    return plain ? field : '"' + field.replace("\"", "\"\"") + '"';
  }
}
