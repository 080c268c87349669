package dev.kilnledger.costing.outfit;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.part.Envelope;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.immutables.value.Value;
import org.joda.money.Money;

/**
 * The step from one outfit to another: what is bought on top, what falls idle, what is gained. The
 * starter is not bought again.
 */
@Value.Immutable
@ValueStyle
public interface Upgrade extends Serializable {
  /** {@return the outfit before} */
  @Value.Parameter
  Outfit before();

  /** {@return the outfit after} */
  @Value.Parameter
  Outfit after();

  /**
   * A step.
   *
   * @param before the outfit before
   * @param after the outfit after, of the same question
   * @return the step
   */
  static Upgrade of(Outfit before, Outfit after) {
    return ImmutableUpgrade.of(before, after);
  }

  /** {@return what is bought on top} */
  default List<OutfitLine> bought() {
    Set<String> earlier = new HashSet<>(before().names());
    Set<String> later = new HashSet<>(after().names());
    return after().groups().stream()
        .flatMap(group -> group.lines().stream())
        .filter(line -> later.contains(line.option()) && !earlier.contains(line.option()))
        .toList();
  }

  /** {@return what that costs} */
  @Value.Derived
  default Money extraCost() {
    return Money.total(after().currency(), bought().stream().map(OutfitLine::paid).toList());
  }

  /** {@return what was paid for both steps together} */
  default Money spentInAll() {
    return before().cost().plus(extraCost());
  }

  /** {@return what was in use before and is no longer, in catalogue order} */
  default List<Option> idle() {
    Set<String> later = new HashSet<>(after().names());
    return before().options().stream().filter(option -> !later.contains(option.name())).toList();
  }

  /** {@return what was owned and unused before and comes into use, in catalogue order} */
  default List<Option> reused() {
    Set<String> earlier = new HashSet<>(before().names());
    return after().kept().stream().filter(option -> !earlier.contains(option.name())).toList();
  }

  /** {@return the names of the aims reached after and not before} */
  default List<String> gained() {
    List<String> gained = new ArrayList<>(after().reached());
    gained.removeAll(before().reached());
    return List.copyOf(gained);
  }

  /** {@return the names of the aims reached before and not after} */
  default List<String> lost() {
    List<String> lost = new ArrayList<>(before().reached());
    lost.removeAll(after().reached());
    return List.copyOf(lost);
  }

  /** {@return the step for people, one sentence for each line} */
  default List<String> explanation() {
    List<String> lines = new ArrayList<>();
    lines.add(
        "From "
            + before().text()
            + " to "
            + after().text()
            + ": "
            + extraCost()
            + " more, "
            + spentInAll()
            + " in all");
    bought().forEach(line -> lines.add("buy " + line.purchase().text()));
    names("idle from then on: ", idle(), lines);
    names("comes into use again: ", reused(), lines);
    if (!gained().isEmpty()) {
      lines.add("gained: " + String.join(", ", gained()));
    }
    if (!lost().isEmpty()) {
      lines.add("lost: " + String.join(", ", lost()));
    }
    for (int i = 0; i < after().capabilities().size(); i++) {
      change(before().capabilities().get(i), after().capabilities().get(i), lines);
    }
    if (before().score() != after().score()) {
      lines.add("score " + before().score() + " to " + after().score());
    }
    return List.copyOf(lines);
  }

  private static void names(String what, List<Option> options, List<String> lines) {
    if (!options.isEmpty()) {
      lines.add(what + options.stream().map(Option::name).collect(Collectors.joining(", ")));
    }
  }

  private static void change(Capability before, Capability after, List<String> lines) {
    if (!before.reached() || !after.reached()) {
      return;
    }
    if (before.partsPerFiring() != after.partsPerFiring()) {
      lines.add(
          after.aim().name()
              + ": "
              + before.partsPerFiring()
              + " to "
              + after.partsPerFiring()
              + " parts to a firing");
    }
    if (!before.largestEnvelope().equals(after.largestEnvelope())) {
      lines.add(
          after.aim().name()
              + ": up to "
              + after.largestEnvelope().map(Envelope::format).orElse("")
              + " instead of "
              + before.largestEnvelope().map(Envelope::format).orElse(""));
    }
  }
}
