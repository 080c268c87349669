package dev.kilnledger.benchmarks;

import dev.kilnledger.core.mesh.MeshMeasure;
import dev.kilnledger.core.mesh.MeshSize;
import dev.kilnledger.core.mesh.StlFile;
import dev.kilnledger.core.reading.ByteSource;
import dev.kilnledger.units.Amounts;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The size of a body in a binary STL file of 1,000,000 facets, 50 MB: volume, area and box, and
 * whether the mesh is closed, with all that is checked of the file ({@link MeshMeasure} without its
 * section), against {@link FacetAdder}, which adds up volume, area and box alone and checks
 * nothing. For scale also the measure with its thickest section, which goes through the file once
 * more and through two million cubes. All count in doubles.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx64m")
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class MeshBenchmark {
  int around = 1000;
  int across = 500;

  private Path file = Path.of("");

  /**
   * Writes the mesh.
   *
   * @throws IOException if it cannot
   */
  @Setup
  public void write() throws IOException {
    file = Files.createTempFile("torus", ".stl");
    TorusFile.write(file, around, across);
  }

  /**
   * Removes the mesh.
   *
   * @throws IOException if it cannot
   */
  @TearDown
  public void remove() throws IOException {
    Files.delete(file);
  }

  /**
   * {@return the size without the thickest section}
   *
   * @throws IOException if it cannot be read
   */
  @Benchmark
  public MeshSize size() throws IOException {
    return MeshMeasure.withoutSection().measure(mesh());
  }

  /**
   * {@return the size with the thickest section}
   *
   * @throws IOException if it cannot be read
   */
  @Benchmark
  public MeshSize sizeWithSection() throws IOException {
    return MeshMeasure.standard().measure(mesh());
  }

  private StlFile mesh() {
    return StlFile.of(ByteSource.of(file), Amounts.millimetres(1));
  }

  /**
   * {@return the sums of a hand-written loop}
   *
   * @throws IOException if it cannot be read
   */
  @Benchmark
  public Object sums() throws IOException {
    FacetAdder sums = new FacetAdder();
    try (InputStream in = Files.newInputStream(file)) {
      sums.read(in);
    }
    return sums;
  }
}
