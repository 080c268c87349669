package dev.kilnledger.costing.job;

import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.cubicMetres;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.gramsPerHour;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.joulesPerKilogramKelvin;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.kilogramsPerCubicMetre;
import static dev.kilnledger.units.Amounts.kilowattHours;
import static dev.kilnledger.units.Amounts.kilowatts;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.Amounts.volts;
import static dev.kilnledger.units.Amounts.wattsPerMetreKelvin;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.equipment.Crucible;
import dev.kilnledger.core.equipment.EquipmentFinding;
import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.equipment.Nozzle;
import dev.kilnledger.core.equipment.Printer;
import dev.kilnledger.core.equipment.RoundCavity;
import dev.kilnledger.core.equipment.Spacing;
import dev.kilnledger.core.equipment.WallLayer;
import dev.kilnledger.core.finding.Caution;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.firing.FiringUse;
import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.core.part.Part;
import dev.kilnledger.core.part.PartFinding;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.costing.ledger.Caveat;
import dev.kilnledger.costing.ledger.CaveatCode;
import dev.kilnledger.costing.ledger.Ledger;
import dev.kilnledger.costing.ledger.Statement;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Durable;
import dev.kilnledger.costing.resource.ToppedUp;
import dev.kilnledger.costing.resource.Wearing;
import dev.kilnledger.thermal.atmosphere.AtmosphereFinding;
import dev.kilnledger.thermal.atmosphere.RoomAir;
import dev.kilnledger.thermal.check.FiringCheck;
import dev.kilnledger.thermal.check.FiringFinding;
import dev.kilnledger.thermal.conduction.ConductionFinding;
import dev.kilnledger.thermal.densification.DensificationFinding;
import dev.kilnledger.thermal.energy.DutyFactorEnergy;
import dev.kilnledger.thermal.energy.EnergyBalance;
import dev.kilnledger.thermal.energy.FiringEnergy;
import dev.kilnledger.thermal.kiln.KilnFinding;
import dev.kilnledger.thermal.kiln.Thermocouple;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.TradeUnits;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.time.LocalDate;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class WholeJobTest {
  private static final Source USER = Source.user("made for this test");
  private static final MaterialLibrary MATERIALS = MaterialLibrary.standard();
  private static final WholeJob WHOLE_JOB = WholeJob.standard();

  /**
   * The exact ledger made for this project, computed independently (printer 900, kiln 3,200,
   * crucible 45 for 6 firings, 128 g of 500 g filament at 60, 1,800 g fill losing 5 %, 300 g of
   * carbon, 28 kWh at 0.30), reached here through the passage: 115.26 g of copper with char is
   * 128.0 g of filament with 10 % binder of which 0.5 % stays.
   */
  @Test
  void reachesTheLedgerThroughThePassage() {
    Statement statement = WHOLE_JOB.answer(measured().build()).statement();
    assertThat(statement.firstPart().total()).hasToString("EUR 4271.40");
    assertThat(statement.secondPart().total()).hasToString("EUR 8.40");
    assertThat(statement.money(Ledger.standard().part(statement.plan(), 4).total()))
        .hasToString("EUR 108.40");
    assertThat(statement.money(Ledger.standard().part(statement.plan(), 7).total()))
        .hasToString("EUR 75.40");
    assertThat(statement.money(statement.average())).hasToString("EUR 1099.15");
    assertThat(statement.money(statement.usage().total())).hasToString("EUR 39.48");
  }

  @Test
  void gathersTheFindingsOfEveryCheck() {
    JobAnswer answer = WHOLE_JOB.answer(job().build());
    assertThat(answer.findings())
        .extracting(finding -> (Object) finding.code())
        .contains(
            PartFinding.SOLIDS_LOADING,
            EquipmentFinding.NOZZLE_HARDNESS,
            EquipmentFinding.CRUCIBLE_SPACE,
            DensificationFinding.FELT_BELOW_SOLIDUS,
            ConductionFinding.CORE_SOAK,
            AtmosphereFinding.CARBON_LASTS,
            FiringFinding.SUPPLY_CURRENT,
            KilnFinding.FOLLOWS_PROGRAMME);
    assertThat(answer.cautions())
        .contains(Caution.CARBON_MONOXIDE, Caution.METAL_POWDER, Caution.MINERAL_DUST);
    assertThat(answer.atLeast(Severity.NOTE))
        .isSortedAccordingTo((a, b) -> b.severity().compareTo(a.severity()));
    assertThat(answer.worst()).isEqualTo(answer.atLeast(Severity.NOTE).get(0).severity());
  }

  @Test
  void takesEnergyAndGetterFromTheRouteUnlessMeasured() {
    JobAnswer forecast = WHOLE_JOB.answer(job().build());
    assertThat(forecast.energy()).isPresent();
    assertThat(forecast.firing().energy()).isEqualTo(forecast.energy().get().total());
    assertThat(forecast.firing().getter()).isEqualTo(grams(60));
    JobAnswer measured = WHOLE_JOB.answer(measured().build());
    assertThat(measured.energy()).isEmpty();
    assertThat(measured.firing().energy()).isEqualTo(kilowattHours(28));
    assertThat(measured.findings())
        .as("whether it comes out is asked all the same")
        .anyMatch(finding -> finding.code() == KilnFinding.FOLLOWS_PROGRAMME);
  }

  /** One run of the kiln for core, findings and energy; the masses are those of the passage. */
  @Test
  void takesEnergyAndFindingsFromOneForecast() {
    JobAnswer answer = WHOLE_JOB.answer(job().build());
    assertThat(answer.energy()).isEqualTo(answer.forecast().energy());
    assertThat(answer.forecast().setup().metal().orElseThrow().si())
        .isCloseTo(answer.passage().metal().si(), within(1e-12));
    assertThat(answer.findings())
        .filteredOn(finding -> finding.code() == KilnFinding.REACHES_PEAK)
        .as("one for each stage")
        .hasSize(2);
  }

  /** A controller rated by a duty factor: the job with a kiln whose wall is not known. */
  @Test
  void takesAnotherModelOfTheEnergy() {
    WholeJob byDuty = new WholeJob(FiringCheck.standard(), new DutyFactorEnergy(ratio(0.5)));
    JobAnswer answer = byDuty.answer(job().kiln(kiln().build()).build());
    // 2.4 kW, half of the time: (430 / 20 + 3 + 1010 / 20 + 3) h
    assertThat(answer.firing().energy().in(TradeUnits.KILOWATT_HOUR))
        .isCloseTo(1.2 * (21.5 + 3 + 50.5 + 3), within(1e-9));
    assertThat(answer.forecast().energy()).isEmpty();
  }

  /** What a model finds about its own range is told, once for each stage. */
  @Test
  void tellsWhatAnotherModelOfTheEnergyFinds() {
    FiringEnergy duty = new DutyFactorEnergy(ratio(0.5));
    Finding guess =
        Finding.builder()
            .code(KilnFinding.FOLLOWS_PROGRAMME)
            .severity(Severity.NOTE)
            .subject("controller")
            .message("the duty factor is a guess")
            .basis(USER)
            .build();
    FiringEnergy telling =
        (kiln, profile, charge) ->
            EnergyBalance.builder()
                .from(duty.balance(kiln, profile, charge))
                .addFindings(guess)
                .build();
    JobAnswer answer = new WholeJob(FiringCheck.standard(), telling).answer(job().build());
    assertThat(answer.findings())
        .filteredOn(finding -> finding.message().contains("the duty factor is a guess"))
        .hasSize(2);
  }

  @Test
  void handsWhatTheUserKnowsToTheForecast() {
    Job informed =
        job()
            .thermocouple(Thermocouple.S)
            .room(RoomAir.ofChanges(cubicMetres(50), 10))
            .oxygenInflow(Sourced.of(Span.of(gramsPerHour(0.05), gramsPerHour(0.2)), USER))
            .soak(hours(2))
            .build();
    JobAnswer answer = WHOLE_JOB.answer(informed);
    assertThat(answer.forecast().setup().soak()).contains(hours(2));
    assertThat(answer.forecast().carbonMonoxideInRoom()).hasSize(1);
    assertThat(answer.atLeast(Severity.UNDETERMINED))
        .extracting(Finding::code)
        .doesNotContain(AtmosphereFinding.CARBON_LASTS, KilnFinding.SENSOR_TOLERANCE);
  }

  @Test
  void answersAJobThatWillNotComeOut() {
    JobAnswer titanium =
        WHOLE_JOB.answer(
            job()
                .feedstock(MATERIALS.feedstock("titanium grade 2 in wax and polyolefin, generic"))
                .part(part(grams(20)))
                .build());
    assertThat(titanium.worst()).isEqualTo(Severity.STOP);
    assertThat(titanium.atLeast(Severity.STOP))
        .extracting(Finding::code)
        .contains(FiringFinding.CARBON_SUITS_ALLOY);
    assertThat(titanium.statement().firstPart().lines()).isNotEmpty();
  }

  @Test
  void tellsEquipmentThatIsUsedAndNobodyPaysFor() {
    JobAnswer answer = WHOLE_JOB.answer(measured().kilnItem("big kiln").build());
    assertThat(answer.statement().caveats())
        .filteredOn(caveat -> caveat.code() == CaveatCode.EQUIPMENT_NOT_COVERED)
        .singleElement()
        .satisfies(caveat -> assertThat(caveat.text()).contains("big kiln"));
    assertThat(WHOLE_JOB.answer(measured().build()).statement().caveats())
        .extracting(Caveat::code)
        .doesNotContain(CaveatCode.EQUIPMENT_NOT_COVERED);
  }

  @Test
  void refusesJobsThatCannotBeComputed() {
    assertThatThrownBy(() -> measured().parts(0).partsPerCharge(2).build())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "job knob: parts is 0; accepted is 1 or more; and parts per charge is 2 and 1 in the"
                + " measured firing; accepted is the same number");
    Job noGetter = job().getterItem("soot").build();
    assertThatThrownBy(() -> WHOLE_JOB.answer(noGetter))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("soot")
        .hasMessageContaining("carbon");
    Job.Builder unnamed = job();
    unnamed.getterItem(java.util.Optional.empty());
    assertThatThrownBy(unnamed::build)
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("a firing takes 60 g of getter, but no getter item is stated");
    Job noWall = job().kiln(kiln().build()).build();
    assertThatThrownBy(() -> WHOLE_JOB.answer(noWall))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("wall");
  }

  @Test
  void keepsItsAnswerWhenSerialized() throws Exception {
    JobAnswer answer = WHOLE_JOB.answer(job().build());
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(answer);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      assertThat(in.readObject()).isEqualTo(answer);
    }
  }

  private static Job.Builder measured() {
    return job()
        .measuredFiring(
            FiringUse.builder()
                .duration(hours(30))
                .energy(kilowattHours(28))
                .getter(grams(300))
                .partsPerCharge(1)
                .source(USER)
                .build());
  }

  private static Job.Builder job() {
    return Job.builder()
        .part(part(grams(115.26)))
        .feedstock(MATERIALS.feedstock("copper in polylactide, generic"))
        .printer(
            Printer.builder()
                .name("printer")
                .buildVolume(Envelope.of(millimetres(200), millimetres(200), millimetres(200)))
                .filamentDiameter(millimetres(1.75))
                .nozzle(
                    Nozzle.of(MATERIALS.nozzleMaterial("hardened tool steel"), millimetres(0.6)))
                .build())
        .route(FiringRoute.of(stage(FiringStage.debinding(), 450).build(), sintering()))
        .kiln(
            kiln()
                .addWall(
                    WallLayer.builder()
                        .material("firebrick")
                        .thickness(millimetres(100))
                        .conductivity(wattsPerMetreKelvin(0.2))
                        .density(kilogramsPerCubicMetre(600))
                        .heatCapacity(joulesPerKilogramKelvin(1000))
                        .build())
                .build())
        .crucible(
            Crucible.builder()
                .name("crucible")
                .material(MATERIALS.crucibleMaterial("stainless steel 310S"))
                .cavity(RoundCavity.of(millimetres(120), millimetres(100)))
                .mass(grams(1200))
                .heatCapacity(joulesPerKilogramKelvin(550))
                .build())
        .spacing(Spacing.of(millimetres(10)))
        .partsPerCharge(1)
        .prices(prices())
        .filamentItem("filament")
        .energyItem("energy")
        .getterItem("carbon")
        .addResources(Durable.toBuy("printer"), Durable.toBuy("kiln"))
        .addResources(
            Wearing.builder().item("crucible").driver(Driver.FIRING).life(6).source(USER).build())
        .addResources(
            ToppedUp.builder()
                .item("packing powder")
                .fill(grams(1800))
                .loss(percent(5))
                .source(USER)
                .build())
        .parts(4);
  }

  private static Part part(Amount<javax.measure.quantity.Mass> mass) {
    return Part.builder()
        .name("knob")
        .finishedMass(mass)
        .envelope(Envelope.of(millimetres(40), millimetres(40), millimetres(20)))
        .thickestSection(millimetres(4))
        .build();
  }

  private static FiringStage sintering() {
    return stage(FiringStage.sintering(), 1030)
        .getter(MATERIALS.getter("granular activated carbon"), grams(60))
        .build();
  }

  private static FiringStage.Builder stage(FiringStage.Builder stage, double peak) {
    return stage
        .profile(
            Profile.from(celsius(20))
                .rampTo(celsius(peak), kelvinPerHour(20))
                .hold(hours(3))
                .coolTo(celsius(60), kelvinPerHour(100))
                .build())
        .packing(MATERIALS.packingPowder("alumina"))
        .packingMass(grams(1000));
  }

  private static Kiln.Builder kiln() {
    return Kiln.builder()
        .name("kiln")
        .peakTemperature(celsius(1150))
        .chamber(Envelope.of(millimetres(200), millimetres(200), millimetres(200)))
        .power(kilowatts(2.4))
        .voltage(volts(230))
        .phases(1);
  }

  private static PriceBook prices() {
    return PriceBook.builder()
        .currency(CurrencyUnit.EUR)
        .asOf(LocalDate.of(2026, 11, 25))
        .addOffers(offer("printer", ratio(1), 900))
        .addOffers(offer("kiln", ratio(1), 3200))
        .addOffers(offer("crucible", ratio(1), 45))
        .addOffers(offer("filament", grams(500), 60))
        .addOffers(offer("packing powder", grams(1000), 18))
        .addOffers(offer("carbon", grams(1000), 22))
        .addOffers(
            Offer.builder().from(offer("energy", kilowattHours(1), 0.30)).metered(true).build())
        .build();
  }

  private static Offer offer(String item, Amount<?> content, double price) {
    return Offer.builder()
        .item(item)
        .supplier("supplier")
        .content(content)
        .price(Money.of(CurrencyUnit.EUR, price))
        .source(USER)
        .build();
  }

  /** Jobs that differ in what is counted only are fired alike, and share what is computed of it. */
  @Test
  void firingComputedOnceAnswersAllJobsThatAreFiredAlike() {
    Job one = job().build();
    Job hundred = job().parts(100).build();
    CheckedFiring firing = WHOLE_JOB.check(WHOLE_JOB.setup(one));
    assertThat(WHOLE_JOB.answer(one, firing)).isEqualTo(WHOLE_JOB.answer(one));
    assertThat(WHOLE_JOB.answer(hundred, firing)).isEqualTo(WHOLE_JOB.answer(hundred));
    Job thicker =
        Job.builder()
            .from(one)
            .part(
                Part.builder()
                    .from(one.part())
                    .thickestSection(one.part().thickestSection().multiply(0.9))
                    .build())
            .build();
    assertThatThrownBy(() -> WHOLE_JOB.answer(thicker, firing))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("is of another setup; accepted is the firing of its own");
  }
}
