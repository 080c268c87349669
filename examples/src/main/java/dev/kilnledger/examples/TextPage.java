package dev.kilnledger.examples;

import java.util.Locale;

/** Plain text as it grows: headings, rows, and paragraphs filled to 100 columns. */
final class TextPage {
  private static final int WIDTH = 100;
  private final StringBuilder text = new StringBuilder();

  void title(String title) {
    underlined(title, "=");
  }

  void heading(String heading) {
    text.append('\n');
    underlined(heading, "-");
  }

  private void underlined(String words, String with) {
    text.append(words).append('\n').append(with.repeat(words.length())).append('\n');
  }

  void row(String format, Object... cells) {
    end(String.format(Locale.ROOT, format, cells));
  }

  /** A marker, then words; further lines are indented to the first word. */
  void paragraph(String marker, String words) {
    StringBuilder line = new StringBuilder(marker);
    int indent = marker.length();
    for (String word : words.split(" ", -1)) {
      if (line.length() > indent && line.length() + 1 + word.length() > WIDTH) {
        end(line.toString());
        line = new StringBuilder(" ".repeat(indent));
      }
      line.append(line.length() > indent ? " " : "").append(word);
    }
    end(line.toString());
  }

  private void end(String line) {
    text.append(line.stripTrailing()).append('\n');
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
