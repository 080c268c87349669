package dev.kilnledger.thermal.check;

import dev.kilnledger.thermal.firing.FiringSetup;
import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.material.Element.COPPER;
import static dev.kilnledger.core.material.Element.GOLD;
import static dev.kilnledger.core.material.Element.SILVER;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.core.material.Element;
import dev.kilnledger.core.source.Source;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Metals that dissolve carbon or form carbides take it up from the getter's gas. */
final class CarbonPickUp implements FiringRule {
  private static final Source BASIS =
      Source.fromMemory("Massalski, Binary Alloy Phase Diagrams: Cu-C, Ag-C, Au-C, solubility nil");

  @Override
  public List<Finding> check(FiringSetup setup) {
    Alloy alloy = setup.alloy();
    Element balance = alloy.composition().balance();
    boolean laidIn = setup.route().stages().stream().anyMatch(s -> s.getter().isPresent());
    if (!laidIn) {
      return List.of(finding(alloy, PASSED, "no carbon is laid in", BASIS));
    }
    if (inert().contains(balance)) {
      return List.of(
          finding(alloy, PASSED, alloy.name() + " takes up no carbon worth naming", BASIS));
    }
    return List.of(
        finding(
            alloy,
            NOTE,
            alloy.name() + " may take up carbon: " + alloy.carbonProtection().remark(),
            alloy.carbonProtection().source()));
  }

  private static Set<Element> inert() {
    return EnumSet.of(COPPER, SILVER, GOLD);
  }

  private static Finding finding(Alloy alloy, Severity severity, String message, Source basis) {
    return FiringFinding.CARBON_PICK_UP
        .about(alloy.name())
        .severity(severity)
        .message(message)
        .basis(basis)
        .build();
  }
}
