package dev.kilnledger.thermal.firing;

import static dev.kilnledger.thermal.Workbench.copper;
import static dev.kilnledger.thermal.Workbench.debinding;
import static dev.kilnledger.thermal.Workbench.setup;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.cubicCentimetres;
import static dev.kilnledger.units.Amounts.kilograms;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.Amounts.wattsPerMetreKelvin;
import static dev.kilnledger.units.Amounts.wattsPerSquareMetreKelvin;
import static dev.kilnledger.units.TradeUnits.MILLIMETRE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.thermal.conduction.BodyShape;
import dev.kilnledger.thermal.conduction.Charge;
import dev.kilnledger.thermal.conduction.ChargeLayer;
import dev.kilnledger.thermal.conduction.ChargeMaterial;
import dev.kilnledger.thermal.conduction.EigenmodeConduction;
import dev.kilnledger.thermal.conduction.EnthalpyConduction;
import dev.kilnledger.thermal.conduction.PropertyCurve;
import dev.kilnledger.thermal.conduction.SurfaceContact;
import dev.kilnledger.units.quantity.ThermalConductivity;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * The crucible is 160 mm wide and 140 mm high; 1.5 kg of its packing, tapped to 1.0 to 1.5 g/cm³,
 * are 1200 cm³.
 */
class ChargeInCrucibleTest {
  private static final SurfaceContact IN_AIR = SurfaceContact.of(wattsPerSquareMetreKelvin(10));

  private static Charge charge(FiringSetup.Builder setup) {
    return ChargeInCrucible.of(setup.build(), debinding().build());
  }

  private static FiringSetup.Builder without() {
    return setup(copper(), 1000).partsVolume(Optional.empty());
  }

  private static double millimetres(Charge charge, int layer) {
    return charge.layers().get(layer).thickness().in(MILLIMETRE);
  }

  /** By hand: 1600 cm³ over 201.06 cm² are 79.58 mm high, a quarter of them the brown parts. */
  @Test
  void isAsHighAsPackingAndPartsFillIt() {
    Charge charge = charge(setup(copper(), 1000).partsVolume(cubicCentimetres(400)));
    assertThat(charge.shape()).isEqualTo(BodyShape.SLAB);
    assertThat(millimetres(charge, 0)).isCloseTo(1600 / 201.0619 * 10 / 2 / 4, within(1e-4));
    assertThat(millimetres(charge, 1)).isCloseTo(1600 / 201.0619 * 10 / 2 * 3 / 4, within(1e-4));
  }

  /** 5 kg are 4 l, and the crucible holds 2.8 l: it is a cylinder of 80 mm radius. */
  @Test
  void isNoHigherThanTheCrucible() {
    Charge charge =
        ChargeInCrucible.of(without().build(), debinding().packingMass(kilograms(5)).build());
    assertThat(charge.shape()).isEqualTo(BodyShape.CYLINDER);
    assertThat(charge.layers()).hasSize(1);
    assertThat(millimetres(charge, 0)).isCloseTo(80, within(1e-9));
  }

  /** 1200 cm³ over 201.06 cm² are 59.68 mm high. */
  @Test
  void isPackingAloneWhereTheMetalIsNotKnown() {
    Charge alone = charge(without());
    assertThat(alone.layers()).hasSize(1);
    assertThat(alone.layers().get(0).material().name()).isEqualTo("alumina");
    assertThat(millimetres(alone, 0)).isCloseTo(1200 / 201.0619 * 10 / 2, within(1e-4));

    Charge inAir = charge(without().contact(IN_AIR));
    assertThat(inAir.contact()).isEqualTo(IN_AIR);
    assertThat(inAir.layers()).as("the crucible keeps heat back").hasSize(2);
    assertThat(inAir.layers().get(0)).isEqualTo(alone.layers().get(0));
    assertThat(inAir.layers().get(1).material().name()).isEqualTo("mullite of the crucible");
  }

  @Test
  void isPackingAloneWhereTheMetalDoesNotFitIn() {
    assertThat(charge(setup(copper(), 1000).partsVolume(cubicCentimetres(2900))))
        .isEqualTo(charge(without()));
    assertThat(charge(setup(copper(), 1000).partsVolume(cubicCentimetres(2700))).layers())
        .hasSize(3);
  }

  @Test
  void takesTheConductivityThatIsStated() {
    Source hotWire = Source.user("hot wire");
    ChargeMaterial stated =
        charge(setup(copper(), 1000).packingConductivity(Sourced.of(conducting(0.2), hotWire)))
            .layers()
            .get(1)
            .material();
    assertThat(stated.conductivity()).isEqualTo(conducting(0.2));
    assertThat(stated.conductivityFactor()).isEqualTo(ratio(1));
    assertThat(stated.source()).isEqualTo(hotWire);
  }

  private static PropertyCurve<ThermalConductivity> conducting(double wattsPerMetreKelvin) {
    return PropertyCurve.constant(wattsPerMetreKelvin(wattsPerMetreKelvin));
  }

  /** Fourier's series are exact for one body of constant properties, without radiation. */
  @Test
  void isSolvedExactlyWhereItCanBe() {
    Charge alone = charge(without());
    assertThat(ChargeInCrucible.model(alone)).isInstanceOf(EigenmodeConduction.class);
    Charge inAir = Charge.builder().from(alone).contact(IN_AIR).build();
    assertThat(ChargeInCrucible.model(inAir)).isInstanceOf(EigenmodeConduction.class);

    Charge radiating =
        Charge.builder()
            .from(alone)
            .contact(SurfaceContact.of(wattsPerSquareMetreKelvin(10), ratio(0.8)))
            .build();
    assertThat(ChargeInCrucible.model(radiating)).isInstanceOf(EnthalpyConduction.class);
    ChargeLayer packing = alone.layers().get(0);
    Charge two = Charge.builder().from(alone).layers(List.of(packing, packing)).build();
    assertThat(ChargeInCrucible.model(two)).isInstanceOf(EnthalpyConduction.class);
    ChargeMaterial changing =
        ChargeMaterial.builder()
            .from(packing.material())
            .conductivity(
                PropertyCurve.<ThermalConductivity>builder()
                    .at(celsius(0), wattsPerMetreKelvin(0.2))
                    .at(celsius(600), wattsPerMetreKelvin(0.3))
                    .build())
            .build();
    Charge bending =
        Charge.builder()
            .from(alone)
            .layers(List.of(ChargeLayer.of(changing, packing.thickness())))
            .build();
    assertThat(ChargeInCrucible.model(bending)).isInstanceOf(EnthalpyConduction.class);
  }
}
