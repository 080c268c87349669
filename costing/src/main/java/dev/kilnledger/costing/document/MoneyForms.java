package dev.kilnledger.costing.document;

import dev.kilnledger.core.document.internal.Form;
import dev.kilnledger.core.document.internal.Forms;
import dev.kilnledger.core.document.internal.ObjectForm;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;

/** The forms of money. */
final class MoneyForms {
  /** A currency by its ISO 4217 code. */
  static final Form<CurrencyUnit> CURRENCY =
      Forms.TEXT.as(MoneyForms::currency, CurrencyUnit::getCode);

  /** An amount of money to its last digit. */
  static final ObjectForm<BigMoney> MONEY = moneyForm();

  private MoneyForms() {}

  private static CurrencyUnit currency(String code) {
    try {
      return CurrencyUnit.of(code);
    } catch (IllegalCurrencyException e) {
      throw new IllegalArgumentException(
          "\"" + code + "\" stands there; accepted is an ISO 4217 code such as \"EUR\"", e);
    }
  }

  private static ObjectForm<BigMoney> moneyForm() {
    ObjectForm<BigMoney> form =
        ObjectForm.<BigMoney>named("money", "A decimal number as text, and an ISO 4217 code.")
            .onOneLine();
    var amount = form.required("amount", Forms.DECIMAL, BigMoney::getAmount);
    var currency = form.required("currency", CURRENCY, BigMoney::getCurrencyUnit);
    return form.read(values -> BigMoney.of(values.get(currency), values.get(amount)));
  }
}
