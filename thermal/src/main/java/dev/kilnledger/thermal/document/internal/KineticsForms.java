package dev.kilnledger.thermal.document.internal;

import static dev.kilnledger.core.document.internal.Forms.SOURCE;
import static dev.kilnledger.core.document.internal.Forms.TEXT;
import static dev.kilnledger.core.document.internal.Forms.amount;

import dev.kilnledger.core.document.internal.ChoiceForm;
import dev.kilnledger.core.document.internal.Form;
import dev.kilnledger.core.document.internal.Forms;
import dev.kilnledger.core.document.internal.ObjectForm;
import dev.kilnledger.thermal.burnout.BinderKinetics;
import dev.kilnledger.thermal.burnout.ConversionCurve;
import dev.kilnledger.thermal.burnout.CurvePoint;
import dev.kilnledger.thermal.burnout.DecompositionStep;
import dev.kilnledger.thermal.burnout.LossRateLimit;
import dev.kilnledger.thermal.burnout.MasterDecompositionCurve;
import dev.kilnledger.thermal.burnout.PorePressureLimit;
import dev.kilnledger.thermal.burnout.ReactionOrder;
import dev.kilnledger.thermal.burnout.WallRateLimit;
import dev.kilnledger.units.Kind;

/** The forms of how a binder decomposes, and of how fast it may leave. */
public final class KineticsForms {
  /** How a binder decomposes. */
  public static final ObjectForm<BinderKinetics> KINETICS = kineticsForm();

  /** How fast a binder may leave. */
  public static final Form<LossRateLimit> LOSS_LIMIT = limitForm();

  private KineticsForms() {}

  private static Form<ConversionCurve> curveForm() {
    ObjectForm<ReactionOrder> order = ObjectForm.nameless();
    var factor =
        order.required("preExponential", amount(Kind.FREQUENCY), ReactionOrder::preExponential);
    var number = order.required("order", amount(Kind.RATIO), ReactionOrder::order);
    order.read(values -> ReactionOrder.of(values.get(factor), values.get(number)));
    ObjectForm<CurvePoint> point = ObjectForm.nameless();
    var time = point.required("logReducedTime", amount(Kind.RATIO), CurvePoint::logReducedTime);
    var conversion = point.required("conversion", amount(Kind.RATIO), CurvePoint::conversion);
    point.read(values -> CurvePoint.of(values.get(time), values.get(conversion)));
    ObjectForm<MasterDecompositionCurve> table = ObjectForm.nameless();
    var rows = table.required("rows", Forms.list(point), MasterDecompositionCurve::rows);
    table.read(values -> MasterDecompositionCurve.of(values.get(rows)));
    return ChoiceForm.<ConversionCurve>named("conversionCurve")
        .with("reaction-order", ReactionOrder.class, order)
        .with("table", MasterDecompositionCurve.class, table);
  }

  private static ObjectForm<BinderKinetics> kineticsForm() {
    ObjectForm<DecompositionStep> step =
        ObjectForm.named("decompositionStep", "One decomposition reaction of a binder.");
    var energy =
        step.required(
            "activationEnergy", amount(Kind.MOLAR_ENERGY), DecompositionStep::activationEnergy);
    var curve = step.required("curve", curveForm(), DecompositionStep::curve);
    var share =
        step.required("massShare", amount(Kind.MASS_FRACTION), DecompositionStep::massShare);
    step.read(
        values -> DecompositionStep.of(values.get(energy), values.get(curve), values.get(share)));
    ObjectForm<BinderKinetics> form =
        ObjectForm.named("kinetics", "How a binder decomposes, as fitted to a loss observed.");
    var name = form.required("name", TEXT, BinderKinetics::name);
    var steps = form.required("steps", Forms.list(step), BinderKinetics::steps);
    var range = form.required("range", Forms.span(Kind.TEMPERATURE), BinderKinetics::range);
    var condition = form.required("condition", TEXT, BinderKinetics::condition);
    var source = form.required("source", SOURCE, BinderKinetics::source);
    return form.read(
        values ->
            BinderKinetics.builder()
                .name(values.get(name))
                .steps(values.get(steps))
                .range(values.get(range))
                .condition(values.get(condition))
                .source(values.get(source))
                .build());
  }

  private static Form<LossRateLimit> limitForm() {
    return ChoiceForm.<LossRateLimit>named("lossLimit")
        .with("wall-rate", WallRateLimit.class, wallForm())
        .with("pore-pressure", PorePressureLimit.class, poreForm());
  }

  private static ObjectForm<WallRateLimit> wallForm() {
    ObjectForm<WallRateLimit> form = ObjectForm.nameless();
    var wall = form.required("wall", amount(Kind.LENGTH), WallRateLimit::wall);
    var knownWall = form.required("knownWall", amount(Kind.LENGTH), WallRateLimit::knownWall);
    var knownRate = form.required("knownRate", amount(Kind.FREQUENCY), WallRateLimit::knownRate);
    var scaling =
        form.withDefault(
            "scaling",
            Forms.choice(WallRateLimit.Scaling.class),
            WallRateLimit.Scaling.SQUARE,
            WallRateLimit::scaling);
    var source = form.required("source", SOURCE, WallRateLimit::source);
    return form.read(
        values ->
            WallRateLimit.builder()
                .wall(values.get(wall))
                .knownWall(values.get(knownWall))
                .knownRate(values.get(knownRate))
                .scaling(values.get(scaling))
                .source(values.get(source))
                .build());
  }

  private static ObjectForm<PorePressureLimit> poreForm() {
    ObjectForm<PorePressureLimit> form = ObjectForm.nameless();
    var permeability =
        form.required("permeability", amount(Kind.AREA), PorePressureLimit::permeability);
    var viscosity =
        form.required("viscosity", amount(Kind.DYNAMIC_VISCOSITY), PorePressureLimit::viscosity);
    var molarMass =
        form.required("molarMass", amount(Kind.MOLAR_MASS), PorePressureLimit::molarMass);
    var binder =
        form.required("binderPerVolume", amount(Kind.DENSITY), PorePressureLimit::binderPerVolume);
    var section = form.required("halfSection", amount(Kind.LENGTH), PorePressureLimit::halfSection);
    var ambient = form.defaulted("ambient", amount(Kind.PRESSURE), PorePressureLimit::ambient);
    var highest = form.required("highest", amount(Kind.PRESSURE), PorePressureLimit::highest);
    var source = form.required("source", SOURCE, PorePressureLimit::source);
    return form.read(
        values -> {
          PorePressureLimit.Builder limit =
              PorePressureLimit.builder()
                  .permeability(values.get(permeability))
                  .viscosity(values.get(viscosity))
                  .molarMass(values.get(molarMass))
                  .binderPerVolume(values.get(binder))
                  .halfSection(values.get(section))
                  .highest(values.get(highest))
                  .source(values.get(source));
          values.get(ambient).ifPresent(limit::ambient);
          return limit.build();
        });
  }
}
