package dev.kilnledger.core.source;

/** How a figure was come by, the most reliable first. */
public enum Standing {
  /** Read in the publication that the source names. */
  PUBLISHED("published"),
  /** Read in a sheet or review that quotes the publication. */
  QUOTED("quoted in a public data sheet"),
  /** Computed here from published figures. */
  RECOMPUTED("recomputed"),
  /** Known in the trade; no publication was read. */
  COMMON_PRACTICE("common practice, no source"),
  /** Recalled; to be looked up before it decides anything. */
  FROM_MEMORY("from memory"),
  /** Stated by the user of the library: measured, or read off a data sheet of their own. */
  USER("stated by the user");

  private final String words;

  Standing(String words) {
    this.words = words;
  }

  /**
   * The standing in words, such as "from memory".
   *
   * @return the words, lower case
   */
  public String words() {
    return words;
  }
}
