package dev.kilnledger.costing.outfit;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.progress.Progress;
import dev.kilnledger.thermal.check.FiringCheck;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.joda.money.Money;

/**
 * Finds every outfit that no other one beats in cost, score and capability at once, and from them
 * what each budget buys.
 *
 * <p>Capability is what the checks say, not a rating: for each aim whether a setting of the outfit
 * (printer with what is fitted to it, kiln, crucible, circuit, getter) passes {@link
 * dev.kilnledger.core.equipment.EquipmentCheck} and {@link FiringCheck}, how large the part may
 * become, and how many of it a firing holds. More equipment never does less: the best of all
 * settings counts. Where the catalogue lists circuits, a kiln needs one of them; where it lists
 * getters, a route may lay in no other.
 *
 * <p>The answer is exact, in minor units of money; each line is rounded to them by itself. Every
 * option is bought by itself, in the cheapest whole packs that cover it: price breaks do not reach
 * across options, and sending is left out and told as a finding. Of outfits alike in cost, score
 * and capability the one with the fewest pieces of equipment is taken, then the first in the
 * catalogue.
 *
 * <p>Each setting of kiln, crucible, circuit and getter is checked once for each aim, and each
 * setting of the printer for each aim and peak. The search forms every selection of what fires and
 * of what prints, so groups of any number double its work with each option, and then merges the
 * plain groups; scores without a common measure can make the front itself large. Eight groups of
 * twelve take less than a second with cheap rules. A large catalogue can be watched, and is left
 * when its thread is interrupted.
 *
 * <p>An example by score alone:
 *
 * <pre>{@code
 * OutfitQuestion question = OutfitQuestion.builder()
 *     .catalogue(OutfitCatalogue.of(
 *         OptionGroup.of("printer", Choice.EXACTLY_ONE, keep, a),      // owned; EUR 300, score 20
 *         OptionGroup.of("finishing", Choice.EXACTLY_ONE, hand, drum)) // EUR 80, 10; EUR 450, 24
 *     .prices(book)
 *     .addBudgets(Money.of(EUR, 400))
 *     .build();
 * BudgetAnswer answer = OutfitPlanner.byScore().plan(question).answers().get(0);
 * answer.best().get().text();      // "A, by hand for EUR 380.00"
 * answer.rejected().get(0).text(); // "drum: the cheapest outfit with it costs EUR 450.00, EUR
 *                                  //  50.00 more than the budget"
 * }</pre>
 */
public final class OutfitPlanner {
  private final Routes routes;
  private final FiringCheck check;

  /**
   * A planner by given models.
   *
   * @param routes where the routes come from
   * @param check the rules a firing is held against
   */
  public OutfitPlanner(Routes routes, FiringCheck check) {
    this.routes = routes;
    this.check = check;
  }

  /**
   * A planner by the standard rules.
   *
   * @param routes where the routes come from
   * @return the planner
   */
  public static OutfitPlanner standard(Routes routes) {
    return new OutfitPlanner(routes, FiringCheck.standard());
  }

  /** {@return a planner without routes, for outfits compared by the caller's scores alone} */
  public static OutfitPlanner byScore() {
    return standard(Routes.of(Map.of()));
  }

  /**
   * Plans.
   *
   * @param question the question
   * @return the plan
   * @throws IllegalArgumentException with all problems: items without an offer that covers them,
   *     prices with and without tax, parts that contradict themselves
   * @throws java.util.concurrent.CancellationException if the thread is interrupted
   */
  public OutfitPlan plan(OutfitQuestion question) {
    return plan(question, Progress.unheard());
  }

  /**
   * Plans, and tells how far it has got.
   *
   * @param question the question
   * @param progress hears how far it has got: half of it are the checks
   * @return the plan
   * @throws IllegalArgumentException as {@link #plan(OutfitQuestion)}
   * @throws java.util.concurrent.CancellationException if the thread is interrupted
   */
  public OutfitPlan plan(OutfitQuestion question, Progress progress) {
    Problems problems = new Problems("outfit plan");
    PricedCatalogue priced = new PricedCatalogue(question, problems);
    List<AimTrials> aims = new ArrayList<>();
    for (Aim aim : question.aims()) {
      try {
        aims.add(new AimTrials(aim, question.worstAccepted(), routes, check));
      } catch (IllegalArgumentException e) {
        problems.require(false, "aim " + aim.name() + ": " + e.getMessage());
      }
    }
    problems.refuseIfAny();

    Slots slots = new Slots(question.catalogue());
    FiringTrials firing = new FiringTrials(slots, aims, progress.between(0, 0.5));
    PrintingTrials printing = new PrintingTrials(slots, aims, firing.peaks);
    Capabilities capabilities = new Capabilities(question, firing.peaks);
    Verdicts verdicts = new Verdicts(printing, firing);
    OutfitSearch.Equipment equipment = new OutfitSearch.Equipment(printing, firing, capabilities);
    long[] costs = priced.costs();
    OutfitSearch search = new OutfitSearch(slots, costs, equipment, aims.isEmpty());
    List<Selection> front = search.front(progress.between(0.5, 1));

    BitSet all = new BitSet();
    all.set(0, slots.options.size());
    int[] reachable =
        IntStream.range(0, aims.size()).filter(i -> verdicts.best(i, all).parts() > 0).toArray();
    Money starter =
        Money.ofMinor(question.prices().currency(), PricedCatalogue.cost(priced.starter));
    Rejections rejections =
        new Rejections(
            slots,
            question.aims(),
            verdicts,
            search,
            new OutfitSearch(slots, costs, equipment, true),
            starter,
            reachable);
    OutfitAssembly assembly = new OutfitAssembly(question, slots, priced, aims, verdicts);
    List<Outfit> outfits = front.stream().map(assembly::outfit).toList();
    List<BudgetAnswer> answers = new ArrayList<>();
    for (Money budget : question.budgets()) {
      answers.add(answer(budget, front, outfits, starter, rejections));
    }
    return OutfitPlan.builder()
        .question(question)
        .front(outfits)
        .unreachable(
            IntStream.range(0, aims.size())
                .filter(i -> Arrays.binarySearch(reachable, i) < 0)
                .mapToObj(i -> Unreachable.of(aims.get(i).aim, verdicts.blocking(i, all)))
                .toList())
        .rejected(rejections.of(front, Optional.empty()))
        .answers(answers)
        .build();
  }

  private static BudgetAnswer answer(
      Money budget,
      List<Selection> front,
      List<Outfit> outfits,
      Money starter,
      Rejections rejections) {
    long left = budget.minus(starter).getAmountMinorLong();
    List<Selection> affordable = front.stream().filter(each -> each.cost <= left).toList();
    Comparator<Selection> order =
        Comparator.<Selection>comparingLong(each -> each.score)
            .thenComparing(
                // Aims come first in it, then the measures, each in the order of the question.
                (one, other) -> Arrays.compare(one.capability, other.capability))
            .thenComparing(Comparator.<Selection>comparingInt(front::indexOf).reversed());
    BudgetAnswer.Builder answer =
        BudgetAnswer.builder()
            .budget(budget)
            .affordable(outfits.subList(0, affordable.size()))
            .best(affordable.stream().max(order).map(best -> outfits.get(front.indexOf(best))))
            .rejected(rejections.of(affordable, Optional.of(budget)));
    if (affordable.isEmpty() && !outfits.isEmpty()) {
      answer.shortfall(outfits.get(0).cost().minus(budget));
    }
    return answer.build();
  }
}
