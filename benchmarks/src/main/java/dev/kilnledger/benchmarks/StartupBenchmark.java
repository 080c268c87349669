package dev.kilnledger.benchmarks;

import dev.kilnledger.examples.FirstProgram;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
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
 * From the start of a JVM to its end, one result printed: the first program of the README, which
 * works out a passage and a statement of costs, against a main that prints a line, at once and
 * after a second. Twice: as it is, and with class-data sharing, from an archive that one run has
 * left.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 2)
@Measurement(iterations = 10)
public class StartupBenchmark {
  @SuppressWarnings("NullAway.Init") // set up before each use
  private FreshJvm jvm;

  private List<String> sharing = List.of();

  /**
   * Packs the class path and makes the archive.
   *
   * @throws IOException if a file cannot be written
   * @throws InterruptedException if the thread is interrupted
   */
  @Setup
  public void start() throws IOException, InterruptedException {
    jvm = new FreshJvm();
    Path archive = jvm.file("classes.jsa");
    jvm.run(List.of("-XX:ArchiveClassesAtExit=" + archive, "-Xlog:cds=off"), FirstProgram.class);
    sharing = List.of("-XX:SharedArchiveFile=" + archive, "-Xshare:on");
  }

  /**
   * Deletes the files.
   *
   * @throws IOException if that fails
   */
  @TearDown
  public void end() throws IOException {
    jvm.close();
  }

  /**
   * {@return what the first program prints}
   *
   * @throws IOException if the JVM cannot be started
   * @throws InterruptedException if the thread is interrupted
   */
  @Benchmark
  public String firstProgram() throws IOException, InterruptedException {
    return jvm.run(List.of(), FirstProgram.class);
  }

  /**
   * {@return what the first program prints, its classes read from an archive}
   *
   * @throws IOException if the JVM cannot be started
   * @throws InterruptedException if the thread is interrupted
   */
  @Benchmark
  public String firstProgramShared() throws IOException, InterruptedException {
    return jvm.run(sharing, FirstProgram.class);
  }

  /**
   * {@return a line}
   *
   * @throws IOException if the JVM cannot be started
   * @throws InterruptedException if the thread is interrupted
   */
  @Benchmark
  public String emptyMain() throws IOException, InterruptedException {
    return jvm.run(List.of(), EmptyMain.class);
  }

  /**
   * {@return a line, printed after a second}
   *
   * @throws IOException if the JVM cannot be started
   * @throws InterruptedException if the thread is interrupted
   */
  @Benchmark
  public String emptyMainAfterOneSecond() throws IOException, InterruptedException {
    return jvm.run(List.of(), EmptyMain.class, "1000");
  }
}
