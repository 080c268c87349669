package dev.kilnledger.benchmarks;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** Writes what was measured as tables: the claims with what was reached, and every variant. */
final class ResultsTable {
  private final Map<String, Measured> measured = new TreeMap<>();

  ResultsTable(Collection<Measured> measured) {
    measured.forEach(each -> this.measured.put(each.variant(), each));
  }

  /**
   * {@return the claims whose two sides were measured, with the ratio and whether it was reached}
   */
  String claims(List<Claim> claims) {
    StringBuilder text =
        new StringBuilder("| what | ratio | must reach | reached |\n|---|---|---|---|\n");
    for (Claim claim : claims) {
      Measured subject = measured.get(claim.subject());
      Measured peer = measured.get(claim.peer());
      if (subject != null && peer != null) {
        double ratio = subject.nanoseconds() / peer.nanoseconds();
        text.append("| ").append(claim.what()).append(" | ").append(ratio(ratio));
        text.append(" | ").append(ratio(claim.atMost())).append(" | ");
        text.append(ratio <= claim.atMost() ? "yes" : "no").append(" |\n");
      }
    }
    return text.toString();
  }

  /**
   * {@return every variant with its time, the half width of its interval, and what it allocated}
   */
  String variants() {
    StringBuilder text =
        new StringBuilder("| variant | time | ± | allocated |\n|---|---|---|---|\n");
    for (Measured each : measured.values()) {
      text.append("| `").append(each.variant()).append("` | ").append(time(each.nanoseconds()));
      text.append(" | ").append(Double.isNaN(each.error()) ? "" : time(each.error()));
      text.append(" | ").append(bytes(each.bytes())).append(" |\n");
    }
    return text.toString();
  }

  /** {@return a ratio as people say it: 2.4 times, or 1/50} */
  static String ratio(double ratio) {
    return ratio >= 1 || ratio > 0.5 ? figure(ratio) : "1/" + figure(1 / ratio);
  }

  static String time(double nanoseconds) {
    if (nanoseconds < 1e3) {
      return figure(nanoseconds) + " ns";
    }
    if (nanoseconds < 1e6) {
      return figure(nanoseconds / 1e3) + " µs";
    }
    return nanoseconds < 1e9 ? figure(nanoseconds / 1e6) + " ms" : figure(nanoseconds / 1e9) + " s";
  }

  static String bytes(double bytes) {
    if (Double.isNaN(bytes)) {
      return "";
    }
    if (bytes < 1e4) {
      return Math.round(bytes) + " B";
    }
    return bytes < 1e7 ? Math.round(bytes / 1e3) + " kB" : Math.round(bytes / 1e6) + " MB";
  }

  /** Two figures below ten, whole numbers from there. */
  private static String figure(double value) {
    return String.format(Locale.ROOT, value < 10 ? "%.1f" : "%,.0f", value);
  }
}
