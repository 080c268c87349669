package dev.kilnledger.core.reading;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Bytes that can be read from the start as often as needed, such as a file. Readers close each
 * stream that they open.
 */
@FunctionalInterface
public interface ByteSource {
  /**
   * Opens the bytes at their start.
   *
   * @return a new stream
   * @throws IOException if they cannot be opened
   */
  InputStream open() throws IOException;

  /**
   * How many bytes there are, for progress.
   *
   * @return the number, or -1 where it is not known
   * @throws IOException if it cannot be found out
   */
  default long size() throws IOException {
    return -1;
  }

  /**
   * The bytes of a file.
   *
   * @param file the file
   * @return its bytes
   */
  static ByteSource of(Path file) {
    return new ByteSource() {
      @Override
      public InputStream open() throws IOException {
        return Files.newInputStream(file);
      }

      @Override
      public long size() throws IOException {
        return Files.size(file);
      }
    };
  }

  /**
   * Bytes in memory.
   *
   * @param bytes the bytes, which must not be changed meanwhile
   * @return the source
   */
  static ByteSource of(byte[] bytes) {
    return new ByteSource() {
      @Override
      public InputStream open() {
        return new ByteArrayInputStream(bytes);
      }

      @Override
      public long size() {
        return bytes.length;
      }
    };
  }
}
