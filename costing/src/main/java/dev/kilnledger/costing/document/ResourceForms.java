package dev.kilnledger.costing.document;

import static dev.kilnledger.core.document.internal.Forms.COUNT;
import static dev.kilnledger.core.document.internal.Forms.SOURCE;
import static dev.kilnledger.core.document.internal.Forms.TEXT;
import static dev.kilnledger.core.document.internal.Forms.amount;
import static dev.kilnledger.costing.document.OfferForms.QUANTITY;

import dev.kilnledger.core.document.internal.ChoiceForm;
import dev.kilnledger.core.document.internal.Form;
import dev.kilnledger.core.document.internal.Forms;
import dev.kilnledger.core.document.internal.ObjectForm;
import dev.kilnledger.costing.resource.Aged;
import dev.kilnledger.costing.resource.Consumed;
import dev.kilnledger.costing.resource.Depreciated;
import dev.kilnledger.costing.resource.DepreciationMethod;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Durable;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.costing.resource.RunDown;
import dev.kilnledger.costing.resource.Tails;
import dev.kilnledger.costing.resource.ToppedUp;
import dev.kilnledger.costing.resource.Wearing;
import dev.kilnledger.units.Kind;

/** The forms of what is used up. */
final class ResourceForms {
  static final Form<Driver> DRIVER = Forms.choice(Driver.class);
  static final Form<Tails> TAILS = Forms.choice(Tails.class);

  static final Form<Resource> RESOURCE =
      ChoiceForm.<Resource>named("resource")
          .with("consumed", Consumed.class, consumedForm())
          .with("durable", Durable.class, durableForm())
          .with("wearing", Wearing.class, wearingForm())
          .with("topped-up", ToppedUp.class, toppedUpForm())
          .with("run-down", RunDown.class, runDownForm())
          .with("aged", Aged.class, agedForm())
          .with("depreciated", Depreciated.class, depreciatedForm());

  private ResourceForms() {}

  private static ObjectForm<Consumed> consumedForm() {
    ObjectForm<Consumed> form = ObjectForm.nameless();
    var item = form.required("item", TEXT, Consumed::item);
    var driver = form.required("driver", DRIVER, Consumed::driver);
    var quantity = form.required("quantity", QUANTITY, Consumed::quantity);
    var tails = form.withDefault("tails", TAILS, Tails.JOINED, Consumed::tails);
    var owned = form.optional("owned", QUANTITY, Consumed::owned);
    var source = form.required("source", SOURCE, Consumed::source);
    return form.read(
        values ->
            Consumed.builder()
                .item(values.get(item))
                .driver(values.get(driver))
                .quantity(values.get(quantity))
                .tails(values.get(tails))
                .owned(values.get(owned))
                .source(values.get(source))
                .build());
  }

  private static ObjectForm<Durable> durableForm() {
    ObjectForm<Durable> form = ObjectForm.nameless();
    var item = form.required("item", TEXT, Durable::item);
    var owned = form.withDefault("owned", Forms.TRUTH, false, Durable::owned);
    return form.read(
        values ->
            values.get(owned) ? Durable.owned(values.get(item)) : Durable.toBuy(values.get(item)));
  }

  private static ObjectForm<Wearing> wearingForm() {
    ObjectForm<Wearing> form = ObjectForm.nameless();
    var item = form.required("item", TEXT, Wearing::item);
    var driver = form.required("driver", DRIVER, Wearing::driver);
    var life = form.required("life", QUANTITY, Wearing::life);
    var observed = form.optional("observed", QUANTITY, Wearing::observed);
    var left = form.defaulted("usesLeft", QUANTITY, Wearing::usesLeft);
    var source = form.required("source", SOURCE, Wearing::source);
    return form.read(
        values -> {
          Wearing.Builder wearing =
              Wearing.builder()
                  .item(values.get(item))
                  .driver(values.get(driver))
                  .life(values.get(life))
                  .observed(values.get(observed))
                  .source(values.get(source));
          values.get(left).ifPresent(wearing::usesLeft);
          return wearing.build();
        });
  }

  private static ObjectForm<ToppedUp> toppedUpForm() {
    ObjectForm<ToppedUp> form = ObjectForm.nameless();
    var item = form.required("item", TEXT, ToppedUp::item);
    var fill = form.required("fill", QUANTITY, ToppedUp::fill);
    var loss = form.required("loss", amount(Kind.RATIO), ToppedUp::loss);
    var owned = form.optional("owned", QUANTITY, ToppedUp::owned);
    var source = form.required("source", SOURCE, ToppedUp::source);
    return form.read(
        values ->
            ToppedUp.builder()
                .item(values.get(item))
                .fill(values.get(fill))
                .loss(values.get(loss))
                .owned(values.get(owned))
                .source(values.get(source))
                .build());
  }

  private static ObjectForm<RunDown> runDownForm() {
    ObjectForm<RunDown> form = ObjectForm.nameless();
    var item = form.required("item", TEXT, RunDown::item);
    var fill = form.required("fill", QUANTITY, RunDown::fill);
    var loss = form.required("loss", amount(Kind.RATIO), RunDown::loss);
    var minimum = form.required("minimum", amount(Kind.RATIO), RunDown::minimum);
    var owned = form.optional("owned", QUANTITY, RunDown::owned);
    var source = form.required("source", SOURCE, RunDown::source);
    return form.read(
        values ->
            RunDown.builder()
                .item(values.get(item))
                .fill(values.get(fill))
                .loss(values.get(loss))
                .minimum(values.get(minimum))
                .owned(values.get(owned))
                .source(values.get(source))
                .build());
  }

  private static ObjectForm<Aged> agedForm() {
    ObjectForm<Aged> form = ObjectForm.nameless();
    var item = form.required("item", TEXT, Aged::item);
    var driver = form.withDefault("driver", DRIVER, Driver.FIRING, Aged::driver);
    var fill = form.required("fill", QUANTITY, Aged::fill);
    var cycles = form.required("cycles", COUNT, Aged::cycles);
    var observed = form.optional("observed", COUNT, Aged::observed);
    var owned = form.optional("owned", QUANTITY, Aged::owned);
    var source = form.required("source", SOURCE, Aged::source);
    return form.read(
        values ->
            Aged.builder()
                .item(values.get(item))
                .driver(values.get(driver))
                .fill(values.get(fill))
                .cycles(values.get(cycles))
                .observed(values.get(observed))
                .owned(values.get(owned))
                .source(values.get(source))
                .build());
  }

  private static ObjectForm<Depreciated> depreciatedForm() {
    ObjectForm<Depreciated> form = ObjectForm.nameless();
    var item = form.required("item", TEXT, Depreciated::item);
    var driver = form.required("driver", DRIVER, Depreciated::driver);
    var method =
        form.withDefault(
            "method",
            Forms.choice(DepreciationMethod.class),
            DepreciationMethod.UNITS_OF_PRODUCTION,
            Depreciated::method);
    var life = form.required("life", QUANTITY, Depreciated::life);
    var years = form.withDefault("years", COUNT, 1, Depreciated::years);
    var factor = form.optional("factor", amount(Kind.RATIO), Depreciated::factor);
    var salvage = form.required("salvage", MoneyForms.MONEY, Depreciated::salvage);
    var source = form.required("source", SOURCE, Depreciated::source);
    return form.read(
        values ->
            Depreciated.builder()
                .item(values.get(item))
                .driver(values.get(driver))
                .method(values.get(method))
                .life(values.get(life))
                .years(values.get(years))
                .factor(values.get(factor))
                .salvage(values.get(salvage))
                .source(values.get(source))
                .build());
  }
}
