package dev.kilnledger.core.part;

import static dev.kilnledger.units.Amounts.millimetres;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class ExtentTest {
  private static Extent.Builder from(double x, double y, double z) {
    return Extent.builder().lowX(millimetres(x)).lowY(millimetres(y)).lowZ(millimetres(z));
  }

  private static Extent to(Extent.Builder low, double x, double y, double z) {
    return low.highX(millimetres(x)).highY(millimetres(y)).highZ(millimetres(z)).build();
  }

  @Test
  void isAsLargeAsItsCornersAreApart() {
    assertThat(to(from(-8, 16, 4), 8, 20, 36).envelope().format())
        .isEqualTo("16.0 mm x 4.0 mm x 32.0 mm");
  }

  @Test
  void mayBeFlatButNotTurnedInsideOut() {
    assertThat(to(from(1, 2, 3), 1, 2, 3).lowX()).isEqualTo(millimetres(1));
    assertThatThrownBy(() -> to(from(2, 3, 4), 1, 2, 3))
        .hasMessage(
            "extent: x goes from 2 mm to 1 mm; accepted is a low end up to the high end; and y goes"
                + " from 3 mm to 2 mm; accepted is a low end up to the high end; and z goes from 4"
                + " mm to 3 mm; accepted is a low end up to the high end");
  }
}
