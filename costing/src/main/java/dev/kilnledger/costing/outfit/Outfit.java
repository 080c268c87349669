package dev.kilnledger.costing.outfit;

import dev.kilnledger.core.finding.Caution;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.immutables.value.Value;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** A whole outfit: what it is made of, what it costs, and what it can do. */
@Value.Immutable
@ValueStyle
public interface Outfit extends Serializable {
  /** {@return the currency of the costs} */
  CurrencyUnit currency();

  /**
   * {@return the shopping list by group, the starter last; groups of which nothing is taken left
   * out}
   */
  List<GroupList> groups();

  /** {@return how it does at each aim, in the order of the question} */
  List<Capability> capabilities();

  /** {@return what is owned and not part of it, in catalogue order} */
  List<Option> unused();

  /** {@return what deserves attention about prices and sending} */
  List<Finding> priceFindings();

  /** {@return the sum of the group's subtotals} */
  @Value.Derived
  default Money cost() {
    return Money.total(currency(), groups().stream().map(GroupList::subtotal).toList());
  }

  /** {@return the caller's scores of its options and of the aims it reaches, summed} */
  @Value.Derived
  default long score() {
    return options().stream().mapToLong(Option::score).sum()
        + capabilities().stream()
            .filter(Capability::reached)
            .mapToLong(capability -> capability.aim().score())
            .sum();
  }

  /** {@return all that it is made of, in catalogue order} */
  default List<Option> options() {
    return groups().stream().flatMap(group -> group.options().stream()).toList();
  }

  /** {@return the names of all that it is made of, in catalogue order} */
  default List<String> names() {
    return options().stream().map(Option::name).toList();
  }

  /** {@return what is owned and part of it, in catalogue order} */
  default List<Option> kept() {
    return options().stream().filter(Option::owned).toList();
  }

  /** {@return what is bought for it, in catalogue order} */
  default List<Option> bought() {
    return options().stream().filter(option -> !option.owned()).toList();
  }

  /** {@return the names of the aims it reaches} */
  default List<String> reached() {
    return capabilities().stream()
        .filter(Capability::reached)
        .map(capability -> capability.aim().name())
        .toList();
  }

  /** {@return the hazards of the firings it is for} */
  default Set<Caution> cautions() {
    Set<Caution> all = EnumSet.noneOf(Caution.class);
    capabilities().forEach(capability -> all.addAll(capability.cautions()));
    return all;
  }

  /** {@return the outfit for people: {@code "A, S, carbon, tumbler for EUR 2370.00"}} */
  default String text() {
    return String.join(", ", names()) + " for " + cost();
  }

  /** {@return the outfit for people, one sentence for each group, aim and hazard} */
  default List<String> explanation() {
    List<String> lines = new ArrayList<>();
    lines.add(text());
    groups().forEach(group -> lines.add(group.text()));
    if (!unused().isEmpty()) {
      lines.add(
          "no longer used: "
              + unused().stream().map(Option::name).collect(Collectors.joining(", ")));
    }
    for (Capability capability : capabilities()) {
      lines.add(capability.text());
      if (capability.reached()) {
        capability
            .findings()
            .forEach(finding -> lines.add(capability.aim().name() + ": " + finding.message()));
      }
    }
    priceFindings().forEach(finding -> lines.add(finding.subject() + ": " + finding.message()));
    cautions().forEach(caution -> lines.add("Caution: " + caution.text()));
    return List.copyOf(lines);
  }

  /**
   * Starts one.
   *
   * @return a builder; the currency is required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Outfit} values. */
  final class Builder extends ImmutableOutfit.Builder {
    Builder() {}
  }
}
