package dev.kilnledger.core.part;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import org.immutables.value.Value;

/** A test piece measured along each axis before and after firing. */
@Value.Immutable
@ValueStyle
public interface Coupon extends Serializable {
  /** {@return its lengths as printed} */
  @Value.Parameter
  Envelope green();

  /** {@return its lengths after sintering} */
  @Value.Parameter
  Envelope sintered();

  /**
   * A coupon.
   *
   * @param green its lengths as printed
   * @param sintered its lengths after sintering
   * @return the coupon
   */
  static Coupon of(Envelope green, Envelope sintered) {
    return ImmutableCoupon.of(green, sintered);
  }
}
