package dev.kilnledger.examples.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.spark.api.java.JavaSparkContext;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SparkCatalogueTest {
  @TempDir private Path directory;

  /** Rows of four sizes in two alloys, every tenth of an alloy that the workshop does not have. */
  private Path catalogue(int rows) throws IOException {
    StringBuilder text = new StringBuilder(String.join(",", CatalogueRow.HEADER)).append('\n');
    for (int row = 1; row <= rows; row++) {
      String alloy = row % 10 == 0 ? "lead" : row % 2 == 0 ? "copper" : "tin bronze 90/10";
      text.append("\"part, ").append(row).append("\",").append(2 + row % 4 * 0.5);
      text.append(",30,18,12,5,").append(alloy).append('\n');
    }
    return Files.writeString(directory.resolve("catalogue.csv"), text);
  }

  /** The totals of the plain batch, which is tested by itself, to the last decimal. */
  @Test
  void totalsAreThoseOfThePlainBatch() throws IOException {
    Path catalogue = catalogue(400);
    CatalogueTotals alone = SparkCatalogue.alone(catalogue, 2);
    assertThat(alone.priced()).isEqualTo(360);
    assertThat(alone.refused()).isEqualTo(40);
    try (JavaSparkContext spark = SparkCatalogue.local(2)) {
      for (int parts : List.of(1, 7)) {
        assertThat(SparkCatalogue.price(spark, catalogue, parts)).isEqualTo(alone);
      }
    }
  }
}
