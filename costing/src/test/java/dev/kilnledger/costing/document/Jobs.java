package dev.kilnledger.costing.document;

import static dev.kilnledger.units.Amounts.amperes;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.cubicCentimetres;
import static dev.kilnledger.units.Amounts.cubicMetres;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.gramsPerHour;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.joulesPerKilogramKelvin;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.kilogramsPerCubicMetre;
import static dev.kilnledger.units.Amounts.kilojoulesPerMole;
import static dev.kilnledger.units.Amounts.kilowattHours;
import static dev.kilnledger.units.Amounts.kilowatts;
import static dev.kilnledger.units.Amounts.massFraction;
import static dev.kilnledger.units.Amounts.metres;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.Amounts.pascals;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.Amounts.volts;
import static dev.kilnledger.units.Amounts.volumePercent;
import static dev.kilnledger.units.Amounts.watts;
import static dev.kilnledger.units.Amounts.wattsPerMetreKelvin;
import static dev.kilnledger.units.Amounts.wattsPerMetreKelvinSquared;
import static dev.kilnledger.units.Amounts.wattsPerSquareMetreKelvin;

import dev.kilnledger.core.equipment.Crucible;
import dev.kilnledger.core.equipment.FilamentPreheater;
import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.equipment.Nozzle;
import dev.kilnledger.core.equipment.PartingLayer;
import dev.kilnledger.core.equipment.Printer;
import dev.kilnledger.core.equipment.RoundCavity;
import dev.kilnledger.core.equipment.Spacing;
import dev.kilnledger.core.equipment.SupplyCircuit;
import dev.kilnledger.core.equipment.WallLayer;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.firing.FiringUse;
import dev.kilnledger.core.material.Feedstock;
import dev.kilnledger.core.material.Getter;
import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.core.part.LinearShrinkage;
import dev.kilnledger.core.part.Outline;
import dev.kilnledger.core.part.Part;
import dev.kilnledger.core.part.PrintConditions;
import dev.kilnledger.core.part.SelfWeightBeam;
import dev.kilnledger.core.part.SupportFacts;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.costing.job.Job;
import dev.kilnledger.costing.ledger.BuyingRule;
import dev.kilnledger.costing.ledger.CostArea;
import dev.kilnledger.costing.ledger.LeftoverRule;
import dev.kilnledger.costing.ledger.Leftovers;
import dev.kilnledger.costing.ledger.Overhead;
import dev.kilnledger.costing.ledger.OverheadBase;
import dev.kilnledger.costing.ledger.Rounding;
import dev.kilnledger.costing.ledger.TaxPolicy;
import dev.kilnledger.costing.ledger.TaxRule;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.resource.Aged;
import dev.kilnledger.costing.resource.ChargeRule;
import dev.kilnledger.costing.resource.Consumed;
import dev.kilnledger.costing.resource.Depreciated;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Durable;
import dev.kilnledger.costing.resource.RunDown;
import dev.kilnledger.costing.resource.Tails;
import dev.kilnledger.costing.resource.ToppedUp;
import dev.kilnledger.costing.resource.Wearing;
import dev.kilnledger.costing.yield.AfterFailure;
import dev.kilnledger.costing.yield.FailureRule;
import dev.kilnledger.costing.yield.Failures;
import dev.kilnledger.costing.yield.Stage;
import dev.kilnledger.costing.yield.StageYield;
import dev.kilnledger.thermal.atmosphere.RoomAir;
import dev.kilnledger.thermal.burnout.BinderKinetics;
import dev.kilnledger.thermal.burnout.DecompositionStep;
import dev.kilnledger.thermal.burnout.ReactionOrder;
import dev.kilnledger.thermal.burnout.WallRateLimit;
import dev.kilnledger.thermal.conduction.PropertyCurve;
import dev.kilnledger.thermal.conduction.SurfaceContact;
import dev.kilnledger.thermal.densification.DensificationFinding;
import dev.kilnledger.thermal.densification.FittedSinteringCurve;
import dev.kilnledger.thermal.densification.SinteringCurve;
import dev.kilnledger.thermal.kiln.SoakControl;
import dev.kilnledger.thermal.kiln.Thermocouple;
import dev.kilnledger.thermal.kinetics.Frequencies;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amount;
import java.time.LocalDate;
import java.util.List;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Jobs of an invented workshop. */
public final class Jobs {
  public static final Source INVENTED = Source.user("invented for this test");
  static final MaterialLibrary STANDARD = MaterialLibrary.standard();

  private Jobs() {}

  /** A job with nothing but what it needs; it can be answered. */
  public static Job plain() {
    return job()
        .addResources(Durable.toBuy("printer"), Durable.toBuy("kiln"))
        .addResources(
            Wearing.builder()
                .item("crucible")
                .driver(Driver.FIRING)
                .life(12)
                .source(INVENTED)
                .build())
        .addResources(
            ToppedUp.builder()
                .item("alumina")
                .fill(grams(700))
                .loss(percent(5))
                .source(INVENTED)
                .build())
        .build();
  }

  /** A job in which everything is stated that can be; it can be answered too. */
  static Job everything() {
    return job()
        .part(
            Part.builder()
                .name("latch cam")
                .finishedMass(grams(15))
                .envelope(Envelope.of(millimetres(30), millimetres(18), millimetres(8)))
                .thickestSection(millimetres(5))
                .build())
        .outline(Outline.ROUND)
        .feedstock(
            Feedstock.builder()
                .name("our bronze filament")
                .alloy(STANDARD.alloy("tin bronze 90/10"))
                .binder(STANDARD.binder("polylactide"))
                .binderMassFraction(massFraction(0.11))
                .solidsLoading(volumePercent(53))
                .source(INVENTED)
                .build())
        .printer(
            Printer.builder()
                .from(printer())
                .preheater(FilamentPreheater.of("filament warmer", celsius(45), watts(30)))
                .partingLayer(PartingLayer.of("alumina paste", Sourced.of(celsius(1400), INVENTED)))
                .build())
        .route(route(ownGetter()))
        .kiln(
            Kiln.builder()
                .from(kiln())
                .wall(
                    List.of(
                        WallLayer.builder()
                            .from(kiln().wall().get(0))
                            .conductivityStatedAt(celsius(600))
                            .conductivitySlope(wattsPerMetreKelvinSquared(0.0001))
                            .build()))
                .longestHoldAtPeak(hours(6))
                .programmeSegments(8)
                .fastestHeating(kelvinPerHour(300))
                .outsideFilm(wattsPerSquareMetreKelvin(12))
                .source(INVENTED)
                .build())
        .crucible(
            Crucible.builder()
                .from(crucible())
                .outside(Envelope.of(millimetres(136), millimetres(136), millimetres(125)))
                .build())
        .supplyCircuit(SupplyCircuit.builder().from(circuit()).continuousShare(percent(75)).build())
        .spacing(
            Spacing.builder().from(Spacing.of(millimetres(10))).headroom(millimetres(20)).build())
        .packingConductivity(Sourced.of(PropertyCurve.constant(wattsPerMetreKelvin(0.2)), INVENTED))
        .contact(SurfaceContact.of(wattsPerSquareMetreKelvin(15), ratio(0.8)))
        .addKinetics(
            BinderKinetics.builder()
                .name("polylactide, own run")
                .addSteps(
                    DecompositionStep.of(
                        kilojoulesPerMole(150), ReactionOrder.first(Frequencies.perSecond(1e9))))
                .range(Span.of(celsius(200), celsius(450)))
                .condition("in air")
                .source(INVENTED)
                .build())
        .sinteringCurve(sinteringCurve())
        .printerItem("bench printer")
        .kilnItem("front loader")
        .crucibleItem("steel pot")
        .conditions(
            PrintConditions.builder()
                .strandVoids(volumePercent(4))
                .finalRelativeDensity(
                    Sourced.of(
                        Estimate.of(volumePercent(86), volumePercent(90), volumePercent(94)),
                        "five parts",
                        INVENTED))
                .measuredShrinkage(
                    Sourced.of(
                        LinearShrinkage.of(
                            Estimate.of(percent(15), percent(16), percent(17)),
                            Estimate.of(percent(15), percent(16), percent(17)),
                            Estimate.of(percent(18), percent(19), percent(20))),
                        INVENTED))
                .build())
        .support(
            SupportFacts.builder()
                .overhang(SelfWeightBeam.overhang(millimetres(6), millimetres(3)))
                .span(SelfWeightBeam.span(millimetres(10), millimetres(4)))
                .complete(true)
                .bed(SupportFacts.Bed.TAPPED)
                .powder(STANDARD.packingPowder("alumina"))
                .softenedStrength(Sourced.of(Span.of(pascals(500), pascals(900)), INVENTED))
                .brownStrength(Sourced.of(Span.of(pascals(5000), pascals(9000)), INVENTED))
                .build())
        .soakControl(SoakControl.GUARANTEED)
        .soak(hours(2))
        .soakTemperature(celsius(800))
        .targetDensity(volumePercent(88))
        .addLossLimits(
            WallRateLimit.builder()
                .wall(millimetres(5))
                .knownWall(millimetres(4))
                .knownRate(Frequencies.perHour(0.2))
                .scaling(WallRateLimit.Scaling.LINEAR)
                .source(INVENTED)
                .build())
        .measuredFiring(
            FiringUse.builder()
                .duration(hours(40))
                .energy(kilowattHours(28))
                .getter(grams(60))
                .partsPerCharge(3)
                .source(INVENTED)
                .build())
        .filamentTails(Tails.STRANDED)
        .addResources(
            Consumed.builder()
                .item("work")
                .driver(Driver.GOOD_PART)
                .quantity(hours(0.5))
                .source(INVENTED)
                .build())
        .addResources(
            Consumed.builder()
                .item("wire")
                .driver(Driver.SINTERED_PART)
                .quantity(metres(0.3))
                .tails(Tails.STRANDED)
                .owned(metres(2))
                .source(INVENTED)
                .build())
        .addResources(
            ToppedUp.builder()
                .item("sand")
                .fill(grams(200))
                .loss(percent(10))
                .owned(grams(100))
                .source(INVENTED)
                .build())
        .addResources(Durable.owned("bench printer"))
        .addResources(
            Depreciated.builder()
                .item("front loader")
                .driver(Driver.FIRING_TIME)
                .decliningBalance(ratio(2), 10, hours(2000))
                .salvage(BigMoney.parse("EUR 150.000"))
                .source(INVENTED)
                .build())
        .addResources(
            Wearing.builder()
                .item("steel pot")
                .driver(Driver.FIRING)
                .life(ratio(11.5))
                .observed(ratio(4))
                .usesLeft(3)
                .source(INVENTED)
                .build())
        .addResources(
            RunDown.builder()
                .item("alumina")
                .fill(grams(700))
                .loss(percent(5))
                .minimum(percent(60))
                .owned(grams(250))
                .source(INVENTED)
                .build())
        .addResources(
            Aged.builder()
                .item("talc")
                .driver(Driver.DEBINDING)
                .fill(grams(300))
                .cycles(4)
                .observed(2)
                .owned(grams(300))
                .source(INVENTED)
                .build())
        .addResources(
            Wearing.builder()
                .item("nozzle")
                .driver(Driver.PRINTED_MASS)
                .life(grams(2000))
                .source(INVENTED)
                .build())
        .failures(
            Failures.builder()
                .rule(FailureRule.EXPECTED_VALUES)
                .addStages(
                    StageYield.builder()
                        .stage(Stage.PRINT)
                        .parts(percent(90))
                        .source(INVENTED)
                        .build(),
                    StageYield.builder()
                        .stage(Stage.SINTER)
                        .parts(percent(95))
                        .charges(percent(98))
                        .afterFailure(AfterFailure.REPEATED)
                        .source(INVENTED)
                        .build())
                .trialParts(2)
                .trialFirings(1)
                .trialSource(INVENTED)
                .build())
        .charging(ChargeRule.SHARED)
        .buying(BuyingRule.PLANNED_FOR_N)
        .addShipping(offer("freight", ratio(1), "6.90").supplier("works by the river").build())
        .addOverheads(Overhead.of(OverheadBase.MATERIAL, percent(8), INVENTED))
        .tax(TaxPolicy.of(TaxRule.DEDUCTED, percent(20), INVENTED))
        .leftovers(Leftovers.by(LeftoverRule.COST_SHARE_WITHIN_SHELF_LIFE))
        .timePerPart(hours(8))
        .putGroups("talc", "powders")
        .addCovered(CostArea.LABOUR, CostArea.DUTY)
        .rounding(Rounding.HALF_UP)
        .build();
  }

  private static Job.Builder job() {
    return Job.builder()
        .parts(100)
        .part(
            Part.builder()
                .name("latch cam")
                .finishedVolume(cubicCentimetres(2))
                .envelope(Envelope.of(millimetres(30), millimetres(18), millimetres(8)))
                .thickestSection(millimetres(5))
                .build())
        .feedstock(STANDARD.feedstock("tin bronze 90/10 in polylactide, generic"))
        .printer(printer())
        .route(route(STANDARD.getter("granular activated carbon")))
        .kiln(kiln())
        .crucible(crucible())
        .supplyCircuit(circuit())
        .thermocouple(Thermocouple.N)
        .oxygenInflow(Sourced.of(Span.of(gramsPerHour(0.01), gramsPerHour(0.05)), INVENTED))
        .room(RoomAir.ofChanges(cubicMetres(60), 6))
        .spacing(Spacing.of(millimetres(10)))
        .partsPerCharge(3)
        .prices(prices())
        .filamentItem("bronze filament")
        .energyItem("electricity")
        .getterItem("carbon");
  }

  private static Printer printer() {
    return Printer.builder()
        .name("bench printer")
        .buildVolume(Envelope.of(millimetres(200), millimetres(200), millimetres(180)))
        .filamentDiameter(millimetres(1.75))
        .nozzle(Nozzle.of(STANDARD.nozzleMaterial("hardened tool steel"), millimetres(0.6)))
        .build();
  }

  private static Crucible crucible() {
    return Crucible.builder()
        .name("round crucible")
        .material(STANDARD.crucibleMaterial("stainless steel 310S"))
        .cavity(RoundCavity.of(millimetres(130), millimetres(110)))
        .mass(grams(1200))
        .heatCapacity(joulesPerKilogramKelvin(550))
        .build();
  }

  private static SupplyCircuit circuit() {
    return SupplyCircuit.builder()
        .name("workshop socket")
        .voltage(volts(230))
        .phases(1)
        .breakerRating(amperes(16))
        .build();
  }

  private static Getter ownGetter() {
    return Getter.builder()
        .from(STANDARD.getter("granular activated carbon"))
        .name("our carbon")
        .heatCapacity(Sourced.of(joulesPerKilogramKelvin(900), INVENTED))
        .build();
  }

  /** As a fit gives it, in round figures. */
  private static FittedSinteringCurve sinteringCurve() {
    return FittedSinteringCurve.builder()
        .curve(
            SinteringCurve.builder()
                .name("invented powder")
                .activationEnergy(kilojoulesPerMole(300))
                .base(SinteringCurve.Base.NATURAL)
                .location(ratio(-23.5))
                .width(ratio(1.3))
                .initialDensity(volumePercent(53))
                .finalDensity(volumePercent(98))
                .range(Span.of(celsius(700), celsius(840)))
                .source(INVENTED)
                .build())
        .activationEnergy(
            Estimate.of(kilojoulesPerMole(280), kilojoulesPerMole(300), kilojoulesPerMole(320)))
        .location(Estimate.of(ratio(-24), ratio(-23.5), ratio(-23)))
        .width(Estimate.of(ratio(1.2), ratio(1.3), ratio(1.4)))
        .initialDensity(Estimate.of(volumePercent(52), volumePercent(53), volumePercent(54)))
        .confidence(percent(95))
        .scatter(volumePercent(0.5))
        .degreesOfFreedom(30)
        .densities(Span.of(volumePercent(55), volumePercent(95)))
        .reference(celsius(780))
        .covariance(
            List.of(
                0.01, 0.0, 0.0, 0.0, 0.0, 0.02, 0.0, 0.0, 0.0, 0.0, 0.001, 0.0, 0.0, 0.0, 0.0,
                1e-5))
        .addFindings(
            Finding.builder()
                .code(DensificationFinding.SINTERING_CURVE)
                .severity(Severity.NOTE)
                .subject("invented powder")
                .message("a finding of the fit")
                .measured(ratio(0.1))
                .limit(ratio(0.2))
                .basis(INVENTED)
                .build())
        .build();
  }

  private static Kiln kiln() {
    return Kiln.builder()
        .name("front loader")
        .peakTemperature(celsius(1150))
        .chamber(Envelope.of(millimetres(200), millimetres(200), millimetres(200)))
        .power(kilowatts(2.4))
        .voltage(volts(230))
        .phases(1)
        .addWall(
            WallLayer.builder()
                .material("insulating firebrick")
                .thickness(millimetres(100))
                .conductivity(wattsPerMetreKelvin(0.2))
                .density(kilogramsPerCubicMetre(600))
                .heatCapacity(joulesPerKilogramKelvin(1000))
                .build())
        .build();
  }

  private static FiringRoute route(Getter getter) {
    return FiringRoute.of(
        FiringStage.debinding()
            .profile(
                Profile.from(celsius(20))
                    .rampTo(celsius(260), kelvinPerHour(120))
                    .rampTo(celsius(420), kelvinPerHour(12))
                    .hold(hours(2))
                    .build())
            .packing(STANDARD.packingPowder("alumina"))
            .packingMass(grams(700))
            .build(),
        FiringStage.sintering()
            .name("bronze firing")
            .profile(
                Profile.from(celsius(20))
                    .rampTo(celsius(820), kelvinPerHour(150))
                    .hold(hours(3))
                    .build())
            .packing(STANDARD.packingPowder("alumina"))
            .packingMass(grams(700))
            .getter(getter, grams(60))
            .build());
  }

  static PriceBook prices() {
    return PriceBook.builder()
        .currency(CurrencyUnit.EUR)
        .asOf(LocalDate.of(2026, 11, 25))
        .addOffers(
            offer("printer", ratio(1), "600.00").build(),
            offer("kiln", ratio(1), "1500.00").build(),
            offer("bronze filament", grams(500), "80.00").build(),
            offer("crucible", ratio(1), "40.00").build(),
            offer("alumina", grams(1000), "15.00").build(),
            offer("talc", grams(1000), "8.00").build(),
            offer("sand", grams(1000), "4.00").build(),
            offer("wire", metres(10), "6.00").build(),
            offer("bench printer", ratio(1), "600.00").build(),
            offer("front loader", ratio(1), "1500.00").build(),
            offer("steel pot", ratio(1), "40.00").build(),
            offer("nozzle", ratio(1), "12.00").build(),
            offer("carbon", grams(500), "10.00").build(),
            offer("work", hours(1), "24.00").metered(true).build(),
            offer("electricity", kilowattHours(1), "0.30").metered(true).build())
        .build();
  }

  static Offer.Builder offer(String item, Amount<?> content, String price) {
    return Offer.builder()
        .item(item)
        .supplier("corner shop")
        .content(content)
        .price(Money.parse("EUR " + price))
        .date(LocalDate.of(2026, 11, 2))
        .source(INVENTED);
  }
}
