package dev.kilnledger.costing.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Base64;
import java.util.Optional;

/**
 * Feeds a reader with mutated inputs, each of which has to be answered as the reader documents and
 * within a time. Short runs are a test, long ones and coverage-guided ones start here.
 */
public final class Fuzz {
  /** Far beyond what any small input takes, even on a machine that does much else. */
  static final long LONGEST_MILLIS = 30_000;

  private Fuzz() {}

  /** How many inputs a run found well formed, and what it ended with. */
  record Outcome(long accepted, Optional<Defect> defect) {}

  /** An input that is answered as it should not be, cut down to what is needed for it. */
  record Defect(String base64, Throwable thrown) {
    static Defect of(byte[] input, Throwable thrown) {
      return new Defect(Base64.getEncoder().encodeToString(input), thrown);
    }

    @Override
    public String toString() {
      return thrown + "\n  base64 " + base64;
    }
  }

  /** Feeds a reader; stops at the first defect. A reader that hangs is a defect as well. */
  static Outcome run(Reader reader, long inputs, long seed) throws InterruptedException {
    Worker worker = new Worker(reader, inputs, seed);
    Thread thread = new Thread(worker, "fuzz " + reader);
    thread.setDaemon(true);
    thread.start();
    while (thread.isAlive()) {
      thread.join(100);
      if (thread.isAlive() && System.nanoTime() - worker.since > LONGEST_MILLIS * 1_000_000) {
        AssertionError hangs = new AssertionError("takes more than " + LONGEST_MILLIS + " ms");
        hangs.setStackTrace(thread.getStackTrace());
        return new Outcome(worker.accepted, Optional.of(Defect.of(worker.input, hangs)));
      }
    }
    return new Outcome(worker.accepted, Optional.ofNullable(worker.defect));
  }

  /** What goes wrong with an input; empty if nothing does. */
  static Optional<Throwable> wrong(Reader reader, byte[] input) {
    try {
      reader.accepts(input.clone());
      return Optional.empty();
    } catch (IOException | RuntimeException | Error e) {
      return Optional.of(e);
    }
  }

  private static final class Worker implements Runnable {
    private final Reader reader;
    private final long inputs;
    private final Mutator mutator;
    private volatile byte[] input = new byte[0];
    private volatile long since = System.nanoTime();
    private volatile long accepted;
    private volatile Defect defect;

    Worker(Reader reader, long inputs, long seed) {
      this.reader = reader;
      this.inputs = inputs;
      this.mutator = new Mutator(seed, Seeds.of(reader), Seeds.words(reader));
    }

    @Override
    public void run() {
      long count = 0;
      for (long i = 0; i < inputs; i++) {
        byte[] next = mutator.next();
        input = next;
        since = System.nanoTime();
        try {
          count += reader.accepts(next) ? 1 : 0;
          accepted = count;
        } catch (IOException | RuntimeException | Error e) {
          defect = Defect.of(smallest(next, e.getClass()), e);
          return;
        }
      }
    }

    /** Cuts out whatever is not needed for the same kind of error. */
    private byte[] smallest(byte[] found, Class<?> kind) {
      byte[] small = found;
      for (int length = small.length / 2; length > 0; length /= 2) {
        for (int from = 0; from + length <= small.length; ) {
          byte[] without = Arrays.copyOf(small, small.length - length);
          System.arraycopy(small, from + length, without, from, small.length - from - length);
          since = System.nanoTime();
          if (wrong(reader, without).filter(e -> e.getClass() == kind).isPresent()) {
            small = without;
          } else {
            from += length;
          }
        }
      }
      return small;
    }
  }

  /**
   * Writes the seeds of a reader for a coverage-guided fuzzer.
   *
   * @param args the reader and an existing folder
   * @throws IOException if the seeds cannot be written
   */
  public static void main(String[] args) throws IOException {
    int number = 0;
    for (byte[] seed : Seeds.of(Reader.valueOf(args[0]))) {
      Files.write(Path.of(args[1], "seed" + ++number), seed);
    }
  }

  /**
   * The entry for a coverage-guided fuzzer; the system property {@code fuzz.reader} names the
   * reader.
   *
   * @param input any bytes
   * @throws IOException if the reader answers with another exception than it documents
   */
  public static void fuzzerTestOneInput(byte[] input) throws IOException {
    Reader.valueOf(System.getProperty("fuzz.reader", "UCUM")).accepts(input);
  }
}
