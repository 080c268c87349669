package dev.kilnledger.examples.catalogue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Comma-separated values (RFC 4180, in UTF-8) record by record; lines may end in LF alone, and no
 * cell goes on in the next line, so that a quotation mark left open spoils one record only. A
 * record that is not well formed comes with its problem. Takes no more memory than one record, and
 * none longer than 10,000 characters.
 */
final class CsvRecords {
  private static final int LONGEST = 10_000;
  private static final int END = -1;

  private final BufferedReader in;
  private long line = 1;
  private long bytes;
  private int ahead;

  CsvRecords(InputStream utf8) throws IOException {
    in = new BufferedReader(new InputStreamReader(utf8, StandardCharsets.UTF_8));
    ahead = in.read();
    if (ahead == '\uFEFF') {
      read();
    }
  }

  /** {@return the next record that is not an empty line; nothing at the end} */
  Optional<CsvRecord> next() throws IOException {
    while (ahead == '\r' || ahead == '\n') {
      read();
    }
    if (ahead == END) {
      return Optional.empty();
    }
    long start = line;
    List<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    String problem = "";
    int length = 0;
    boolean quoted = false;
    boolean closed = false;
    while (ahead != END && ahead != '\r' && ahead != '\n') {
      int c = read();
      if (++length > LONGEST) {
        skipLine();
        return Optional.of(
            new CsvRecord(start, bytes, List.of(), "is longer than " + LONGEST + " characters"));
      }
      if (quoted) {
        if (c != '"') {
          cell.append((char) c);
        } else if (ahead == '"') {
          cell.append((char) read());
        } else {
          quoted = false;
          closed = true;
        }
      } else if (c == ',') {
        cells.add(cell.toString());
        cell.setLength(0);
        closed = false;
      } else if (c == '"' && cell.length() == 0 && !closed) {
        quoted = true;
      } else if (c == '"' || closed) {
        problem = "has a quotation mark inside cell " + (cells.size() + 1) + " that is not doubled";
        cell.append((char) c);
      } else {
        cell.append((char) c);
      }
    }
    cells.add(cell.toString());
    if (quoted) {
      problem =
          "opens a quotation mark in cell " + cells.size() + " that is not closed in its line";
    }
    if (cells.stream().anyMatch(text -> text.indexOf('\uFFFD') >= 0)) {
      problem = "holds bytes that are not UTF-8";
    }
    return Optional.of(new CsvRecord(start, bytes, cells, problem));
  }

  private void skipLine() throws IOException {
    while (ahead != END && ahead != '\n') {
      read();
    }
  }

  /** The next character; counts lines, and bytes as UTF-8 has them. */
  private int read() throws IOException {
    int c = ahead;
    ahead = in.read();
    if (c == '\n' || (c == '\r' && ahead != '\n')) {
      line++;
    }
    bytes += c < 0x80 ? 1 : c < 0x800 || Character.isSurrogate((char) c) ? 2 : 3;
    return c;
  }
}
