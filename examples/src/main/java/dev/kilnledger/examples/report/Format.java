package dev.kilnledger.examples.report;

/** For what a picture is drawn: the same figure is in the page once in each, and one is shown. */
enum Format {
  /** For desks and paper. */
  WIDE(720),
  /** For a phone of 380 pixels: drawn anew, not scaled, so that its words stay legible. */
  NARROW(340);

  private final int width;

  Format(int width) {
    this.width = width;
  }

  /** The width in pixels. */
  int width() {
    return width;
  }

  /** The name in ids and style sheet. */
  String word() {
    return this == WIDE ? "wide" : "narrow";
  }
}
