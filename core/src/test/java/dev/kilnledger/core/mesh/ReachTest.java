package dev.kilnledger.core.mesh;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ReachTest {
  @Test
  void reachesAsFarAsAnyOneOfThree() {
    double[][] lowest = {{-9, 1, 2}, {1, -9, 2}, {1, 2, -9}};
    double[][] highest = {{9, 1, 2}, {1, 9, 2}, {1, 2, 9}};
    for (int i = 0; i < 3; i++) {
      Reach reach = new Reach();
      reach.include(1, 1, 1);
      reach.include(lowest[i][0], lowest[i][1], lowest[i][2]);
      assertThat(reach.low()).isEqualTo(-9);
      assertThat(reach.high()).isEqualTo(2);
      reach.include(highest[i][0], highest[i][1], highest[i][2]);
      assertThat(reach.low()).isEqualTo(-9);
      assertThat(reach.high()).isEqualTo(9);
      assertThat(reach.length()).isEqualTo(18);
    }
  }
}
