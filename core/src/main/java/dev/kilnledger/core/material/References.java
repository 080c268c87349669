package dev.kilnledger.core.material;

import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.SpecificHeatCapacity;

/** The publications to which several figures of the standard library go back. */
final class References {
  static final Source HANDBOOK =
      Source.quoted(
          "CRC Handbook of Chemistry and Physics, 95th ed. (2014), sec. 4, Physical Constants of"
              + " Inorganic Compounds, as carried by open data files");
  static final Source COPPER_ALLOY_DATA = Source.quoted("copper alloy data, C52400");
  static final Source MOULDING_GRADES =
      Source.quoted(
          "ASTM B883-10e1, metal injection moulded materials, table 1, in a summary of the"
              + " standard");
  static final Source COMPENDIUM =
      Source.published(
          "McConn et al., Compendium of Material Composition Data for Radiation Transport Modeling,"
              + " PNNL-15870 Rev. 1 (2011)");
  static final Source CALLISTER_DENSITY =
      Source.published("Callister, Materials Science and Engineering, appendix B, table B.1");
  static final Source CALLISTER_EXPANSION =
      Source.published("Callister, Materials Science and Engineering, appendix B, table B.6");
  static final Source CALLISTER_HEAT =
      Source.published("Callister, Materials Science and Engineering, 8th ed., table 19.1");
  static final Source CALLISTER_ALLOY_HEAT =
      Source.published("Callister, Materials Science and Engineering, appendix B, table B.8");
  static final Source NASA_HEAT =
      Source.recomputed(
          "McBride, Zehe and Gordon, NASA/TP-2002-211556, polynomials of the element");
  static final Source NASA_ALLOY_HEAT =
      Source.recomputed(
          "Kopp-Neumann rule, an estimate, from the element polynomials of McBride, Zehe and"
              + " Gordon, NASA/TP-2002-211556");

  /** (H(1273.15 K) - H(298.15 K)) / 975 K = 1491.77 J/g / 975 K. */
  static final Sourced<Amount<SpecificHeatCapacity>> GRAPHITE_HOT_HEAT =
      Sourced.of(
          Amounts.joulesPerKilogramKelvin(1530),
          "graphite, mean from 25 to 1000 °C; other carbon is taken to be like it",
          Source.recomputed(
              "1491.77 J/g over 975 K: McBride, Zehe and Gordon, NASA/TP-2002-211556"));

  static final Source NASA_OXIDE =
      Source.recomputed(
          "McBride, Zehe and Gordon, NASA/TP-2002-211556: oxide + carbon = metal + carbon monoxide,"
              + " pure phases");
  static final Source NICKEL_ALLOY_SHEET =
      Source.quoted("nickel alloy 625 (UNS N06625), limits of ASTM B446 and properties");
  static final Source TITANIUM_SHEET =
      Source.quoted("ASM materials data sheet, titanium grade 2 (UNS R50400)");
  static final Source TITANIUM_MOULDING =
      Source.published("German, Materials 6 (2013) 3641, table 1");
  static final Source MOULDING_BOOK =
      Source.fromMemory("German and Bose, Injection Molding of Metals and Ceramics");
  static final Source PRESSING_BOOK = Source.fromMemory("ASM Handbook vol. 7, Powder Metallurgy");
  static final Source ALLOY_HARDNESS =
      Source.fromMemory("ASM Handbook, hardness of annealed bulk metal, widened for powder");
  static final Source PRINTED_HOLD =
      Source.commonPractice("holds used for moulded and printed parts");
  static final Source BULK_TABLES =
      Source.quoted(
          "tables of the bulk density of materials, given in lb/ft3, publisher not known");
  static final Source CARBON_GRADES = Source.fromMemory("bulk solids handbooks, carbon grades");
  static final Source STAINLESS_SERVICE =
      Source.published(
          "Specialty Steel Industry of North America, high temperature properties of stainless"
              + " steel");
  static final Source CERAMIC_SERVICE =
      Source.fromMemory("handbooks of technical ceramics, highest use temperatures");

  private References() {}
}
