package dev.kilnledger.units;

import java.io.InvalidObjectException;
import java.io.ObjectStreamException;
import java.io.Serial;
import java.io.Serializable;
import javax.measure.Quantity;

/**
 * The pinned serial form of an amount: number, UCUM code, kind. The unit given is kept where number
 * and code lead back to the very same SI value; otherwise the SI value is written, so that an
 * amount read back always equals the one written.
 */
final class AmountForm implements Serializable {
  @Serial private static final long serialVersionUID = 1L;

  private final double number;
  private final String code;
  private final String kind;

  private AmountForm(double number, String code, String kind) {
    this.number = number;
    this.code = code;
    this.kind = kind;
  }

  static <Q extends Quantity<Q>> AmountForm of(Amount<Q> amount) {
    Amount<Q> written = UcumText.writable(amount);
    return new AmountForm(written.given(), UcumText.code(written.scale()), written.kind().name());
  }

  @Serial
  private Object readResolve() throws ObjectStreamException {
    try {
      Kind<?> named = UnitScales.kindNamed(kind);
      return named == null ? UcumText.amount(number, code) : UcumText.amount(number, code, named);
    } catch (IllegalArgumentException e) {
      InvalidObjectException invalid = new InvalidObjectException(e.getMessage());
      invalid.initCause(e);
      throw invalid;
    }
  }
}
