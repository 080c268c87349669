package dev.kilnledger.core.material;

import static dev.kilnledger.units.Amounts.kelvin;
import static dev.kilnledger.units.Amounts.kilogramsPerCubicMetre;

import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.units.Amount;
import java.util.Optional;
import javax.measure.quantity.Temperature;
import si.uom.quantity.Density;

/**
 * The chemical elements that the alloys here are made of, with density at about 20 °C and melting
 * point.
 *
 * <p>Values: CRC Handbook of Chemistry and Physics, 95th ed. (2014), section 4, Physical Constants
 * of Inorganic Compounds, as carried by open data files. Carbon is graphite, which does not melt at
 * ordinary pressure; tin is white tin.
 */
public enum Element {
  /** Copper. */
  COPPER("Cu", 8960, 1357.77),
  /** Iron. */
  IRON("Fe", 7870, 1811.15),
  /** Nickel. */
  NICKEL("Ni", 8900, 1728.15),
  /** Chromium. */
  CHROMIUM("Cr", 7150, 2180.15),
  /** Molybdenum. */
  MOLYBDENUM("Mo", 10200, 2895.15),
  /** Titanium. */
  TITANIUM("Ti", 4506, 1943.15),
  /** Tungsten. */
  TUNGSTEN("W", 19300, 3687.15),
  /** Cobalt. */
  COBALT("Co", 8860, 1768.15),
  /** Aluminium. */
  ALUMINIUM("Al", 2700, 933.473),
  /** Tin. */
  TIN("Sn", 7287, 505.078),
  /** Zinc. */
  ZINC("Zn", 7134, 692.677),
  /** Silver. */
  SILVER("Ag", 10500, 1234.93),
  /** Gold. */
  GOLD("Au", 19300, 1337.33),
  /** Manganese. */
  MANGANESE("Mn", 7300, 1519.15),
  /** Silicon. */
  SILICON("Si", 2329.6, 1687.15),
  /** Vanadium. */
  VANADIUM("V", 6000, 2183.15),
  /** Niobium. */
  NIOBIUM("Nb", 8570, 2750.15),
  /** Carbon. */
  CARBON("C", 2200, Double.NaN),
  /** Magnesium. */
  MAGNESIUM("Mg", 1740, 923.15);

  private final String symbol;
  private final double density;
  private final double meltingPoint;

  Element(String symbol, double density, double meltingPoint) {
    this.symbol = symbol;
    this.density = density;
    this.meltingPoint = meltingPoint;
  }

  /** {@return the chemical symbol, such as {@code "Cu"}} */
  public String symbol() {
    return symbol;
  }

  /** {@return the density of the solid at about 20 °C} */
  public Sourced<Amount<Density>> density() {
    return Sourced.of(kilogramsPerCubicMetre(density), "about 20 °C, solid", References.HANDBOOK);
  }

  /** {@return the melting point, if it has one at ordinary pressure} */
  public Optional<Sourced<Amount<Temperature>>> meltingPoint() {
    return Double.isNaN(meltingPoint)
        ? Optional.empty()
        : Optional.of(Sourced.of(kelvin(meltingPoint), "1 atm", References.HANDBOOK));
  }
}
