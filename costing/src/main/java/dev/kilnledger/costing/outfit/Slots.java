package dev.kilnledger.costing.outfit;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * A catalogue as a row of decisions. Each slot takes one of its choices: an option, told by its
 * number in catalogue order, or {@link #NONE}. A group of any number is a slot for each option.
 */
final class Slots {
  /** The choice of no option. */
  static final int NONE = -1;

  /** One option's requirement: one of some others, and the slots that decide about it. */
  record Clause(int option, BitSet providers, BitSet slots) {
    /** 1 where it is met, -1 where it is asked and not yet met, else 0: the more the better. */
    int state(BitSet chosen) {
      if (providers.intersects(chosen)) {
        return 1;
      }
      return chosen.get(option) ? -1 : 0;
    }

    /** The state of two selections together. */
    static int together(int one, int other) {
      return Math.max(one, other) == 1 ? 1 : Math.min(one, other);
    }
  }

  final List<Option> options;
  final List<int[]> choices = new ArrayList<>();
  final List<Clause> clauses = new ArrayList<>();
  private final int[] slotOf;

  Slots(OutfitCatalogue catalogue) {
    options = catalogue.options();
    slotOf = new int[options.size()];
    Map<String, Integer> numbers = new HashMap<>();
    int next = 0;
    for (OptionGroup group : catalogue.groups()) {
      int size = group.options().size();
      for (int i = 0; i < size; i++) {
        numbers.put(group.options().get(i).name(), next + i);
        slotOf[next + i] = choices.size() + (group.choice() == Choice.ANY_NUMBER ? i : 0);
      }
      addSlots(group.choice(), next, size);
      next += size;
    }
    for (int option = 0; option < options.size(); option++) {
      for (Requirement requirement : options.get(option).requirements()) {
        BitSet providers = new BitSet();
        BitSet slots = new BitSet();
        slots.set(slotOf[option]);
        for (String name : requirement.anyOf()) {
          int provider = Objects.requireNonNull(numbers.get(name));
          providers.set(provider);
          slots.set(slotOf[provider]);
        }
        clauses.add(new Clause(option, providers, slots));
      }
    }
  }

  private void addSlots(Choice choice, int first, int size) {
    if (choice == Choice.ANY_NUMBER) {
      for (int i = 0; i < size; i++) {
        choices.add(new int[] {first + i, NONE});
      }
      return;
    }
    int[] all = new int[choice == Choice.EXACTLY_ONE ? size : size + 1];
    for (int i = 0; i < all.length; i++) {
      all[i] = i < size ? first + i : NONE;
    }
    choices.add(all);
  }

  int count() {
    return choices.size();
  }

  /** Whether a slot may take a choice where some option is forced, {@link #NONE} if none is. */
  boolean allows(int slot, int choice, int forced) {
    return forced == NONE || slotOf[forced] != slot || choice == forced;
  }

  int slotOf(int option) {
    return slotOf[option];
  }

  /** Whether no slot and no requirement keeps options apart; {@link #NONE} goes with all. */
  boolean together(int... some) {
    for (int one : some) {
      if (one == NONE) {
        continue;
      }
      if (apart(one, some)) {
        return false;
      }
      for (Clause clause : clauses) {
        if (clause.option() == one && unmet(clause, some)) {
          return false;
        }
      }
    }
    return true;
  }

  private boolean unmet(Clause clause, int[] others) {
    for (int provider = clause.providers().nextSetBit(0);
        provider >= 0;
        provider = clause.providers().nextSetBit(provider + 1)) {
      if (!apart(provider, others)) {
        return false;
      }
    }
    return true;
  }

  private boolean apart(int one, int[] others) {
    for (int other : others) {
      if (other != NONE && other != one && slotOf[other] == slotOf[one]) {
        return true;
      }
    }
    return false;
  }
}
