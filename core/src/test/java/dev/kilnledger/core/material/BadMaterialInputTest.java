package dev.kilnledger.core.material;

import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.joulesPerKilogramKelvin;
import static dev.kilnledger.units.Amounts.kilogramsPerCubicMetre;
import static dev.kilnledger.units.Amounts.massPercent;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import java.io.Serializable;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

/** What each kind of material refuses, and that it tells all problems together. */
class BadMaterialInputTest {
  private static final MaterialLibrary STANDARD = MaterialLibrary.standard();

  private static <T extends Serializable> Sourced<T> stated(T value) {
    return Sourced.of(value, Source.user("this test"));
  }

  private static void refused(ThrowingCallable attempt, String message) {
    assertThatThrownBy(attempt).isInstanceOf(IllegalArgumentException.class).hasMessage(message);
  }

  @Test
  void alloy() {
    refused(
        () ->
            Alloy.builder()
                .from(STANDARD.alloy("copper"))
                .name("")
                .fullDensity(stated(kilogramsPerCubicMetre(0)))
                .solidus(stated(celsius(1100)))
                .liquidus(stated(celsius(900)))
                .sinteringHold(stated(Span.of(hours(0), hours(1))))
                .expectedRelativeDensity(stated(Spans.volumeFraction(0.9, 0.95, 1.1)))
                .heatCapacity(stated(joulesPerKilogramKelvin(0)))
                .hotHeatCapacity(stated(joulesPerKilogramKelvin(-1)))
                .build(),
        "alloy : name is blank; accepted is any text; and full density is 0 kg/m³; accepted is more"
            + " than zero; and solidus is 1100 °C and liquidus 900 °C; accepted is a solidus up to"
            + " the liquidus; and the sintering window begins at 950 °C; accepted is below the"
            + " liquidus 900 °C; and shortest sintering hold is 0 h; accepted is more than zero; and expected"
            + " relative density spans 0.9 m³/m³ to 1.1 m³/m³; accepted is above 0 and up to 1; and"
            + " heat capacity is 0 J/(kg·K); accepted is more than zero; and hot heat capacity is -1"
            + " J/(kg·K); accepted is more than zero");
  }

  @Test
  void sharesAtTheirLimits() {
    Alloy.Builder copper = Alloy.builder().from(STANDARD.alloy("copper"));
    assertThat(copper.expectedRelativeDensity(stated(Spans.volumeFraction(0.9, 0.95, 1))).build())
        .isNotNull();
    assertThatThrownBy(
            () ->
                copper.expectedRelativeDensity(stated(Spans.volumeFraction(0, 0.9, 0.95))).build())
        .hasMessageContaining("expected relative density spans 0 m³/m³ to 0.95 m³/m³");
    Binder.Builder binder = Binder.builder().from(STANDARD.binder("polylactide"));
    assertThat(binder.residue(stated(Spans.massFraction(0, 0, 0.1))).build()).isNotNull();
    assertThatThrownBy(() -> binder.residue(stated(Spans.massFraction(0, 0.5, 1))).build())
        .hasMessageContaining(
            "residue spans 0 kg/kg to 1 kg/kg; accepted is from 0 to less than 1");
    assertThatThrownBy(() -> binder.residue(stated(Spans.massFraction(-0.1, 0, 0.1))).build())
        .hasMessageContaining("residue spans -0.1 kg/kg to 0.1 kg/kg");
    Getter.Builder getter = Getter.builder().from(STANDARD.getter("powdered carbon"));
    assertThat(getter.ash(stated(Spans.massFraction(0, 0.1))).build()).isNotNull();
    assertThatThrownBy(() -> getter.ash(stated(Spans.massFraction(-0.1, 0.1))).build())
        .hasMessageContaining("ash spans -0.1 kg/kg to 0.1 kg/kg");
  }

  @Test
  void usualPeakOutsideTheWindow() {
    refused(
        () ->
            Alloy.builder().from(STANDARD.alloy("copper")).usualPeak(stated(celsius(1070))).build(),
        "alloy copper: usual peak is 1070 °C; accepted is in the sintering window, 950 °C to 1060"
            + " °C");
  }

  @Test
  void composition() {
    refused(
        () ->
            Composition.builder()
                .designation("UNS C52400")
                .balance(Element.COPPER)
                .putRanges(Element.TIN, Spans.massPercent(9, 11))
                .putNominal(Element.TIN, massPercent(20))
                .putNominal(Element.ZINC, massPercent(-10))
                .source(Source.user("this test"))
                .build(),
        "composition UNS C52400: the nominal mass fractions add up to 0.1; accepted is 1 within"
            + " 0.0005; and the nominal composition lacks the balance element Cu; accepted is one"
            + " that names it; and nominal Sn is"
            + " 20 % by mass; accepted is from 9 % by mass to 11 % by mass; and nominal Zn is -10 %"
            + " by mass; accepted is zero or more");
  }

  @Test
  void compositionLacksOnlyWhatItMayLack() {
    Composition.Builder bronze =
        Composition.builder()
            .designation("bronze")
            .balance(Element.COPPER)
            .putRanges(Element.ZINC, Spans.massPercent(0, 0.5))
            .putNominal(Element.COPPER, massPercent(100))
            .source(Source.user("this test"));
    assertThat(bronze.build().nominal()).containsOnlyKeys(Element.COPPER);
    refused(
        () -> bronze.putRanges(Element.TIN, Spans.massPercent(9, 11)).build(),
        "composition bronze: the nominal composition lacks Sn; accepted is from 9 % by mass to 11 %"
            + " by mass");
  }

  @Test
  void compositionKeepsLimitsInWords() {
    assertThat(STANDARD.alloy("tin bronze 90/10").composition().otherLimits())
        .contains("phosphorus 0.03 to 0.35 %");
    assertThat(
            Composition.builder()
                .designation("pure")
                .balance(Element.ZINC)
                .putNominal(Element.ZINC, massPercent(100))
                .source(Source.user("this test"))
                .build()
                .otherLimits())
        .isEmpty();
  }

  @Test
  void carbonProtection() {
    refused(
        () ->
            CarbonProtection.builder()
                .from(STANDARD.alloy("iron").carbonProtection())
                .remark(" ")
                .build(),
        "carbon protection: remark is blank; accepted is any text");
  }

  @Test
  void binder() {
    refused(
        () ->
            Binder.builder()
                .from(STANDARD.binder("polylactide"))
                .name("")
                .density(stated(Spans.density(0, 1, 2)))
                .residue(stated(Spans.massFraction(-0.1, 0.5, 1)))
                .build(),
        "binder : name is blank; accepted is any text; and lowest density is 0 kg/m³; accepted is"
            + " more than zero; and residue spans -0.1 kg/kg to 1 kg/kg; accepted is from 0 to less"
            + " than 1");
  }

  @Test
  void packingPowder() {
    refused(
        () ->
            PackingPowder.builder()
                .from(STANDARD.packingPowder("talc"))
                .apparentDensity(stated(Spans.kilogramsPerCubicMetre(0, 500)))
                .tapDensity(stated(Spans.kilogramsPerCubicMetre(800, 2800)))
                .build(),
        "packing powder talc: lowest apparent density is 0 kg/m³; accepted is more than zero; and tap"
            + " density reaches 2800 kg/m³ with grains of 2800 kg/m³; accepted is less than the"
            + " grains' density");
  }

  @Test
  void getter() {
    refused(
        () ->
            Getter.builder()
                .from(STANDARD.getter("powdered carbon"))
                .bulkDensity(stated(Spans.kilogramsPerCubicMetre(0, 500)))
                .ash(stated(Spans.massFraction(0, 1)))
                .heatCapacity(stated(joulesPerKilogramKelvin(0)))
                .build(),
        "getter powdered carbon: lowest bulk density is 0 kg/m³; accepted is more than zero; and ash"
            + " spans 0 kg/kg to 1 kg/kg; accepted is from 0 to less than 1; and heat"
            + " capacity is 0 J/(kg·K); accepted is more than zero");
  }

  @Test
  void crucibleAndNozzleMaterial() {
    refused(
        () ->
            CrucibleMaterial.builder().from(STANDARD.crucibleMaterial("mullite")).name("").build(),
        "crucible material: name is blank; accepted is any text");
    refused(
        () ->
            CrucibleMaterial.builder()
                .from(STANDARD.crucibleMaterial("mullite"))
                .serviceLimit(stated(celsius(1100)))
                .cyclicLimit(stated(celsius(1101)))
                .build(),
        "crucible material: cyclic limit is 1101 °C; accepted is up to the service limit 1100 °C");
    refused(
        () -> NozzleMaterial.builder().from(STANDARD.nozzleMaterial("brass")).name("").build(),
        "nozzle material : name is blank; accepted is any text");
  }
}
