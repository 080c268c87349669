package dev.kilnledger.core.document.internal;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;

/** Indents by two spaces, with line feeds, and writes small objects on one line. */
final class DocumentPrinter extends DefaultPrettyPrinter {
  private static final long serialVersionUID = 1;

  private boolean nextOnOneLine;
  private int depthOnOneLine;

  DocumentPrinter() {
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    indentObjectsWith(indenter);
    indentArraysWith(indenter);
  }

  /** Has the object that is started next written on one line. */
  static void onOneLine(JsonGenerator out) {
    if (out.getPrettyPrinter() instanceof DocumentPrinter printer) {
      printer.nextOnOneLine = true;
    }
  }

  @Override
  public void writeStartObject(JsonGenerator out) throws IOException {
    if (nextOnOneLine || depthOnOneLine > 0) {
      nextOnOneLine = false;
      depthOnOneLine++;
      out.writeRaw("{ ");
    } else {
      super.writeStartObject(out);
    }
  }

  @Override
  public void beforeObjectEntries(JsonGenerator out) throws IOException {
    if (depthOnOneLine == 0) {
      super.beforeObjectEntries(out);
    }
  }

  @Override
  public void writeObjectEntrySeparator(JsonGenerator out) throws IOException {
    if (depthOnOneLine > 0) {
      out.writeRaw(", ");
    } else {
      super.writeObjectEntrySeparator(out);
    }
  }

  @Override
  public void writeEndObject(JsonGenerator out, int entries) throws IOException {
    if (depthOnOneLine > 0) {
      depthOnOneLine--;
      out.writeRaw(" }");
    } else {
      super.writeEndObject(out, entries);
    }
  }
}
