package dev.kilnledger.examples.catalogue;

import static dev.kilnledger.units.Amounts.cubicCentimetres;
import static dev.kilnledger.units.Amounts.millimetres;

import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.core.part.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * A part of the catalogue and the alloy it is wanted in.
 *
 * @param part the part
 * @param alloy the name of the alloy
 */
public record CatalogueRow(Part part, String alloy) {
  static final List<String> HEADER =
      List.of(
          "name", "volume (cm3)", "x (mm)", "y (mm)", "z (mm)", "thickest section (mm)", "alloy");
  private static final Pattern NUMBER = Pattern.compile("[0-9]{1,9}(\\.[0-9]{1,9})?");

  /**
   * Reads a record.
   *
   * @throws IllegalArgumentException with everything that is wrong with it
   */
  static CatalogueRow of(CsvRecord record) {
    if (!record.problem().isEmpty()) {
      throw new IllegalArgumentException(record.problem());
    }
    List<String> cells = record.cells();
    if (cells.size() != HEADER.size()) {
      throw new IllegalArgumentException(
          "has " + cells.size() + " cells; accepted are " + HEADER.size() + ": " + HEADER);
    }
    List<String> problems = new ArrayList<>();
    double[] numbers = new double[HEADER.size()];
    for (int at = 0; at < HEADER.size(); at++) {
      String cell = cells.get(at).strip();
      boolean number = at > 0 && at < HEADER.size() - 1;
      if (number && NUMBER.matcher(cell).matches()) {
        numbers[at] = Double.parseDouble(cell);
      } else if (number) {
        problems.add(told(at, cell, "digits with a point, such as 12.5"));
      } else if (cell.isEmpty()) {
        problems.add(told(at, cell, "any text"));
      }
    }
    if (!problems.isEmpty()) {
      throw new IllegalArgumentException(String.join("; and ", problems));
    }
    Part part =
        Part.builder()
            .name(cells.get(0).strip())
            .finishedVolume(cubicCentimetres(numbers[1]))
            .envelope(
                Envelope.of(
                    millimetres(numbers[2]), millimetres(numbers[3]), millimetres(numbers[4])))
            .thickestSection(millimetres(numbers[5]))
            .build();
    return new CatalogueRow(part, cells.get(HEADER.size() - 1).strip());
  }

  private static String told(int at, String cell, String accepted) {
    return HEADER.get(at) + " is \"" + cell + "\"; accepted is " + accepted;
  }
}
