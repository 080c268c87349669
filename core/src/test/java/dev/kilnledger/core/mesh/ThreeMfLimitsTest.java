package dev.kilnledger.core.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class ThreeMfLimitsTest {
  private static ThreeMfLimits.Builder least() {
    return ThreeMfLimits.builder().unfoldedBytes(1).corners(1).objects(1).copies(1);
  }

  @Test
  void everyLimitIsOneOrMore() {
    assertThat(least().build().corners()).isEqualTo(1);
    assertThatThrownBy(() -> least().copies(0).build())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "3MF limits: bytes, corners, objects and copies are 1, 1, 1 and 0; accepted is 1 or"
                + " more of each");
    for (ThreeMfLimits.Builder none :
        List.of(least().unfoldedBytes(0), least().corners(0), least().objects(0))) {
      assertThatThrownBy(none::build).hasMessageStartingWith("3MF limits: ");
    }
  }
}
