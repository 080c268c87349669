package dev.kilnledger.core.mesh;

import dev.kilnledger.core.progress.Progress;
import dev.kilnledger.units.Amount;
import java.io.IOException;
import javax.measure.quantity.Length;

/** A mesh of triangular facets that can be gone through as often as needed. */
public interface Facets {
  /**
   * {@return what a 1 of its coordinates means}
   *
   * @throws IOException if it stands in the file and that cannot be read
   */
  Amount<Length> unit() throws IOException;

  /**
   * Goes through all facets.
   *
   * @param consumer takes each of them
   * @param progress hears how far the reading has come, where the size of the file is known
   * @throws dev.kilnledger.core.reading.UnreadableInputException if the file is not what it should
   *     be; facets taken before are then worth nothing
   * @throws java.io.InterruptedIOException if the thread is interrupted meanwhile
   * @throws IOException if the bytes cannot be read
   */
  void forEach(FacetConsumer consumer, Progress progress) throws IOException;
}
