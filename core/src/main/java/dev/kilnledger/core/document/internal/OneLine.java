package dev.kilnledger.core.document.internal;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.PrettyPrinter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;

/** Writes a small value on one line of a document that is indented elsewhere. */
final class OneLine {
  /** Writes something. */
  interface Writing {
    void write() throws IOException;
  }

  private OneLine() {}

  static void write(JsonGenerator out, Writing writing) throws IOException {
    PrettyPrinter outer = out.getPrettyPrinter();
    if (outer == null) {
      writing.write();
      return;
    }
    out.setPrettyPrinter(
        new DefaultPrettyPrinter()
            .withObjectIndenter(DefaultPrettyPrinter.FixedSpaceIndenter.instance));
    writing.write();
    out.setPrettyPrinter(outer);
  }
}
