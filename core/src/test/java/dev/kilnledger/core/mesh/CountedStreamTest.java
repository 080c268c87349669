package dev.kilnledger.core.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.core.progress.Progress;
import dev.kilnledger.core.reading.ByteSource;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class CountedStreamTest {
  private static final byte[] EIGHT = {1, 2, 3, 4, 5, 6, 7, (byte) 0x80};

  private final List<Double> heard = new ArrayList<>();

  private static ByteSource sized(long size) {
    return new ByteSource() {
      @Override
      public InputStream open() {
        return new ByteArrayInputStream(EIGHT);
      }

      @Override
      public long size() {
        return size;
      }
    };
  }

  @Test
  void tellsTheShareOfTheSizeThatIsRead() throws IOException {
    try (CountedStream in = new CountedStream(ByteSource.of(EIGHT), heard::add)) {
      assertThat(in.size()).isEqualTo(8);
      byte[] bytes = new byte[8];
      assertThat(in.read(bytes, 0, 2)).isEqualTo(2);
      assertThat(in.read()).isEqualTo(3);
      assertThat(in.skip(3)).isEqualTo(3);
      assertThat(in.read()).isEqualTo(7);
      // a byte above 127 is no end
      assertThat(in.read()).isEqualTo(0x80);
      assertThat(in.read()).isEqualTo(-1);
      assertThat(in.read(bytes, 0, 2)).isEqualTo(-1);
    }
    assertThat(heard).containsExactly(2 / 8.0, 3 / 8.0, 7 / 8.0, 1.0);
  }

  @Test
  void tellsNothingWhereTheSizeIsNotKnown() throws IOException {
    try (CountedStream in = new CountedStream(sized(-1), heard::add)) {
      assertThat(in.size()).isEqualTo(-1);
      assertThat(in.readAllBytes()).isEqualTo(EIGHT);
    }
    assertThat(heard).isEmpty();
  }

  /** A file may grow while it is read. */
  @Test
  void neverTellsMoreThanTheWhole() throws IOException {
    try (CountedStream in = new CountedStream(sized(4), heard::add)) {
      assertThat(in.read(new byte[8], 0, 8)).isEqualTo(8);
    }
    assertThat(heard).containsExactly(1.0);
  }

  /** What is read again after a mark would be counted twice. */
  @Test
  void hasNoMarks() throws IOException {
    try (CountedStream in = new CountedStream(ByteSource.of(EIGHT), Progress.unheard())) {
      assertThat(in.markSupported()).isFalse();
    }
  }

  @Test
  void stopsWhereItIsWhenInterrupted() throws IOException {
    try (CountedStream in = new CountedStream(ByteSource.of(EIGHT), Progress.unheard())) {
      assertThat(in.skip(5)).isEqualTo(5);
      Thread.currentThread().interrupt();
      assertThatThrownBy(in::read)
          .isInstanceOf(InterruptedIOException.class)
          .hasMessage("reading was interrupted after 5 bytes");
      assertThat(Thread.interrupted()).isTrue();
    }
  }
}
