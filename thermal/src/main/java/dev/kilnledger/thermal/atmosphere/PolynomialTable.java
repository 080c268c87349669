package dev.kilnledger.thermal.atmosphere;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** The polynomials of every species, read once from the table that comes with the library. */
final class PolynomialTable {
  private static final String RESOURCE = "species.csv";
  private static final int COEFFICIENTS = 7;

  private final Map<Species, List<StandardPolynomial>> pieces = new EnumMap<>(Species.class);

  /** Whether a species comes from the older report. */
  private final Map<Species, Boolean> older = new EnumMap<>(Species.class);

  private PolynomialTable(BufferedReader lines) throws IOException {
    lines
        .lines()
        .filter(line -> !line.startsWith("#"))
        .skip(1)
        .map(line -> line.split(",", -1))
        .forEach(this::add);
    pieces.replaceAll((species, list) -> Collections.unmodifiableList(list));
  }

  static PolynomialTable read() {
    try (InputStream in =
            Objects.requireNonNull(
                PolynomialTable.class.getResourceAsStream(RESOURCE), RESOURCE + " is missing");
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      return new PolynomialTable(lines);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + RESOURCE, e);
    }
  }

  private void add(String[] row) {
    Species species = Species.valueOf(row[0]);
    double[] a = new double[COEFFICIENTS];
    for (int i = 0; i < COEFFICIENTS; i++) {
      a[i] = Double.parseDouble(row[5 + i]);
    }
    older.put(species, row[1].equals("TM"));
    pieces
        .computeIfAbsent(species, key -> new ArrayList<>())
        .add(
            new StandardPolynomial(
                Double.parseDouble(row[3]),
                Double.parseDouble(row[4]),
                a,
                Double.parseDouble(row[12]),
                Double.parseDouble(row[13])));
  }

  List<StandardPolynomial> of(Species species) {
    return Objects.requireNonNull(pieces.get(species), species + " has no polynomial");
  }

  boolean isFromOlderReport(Species species) {
    return Objects.requireNonNull(older.get(species), species + " has no polynomial");
  }
}
