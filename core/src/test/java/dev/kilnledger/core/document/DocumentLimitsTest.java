package dev.kilnledger.core.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class DocumentLimitsTest {
  @Test
  void everyLimitIsOneOrMore() {
    DocumentLimits least = DocumentLimits.builder().bytes(1).depth(1).textLength(1).build();
    assertThat(least.depth()).isEqualTo(1);
    assertThatThrownBy(() -> DocumentLimits.builder().bytes(0).depth(0).textLength(0).build())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "document limits: bytes is 0; accepted is 1 or more; and depth is 0; accepted is 1 or"
                + " more; and text length is 0; accepted is 1 or more");
  }
}
