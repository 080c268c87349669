package dev.kilnledger.core.material;

import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.kilogramsPerCubicMetre;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.core.finding.Caution;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Standing;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.EnumMap;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;

class MaterialLibraryTest {
  private final MaterialLibrary standard = MaterialLibrary.standard();

  @Test
  void listsEveryFamilyInItsOrder() {
    assertThat(standard.alloys())
        .extracting(Alloy::name)
        .containsExactly(
            "copper",
            "tin bronze 90/10",
            "iron",
            "low-alloy steel 4605",
            "stainless steel 316L",
            "stainless steel 17-4PH",
            "nickel alloy 625",
            "titanium grade 2",
            "titanium alloy 6Al-4V",
            "tungsten",
            "silver");
    assertThat(standard.binders())
        .extracting(Binder::name)
        .containsExactly(
            "polylactide",
            "polyoxymethylene",
            "polypropylene",
            "low-density polyethylene",
            "paraffin wax",
            "stearic acid",
            "wax and polyolefin, generic");
    assertThat(standard.packingPowders())
        .extracting(PackingPowder::name)
        .containsExactly("alumina", "talc", "magnesia", "zirconia");
    assertThat(standard.getters())
        .extracting(Getter::name)
        .containsExactly(
            "granular activated carbon",
            "coconut-shell granules",
            "powdered carbon",
            "graphite powder");
    assertThat(standard.crucibleMaterials())
        .extracting(CrucibleMaterial::name)
        .containsExactly(
            "stainless steel 304",
            "stainless steel 309S",
            "stainless steel 310S",
            "alumina",
            "mullite",
            "fireclay",
            "silicon carbide",
            "graphite");
    assertThat(standard.nozzleMaterials())
        .extracting(NozzleMaterial::name)
        .containsExactly("brass", "hardened tool steel", "tungsten carbide", "corundum (ruby)");
  }

  @Test
  void refusesANameTwiceInEachFamily() {
    MaterialLibrary.Builder twice =
        MaterialLibrary.builder()
            .addAlloys(standard.alloy("iron"), standard.alloy("iron"))
            .addBinders(standard.binders().get(0), standard.binders().get(0))
            .addFeedstocks(standard.feedstocks().get(0), standard.feedstocks().get(0))
            .addPackingPowders(standard.packingPowder("talc"), standard.packingPowder("talc"))
            .addGetters(standard.getters().get(0), standard.getters().get(0))
            .addCrucibleMaterials(
                standard.crucibleMaterial("mullite"), standard.crucibleMaterial("mullite"))
            .addNozzleMaterials(standard.nozzleMaterial("brass"), standard.nozzleMaterial("brass"));
    assertThatThrownBy(twice::build)
        .hasMessageContaining("alloy \"iron\" stands 2 times; accepted is once, or another name")
        .hasMessageContaining("binder \"polylactide\" stands 2 times")
        .hasMessageContaining("feedstock \"copper in polylactide, generic\" stands 2 times")
        .hasMessageContaining("packing powder \"talc\" stands 2 times")
        .hasMessageContaining("getter \"granular activated carbon\" stands 2 times")
        .hasMessageContaining("crucible material \"mullite\" stands 2 times")
        .hasMessageContaining("nozzle material \"brass\" stands 2 times");
  }

  @Test
  void findsEachByItsName() {
    standard.alloys().forEach(each -> assertThat(standard.alloy(each.name())).isSameAs(each));
    standard.binders().forEach(each -> assertThat(standard.binder(each.name())).isSameAs(each));
    standard
        .feedstocks()
        .forEach(each -> assertThat(standard.feedstock(each.name())).isSameAs(each));
    standard
        .packingPowders()
        .forEach(each -> assertThat(standard.packingPowder(each.name())).isSameAs(each));
    standard.getters().forEach(each -> assertThat(standard.getter(each.name())).isSameAs(each));
    standard
        .crucibleMaterials()
        .forEach(each -> assertThat(standard.crucibleMaterial(each.name())).isSameAs(each));
    standard
        .nozzleMaterials()
        .forEach(each -> assertThat(standard.nozzleMaterial(each.name())).isSameAs(each));
  }

  @Test
  void refusesUnknownNamesAndListsTheKnown() {
    assertThatThrownBy(() -> standard.packingPowder("sand"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "no packing powder is named \"sand\"; accepted are \"alumina\", \"talc\", \"magnesia\","
                + " \"zirconia\"");
    assertThatThrownBy(() -> MaterialLibrary.empty().alloy("copper"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "no alloy is named \"copper\"; accepted is none, as this library holds no alloy");
  }

  @Test
  void addsTheUsersOwn() {
    NozzleMaterial own =
        NozzleMaterial.builder()
            .name("own nozzle steel")
            .hardness(Sourced.of(Spans.vickers(700, 700), Source.user("measured")))
            .build();
    MaterialLibrary both =
        standard.combinedWith(MaterialLibrary.builder().addNozzleMaterials(own).build());
    assertThat(both.nozzleMaterials()).endsWith(own).hasSize(5);
    assertThat(both.nozzleMaterial("own nozzle steel")).isSameAs(own);
  }

  @Test
  void combiningWithItselfOrNothingChangesNothing() {
    assertThat(standard.combinedWith(standard)).isEqualTo(standard);
    assertThat(standard.combinedWith(MaterialLibrary.empty())).isEqualTo(standard);
    assertThat(MaterialLibrary.empty().combinedWith(standard)).isEqualTo(standard);
  }

  @Test
  void refusesANameWithTwoMeaningsAndShowsBoth() {
    MaterialLibrary other =
        MaterialLibrary.builder()
            .addCrucibleMaterials(
                CrucibleMaterial.builder()
                    .name("mullite")
                    .serviceLimit(Sourced.of(celsius(1500), Source.user("own")))
                    .remark("")
                    .build())
            .addNozzleMaterials(
                NozzleMaterial.builder()
                    .name("brass")
                    .hardness(Sourced.of(Spans.vickers(100, 120), Source.user("own")))
                    .build())
            .build();
    assertThatThrownBy(() -> standard.combinedWith(other))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("combined material library: crucible material \"mullite\" is ")
        .hasMessageContainingAll("1650 °C", "1500 °C", "; and nozzle material \"brass\" is ")
        .hasMessageEndingWith("accepted is one meaning, or another name");
  }

  @Test
  void refusesANameThatStandsTwice() {
    Alloy copper = standard.alloy("copper");
    assertThatThrownBy(() -> MaterialLibrary.builder().addAlloys(copper, copper).build())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "material library: alloy \"copper\" stands 2 times; accepted is once, or another name");
  }

  @Test
  void survivesSerialization() throws IOException, ClassNotFoundException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(standard);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      assertThat(in.readObject()).isEqualTo(standard).hasSameHashCodeAs(standard);
    }
  }

  @Test
  void feedstocksAreGenericAndSaySo() {
    assertThat(standard.feedstocks())
        .hasSize(12)
        .allSatisfy(
            each -> {
              assertThat(each.generic()).isTrue();
              assertThat(each.name()).endsWith(", generic").startsWith(each.alloy().name());
              assertThat(standard.alloys()).contains(each.alloy());
              assertThat(standard.binders()).contains(each.binder());
              assertThat(each.source().standing()).isEqualTo(Standing.COMMON_PRACTICE);
            });
  }

  @Test
  void powdersCarryTheirDustCautionAndTalcItsLimit() {
    assertThat(standard.packingPowders())
        .allSatisfy(each -> assertThat(each.cautions()).contains(Caution.MINERAL_DUST));
    PackingPowder talc = standard.packingPowder("talc");
    // Dehydroxylation of talc begins near 800 °C: Clays and Clay Minerals 62 (2014) 137.
    assertThat(talc.temperatureLimit().value()).isEqualTo(celsius(800));
    assertThat(talc.temperatureLimit().condition()).contains("gives off its water");
    assertThat(talc.uses()).containsExactly(PackingPowder.Use.DEBINDING);
    // Corundum: CRC Handbook, 95th ed.
    assertThat(standard.packingPowder("alumina").skeletalDensity().value())
        .isEqualTo(kilogramsPerCubicMetre(3990));
  }

  @Test
  void stainlessCruciblesHaveTheLimitsOfTheirMakersInAir() {
    // SSINA, high temperature properties: 1700, 2000 and 2100 °F.
    assertThat(standard.crucibleMaterial("stainless steel 304").serviceLimit().value())
        .isEqualTo(celsius(927));
    assertThat(standard.crucibleMaterial("stainless steel 309S").serviceLimit().value())
        .isEqualTo(celsius(1093));
    assertThat(standard.crucibleMaterial("stainless steel 310S").serviceLimit().value())
        .isEqualTo(celsius(1149));
    assertThat(standard.crucibleMaterial("graphite").remark()).contains("not usable in air");
  }

  /** Feedstocks repeat the facts of their alloy and binder; only their own source counts. */
  @Test
  void everyFigureTellsHowItWasComeBy(TestReporter report) {
    MaterialLibrary withoutFeedstocks =
        MaterialLibrary.builder()
            .alloys(standard.alloys())
            .binders(standard.binders())
            .packingPowders(standard.packingPowders())
            .getters(standard.getters())
            .crucibleMaterials(standard.crucibleMaterials())
            .nozzleMaterials(standard.nozzleMaterials())
            .build();
    Map<Standing, Integer> counts = new EnumMap<>(Standing.class);
    standard.feedstocks().forEach(each -> counts.merge(each.source().standing(), 1, Integer::sum));
    Pattern.compile("text=\\S[^}]*, standing=(\\w+)}")
        .matcher(withoutFeedstocks.toString())
        .results()
        .forEach(each -> counts.merge(Standing.valueOf(each.group(1)), 1, Integer::sum));
    counts.forEach((standing, count) -> report.publishEntry(standing.words(), count.toString()));
    assertThat(counts).doesNotContainKey(Standing.USER).containsKey(Standing.FROM_MEMORY);
    // An alloy has 14 sourced facts and, but for the two of titanium and silver, a crossing;
    // a binder has 3, a packing powder 5, a getter 4, a crucible material 1 and two of them a
    // cyclic limit, a nozzle material 1.
    int alloys = 11 * 14 + (11 - 3);
    int others = 7 * 3 + 4 * 5 + 4 * 4 + (8 + 2) + 4;
    assertThat(counts.values().stream().mapToInt(Integer::intValue).sum())
        .isEqualTo(alloys + others + standard.feedstocks().size());
  }
}
