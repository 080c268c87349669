package dev.kilnledger.costing;

import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.core.finding.FindingCode;
import dev.kilnledger.costing.ledger.CaveatCode;
import dev.kilnledger.costing.offer.PriceFinding;
import dev.kilnledger.costing.outfit.OutfitFinding;
import dev.kilnledger.costing.uncertainty.UncertaintyFinding;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Codes are published and never change: each is the name of its constant, with the word of its
 * package before it where the name alone would say too little.
 */
class PublishedCodesTest {
  static Stream<FindingCode> findings() {
    return Stream.<FindingCode[]>of(
            OutfitFinding.values(), PriceFinding.values(), UncertaintyFinding.values())
        .flatMap(Arrays::stream);
  }

  @ParameterizedTest
  @MethodSource("findings")
  void areTheNamesOfTheFindings(FindingCode code) {
    assertThat(code.code()).endsWith(hyphenated(code.toString()));
  }

  @ParameterizedTest
  @EnumSource
  void areTheNamesOfTheCaveats(CaveatCode code) {
    assertThat(code.code()).isEqualTo(hyphenated(code.name()));
  }

  private static String hyphenated(String name) {
    return name.toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
