package dev.kilnledger.thermal;

import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.core.finding.FindingCode;
import dev.kilnledger.thermal.atmosphere.AtmosphereFinding;
import dev.kilnledger.thermal.burnout.BurnOutFinding;
import dev.kilnledger.thermal.chance.ChanceFinding;
import dev.kilnledger.thermal.check.FiringFinding;
import dev.kilnledger.thermal.conduction.ConductionFinding;
import dev.kilnledger.thermal.densification.DensificationFinding;
import dev.kilnledger.thermal.design.DesignFinding;
import dev.kilnledger.thermal.energy.EnergyFinding;
import dev.kilnledger.thermal.kiln.KilnFinding;
import dev.kilnledger.thermal.load.LoadFinding;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Codes are published and never change: each is the name of its constant, with the word of its
 * package before it where the name alone would say too little.
 */
class PublishedCodesTest {
  static Stream<FindingCode> findings() {
    return Stream.<FindingCode[]>of(
            AtmosphereFinding.values(),
            BurnOutFinding.values(),
            ChanceFinding.values(),
            ConductionFinding.values(),
            DensificationFinding.values(),
            DesignFinding.values(),
            EnergyFinding.values(),
            FiringFinding.values(),
            KilnFinding.values(),
            LoadFinding.values())
        .flatMap(Arrays::stream);
  }

  @ParameterizedTest
  @MethodSource("findings")
  void areTheNamesOfTheFindings(FindingCode code) {
    assertThat(code.code()).endsWith(hyphenated(code.toString()));
  }

  private static String hyphenated(String name) {
    return name.toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
