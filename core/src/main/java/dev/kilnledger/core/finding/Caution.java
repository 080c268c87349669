package dev.kilnledger.core.finding;

import dev.kilnledger.core.source.Source;

/**
 * The hazards of this work, each with a short caution. Cautions accompany results where the hazard
 * is; they replace neither safety data sheets, nor local codes, nor licensed practice.
 */
public enum Caution {
  /** Carbon monoxide from the getter and the binder. */
  CARBON_MONOXIDE(
      "Carbon in a hot crucible gives off carbon monoxide: poisonous, without smell, and flammable"
          + " when a hot lid is opened. Limits in force differ: NIOSH recommends 35 ppm as an 8 h"
          + " mean and a 200 ppm ceiling, OSHA permits 50 ppm. Vent the kiln and use an alarm.",
      Source.published(
          "29 CFR 1910.1000 table Z-1; NIOSH criteria document 1972 (look up the edition in"
              + " force)")),
  /** Fumes of the binder as it burns out. */
  BINDER_FUMES(
      "Burning binder gives off irritant and flammable vapours; what they are depends on the"
          + " binder. Lead them outside and keep ignition away.",
      Source.commonPractice("safety data sheet of the feedstock")),
  /** Fine metal powder. */
  METAL_POWDER(
      "Fine metal powder can burn or explode as dust and must not be breathed in. Keep it damp or"
          + " enclosed, away from sparks.",
      Source.published("NFPA 660 (2025), combustible dusts; safety data sheet of the powder")),
  /** Nickel, cobalt or chromium in the dust. */
  NICKEL_CHROMIUM(
      "Dust and fume with nickel, cobalt or chromium can cause cancer and allergies. Wet work,"
          + " extraction and respirators as local rules ask.",
      Source.commonPractice("safety data sheet of the powder; IARC monographs")),
  /** Dust of packing powders. */
  MINERAL_DUST(
      "Dust of packing powders harms the lungs, crystalline silica most of all (OSHA permits 0.05"
          + " mg/m3). Pour slowly, extract, wear a respirator.",
      Source.published("29 CFR 1910.1053, respirable crystalline silica")),
  /** Hot kiln, crucible and charge. */
  HOT_WORK(
      "Kiln, crucible and charge stay hot for hours. Open only when cold, on ground that does not"
          + " burn.",
      Source.commonPractice("hot work")),
  /** The kiln as an electrical load. */
  ELECTRICAL_LOAD(
      "A kiln is a continuous load near the limit of its circuit. Wiring and protection belong to"
          + " a licensed electrician and the local code.",
      Source.commonPractice("local electrical code"));

  private final String text;
  private final Source source;

  Caution(String text, Source source) {
    this.text = text;
    this.source = source;
  }

  /** {@return the caution in one to three sentences} */
  public String text() {
    return text;
  }

  /** {@return what the caution stands on} */
  public Source source() {
    return source;
  }
}
