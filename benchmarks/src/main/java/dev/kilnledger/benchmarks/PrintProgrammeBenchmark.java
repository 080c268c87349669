package dev.kilnledger.benchmarks;

import dev.kilnledger.core.gcode.GCodeReader;
import dev.kilnledger.core.gcode.PrintProgramme;
import dev.kilnledger.core.reading.ByteSource;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Reading a print programme of 200 MB from a file in a heap of 64 MB: {@link GCodeReader} with all
 * its checks and figures (filament of each tool, extent, first layer, least time) against {@link
 * WordCounter}, which makes words of the bytes and no more. Both read a decimal number as a whole
 * number over a power of ten, which rounds once.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx64m")
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class PrintProgrammeBenchmark {
  /** How long the programme is. */
  @Param("200")
  public int megabytes = 200;

  private Path file = Path.of("");

  /**
   * Writes the programme.
   *
   * @throws IOException if it cannot
   */
  @Setup
  public void write() throws IOException {
    file = Files.createTempFile("programme", ".gcode");
    try (OutputStream out = Files.newOutputStream(file)) {
      PrintProgrammeText.write(out, megabytes * 1_000_000L);
    }
  }

  /**
   * Removes the programme.
   *
   * @throws IOException if it cannot
   */
  @TearDown
  public void remove() throws IOException {
    Files.delete(file);
  }

  /**
   * {@return what the programme extrudes}
   *
   * @throws IOException if it cannot be read
   */
  @Benchmark
  public PrintProgramme programme() throws IOException {
    return GCodeReader.standard().read(ByteSource.of(file));
  }

  /**
   * {@return the words, summed by letter}
   *
   * @throws IOException if it cannot be read
   */
  @Benchmark
  public Object words() throws IOException {
    WordCounter words = new WordCounter();
    try (InputStream in = Files.newInputStream(file)) {
      words.read(in);
    }
    return words;
  }
}
