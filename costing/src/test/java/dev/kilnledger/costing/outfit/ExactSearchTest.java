package dev.kilnledger.costing.outfit;

import static dev.kilnledger.costing.outfit.Shop.euros;
import static dev.kilnledger.units.Amounts.amperes;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.Amounts.volts;
import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.core.equipment.Arrangement;
import dev.kilnledger.core.equipment.ChargePart;
import dev.kilnledger.core.equipment.Crucible;
import dev.kilnledger.core.equipment.EquipmentCheck;
import dev.kilnledger.core.equipment.Nozzle;
import dev.kilnledger.core.equipment.PatternArranger;
import dev.kilnledger.core.equipment.Printer;
import dev.kilnledger.core.equipment.Spacing;
import dev.kilnledger.core.equipment.SupplyCircuit;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.material.Getter;
import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.core.part.MassBalancePassage;
import dev.kilnledger.core.part.Passage;
import dev.kilnledger.thermal.check.FiringCheck;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.thermal.profile.FiringRoute;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The front of random small catalogues is that of an exhaustive enumeration, which forms every
 * selection, holds every setting in it against the checks, and compares all pairs.
 */
class ExactSearchTest {
  private static final FiringCheck CHECK = Workshop.fewRules();

  /** One selection with what it comes to. */
  private record Whole(BitSet options, long cost, long score, int pieces, List<Integer> able) {
    boolean beats(Whole other) {
      boolean noWorse = cost <= other.cost && score >= other.score;
      boolean better = cost < other.cost || score > other.score;
      for (int i = 0; i < able.size(); i++) {
        noWorse &= able.get(i) >= other.able.get(i);
        better |= able.get(i) > other.able.get(i);
      }
      return noWorse && better;
    }

    List<Object> worth() {
      return List.of(cost, score, able);
    }
  }

  static LongStream seeds() {
    return LongStream.range(0, 60);
  }

  @Tag("sampled")
  @ParameterizedTest
  @MethodSource("seeds")
  void findsTheSameFrontAsExhaustiveEnumeration(long seed) {
    OutfitQuestion question = question(new Random(seed));
    OutfitPlan plan = new OutfitPlanner(Workshop.ROUTES, CHECK).plan(question);
    List<Whole> all = enumerate(question);
    List<Whole> unbeaten =
        all.stream().filter(each -> all.stream().noneMatch(other -> other.beats(each))).toList();

    assertThat(plan.front().stream().map(outfit -> worth(question, outfit)))
        .as("worths of seed " + seed)
        .containsExactlyInAnyOrderElementsOf(
            unbeaten.stream().map(Whole::worth).collect(Collectors.toSet()));
    for (Outfit outfit : plan.front()) {
      List<Whole> equals =
          unbeaten.stream().filter(e -> e.worth().equals(worth(question, outfit))).toList();
      assertThat(outfit.names()).isEqualTo(first(question, equals));
    }
    checkBudgets(question, plan, all);
    checkRejections(question, plan, all);
  }

  /** Of equals the one with the fewest pieces, then the first in the order of the catalogue. */
  private static List<String> first(OutfitQuestion question, List<Whole> equals) {
    int fewest = equals.stream().mapToInt(Whole::pieces).min().orElseThrow();
    return equals.stream()
        .filter(each -> each.pieces() == fewest)
        .min((one, other) -> Arrays.compare(places(question, one), places(question, other)))
        .map(each -> names(question, each.options()))
        .orElseThrow();
  }

  /** For each group the place of what is taken, none after all; option by option if any number. */
  private static int[] places(OutfitQuestion question, Whole whole) {
    List<Integer> places = new ArrayList<>();
    int next = 0;
    for (OptionGroup group : question.catalogue().groups()) {
      int taken = group.options().size();
      for (int i = 0; i < group.options().size(); i++, next++) {
        if (group.choice() == Choice.ANY_NUMBER) {
          places.add(whole.options().get(next) ? 0 : 1);
        } else if (whole.options().get(next)) {
          taken = i;
        }
      }
      if (group.choice() != Choice.ANY_NUMBER) {
        places.add(taken);
      }
    }
    return places.stream().mapToInt(Integer::intValue).toArray();
  }

  private static void checkBudgets(OutfitQuestion question, OutfitPlan plan, List<Whole> all) {
    for (BudgetAnswer answer : plan.answers()) {
      long budget = answer.budget().getAmountMinorLong();
      Optional<Whole> best =
          all.stream()
              .filter(each -> each.cost() <= budget)
              .max(
                  (one, other) -> {
                    int order = Long.compare(one.score(), other.score());
                    for (int i = 0; i < one.able().size() && order == 0; i++) {
                      order = one.able().get(i) - other.able().get(i);
                    }
                    return order != 0 ? order : Long.compare(other.cost(), one.cost());
                  });
      assertThat(answer.best().map(outfit -> worth(question, outfit)))
          .isEqualTo(best.map(Whole::worth));
      if (best.isEmpty() && !all.isEmpty()) {
        long cheapest = all.stream().mapToLong(Whole::cost).min().getAsLong();
        assertThat(answer.shortfall()).contains(euros((cheapest - budget) / 100.0));
      }
    }
  }

  private static void checkRejections(OutfitQuestion question, OutfitPlan plan, List<Whole> all) {
    Set<String> held =
        plan.front().stream().flatMap(o -> o.names().stream()).collect(Collectors.toSet());
    List<String> names = question.catalogue().options().stream().map(Option::name).toList();
    assertThat(plan.rejected())
        .extracting(rejection -> rejection.option().name())
        .containsExactlyElementsOf(names.stream().filter(name -> !held.contains(name)).toList());
    for (Rejection rejection : plan.rejected()) {
      int option = names.indexOf(rejection.option().name());
      Optional<Long> cheapest =
          all.stream()
              .filter(each -> each.options().get(option))
              .map(Whole::cost)
              .min(Long::compare);
      if (rejection.reason() == RejectionReason.BEATEN) {
        assertThat(rejection.cheapestWith().map(money -> money.getAmountMinorLong()))
            .isEqualTo(cheapest);
      } else if (rejection.reason() == RejectionReason.NOT_ALLOWED) {
        assertThat(cheapest).isEmpty();
      }
    }
  }

  private static List<Object> worth(OutfitQuestion question, Outfit outfit) {
    List<Integer> able = new ArrayList<>();
    outfit.capabilities().forEach(each -> able.add(each.reached() ? 1 : 0));
    for (Measure measure : question.measures()) {
      for (Capability each : outfit.capabilities()) {
        able.add(
            measure == Measure.PARTS_PER_FIRING
                ? each.partsPerFiring()
                : each.largestEnvelope()
                    .map(
                        e -> (int) Math.round(1000 * e.x().ratio(each.aim().part().envelope().x())))
                    .orElse(0));
      }
    }
    return List.of(outfit.cost().getAmountMinorLong(), outfit.score(), able);
  }

  private static List<Whole> enumerate(OutfitQuestion question) {
    List<Option> options = question.catalogue().options();
    List<BitSet> selections = new ArrayList<>(List.of(new BitSet()));
    int next = 0;
    for (OptionGroup group : question.catalogue().groups()) {
      List<BitSet> more = new ArrayList<>();
      int size = group.options().size();
      for (int mask = 0; mask < 1 << size; mask++) {
        int count = Integer.bitCount(mask);
        if (group.choice() == Choice.ANY_NUMBER
            || count == 1
            || (count == 0 && group.choice() == Choice.AT_MOST_ONE)) {
          for (BitSet selection : selections) {
            BitSet with = (BitSet) selection.clone();
            for (int i = 0; i < size; i++) {
              with.set(next + i, (mask >> i & 1) == 1);
            }
            more.add(with);
          }
        }
      }
      selections = more;
      next += size;
    }
    Map<List<Object>, int[]> known = new LinkedHashMap<>();
    List<Whole> wholes = new ArrayList<>();
    for (BitSet selection : selections) {
      Set<String> names = new HashSet<>(names(question, selection));
      boolean allowed =
          selection.stream()
              .mapToObj(options::get)
              .flatMap(option -> option.requirements().stream())
              .allMatch(requirement -> requirement.anyOf().stream().anyMatch(names::contains));
      if (allowed) {
        whole(question, selection, known).ifPresent(wholes::add);
      }
    }
    return wholes;
  }

  private static Optional<Whole> whole(
      OutfitQuestion question, BitSet selection, Map<List<Object>, int[]> known) {
    List<Option> taken = selection.stream().mapToObj(question.catalogue().options()::get).toList();
    long cost =
        taken.stream()
            .filter(option -> !option.owned())
            .mapToLong(
                option ->
                    question.prices().offer(option.name()).price().toMoney().getAmountMinorLong())
            .sum();
    long score = taken.stream().mapToLong(Option::score).sum();
    int pieces = (int) taken.stream().filter(o -> o.prints() || o.fires()).count();
    int aims = question.aims().size();
    Integer[] able = new Integer[3 * aims];
    Arrays.fill(able, 0);
    boolean any = false;
    boolean circuits =
        question.catalogue().options().stream().anyMatch(o -> o.supplyCircuit().isPresent());
    for (int aim = 0; aim < aims; aim++) {
      for (Option printer : with(taken, o -> o.printer().isPresent())) {
        for (Option nozzle : orNone(with(taken, o -> o.nozzle().isPresent()))) {
          for (Option kiln : with(taken, o -> o.kiln().isPresent())) {
            for (Option crucible : with(taken, o -> o.crucible().isPresent())) {
              List<Option> supplies = with(taken, o -> o.supplyCircuit().isPresent());
              for (Option supply : circuits ? supplies : orNone(supplies)) {
                for (Option getter : orNone(with(taken, o -> o.getter().isPresent()))) {
                  List<Object> key =
                      Arrays.asList(aim, printer, nozzle, kiln, crucible, supply, getter);
                  Aim target = question.aims().get(aim);
                  int[] made =
                      known.computeIfAbsent(
                          key,
                          k ->
                              made(
                                  question, target, printer, nozzle, kiln, crucible, supply,
                                  getter));
                  able[aim] = Math.max(able[aim], made[1] > 0 ? 1 : 0);
                  able[aims + aim] = Math.max(able[aims + aim], made[0]);
                  able[2 * aims + aim] = Math.max(able[2 * aims + aim], made[1]);
                }
              }
            }
          }
        }
      }
      any |= able[aim] == 1;
      score += able[aim] * question.aims().get(aim).score();
      if (question.aims().get(aim).required() && able[aim] == 0) {
        return Optional.empty();
      }
    }
    return any
        ? Optional.of(new Whole(selection, cost, score, pieces, List.of(able)))
        : Optional.empty();
  }

  private static List<Option> with(List<Option> options, Predicate<Option> brings) {
    return options.stream().filter(brings).toList();
  }

  private static final Option NOTHING = Shop.owned("nothing");

  private static List<Option> orNone(List<Option> options) {
    List<Option> more = new ArrayList<>(options);
    more.add(NOTHING);
    return more;
  }

  /**
   * Scale in thousandths and parts of a firing by trying one after the other; zeros if it fails.
   */
  private static int[] made(
      OutfitQuestion question,
      Aim aim,
      Option printed,
      Option nozzle,
      Option kiln,
      Option crucible,
      Option supply,
      Option getter) {
    int[] fails = {0, 0};
    Passage passage =
        MassBalancePassage.standard().passage(aim.part(), aim.feedstock(), aim.conditions());
    Optional<FiringRoute> route =
        Workshop.ROUTES
            .routeFor(
                aim, FiringPlace.of(kiln.kiln().get(), crucible.crucible().get(), getter.getter()))
            .route();
    if (route.isEmpty()) {
      return fails;
    }
    boolean getters = question.catalogue().options().stream().anyMatch(o -> o.getter().isPresent());
    Set<Getter> wanted =
        route.get().stages().stream()
            .flatMap(s -> s.getter().stream())
            .map(f -> f.getter())
            .collect(Collectors.toSet());
    if (getters && !wanted.stream().allMatch(w -> getter.getter().equals(Optional.of(w)))) {
      return fails;
    }
    Printer.Builder printer = Printer.builder().from(printed.printer().get());
    nozzle.nozzle().ifPresent(printer::nozzle);
    EquipmentCheck check = EquipmentCheck.standard();
    List<Finding> findings =
        new ArrayList<>(check.printing(passage, printer.build(), route.get().peak()));
    findings.add(check.loading(kiln.kiln().get(), crucible.crucible().get()));
    findings.addAll(passage.findings());
    int most = 0;
    int inside = most(passage.green().envelope(), crucible.crucible().get(), aim);
    for (int parts = 1; parts <= inside; parts++) {
      List<Finding> all = new ArrayList<>(findings);
      all.addAll(
          CHECK
              .check(
                  FiringSetup.builder()
                      .feedstock(aim.feedstock())
                      .thickestSection(
                          aim.part()
                              .thickestSection()
                              .multiply(passage.oversize().x().expected().si()))
                      .partsVolume(passage.green().volume().multiply(parts))
                      .route(route.get())
                      .kiln(kiln.kiln().get())
                      .crucible(crucible.crucible().get())
                      .supplyCircuit(supply.supplyCircuit())
                      .build())
              .findings());
      if (all.stream().allMatch(f -> f.severity().compareTo(question.worstAccepted()) <= 0)) {
        most = parts;
      }
    }
    if (most < aim.leastPartsPerFiring()) {
      return fails;
    }
    int scale = 1000;
    while (fits(passage, printed.printer().get(), crucible, aim, scale + 1)) {
      scale++;
    }
    return new int[] {scale, most};
  }

  private static boolean fits(
      Passage passage, Printer printer, Option crucible, Aim aim, int scale) {
    Envelope green = passage.green().envelope();
    Envelope scaled =
        Envelope.of(
            green.x().multiply(scale / 1000.0),
            green.y().multiply(scale / 1000.0),
            green.z().multiply(scale / 1000.0));
    return scaled.fitsIn(printer.buildVolume()) && most(scaled, crucible.crucible().get(), aim) > 0;
  }

  private static List<String> names(OutfitQuestion question, BitSet options) {
    return options.stream().mapToObj(i -> question.catalogue().options().get(i).name()).toList();
  }

  /** Few levels of everything, so that there are ties. */
  private static OutfitQuestion question(Random random) {
    Shop shop = new Shop();
    List<OptionGroup> groups = new ArrayList<>();
    boolean scored = random.nextBoolean();
    groups.add(
        group(
            random,
            shop,
            scored,
            "printer",
            3,
            (b, i) ->
                b.printer(
                    Workshop.printer(
                        "printer " + i, 60 + 20 * random.nextInt(3), random.nextInt(3) > 0))));
    groups.add(
        group(
            random,
            shop,
            scored,
            "nozzle",
            1,
            (b, i) ->
                b.nozzle(
                    Nozzle.of(
                        Workshop.MATERIALS.nozzleMaterial("hardened tool steel"),
                        millimetres(0.6)))));
    groups.add(
        group(
            random,
            shop,
            scored,
            "kiln",
            3,
            (b, i) ->
                kit(random, i, b)
                    .kiln(
                        Workshop.kiln(
                            "kiln " + i,
                            900 + 250 * random.nextInt(3),
                            160 + 40 * random.nextInt(2),
                            2 + 2 * random.nextInt(2)))));
    groups.add(
        group(
            random,
            shop,
            scored,
            "crucible",
            2,
            (b, i) -> b.crucible(Workshop.crucible("crucible " + i, 80 + 30 * random.nextInt(3)))));
    if (random.nextBoolean()) {
      groups.add(
          group(
              random,
              shop,
              scored,
              "circuit",
              2,
              (b, i) ->
                  b.supplyCircuit(
                      SupplyCircuit.builder()
                          .name("circuit " + i)
                          .voltage(volts(230))
                          .phases(1)
                          .breakerRating(amperes(16 + 16 * random.nextInt(2)))
                          .build())));
    }
    if (random.nextBoolean()) {
      groups.add(
          group(
              random,
              shop,
              scored,
              "getter",
              2,
              (b, i) ->
                  b.getter(
                      Workshop.MATERIALS.getter(
                          i == 0 ? "granular activated carbon" : "graphite powder"))));
    }
    groups.add(group(random, shop, scored, "finishing", 2, (b, i) -> b));
    Collections.shuffle(groups, random);
    return OutfitQuestion.builder()
        .catalogue(OutfitCatalogue.of(withRequirements(random, groups)))
        .addAims(
            Workshop.aim(Workshop.BRONZE, 30, 10).score(scored ? random.nextInt(3) : 0).build(),
            Workshop.aim(Workshop.STEEL, 24, 8)
                .required(random.nextInt(5) == 0)
                .leastPartsPerFiring(1 + 5 * random.nextInt(2))
                .build())
        .prices(shop.book())
        .addBudgets(euros(60), euros(90), euros(140))
        .build();
  }

  /** Now and then the first kiln comes with a printer. */
  private static Option.Builder kit(Random random, int number, Option.Builder kiln) {
    return number == 0 && random.nextInt(3) == 0
        ? kiln.printer(Workshop.printer("kit printer", 100, true))
        : kiln;
  }

  private interface Brings {
    Option.Builder to(Option.Builder builder, int number);
  }

  private static OptionGroup group(
      Random random, Shop shop, boolean scored, String name, int most, Brings brings) {
    List<Option> options = new ArrayList<>();
    int count = 1 + random.nextInt(most);
    for (int i = 0; i < count; i++) {
      boolean owned = random.nextInt(5) == 0;
      options.add(
          brings
              .to(shop.option(name + " " + i, 10 * (1 + random.nextInt(4))), i)
              .owned(owned)
              .score(scored ? random.nextInt(3) : 0)
              .build());
    }
    return OptionGroup.of(name, List.of(Choice.values()).get(random.nextInt(3)), options);
  }

  private static List<OptionGroup> withRequirements(Random random, List<OptionGroup> groups) {
    List<String> names =
        groups.stream().flatMap(g -> g.options().stream()).map(Option::name).toList();
    return groups.stream()
        .map(
            group ->
                OptionGroup.of(
                    group.name(),
                    group.choice(),
                    group.options().stream()
                        .map(
                            option -> {
                              String other = names.get(random.nextInt(names.size()));
                              String more = names.get(random.nextInt(names.size()));
                              return random.nextInt(4) > 0
                                      || other.equals(option.name())
                                      || more.equals(option.name())
                                  ? option
                                  : Option.builder().from(option).requires(other, more).build();
                            })
                        .toList()))
        .toList();
  }

  private static int most(Envelope green, Crucible crucible, Aim aim) {
    return PatternArranger.standard()
        .most(crucible.cavity(), ChargePart.of(green), Spacing.of(aim.clearance()))
        .map(Arrangement::capacity)
        .orElse(0);
  }
}
