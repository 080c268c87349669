package dev.kilnledger.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.units.Amounts;
import org.junit.jupiter.api.Test;

/** What a call may allocate. Bytes do not depend on the machine's load, so they may be asserted. */
class AllocationBudgetTest {

  /** A header of 12 bytes, two doubles and one reference, rounded up to eight: 32 bytes. */
  @Test
  void anAmountIsOneObject() {
    assertThat(Allocation.bytes(() -> Amounts.grams(12.5))).isEqualTo(32);
  }
}
