package dev.kilnledger.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.openjdk.jmh.runner.BenchmarkList;
import org.openjdk.jmh.runner.BenchmarkListEntry;

class ResultsTableTest {
  private final ResultsTable table =
      new ResultsTable(
          List.of(
              new Measured("A.fast", 250, 5, 64),
              new Measured("A.slow", 10_000, Double.NaN, 20_000_000)));

  @Test
  void saysWhatWasReachedAndWhatWasNot() {
    assertThat(
            table.claims(
                List.of(
                    new Claim("thirty times as fast", "A.fast", "A.slow", 1.0 / 30),
                    new Claim("fifty times as fast", "A.fast", "A.slow", 1.0 / 50),
                    new Claim("within three times", "A.slow", "A.fast", 3),
                    new Claim("not measured", "A.fast", "B.other", 3))))
        .isEqualTo(
            """
            | what | ratio | must reach | reached |
            |---|---|---|---|
            | thirty times as fast | 1/40 | 1/30 | yes |
            | fifty times as fast | 1/40 | 1/50 | no |
            | within three times | 40 | 3.0 | no |
            """);
  }

  @Test
  void writesTimesAndBytesInUnitsThatReadWell() {
    assertThat(table.variants())
        .isEqualTo(
            """
            | variant | time | ± | allocated |
            |---|---|---|---|
            | `A.fast` | 250 ns | 5.0 ns | 64 B |
            | `A.slow` | 10 µs |  | 20 MB |
            """);
  }

  @Test
  void knowsTheUnitsOfTimePerCallOnly() {
    assertThat(Measured.nanosecondsIn("ms/op")).isEqualTo(1e6);
    assertThatThrownBy(() -> Measured.nanosecondsIn("ops/s"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("the unit ops/s is refused; accepted are ns/op, us/op, ms/op and s/op");
  }

  /** A claim about a method that was renamed would never be looked at. */
  @Test
  void claimsOnlyWhatIsMeasured() throws IOException {
    List<String> measured;
    try (var entries = getClass().getResourceAsStream(BenchmarkList.BENCHMARK_LIST)) {
      measured =
          BenchmarkList.readBenchmarkList(entries).stream()
              .map(BenchmarkListEntry::getUsername)
              .map(Measured::variant)
              .toList();
    }
    assertThat(Claims.ALL)
        .allSatisfy(claim -> assertThat(measured).contains(claim.subject(), claim.peer()));
  }
}
