package dev.kilnledger.core.material;

import static dev.kilnledger.units.Amounts.massFraction;

import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.quantity.MassFraction;
import java.util.List;

/**
 * The feedstocks of the standard library. They stand for classes of products, not for any one
 * product: take the data sheet's fractions for a real spool.
 */
final class StandardFeedstocks {
  static final List<Feedstock> ALL =
      List.of(
          generic(
              "copper in polylactide, generic",
              StandardCopperAlloys.COPPER,
              StandardBinders.POLYLACTIDE,
              0.90,
              Spans.massFraction(0.85, 0.92),
              "55 vol% printed (Sadaf et al., Polymers 14 (2022) 4962, abstract)"),
          generic(
              "tin bronze 90/10 in polylactide, generic",
              StandardCopperAlloys.TIN_BRONZE,
              StandardBinders.POLYLACTIDE,
              0.89,
              Spans.massFraction(0.82, 0.92),
              "nothing published for bronze"),
          generic(
              "iron in polylactide, generic",
              StandardIronAlloys.IRON,
              StandardBinders.POLYLACTIDE,
              0.88,
              Spans.massFraction(0.80, 0.91),
              "at 0.80 the solids loading is so low that the part may slump"),
          generic(
              "low-alloy steel 4605 in wax and polyolefin, generic",
              StandardIronAlloys.STEEL_4605,
              StandardBinders.WAX_AND_POLYOLEFIN,
              0.93,
              Spans.massFraction(0.91, 0.945),
              "moulded green parts hold 6 to 8 % binder by mass"),
          generic(
              "stainless steel 316L in wax and polyolefin, generic",
              StandardStainlessSteels.STEEL_316L,
              StandardBinders.WAX_AND_POLYOLEFIN,
              0.935,
              Spans.massFraction(0.91, 0.945),
              "63 vol% moulded is published"),
          generic(
              "stainless steel 316L in polyoxymethylene, generic",
              StandardStainlessSteels.STEEL_316L,
              StandardBinders.POLYOXYMETHYLENE,
              0.90,
              Spans.massFraction(0.87, 0.92),
              "63 vol% moulded is published"),
          generic(
              "stainless steel 316L in polylactide, generic",
              StandardStainlessSteels.STEEL_316L,
              StandardBinders.POLYLACTIDE,
              0.88,
              Spans.massFraction(0.80, 0.91),
              "nothing published for this pair"),
          generic(
              "stainless steel 17-4PH in wax and polyolefin, generic",
              StandardStainlessSteels.STEEL_17_4PH,
              StandardBinders.WAX_AND_POLYOLEFIN,
              0.93,
              Spans.massFraction(0.91, 0.94),
              "0.93 to 0.96 printed (Khazaee et al., Polymers 17 (2025) 2575, abstract), at 0.96 with"
                  + " 0.74 of the volume, which is much; 0.93 moulded (Wu et al., Met. Mater. Int. 21"
                  + " (2015) 531)"),
          generic(
              "nickel alloy 625 in wax and polyolefin, generic",
              StandardNickelAlloys.ALLOY_625,
              StandardBinders.WAX_AND_POLYOLEFIN,
              0.935,
              Spans.massFraction(0.92, 0.945),
              "nothing published for this pair"),
          generic(
              "titanium grade 2 in wax and polyolefin, generic",
              StandardTitaniumAlloys.GRADE_2,
              StandardBinders.WAX_AND_POLYOLEFIN,
              0.89,
              Spans.massFraction(0.86, 0.905),
              "65 vol% moulded (German, Materials 6 (2013) 3641)"),
          generic(
              "tungsten in polylactide, generic",
              StandardTungsten.TUNGSTEN,
              StandardBinders.POLYLACTIDE,
              0.945,
              Spans.massFraction(0.92, 0.96),
              "nothing published for this pair"),
          generic(
              "silver in wax and polyolefin, generic",
              StandardSilver.SILVER,
              StandardBinders.WAX_AND_POLYOLEFIN,
              0.945,
              Spans.massFraction(0.93, 0.955),
              "nothing published for this pair"));

  private StandardFeedstocks() {}

  private static Feedstock generic(
      String name,
      Alloy alloy,
      Binder binder,
      double metal,
      Span<MassFraction> range,
      String reason) {
    Source practice = Source.commonPractice("usual for the class of products; " + reason);
    return Feedstock.builder()
        .name(name)
        .alloy(alloy)
        .binder(binder)
        .metalMassFraction(massFraction(metal))
        .metalMassFractionRange(Sourced.of(range, "over the products of the class", practice))
        .source(practice)
        .generic(true)
        .build();
  }
}
