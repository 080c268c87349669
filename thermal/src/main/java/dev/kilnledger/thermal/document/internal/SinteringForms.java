package dev.kilnledger.thermal.document.internal;

import static dev.kilnledger.core.document.internal.Forms.COUNT;
import static dev.kilnledger.core.document.internal.Forms.SOURCE;
import static dev.kilnledger.core.document.internal.Forms.TEXT;
import static dev.kilnledger.core.document.internal.Forms.amount;
import static dev.kilnledger.core.document.internal.Forms.estimate;
import static dev.kilnledger.core.document.internal.Forms.span;

import dev.kilnledger.core.document.internal.FindingForms;
import dev.kilnledger.core.document.internal.Forms;
import dev.kilnledger.core.document.internal.ObjectForm;
import dev.kilnledger.thermal.densification.DensificationFinding;
import dev.kilnledger.thermal.densification.FittedSinteringCurve;
import dev.kilnledger.thermal.densification.SinteringCurve;
import dev.kilnledger.units.Kind;

/** The forms of sintering curves. */
public final class SinteringForms {
  /** A curve with the intervals of its fit. */
  public static final ObjectForm<FittedSinteringCurve> FITTED = fittedForm();

  private SinteringForms() {}

  private static ObjectForm<SinteringCurve> curveForm() {
    ObjectForm<SinteringCurve> form =
        ObjectForm.named("sinteringCurve", "Relative density over the work of sintering.");
    var name = form.required("name", TEXT, SinteringCurve::name);
    var energy =
        form.required(
            "activationEnergy", amount(Kind.MOLAR_ENERGY), SinteringCurve::activationEnergy);
    var base = form.required("base", Forms.choice(SinteringCurve.Base.class), SinteringCurve::base);
    var location = form.required("location", amount(Kind.RATIO), SinteringCurve::location);
    var width = form.required("width", amount(Kind.RATIO), SinteringCurve::width);
    var initial =
        form.required(
            "initialDensity", amount(Kind.VOLUME_FRACTION), SinteringCurve::initialDensity);
    var last =
        form.defaulted("finalDensity", amount(Kind.VOLUME_FRACTION), SinteringCurve::finalDensity);
    var range = form.required("range", span(Kind.TEMPERATURE), SinteringCurve::range);
    var source = form.required("source", SOURCE, SinteringCurve::source);
    return form.read(
        values -> {
          SinteringCurve.Builder curve =
              SinteringCurve.builder()
                  .name(values.get(name))
                  .activationEnergy(values.get(energy))
                  .base(values.get(base))
                  .location(values.get(location))
                  .width(values.get(width))
                  .initialDensity(values.get(initial))
                  .range(values.get(range))
                  .source(values.get(source));
          values.get(last).ifPresent(curve::finalDensity);
          return curve.build();
        });
  }

  private static ObjectForm<FittedSinteringCurve> fittedForm() {
    ObjectForm<FittedSinteringCurve> form =
        ObjectForm.named("fittedSinteringCurve", "A sintering curve with what its fit tells.");
    var curve = form.required("curve", curveForm(), FittedSinteringCurve::curve);
    var energy =
        form.required(
            "activationEnergy",
            estimate(Kind.MOLAR_ENERGY),
            FittedSinteringCurve::activationEnergy);
    var location = form.required("location", estimate(Kind.RATIO), FittedSinteringCurve::location);
    var width = form.required("width", estimate(Kind.RATIO), FittedSinteringCurve::width);
    var initial =
        form.required(
            "initialDensity", estimate(Kind.VOLUME_FRACTION), FittedSinteringCurve::initialDensity);
    var confidence =
        form.required("confidence", amount(Kind.RATIO), FittedSinteringCurve::confidence);
    var scatter =
        form.required("scatter", amount(Kind.VOLUME_FRACTION), FittedSinteringCurve::scatter);
    var freedom = form.required("degreesOfFreedom", COUNT, FittedSinteringCurve::degreesOfFreedom);
    var densities =
        form.required("densities", span(Kind.VOLUME_FRACTION), FittedSinteringCurve::densities);
    var reference =
        form.required("reference", amount(Kind.TEMPERATURE), FittedSinteringCurve::reference);
    var covariance =
        form.required("covariance", Forms.list(Forms.NUMBER), FittedSinteringCurve::covariance);
    var findings =
        form.list(
            "findings",
            FindingForms.finding(DensificationFinding.values()),
            FittedSinteringCurve::findings);
    return form.read(
        values ->
            FittedSinteringCurve.builder()
                .curve(values.get(curve))
                .activationEnergy(values.get(energy))
                .location(values.get(location))
                .width(values.get(width))
                .initialDensity(values.get(initial))
                .confidence(values.get(confidence))
                .scatter(values.get(scatter))
                .degreesOfFreedom(values.get(freedom))
                .densities(values.get(densities))
                .reference(values.get(reference))
                .covariance(values.get(covariance))
                .findings(values.get(findings))
                .build());
  }
}
