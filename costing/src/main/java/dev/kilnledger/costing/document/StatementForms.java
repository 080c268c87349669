package dev.kilnledger.costing.document;

import static dev.kilnledger.core.document.internal.Forms.ANY_AMOUNT;
import static dev.kilnledger.core.document.internal.Forms.DATE;
import static dev.kilnledger.core.document.internal.Forms.DECIMAL;
import static dev.kilnledger.core.document.internal.Forms.SOURCE;
import static dev.kilnledger.core.document.internal.Forms.TEXT;
import static dev.kilnledger.core.document.internal.Forms.WHOLE;
import static dev.kilnledger.costing.document.MoneyForms.MONEY;

import dev.kilnledger.core.document.internal.Forms;
import dev.kilnledger.core.document.internal.ObjectForm;
import dev.kilnledger.core.source.Input;
import dev.kilnledger.costing.ledger.Caveat;
import dev.kilnledger.costing.ledger.CaveatCode;
import dev.kilnledger.costing.ledger.Entry;
import dev.kilnledger.costing.ledger.NextPurchase;
import dev.kilnledger.costing.resource.Stock;
import org.joda.money.BigMoney;
import org.joda.money.Money;

/** The forms of a statement's figures. */
final class StatementForms {
  private static final ObjectForm<Input> INPUT = inputForm();
  private static final ObjectForm<Sum> SUM = sumForm();
  private static final ObjectForm<LineFigures> LINE = lineForm();
  private static final ObjectForm<SurchargeFigures> SURCHARGE = surchargeForm();
  private static final ObjectForm<AccountFigures> ACCOUNT = accountForm();

  static final ObjectForm<StatementFigures> STATEMENT = statementForm();

  private StatementForms() {}

  private static ObjectForm<Input> inputForm() {
    ObjectForm<Input> form = ObjectForm.named("input", "A figure that enters a formula.");
    var name = form.required("name", TEXT, Input::name);
    var value = form.required("value", ANY_AMOUNT, Input::value);
    var source = form.required("source", SOURCE, Input::source);
    return form.read(values -> Input.of(values.get(name), values.get(value), values.get(source)));
  }

  private static ObjectForm<Sum> sumForm() {
    ObjectForm<Sum> form =
        ObjectForm.<Sum>named("sum", "A sum of money, exact and rounded to what can be paid.")
            .onOneLine();
    var exact = form.required("exact", DECIMAL, sum -> sum.exact().getAmount());
    var rounded = form.required("rounded", DECIMAL, sum -> sum.rounded().getAmount());
    var currency =
        form.required("currency", MoneyForms.CURRENCY, sum -> sum.exact().getCurrencyUnit());
    return form.read(
        values ->
            Sum.of(
                BigMoney.of(values.get(currency), values.get(exact)),
                payable(BigMoney.of(values.get(currency), values.get(rounded)))));
  }

  private static Money payable(BigMoney money) {
    try {
      return money.toMoney();
    } catch (ArithmeticException e) {
      throw new IllegalArgumentException(
          "rounded is " + money + "; accepted is a number of whole minor units", e);
    }
  }

  private static ObjectForm<LineFigures> lineForm() {
    ObjectForm<LineFigures> form =
        ObjectForm.named("line", "How many packs of an offer, what they cost, and why.");
    var entry = form.required("entry", Forms.choice(Entry.class), LineFigures::entry);
    var item = form.required("item", TEXT, LineFigures::item);
    var supplier = form.required("supplier", TEXT, LineFigures::supplier);
    var packs = form.required("packs", DECIMAL, LineFigures::packs);
    var content = form.required("referenceQuantity", ANY_AMOUNT, LineFigures::content);
    var price = form.required("price", MONEY, LineFigures::price);
    var amount = form.required("amount", MONEY, LineFigures::amount);
    var formula = form.required("formula", TEXT, LineFigures::formula);
    var inputs = form.list("inputs", INPUT, LineFigures::inputs);
    var date = form.optional("date", DATE, LineFigures::date);
    var source = form.required("source", SOURCE, LineFigures::source);
    return form.read(
        values ->
            LineFigures.builder()
                .entry(values.get(entry))
                .item(values.get(item))
                .supplier(values.get(supplier))
                .packs(values.get(packs))
                .content(values.get(content))
                .price(values.get(price))
                .amount(values.get(amount))
                .formula(values.get(formula))
                .inputs(values.get(inputs))
                .date(values.get(date))
                .source(values.get(source))
                .build());
  }

  private static ObjectForm<SurchargeFigures> surchargeForm() {
    ObjectForm<SurchargeFigures> form =
        ObjectForm.named("surcharge", "Overhead or tax: a share of some of the lines.");
    var title = form.required("title", TEXT, SurchargeFigures::title);
    var base = form.required("base", MONEY, SurchargeFigures::base);
    var items = form.list("items", TEXT, SurchargeFigures::items);
    var amount = form.required("amount", MONEY, SurchargeFigures::amount);
    var formula = form.required("formula", TEXT, SurchargeFigures::formula);
    var inputs = form.list("inputs", INPUT, SurchargeFigures::inputs);
    return form.read(
        values ->
            SurchargeFigures.builder()
                .title(values.get(title))
                .base(values.get(base))
                .items(values.get(items))
                .amount(values.get(amount))
                .formula(values.get(formula))
                .inputs(values.get(inputs))
                .build());
  }

  private static ObjectForm<AccountFigures> accountForm() {
    ObjectForm<AccountFigures> form =
        ObjectForm.named("account", "A sum, and the lines and surcharges it is the sum of.");
    var title = form.required("title", TEXT, AccountFigures::title);
    var total = form.required("total", SUM, AccountFigures::total);
    var lines = form.list("lines", LINE, AccountFigures::lines);
    var surcharges = form.list("surcharges", SURCHARGE, AccountFigures::surcharges);
    return form.read(
        values ->
            AccountFigures.of(
                values.get(title), values.get(total), values.get(lines), values.get(surcharges)));
  }

  private static ObjectForm<ShoppingFigures> shoppingForm() {
    ObjectForm<ShoppingGroupFigures> group =
        ObjectForm.named("shoppingGroup", "What is ordered of one group of items.");
    var name = group.required("name", TEXT, ShoppingGroupFigures::name);
    var subtotal = group.required("subtotal", SUM, ShoppingGroupFigures::subtotal);
    var lines = group.list("lines", LINE, ShoppingGroupFigures::lines);
    group.read(
        values ->
            ShoppingGroupFigures.of(values.get(name), values.get(subtotal), values.get(lines)));
    ObjectForm<ShoppingFigures> form =
        ObjectForm.named("shoppingList", "What is ordered, in groups.");
    var title = form.required("title", TEXT, ShoppingFigures::title);
    var total = form.required("total", SUM, ShoppingFigures::total);
    var groups = form.list("groups", group, ShoppingFigures::groups);
    var tax = form.list("tax", SURCHARGE, ShoppingFigures::tax);
    return form.read(
        values ->
            ShoppingFigures.of(
                values.get(title), values.get(total), values.get(groups), values.get(tax)));
  }

  private static ObjectForm<Stock> stockForm() {
    ObjectForm<Stock> form = ObjectForm.named("stock", "What is left of a resource.");
    var item = form.required("item", TEXT, Stock::item);
    var parts = form.required("parts", WHOLE, Stock::parts);
    var left = form.required("left", ANY_AMOUNT, Stock::left);
    var counted = form.withDefault("counted", TEXT, "", Stock::counted);
    var stranded = form.optional("stranded", ANY_AMOUNT, Stock::stranded);
    var next = form.optional("nextPurchase", WHOLE, Stock::nextPurchase);
    return form.read(
        values ->
            Stock.builder()
                .item(values.get(item))
                .parts(values.get(parts))
                .left(values.get(left))
                .counted(values.get(counted))
                .stranded(values.get(stranded))
                .nextPurchase(values.get(next))
                .build());
  }

  private static ObjectForm<NextPurchase> nextForm() {
    ObjectForm<NextPurchase> form =
        ObjectForm.named("nextPurchase", "The next part that makes packs necessary.");
    var part = form.required("part", WHOLE, NextPurchase::part);
    var items = form.list("items", TEXT, NextPurchase::items);
    return form.read(values -> NextPurchase.of(values.get(part), values.get(items)));
  }

  private static ObjectForm<Caveat> caveatForm() {
    ObjectForm<Caveat> form =
        ObjectForm.named("caveat", "Something left out or taken for granted.");
    var code =
        form.required("code", Forms.choice(CaveatCode.class, CaveatCode::code), Caveat::code);
    var text = form.required("text", TEXT, Caveat::text);
    return form.read(values -> Caveat.of(values.get(code), values.get(text)));
  }

  private static ObjectForm<StatementFigures> statementForm() {
    ObjectForm<StatementFigures> form =
        ObjectForm.named("statement", "What n parts cost, in sums of their lines.");
    var parts = form.required("parts", WHOLE, StatementFigures::parts);
    var first = form.required("firstPart", ACCOUNT, StatementFigures::firstPart);
    var second = form.required("secondPart", ACCOUNT, StatementFigures::secondPart);
    var last = form.required("lastPart", ACCOUNT, StatementFigures::lastPart);
    var all = form.required("allParts", ACCOUNT, StatementFigures::allParts);
    var usage = form.required("usage", ACCOUNT, StatementFigures::usage);
    var leftovers = form.required("leftovers", ACCOUNT, StatementFigures::leftovers);
    var average = form.required("average", SUM, StatementFigures::average);
    var less = form.required("averageLessLeftovers", SUM, StatementFigures::averageLessLeftovers);
    var stocks = form.list("stocks", stockForm(), StatementFigures::stocks);
    var next = form.optional("nextPurchase", nextForm(), StatementFigures::nextPurchase);
    ObjectForm<ShoppingFigures> shopping = shoppingForm();
    var firstShopping =
        form.required("firstShoppingList", shopping, StatementFigures::firstShoppingList);
    var allShopping = form.required("shoppingList", shopping, StatementFigures::shoppingList);
    var rules = form.list("rules", TEXT, StatementFigures::rules);
    var caveats = form.list("caveats", caveatForm(), StatementFigures::caveats);
    return form.read(
        values ->
            StatementFigures.builder()
                .parts(values.get(parts))
                .firstPart(values.get(first))
                .secondPart(values.get(second))
                .lastPart(values.get(last))
                .allParts(values.get(all))
                .usage(values.get(usage))
                .leftovers(values.get(leftovers))
                .average(values.get(average))
                .averageLessLeftovers(values.get(less))
                .stocks(values.get(stocks))
                .nextPurchase(values.get(next))
                .firstShoppingList(values.get(firstShopping))
                .shoppingList(values.get(allShopping))
                .rules(values.get(rules))
                .caveats(values.get(caveats))
                .build());
  }
}
