package dev.kilnledger.costing.outfit;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.immutables.value.Value;

/** Everything that an outfit may be put together from, owned or for sale, in groups. */
@Value.Immutable
@ValueStyle
public interface OutfitCatalogue extends Serializable {
  /** {@return the groups in order; shopping lists keep it} */
  @Value.Parameter
  List<OptionGroup> groups();

  /**
   * A catalogue.
   *
   * @param groups the groups in order
   * @return the catalogue
   * @throws IllegalArgumentException with all problems
   */
  static OutfitCatalogue of(List<OptionGroup> groups) {
    return ImmutableOutfitCatalogue.of(groups);
  }

  /**
   * A catalogue.
   *
   * @param groups the groups in order
   * @return the catalogue
   * @throws IllegalArgumentException with all problems
   */
  static OutfitCatalogue of(OptionGroup... groups) {
    return of(List.of(groups));
  }

  /** {@return the options of all groups in order} */
  default List<Option> options() {
    return groups().stream().flatMap(group -> group.options().stream()).toList();
  }

  /**
   * This catalogue once some options have been bought, so that the next step can be planned from
   * what is there by then.
   *
   * @param names the names of the options
   * @return the catalogue in which they are owned too
   * @throws IllegalArgumentException if an option is not in the catalogue
   */
  default OutfitCatalogue owning(Collection<String> names) {
    Set<String> known = options().stream().map(Option::name).collect(Collectors.toSet());
    Problems problems = new Problems("catalogue");
    names.forEach(
        name ->
            problems.require(
                known.contains(name),
                "there is no option " + name + "; accepted is one of " + sorted(known)));
    problems.refuseIfAny();
    return of(
        groups().stream()
            .map(
                group ->
                    OptionGroup.of(
                        group.name(),
                        group.choice(),
                        group.options().stream()
                            .map(
                                option ->
                                    names.contains(option.name())
                                        ? Option.builder().from(option).owned(true).build()
                                        : option)
                            .toList()))
            .toList());
  }

  private static List<String> sorted(Set<String> names) {
    return names.stream().sorted().toList();
  }

  /**
   * Refuses names that stand twice and requirements of what is not there.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems =
        new Problems("catalogue")
            .require(!groups().isEmpty(), "it has no group; accepted is one or more");
    unique(problems, "group", groups().stream().map(OptionGroup::name).toList());
    List<String> names = options().stream().map(Option::name).toList();
    unique(problems, "option", names);
    Set<String> known = Set.copyOf(names);
    for (Option option : options()) {
      for (Requirement requirement : option.requirements()) {
        List<String> unknown =
            requirement.anyOf().stream().filter(name -> !known.contains(name)).toList();
        problems
            .require(
                unknown.isEmpty(),
                option.name() + " requires " + unknown + "; accepted is one of " + sorted(known))
            .require(
                !requirement.anyOf().contains(option.name()),
                option.name() + " requires itself; accepted are other options");
      }
    }
    problems.refuseIfAny();
  }

  private static void unique(Problems problems, String what, List<String> names) {
    names.stream()
        .collect(groupingBy(name -> name, TreeMap::new, counting()))
        .forEach(
            (name, count) ->
                problems.require(
                    count == 1,
                    what + " " + name + " stands there " + count + " times; accepted is once"));
  }
}
