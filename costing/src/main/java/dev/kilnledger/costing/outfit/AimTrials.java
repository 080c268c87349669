package dev.kilnledger.costing.outfit;

import dev.kilnledger.core.equipment.Arrangement;
import dev.kilnledger.core.equipment.ChargePart;
import dev.kilnledger.core.equipment.Crucible;
import dev.kilnledger.core.equipment.EquipmentCheck;
import dev.kilnledger.core.equipment.PatternArranger;
import dev.kilnledger.core.equipment.Printer;
import dev.kilnledger.core.equipment.Spacing;
import dev.kilnledger.core.equipment.SupplyCircuit;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.core.part.MassBalancePassage;
import dev.kilnledger.core.part.Passage;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.check.FiringCheck;
import dev.kilnledger.thermal.check.FiringReport;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import javax.measure.quantity.Temperature;

/** Holds equipment against one aim by the real checks, cheap ones first. */
final class AimTrials {
  private static final Source GEOMETRY = Source.recomputed("envelope against space");
  private static final Source CATALOGUE = Source.user("the options of the outfit");

  /** The step that a trial has reached in which nothing stands in the way. */
  private static final int ALL = 3;

  final Aim aim;
  final Passage passage;
  private final Severity accepted;
  private final Routes routes;
  private final FiringCheck check;
  private final Map<FiringPlace, RouteAnswer> answers = new HashMap<>();
  private final Map<Crucible, Integer> counts = new HashMap<>();

  AimTrials(Aim aim, Severity accepted, Routes routes, FiringCheck check) {
    this.aim = aim;
    this.accepted = accepted;
    this.routes = routes;
    this.check = check;
    passage = MassBalancePassage.standard().passage(aim.part(), aim.feedstock(), aim.conditions());
  }

  /** Whether place and circuit fire the aim, and how many parts and how large ones at a time. */
  Trial fire(FiringPlace place, Optional<SupplyCircuit> circuit, boolean gettersListed) {
    List<Finding> space = new ArrayList<>(passage.findings());
    space.add(EquipmentCheck.standard().loading(place.kiln(), place.crucible()));
    List<Finding> blocking = worse(space);
    if (!blocking.isEmpty()) {
      return Trial.failed(0, blocking);
    }
    int count = count(place.crucible());
    if (count < aim.leastPartsPerFiring()) {
      return Trial.failed(1, List.of(tooFew(place.crucible(), count)));
    }
    RouteAnswer answer = answer(place);
    List<Finding> making = new ArrayList<>(answer.findings());
    if (answer.route().isEmpty()) {
      making.add(noRoute(place));
    }
    if (gettersListed) {
      answer.route().ifPresent(route -> making.addAll(getterMissing(route, place)));
    }
    blocking = worse(making);
    if (answer.route().isEmpty() || !blocking.isEmpty()) {
      return Trial.failed(2, blocking);
    }
    FiringRoute route = answer.route().get();
    int least = aim.leastPartsPerFiring();
    int parts = count;
    blocking = worse(report(place, route, circuit, count).findings());
    if (!blocking.isEmpty()) {
      if (count > least) {
        blocking = worse(report(place, route, circuit, least).findings());
      }
      if (!blocking.isEmpty()) {
        return Trial.failed(ALL, blocking);
      }
      parts =
          least
              + Bisection.largest(
                  count - 1 - least,
                  more -> worse(report(place, route, circuit, least + more).findings()).isEmpty());
    }
    return new Trial(
        ALL,
        route.peak().si(),
        largest(green -> mostOf(green, place.crucible()) > 0),
        parts,
        List.of());
  }

  /** Whether a printer prints the aim for a peak, and how large. */
  Trial print(Printer printer, Amount<Temperature> peak) {
    List<Finding> blocking = worse(EquipmentCheck.standard().printing(passage, printer, peak));
    return blocking.isEmpty()
        ? new Trial(
            ALL, peak.si(), largest(green -> green.fitsIn(printer.buildVolume())), 1, blocking)
        : Trial.failed(0, blocking);
  }

  /** The printer of an outfit that cannot be: its filament does not fit the nozzle. */
  static Trial misfit(Printer printer, Amount<?> bore) {
    return Trial.failed(
        0,
        List.of(
            stop(OutfitFinding.NOZZLE_FIT, printer.name())
                .message(
                    "the nozzle's bore is "
                        + bore
                        + " and the filament of "
                        + printer.name()
                        + " "
                        + printer.filamentDiameter()
                        + " thick; accepted is a finer bore")
                .basis(GEOMETRY)
                .build()));
  }

  RouteAnswer answer(FiringPlace place) {
    return answers.computeIfAbsent(place, key -> routes.routeFor(aim, key));
  }

  /** Everything that is found about a place that fires so many parts. */
  List<Finding> findings(FiringPlace place, FiringReport report, int parts) {
    List<Finding> all = new ArrayList<>(passage.findings());
    all.add(EquipmentCheck.standard().loading(place.kiln(), place.crucible()));
    all.add(EquipmentCheck.standard().charging(passage, place.crucible(), aim.clearance(), parts));
    all.addAll(answer(place).findings());
    all.addAll(report.findings());
    return all;
  }

  FiringReport report(
      FiringPlace place, FiringRoute route, Optional<SupplyCircuit> circuit, int parts) {
    double oversize =
        Math.max(
            passage.oversize().x().expected().si(),
            Math.max(
                passage.oversize().y().expected().si(), passage.oversize().z().expected().si()));
    return check.check(
        FiringSetup.builder()
            .feedstock(aim.feedstock())
            .thickestSection(aim.part().thickestSection().multiply(oversize))
            .partsVolume(passage.green().volume().multiply(parts))
            .route(route)
            .kiln(place.kiln())
            .crucible(place.crucible())
            .supplyCircuit(circuit)
            .build());
  }

  private List<Finding> worse(List<Finding> findings) {
    return Trial.worseThan(accepted, findings);
  }

  private int count(Crucible crucible) {
    return counts.computeIfAbsent(crucible, key -> mostOf(passage.green().envelope(), key));
  }

  /** The most green parts of a size that are found to fit into a crucible. */
  private int mostOf(Envelope green, Crucible crucible) {
    return PatternArranger.standard()
        .most(crucible.cavity(), ChargePart.of(green), Spacing.of(aim.clearance()))
        .map(Arrangement::capacity)
        .orElse(0);
  }

  /** How large the green part may become, in thousandths of what it is. */
  private int largest(Predicate<Envelope> fits) {
    Envelope green = passage.green().envelope();
    return Bisection.largest(Trial.LARGEST, scale -> fits.test(scaled(green, scale)));
  }

  static Envelope scaled(Envelope envelope, int scale) {
    double factor = scale / (double) Trial.WHOLE;
    return Envelope.of(
        envelope.x().multiply(factor),
        envelope.y().multiply(factor),
        envelope.z().multiply(factor));
  }

  private Finding tooFew(Crucible crucible, int count) {
    return stop(OutfitFinding.PARTS_PER_FIRING, crucible.name())
        .message(
            "the crucible holds "
                + (count == 0 ? "no part" : count + " parts")
                + ", green "
                + passage.green().envelope().format()
                + " with "
                + aim.clearance()
                + " of packing on every side; wanted "
                + (aim.leastPartsPerFiring() == 1
                    ? "is one at least"
                    : "are " + aim.leastPartsPerFiring() + " at least"))
        .measured(Amounts.ratio(count))
        .limit(Amounts.ratio(aim.leastPartsPerFiring()))
        .basis(GEOMETRY)
        .build();
  }

  private Finding noRoute(FiringPlace place) {
    return stop(OutfitFinding.ROUTE, place.kiln().name())
        .message("there is no route for " + aim.name() + " in " + place.kiln().name())
        .basis(Source.user("the routes of the question"))
        .build();
  }

  private static List<Finding> getterMissing(FiringRoute route, FiringPlace place) {
    Set<String> wanted = new HashSet<>();
    List<Finding> missing = new ArrayList<>();
    route.stages().stream()
        .flatMap(stage -> stage.getter().stream())
        .map(fill -> fill.getter())
        .filter(getter -> place.getter().filter(getter::equals).isEmpty())
        .forEach(
            getter -> {
              if (wanted.add(getter.name())) {
                missing.add(
                    stop(OutfitFinding.GETTER, getter.name())
                        .message("the route lays in " + getter.name() + ", which is not there")
                        .basis(CATALOGUE)
                        .build());
              }
            });
    return missing;
  }

  private static Finding.Builder stop(OutfitFinding code, String subject) {
    return Finding.builder().code(code).severity(Severity.STOP).subject(subject);
  }
}
