package dev.kilnledger.core.mesh;

import dev.kilnledger.core.progress.Progress;
import dev.kilnledger.core.reading.ByteSource;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InterruptedIOException;

/** The bytes of a source, telling how far they are read, and stopping where that is asked for. */
final class CountedStream extends FilterInputStream {
  private final long size;
  private final Progress progress;
  private long count;

  CountedStream(ByteSource source, Progress progress) throws IOException {
    super(source.open());
    this.size = source.size();
    this.progress = progress;
  }

  /** The size of the source, -1 where it is not known. */
  long size() {
    return size;
  }

  @Override
  public int read() throws IOException {
    byte[] one = new byte[1];
    return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
  }

  @Override
  public int read(byte[] into, int from, int length) throws IOException {
    if (Thread.currentThread().isInterrupted()) {
      throw new InterruptedIOException("reading was interrupted after " + count + " bytes");
    }
    int read = super.read(into, from, length);
    if (read > 0) {
      count += read;
      if (size > 0) {
        progress.at(Math.min(1, (double) count / size));
      }
    }
    return read;
  }

  @Override
  public long skip(long length) throws IOException {
    long skipped = super.skip(length);
    count += skipped;
    return skipped;
  }

  @Override
  public boolean markSupported() {
    return false;
  }
}
