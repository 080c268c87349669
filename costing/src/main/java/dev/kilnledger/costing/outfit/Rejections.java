package dev.kilnledger.costing.outfit;

import dev.kilnledger.core.finding.Finding;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.joda.money.Money;

/** Tells why options are in no recommended outfit. */
final class Rejections {
  private final Slots slots;
  private final List<Aim> aims;
  private final Verdicts verdicts;
  private final OutfitSearch search;
  private final OutfitSearch aimless;
  private final Money starter;
  private final int[] tested;
  private final Map<Integer, List<Selection>> with = new HashMap<>();

  /**
   * Rejections of a plan.
   *
   * @param search the search for outfits that reach what is asked
   * @param aimless the search for outfits of any use
   * @param starter what is bought with every outfit
   * @param reachable the aims that the catalogue reaches
   */
  Rejections(
      Slots slots,
      List<Aim> aims,
      Verdicts verdicts,
      OutfitSearch search,
      OutfitSearch aimless,
      Money starter,
      int[] reachable) {
    this.slots = slots;
    this.aims = aims;
    this.verdicts = verdicts;
    this.search = search;
    this.aimless = aimless;
    this.starter = starter;
    // What no equipment reaches is not the fault of a single piece.
    tested = reachable.length > 0 ? reachable : IntStream.range(0, aims.size()).toArray();
  }

  /** The options that none of some outfits holds, and why; these are all that a budget buys. */
  List<Rejection> of(List<Selection> recommended, Optional<Money> budget) {
    BitSet held = new BitSet();
    recommended.forEach(selection -> held.or(selection.options(slots)));
    return IntStream.range(0, slots.options.size())
        .filter(option -> !held.get(option))
        .mapToObj(option -> rejection(option, recommended, budget))
        .toList();
  }

  private Rejection rejection(int number, List<Selection> recommended, Optional<Money> budget) {
    Option option = slots.options.get(number);
    Rejection.Builder rejection = Rejection.builder().option(option);
    boolean idle =
        (option.prints() || option.fires())
            && tested.length > 0
            && IntStream.of(tested).noneMatch(aim -> verdicts.passes(number, aim));
    List<Selection> outfits = idle ? List.of() : with.computeIfAbsent(number, search::front);
    if (outfits.isEmpty()) {
      return aimless.front(number).isEmpty()
          ? notAllowed(rejection, option)
          : failing(
              rejection,
              number,
              idle ? "it reaches no aim" : "no outfit with it reaches what is asked");
    }
    Selection cheapest = outfits.get(0);
    Money cost = starter.plusMinor(cheapest.cost);
    rejection.cheapestWith(cost);
    if (budget.filter(cost::isGreaterThan).isPresent()) {
      return rejection
          .reason(RejectionReason.OVER_BUDGET)
          .message(
              "the cheapest outfit with it costs "
                  + cost
                  + ", "
                  + cost.minus(budget.get())
                  + " more than the budget")
          .build();
    }
    Selection better =
        recommended.stream().filter(other -> beats(other, cheapest)).findFirst().orElseThrow();
    return rejection
        .reason(RejectionReason.BEATEN)
        .message(
            "the cheapest outfit with it costs "
                + cost
                + "; "
                + instead(better, cheapest)
                + " costs "
                + starter.plusMinor(better.cost)
                + " and does as much or more")
        .build();
  }

  private static Rejection notAllowed(Rejection.Builder rejection, Option option) {
    return rejection
        .reason(RejectionReason.NOT_ALLOWED)
        .message(
            option.requirements().isEmpty()
                ? "no outfit can be put together with it"
                : "it requires "
                    + option.requirements().stream()
                        .map(Requirement::text)
                        .collect(Collectors.joining(", and "))
                    + ", with which no outfit can be put together")
        .build();
  }

  private Rejection failing(Rejection.Builder rejection, int option, String message) {
    Set<Finding> findings = new LinkedHashSet<>();
    List<String> told = new ArrayList<>();
    for (int aim : tested) {
      if (!verdicts.passes(option, aim)) {
        List<Finding> blocking = verdicts.blocking(option, aim);
        findings.addAll(blocking);
        if (!blocking.isEmpty()) {
          told.add(
              "for "
                  + aims.get(aim).name()
                  + " "
                  + blocking.stream().map(Finding::message).collect(Collectors.joining(", and ")));
        }
      }
    }
    return rejection
        .reason(RejectionReason.FAILS_CHECKS)
        .message(message + (told.isEmpty() ? "" : ": " + String.join("; ", told)))
        .findings(findings)
        .build();
  }

  private static boolean beats(Selection one, Selection other) {
    return one.cost <= other.cost
        && one.score >= other.score
        && Front.noLess(one.capability, other.capability);
  }

  /** What a better outfit holds that the other one does not. */
  private String instead(Selection better, Selection other) {
    BitSet more = better.options(slots);
    more.andNot(other.options(slots));
    return more.isEmpty()
        ? "the same without it"
        : more.stream()
            .mapToObj(i -> slots.options.get(i).name())
            .collect(Collectors.joining(", ", "the same with ", " instead"));
  }
}
