package dev.kilnledger.thermal.atmosphere;

import static dev.kilnledger.thermal.atmosphere.OxidationEnergy.curve;
import static dev.kilnledger.thermal.atmosphere.OxidationEnergy.line;

import dev.kilnledger.core.material.Element;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amounts;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Temperature;

/**
 * The oxide that decides for each element whether it stays bright, with every published account of
 * its Gibbs energy, the most trusted first: measured electromotive forces, then polynomials and
 * lines fitted to them, then text-book lines. Of elements with several oxides it is the lowest one.
 *
 * <p>Accounts of one oxide differ by more than each claims (chromium by 8 kJ/mol O2; iron because
 * the polynomials take wuestite as FeO, which it is not), so answers are intervals over all
 * accounts.
 */
public enum Oxide {
  /** Copper(I) oxide. */
  COPPER(
      Element.COPPER,
      "Cu2O",
      2,
      1,
      OxidationEnergy.of(80, Literature.ONEILL, curve(700, 1338, -347705, 246.096, -12.9053, 0)),
      OxidationEnergy.of(3000, 298.15, 1358, Species.COPPER, Species.COPPER_I_OXIDE, 2, 1)),
  /** Nickel(II) oxide. */
  NICKEL(
      Element.NICKEL,
      "NiO",
      1,
      1,
      OxidationEnergy.of(200, Literature.ONEILL, curve(700, 1700, -478967, 248.514, -9.7961, 0)),
      OxidationEnergy.of(
          3000,
          Source.published("Hemingway, Am. Mineral. 75 (1990) 781, abstract"),
          curve(298, 1700, -476780, 229.2, -7.44, 0))),
  /** Cobalt(II) oxide. */
  COBALT(
      Element.COBALT,
      "CoO",
      1,
      1,
      OxidationEnergy.of(
          200, Literature.ONEILL, curve(700, 1394, -492186, 509.322, -53.284, 0.02518))),
  /** Wuestite; below 833 K, where it comes apart, the figures are those of magnetite. */
  IRON(
      Element.IRON,
      "FeO",
      1,
      1,
      OxidationEnergy.of(
          300,
          Literature.ONEILL,
          curve(833, 1042, -605568, 1366.420, -182.7955, 0.10359),
          curve(1042, 1184, -519113, 59.129, 8.9276, 0),
          curve(1184, 1644, -550915, 269.106, -16.9484, 0)),
      OxidationEnergy.of(3000, 833, 1650, Species.IRON, Species.IRON_II_OXIDE, 1, 1),
      OxidationEnergy.of(3000, 298.15, 833, Species.IRON, Species.MAGNETITE, 3, 4)),
  /** Chromium(III) oxide. */
  CHROMIUM(
      Element.CHROMIUM,
      "Cr2O3",
      2,
      3,
      OxidationEnergy.of(
          170,
          Source.published(
              "Holzheid and O'Neill, Geochim. Cosmochim. Acta 59 (1995) 475, abstract"),
          curve(600, 1800, -758585, 349.718, -25.5216, 0.00935)),
      OxidationEnergy.of(8500, 298.15, 2130, Species.CHROMIUM, Species.CHROMIUM_III_OXIDE, 2, 3)),
  /** Molybdenum dioxide. */
  MOLYBDENUM(
      Element.MOLYBDENUM,
      "MoO2",
      1,
      2,
      OxidationEnergy.of(
          1000,
          Source.quoted("O'Neill, Am. Mineral. 71 (1986) 1007"),
          curve(1000, 1450, -603268, 337.460, -20.6892, 0)),
      OxidationEnergy.of(3000, Literature.FITTED, line(900, 1300, -577956, 170.41)),
      OxidationEnergy.of(8000, Literature.TEXT_BOOK, line(298, 2273, -578200, 166.5))),
  /** Tungsten dioxide. */
  TUNGSTEN(
      Element.TUNGSTEN,
      "WO2",
      1,
      2,
      OxidationEnergy.of(3000, Literature.FITTED, line(900, 1300, -577991, 172.18)),
      OxidationEnergy.of(8000, Literature.TEXT_BOOK, line(298, 1997, -581200, 171.5))),
  /** Tin dioxide, over solid or liquid tin. */
  TIN(
      Element.TIN,
      "SnO2",
      1,
      2,
      OxidationEnergy.of(
          2200,
          Source.published("Mallika et al., Thermochim. Acta 371 (2001) 95, abstract"),
          line(772, 1206, -568900, 200.7)),
      OxidationEnergy.of(3000, Literature.FITTED, line(900, 1300, -574350, 207.05))),
  /** Titanium dioxide. */
  TITANIUM(
      Element.TITANIUM,
      "TiO2",
      1,
      2,
      OxidationEnergy.of(3000, 298.15, 1944, Species.TITANIUM, Species.RUTILE, 1, 2),
      OxidationEnergy.of(8000, Literature.TEXT_BOOK, line(298, 1943, -941000, 177.57))),
  /** Silicon dioxide. */
  SILICON(
      Element.SILICON,
      "SiO2",
      1,
      2,
      OxidationEnergy.of(3000, 298.15, 1690, Species.SILICON, Species.SILICA, 1, 2),
      OxidationEnergy.of(8000, Literature.TEXT_BOOK, line(298, 1685, -907100, 175))),
  /** Manganese(II) oxide. */
  MANGANESE(
      Element.MANGANESE,
      "MnO",
      1,
      1,
      OxidationEnergy.of(
          3000,
          Source.recomputed("fit to Holland and Powell, J. Metamorphic Geol. 29 (2011) 333"),
          line(900, 1300, -772589, 148.65)),
      OxidationEnergy.of(8000, Literature.TEXT_BOOK, line(298, 1516, -777800, 152.7))),
  /** Aluminium oxide. */
  ALUMINIUM(
      Element.ALUMINIUM,
      "Al2O3",
      2,
      3,
      OxidationEnergy.of(3000, 298.15, 933.61, Species.ALUMINIUM, Species.ALUMINA, 2, 3),
      OxidationEnergy.of(8000, Literature.TEXT_BOOK, line(933, 2327, -1124800, 217.9))),
  /** Magnesium oxide. */
  MAGNESIUM(
      Element.MAGNESIUM,
      "MgO",
      1,
      1,
      OxidationEnergy.of(3000, Literature.FITTED, line(900, 1300, -1217516, 230.60))),
  /** Vanadium(II) oxide; V2O3 takes 46 kJ less per mole of O2. */
  VANADIUM(
      Element.VANADIUM,
      "VO",
      1,
      1,
      OxidationEnergy.of(5000, 298.15, 2063, Species.VANADIUM, Species.VANADIUM_II_OXIDE, 1, 1),
      OxidationEnergy.of(10_000, Literature.ROUNDED, line(298.15, 2000, -849_000, 160))),
  /**
   * Niobium(II) oxide; NbO2 takes 44 kJ less per mole of O2. The accounts are given so much room
   * because handbooks have it at -757 kJ at 25 °C (from memory), the polynomials at -784.
   */
  NIOBIUM(
      Element.NIOBIUM,
      "NbO",
      1,
      1,
      OxidationEnergy.of(10_000, 298.15, 2210, Species.NIOBIUM, Species.NIOBIUM_II_OXIDE, 1, 1),
      OxidationEnergy.of(17_000, Literature.ROUNDED, line(298.15, 2000, -825_000, 170))),
  /**
   * Zinc oxide, over solid and liquid zinc up to its boiling point. The account of the hydrogen is
   * the line through {@code -2 (-RT ln 10 (8.040 - 11794/T) - dG(H2O) + RT ln p(Zn))}, within 0.3
   * kJ; that of the key values has heat and entropy of 25 °C, and of the fusion.
   */
  ZINC(
      Element.ZINC,
      "ZnO",
      1,
      1,
      OxidationEnergy.of(
          560,
          Source.published("Katayama et al., Trans. Japan Inst. Metals 23 (1982) 556, abstract"),
          line(843, 1067, -709_120, 215.6)),
      OxidationEnergy.of(
          1000,
          Source.recomputed(
              "equilibrium of zinc oxide with hydrogen (Metallurgical Society of AIME, 1972,"
                  + " abstract) with steam and zinc of NASA TM-4513 and zinc vapour of CODATA"),
          line(865, 1180, -713_452, 219.99)),
      OxidationEnergy.of(
          2000,
          Source.quoted("CODATA Key Values (1989), and zinc of NASA TM-4513"),
          line(298.15, 692.73, -700_920, 201.11),
          line(692.73, 900, -715_520, 222.19)));

  /** Sources that several oxides share. */
  private static final class Literature {
    static final Source ONEILL =
        Source.published(
            "O'Neill and Pownceby, Contrib. Mineral. Petrol. 114 (1993) 296, abstract");
    static final Source FITTED =
        Source.recomputed("line fitted from 900 to 1300 K to NASA/TP-2002-211556");
    static final Source ROUNDED =
        Source.quoted(
            "Ellingham package of DoITPoMS, University of Cambridge; slope rounded to 10 J/(mol"
                + " K)");
    static final Source TEXT_BOOK =
        Source.fromMemory(
            "Gaskell, Introduction to the Thermodynamics of Materials, table A-1; Turkdogan,"
                + " Physical Chemistry of High Temperature Technology (1980)");

    private Literature() {}
  }

  private final Element element;
  private final String formula;
  private final double metalAtoms;
  private final double oxygenAtoms;
  private final List<OxidationEnergy> accounts;

  Oxide(
      Element element,
      String formula,
      double metalAtoms,
      double oxygenAtoms,
      OxidationEnergy... accounts) {
    this.element = element;
    this.formula = formula;
    this.metalAtoms = metalAtoms;
    this.oxygenAtoms = oxygenAtoms;
    this.accounts = Collections.unmodifiableList(Arrays.asList(accounts.clone()));
  }

  /**
   * The oxide that decides for an element.
   *
   * @param element the element
   * @return its oxide, empty where no oxide is known here
   */
  public static Optional<Oxide> of(Element element) {
    return Arrays.stream(values()).filter(oxide -> oxide.element == element).findFirst();
  }

  /** {@return the element} */
  public Element element() {
    return element;
  }

  /** {@return the chemical formula, such as {@code "Cr2O3"}} */
  public String formula() {
    return formula;
  }

  /** {@return where the Gibbs energies are from, the most trusted first} */
  public List<Source> sources() {
    return accounts.stream().map(account -> account.source).toList();
  }

  /** {@return the temperatures at which at least one account holds} */
  public Span<Temperature> range() {
    return Span.of(
        Amounts.kelvin(accounts.stream().mapToDouble(a -> a.from).min().orElseThrow()),
        Amounts.kelvin(accounts.stream().mapToDouble(a -> a.to).max().orElseThrow()));
  }

  List<OxidationEnergy> accounts() {
    return accounts;
  }

  /** Moles of metal that take one mole of O2. */
  double metalPerOxygen() {
    return 2 * metalAtoms / oxygenAtoms;
  }
}
