package dev.kilnledger.core.finding;

import java.io.Serializable;

/**
 * What was checked, as a stable name that programs may rely on. Implemented by one enum per family
 * of checks; a published name is never given another meaning.
 */
public interface FindingCode extends Serializable {
  /**
   * The stable name, lower case with hyphens, such as {@code peak-below-solidus}.
   *
   * @return the name
   */
  String code();
}
