package dev.kilnledger.costing.outfit;

import dev.kilnledger.core.equipment.EquipmentCheck;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.thermal.check.FiringReport;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.units.Amounts;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Writes selections out as outfits. */
final class OutfitAssembly {
  private final OutfitQuestion question;
  private final Slots slots;
  private final PricedCatalogue priced;
  private final List<AimTrials> aims;
  private final Verdicts verdicts;

  OutfitAssembly(
      OutfitQuestion question,
      Slots slots,
      PricedCatalogue priced,
      List<AimTrials> aims,
      Verdicts verdicts) {
    this.question = question;
    this.slots = slots;
    this.priced = priced;
    this.aims = aims;
    this.verdicts = verdicts;
  }

  Outfit outfit(Selection selection) {
    BitSet chosen = selection.options(slots);
    List<OutfitLine> bought = new ArrayList<>();
    List<GroupList> groups = new ArrayList<>();
    int next = 0;
    for (OptionGroup group : question.catalogue().groups()) {
      List<Option> options = new ArrayList<>();
      List<OutfitLine> lines = new ArrayList<>();
      for (Option option : group.options()) {
        if (chosen.get(next)) {
          options.add(option);
          lines.addAll(priced.lines.get(next));
        }
        next++;
      }
      if (!options.isEmpty()) {
        groups.add(GroupList.of(group.name(), question.prices().currency(), options, lines));
        bought.addAll(lines);
      }
    }
    if (!priced.starter.isEmpty()) {
      groups.add(
          GroupList.of(
              PricedCatalogue.STARTER, question.prices().currency(), List.of(), priced.starter));
      bought.addAll(priced.starter);
    }
    return Outfit.builder()
        .currency(question.prices().currency())
        .groups(groups)
        .capabilities(
            IntStream.range(0, aims.size()).mapToObj(aim -> capability(aim, chosen)).toList())
        .unused(
            IntStream.range(0, slots.options.size())
                .filter(i -> slots.options.get(i).owned() && !chosen.get(i))
                .mapToObj(slots.options::get)
                .toList())
        .priceFindings(priced.findings(bought))
        .build();
  }

  private Capability capability(int aim, BitSet chosen) {
    Verdicts.Best best = verdicts.best(aim, chosen);
    FiringTrials.@Nullable Setting fired = best.fired();
    PrintingTrials.@Nullable Setting printed = best.printed();
    if (fired == null || printed == null) {
      return Capability.builder()
          .aim(aims.get(aim).aim)
          .partsPerFiring(0)
          .findings(verdicts.blocking(aim, chosen))
          .build();
    }
    AimTrials trials = aims.get(aim);
    Trial trial = fired.trials().get(aim);
    FiringPlace place = fired.place();
    FiringRoute route = trials.answer(place).route().orElseThrow();
    FiringReport report = trials.report(place, route, fired.circuit().value(), trial.parts());
    List<Finding> findings =
        new ArrayList<>(
            EquipmentCheck.standard()
                .printing(trials.passage, printed.fitted(), Amounts.kelvin(trial.peak())));
    findings.addAll(trials.findings(place, report, trial.parts()));
    BitSet makers = new BitSet();
    IntStream.concat(IntStream.of(printed.options()), IntStream.of(fired.options()))
        .filter(option -> option != Slots.NONE)
        .forEach(makers::set);
    return Capability.builder()
        .aim(trials.aim)
        .partsPerFiring(best.parts())
        .largestEnvelope(Optional.of(AimTrials.scaled(trials.aim.part().envelope(), best.scale())))
        .madeWith(makers.stream().mapToObj(i -> slots.options.get(i).name()).toList())
        .route(route)
        .findings(Trial.worseThan(Severity.PASSED, findings))
        .cautions(report.cautions())
        .build();
  }
}
