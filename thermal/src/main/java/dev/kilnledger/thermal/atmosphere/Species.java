package dev.kilnledger.thermal.atmosphere;

import static dev.kilnledger.units.Amounts.gramsPerMole;

import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.MolarMass;

/**
 * The substances whose standard state is known here. Molar masses: IUPAC abridged standard atomic
 * weights (2021).
 */
public enum Species {
  /** Copper. */
  COPPER("Cu", 63.546),
  /** Iron, each crystal form where it is stable. */
  IRON("Fe", 55.845),
  /** Nickel. */
  NICKEL("Ni", 58.693),
  /** Chromium. */
  CHROMIUM("Cr", 51.996),
  /** Molybdenum. */
  MOLYBDENUM("Mo", 95.95),
  /** Tungsten. */
  TUNGSTEN("W", 183.84),
  /** Titanium, each crystal form where it is stable. */
  TITANIUM("Ti", 47.867),
  /** Cobalt, each crystal form where it is stable. */
  COBALT("Co", 58.933),
  /** Tin, solid and liquid. */
  TIN("Sn", 118.71),
  /** Aluminium, solid. */
  ALUMINIUM("Al", 26.982),
  /** Silicon, solid. */
  SILICON("Si", 28.085),
  /** Vanadium. */
  VANADIUM("V", 50.942),
  /** Niobium. */
  NIOBIUM("Nb", 92.906),
  /** Vanadium(II) oxide. */
  VANADIUM_II_OXIDE("VO", 66.941),
  /** Niobium(II) oxide. */
  NIOBIUM_II_OXIDE("NbO", 108.905),
  /** Carbon as graphite. */
  GRAPHITE("C", 12.011),
  /** Copper(I) oxide. */
  COPPER_I_OXIDE("Cu2O", 143.091),
  /** Copper(II) oxide. */
  COPPER_II_OXIDE("CuO", 79.545),
  /** Iron(II) oxide taken as stoichiometric; real wuestite holds less iron. */
  IRON_II_OXIDE("FeO", 71.844),
  /** Iron(III) oxide. */
  IRON_III_OXIDE("Fe2O3", 159.687),
  /** Magnetite. */
  MAGNETITE("Fe3O4", 231.531),
  /** Chromium(III) oxide. */
  CHROMIUM_III_OXIDE("Cr2O3", 151.989),
  /** Titanium dioxide as rutile. */
  RUTILE("TiO2", 79.865),
  /** Silicon dioxide: quartz, above 1200 K cristobalite. */
  SILICA("SiO2", 60.083),
  /** Aluminium oxide as corundum. */
  ALUMINA("Al2O3", 101.961),
  /** Magnesium oxide. */
  MAGNESIA("MgO", 40.304),
  /** Silicon carbide, beta. */
  SILICON_CARBIDE("SiC", 40.096),
  /** Oxygen. */
  OXYGEN("O2", 31.998),
  /** Nitrogen. */
  NITROGEN("N2", 28.014),
  /** Argon. */
  ARGON("Ar", 39.95),
  /** Hydrogen. */
  HYDROGEN("H2", 2.016),
  /** Water vapour. */
  STEAM("H2O", 18.015),
  /** Carbon monoxide. */
  CARBON_MONOXIDE("CO", 28.010),
  /** Carbon dioxide. */
  CARBON_DIOXIDE("CO2", 44.009);

  private final String formula;
  private final double molarMass;

  Species(String formula, double molarMass) {
    this.formula = formula;
    this.molarMass = molarMass;
  }

  /** {@return the chemical formula, such as {@code "Cr2O3"}} */
  public String formula() {
    return formula;
  }

  /** {@return the molar mass} */
  public Amount<MolarMass> molarMass() {
    return gramsPerMole(molarMass);
  }

  /** In kg/mol. */
  double kilogramsPerMole() {
    return molarMass / 1000;
  }
}
