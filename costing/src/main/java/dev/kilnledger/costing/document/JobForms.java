package dev.kilnledger.costing.document;

import static dev.kilnledger.core.document.internal.Forms.COUNT;
import static dev.kilnledger.core.document.internal.Forms.TEXT;
import static dev.kilnledger.core.document.internal.Forms.WHOLE;
import static dev.kilnledger.core.document.internal.Forms.amount;

import dev.kilnledger.core.document.internal.EquipmentForms;
import dev.kilnledger.core.document.internal.Field;
import dev.kilnledger.core.document.internal.FieldValues;
import dev.kilnledger.core.document.internal.Forms;
import dev.kilnledger.core.document.internal.MaterialForms;
import dev.kilnledger.core.document.internal.ObjectForm;
import dev.kilnledger.core.document.internal.PartForms;
import dev.kilnledger.core.equipment.Printer;
import dev.kilnledger.core.equipment.Spacing;
import dev.kilnledger.core.firing.FiringUse;
import dev.kilnledger.core.part.Outline;
import dev.kilnledger.core.part.Part;
import dev.kilnledger.core.part.PrintConditions;
import dev.kilnledger.core.part.SupportFacts;
import dev.kilnledger.costing.job.Job;
import dev.kilnledger.costing.ledger.BuyingRule;
import dev.kilnledger.costing.ledger.CostArea;
import dev.kilnledger.costing.ledger.LeftoverRule;
import dev.kilnledger.costing.ledger.Leftovers;
import dev.kilnledger.costing.ledger.Overhead;
import dev.kilnledger.costing.ledger.Rounding;
import dev.kilnledger.costing.ledger.TaxPolicy;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.resource.ChargeRule;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.costing.resource.Tails;
import dev.kilnledger.costing.yield.Failures;
import dev.kilnledger.thermal.document.internal.FiringInputFields;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Kind;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.quantity.Time;

/** The form of a job: the part, how it is printed and fired, what things cost, and the rules. */
final class JobForms {
  private final ObjectForm<Job> form =
      ObjectForm.named("job", "A part to be made in a workshop, and what things cost there.");

  private final Field<Long> parts;
  private final Field<Part> part;
  private final Field<Outline> outline;
  private final Field<PrintConditions> conditions;
  private final Field<SupportFacts> support;
  private final Field<Printer> printer;
  private final FiringInputFields inputs;
  private final Field<Spacing> spacing;
  private final Field<Integer> partsPerCharge;
  private final Field<Optional<FiringUse>> measuredFiring;
  private final Field<PriceBook> prices;
  private final Field<String> filamentItem;
  private final Field<Tails> filamentTails;
  private final Field<String> energyItem;
  private final Field<Optional<String>> getterItem;
  private final Field<String> printerItem;
  private final Field<String> kilnItem;
  private final Field<String> crucibleItem;
  private final Field<List<Resource>> resources;
  private final Field<Failures> failures;
  private final Field<ChargeRule> charging;
  private final Field<BuyingRule> buying;
  private final Field<List<Offer>> shipping;
  private final Field<List<Overhead>> overheads;
  private final Field<TaxPolicy> tax;
  private final Field<LeftoverRule> leftovers;
  private final Field<Optional<Amount<Time>>> timePerPart;
  private final Field<Optional<Map<String, String>>> groups;
  private final Field<List<CostArea>> covered;
  private final Field<Rounding> rounding;

  private JobForms(MaterialForms materials) {
    parts = form.required("parts", WHOLE, Job::parts);
    part = form.required("part", PartForms.PART, Job::part);
    outline = form.withDefault("outline", PartForms.OUTLINE, Outline.RECTANGULAR, Job::outline);
    conditions =
        form.withDefault(
            "conditions", PartForms.CONDITIONS, PrintConditions.ideal(), Job::conditions);
    support =
        form.withDefault(
            "support", PartForms.support(materials), SupportFacts.unknown(), Job::support);
    printer = form.required("printer", new EquipmentForms(materials).printer(), Job::printer);
    inputs = new FiringInputFields(form, materials);
    spacing = form.required("spacing", EquipmentForms.SPACING, Job::spacing);
    partsPerCharge = form.required("partsPerCharge", COUNT, Job::partsPerCharge);
    measuredFiring = form.optional("measuredFiring", PartForms.FIRING_USE, Job::measuredFiring);
    prices = form.required("prices", PriceBookForms.PRICE_BOOK, Job::prices);
    filamentItem = form.required("filamentItem", TEXT, Job::filamentItem);
    filamentTails =
        form.withDefault("filamentTails", ResourceForms.TAILS, Tails.JOINED, Job::filamentTails);
    energyItem = form.required("energyItem", TEXT, Job::energyItem);
    getterItem = form.optional("getterItem", TEXT, Job::getterItem);
    printerItem = form.withDefault("printerItem", TEXT, "printer", Job::printerItem);
    kilnItem = form.withDefault("kilnItem", TEXT, "kiln", Job::kilnItem);
    crucibleItem = form.withDefault("crucibleItem", TEXT, "crucible", Job::crucibleItem);
    resources = form.list("resources", ResourceForms.RESOURCE, Job::resources);
    failures = form.withDefault("failures", RuleForms.FAILURES, Failures.none(), Job::failures);
    charging = form.withDefault("charging", RuleForms.CHARGING, ChargeRule.WHOLE, Job::charging);
    buying = form.withDefault("buying", RuleForms.BUYING, BuyingRule.AS_NEEDED, Job::buying);
    timePerPart = form.optional("timePerPart", amount(Kind.TIME), Job::timePerPart);
    groups =
        form.optional(
            "groups",
            Forms.map(item -> item, item -> item, TEXT),
            job -> Optional.of(job.groups()).filter(names -> !names.isEmpty()));
    shipping = form.list("shipping", OfferForms.OFFER, Job::shipping);
    overheads = form.list("overheads", RuleForms.OVERHEAD, Job::overheads);
    tax = form.withDefault("tax", RuleForms.TAX, TaxPolicy.asPriced(), Job::tax);
    leftovers =
        form.withDefault(
            "leftovers",
            RuleForms.LEFTOVERS,
            LeftoverRule.NOT_VALUED,
            job -> job.leftovers().rule());
    covered = form.set("covered", RuleForms.COST_AREA, Job::covered);
    rounding = form.withDefault("rounding", RuleForms.ROUNDING, Rounding.HALF_EVEN, Job::rounding);
  }

  /**
   * The form of a job.
   *
   * @param materials the forms of materials
   * @return the form
   */
  static ObjectForm<Job> job(MaterialForms materials) {
    JobForms job = new JobForms(materials);
    return job.form.read(job::read);
  }

  private Job read(FieldValues values) {
    return Job.builder()
        .from(inputs.inputs(values))
        .parts(values.get(parts))
        .part(values.get(part))
        .outline(values.get(outline))
        .conditions(values.get(conditions))
        .support(values.get(support))
        .printer(values.get(printer))
        .spacing(values.get(spacing))
        .partsPerCharge(values.get(partsPerCharge))
        .measuredFiring(values.get(measuredFiring))
        .prices(values.get(prices))
        .filamentItem(values.get(filamentItem))
        .filamentTails(values.get(filamentTails))
        .energyItem(values.get(energyItem))
        .getterItem(values.get(getterItem))
        .printerItem(values.get(printerItem))
        .kilnItem(values.get(kilnItem))
        .crucibleItem(values.get(crucibleItem))
        .resources(values.get(resources))
        .failures(values.get(failures))
        .charging(values.get(charging))
        .buying(values.get(buying))
        .timePerPart(values.get(timePerPart))
        .groups(values.get(groups).orElse(Map.of()))
        .shipping(values.get(shipping))
        .overheads(values.get(overheads))
        .tax(values.get(tax))
        .leftovers(Leftovers.by(values.get(leftovers)))
        .covered(values.get(covered))
        .rounding(values.get(rounding))
        .build();
  }
}
