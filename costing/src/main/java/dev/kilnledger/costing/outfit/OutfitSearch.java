package dev.kilnledger.costing.outfit;

import dev.kilnledger.core.progress.Progress;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Finds every selection that none beats.
 *
 * <p>The equipment is searched in two blocks, what prints and what fires (in one if an option
 * brings both): every selection of a block is formed, valued by what it can do in any company, and
 * dropped if another one of the block beats it. Both blocks are merged, and then each slot of plain
 * options is merged in, in catalogue order, dropping what is beaten each time.
 */
final class OutfitSearch {
  /** How many selections of a block are gathered before the beaten ones are dropped. */
  private static final int BATCH = 20_000;

  /** What the equipment of a catalogue can do. */
  record Equipment(PrintingTrials printing, FiringTrials firing, Capabilities capabilities) {}

  private final Slots slots;
  private final long[] costs;
  private final Equipment equipment;
  private final boolean aimless;
  private final BitSet printing = new BitSet();
  private final BitSet firing = new BitSet();
  private final Map<BitSet, List<Selection>> blocks = new HashMap<>();

  /** Aimless, whatever the catalogue allows will do. */
  OutfitSearch(Slots slots, long[] costs, Equipment equipment, boolean aimless) {
    this.slots = slots;
    this.costs = costs;
    this.equipment = equipment;
    this.aimless = aimless;
    if (!aimless) {
      for (int option = 0; option < slots.options.size(); option++) {
        if (slots.options.get(option).prints()) {
          printing.set(slots.slotOf(option));
        }
        if (slots.options.get(option).fires()) {
          firing.set(slots.slotOf(option));
        }
      }
    }
  }

  /** The unbeaten selections by cost. */
  List<Selection> front(Progress progress) {
    return front(Slots.NONE, progress);
  }

  /** The unbeaten selections by cost, of those only that hold a forced option. */
  List<Selection> front(int forced) {
    return front(forced, Progress.unheard());
  }

  private List<Selection> front(int forced, Progress progress) {
    List<Selection> front = aimless ? List.of(Selection.empty(slots)) : merged(forced);
    BitSet decided = (BitSet) printing.clone();
    decided.or(firing);
    for (int slot = 0; slot < slots.count(); slot++) {
      if (!decided.get(slot)) {
        decided.set(slot);
        front = extended(front, slot, forced, decided);
      }
      progress.at((slot + 1.0) / slots.count());
    }
    return Front.complete(front);
  }

  private List<Selection> merged(int forced) {
    Capabilities capabilities = equipment.capabilities();
    List<Selection> merged = new ArrayList<>();
    if (printing.intersects(firing)) {
      BitSet both = (BitSet) printing.clone();
      both.or(firing);
      for (Selection selection :
          block(
              both,
              forced,
              options ->
                  capabilities.of(
                      equipment.printing().signature(options),
                      equipment.firing().signature(options)))) {
        addServing(selection, selection.capability, merged);
      }
      return Front.open(merged);
    }
    List<Selection> printers = block(printing, forced, equipment.printing()::signature);
    List<Selection> kilns = block(firing, forced, equipment.firing()::signature);
    BitSet decided = (BitSet) printing.clone();
    decided.or(firing);
    for (Selection printer : printers) {
      for (Selection kiln : kilns) {
        int[] capability = capabilities.of(printer.capability, kiln.capability);
        Selection both = printer.with(kiln, capability);
        if (both.settle(slots, decided)) {
          addServing(both, capability, merged);
        }
      }
      merged = merged.size() > BATCH ? Front.open(merged) : merged;
    }
    return Front.open(merged);
  }

  private void addServing(Selection selection, int[] capability, List<Selection> serving) {
    if (equipment.capabilities().serves(capability)) {
      serving.add(selection.scored(equipment.capabilities().score(capability), capability));
    }
  }

  private List<Selection> block(BitSet members, int forced, Function<BitSet, int[]> signature) {
    if (forced != Slots.NONE && members.get(slots.slotOf(forced))) {
      return new Block(members, forced, signature).front();
    }
    List<Selection> known = blocks.get(members);
    if (known == null) {
      known = new Block(members, Slots.NONE, signature).front();
      blocks.put(members, known);
    }
    return known;
  }

  private List<Selection> extended(List<Selection> front, int slot, int forced, BitSet decided) {
    List<Selection> extended = new ArrayList<>();
    int[] choices = slots.choices.get(slot);
    for (int place = 0; place < choices.length; place++) {
      if (slots.allows(slot, choices[place], forced)) {
        BitSet options = new BitSet();
        if (choices[place] != Slots.NONE) {
          options.set(choices[place]);
        }
        int[] chosen = new int[slots.count()];
        Arrays.fill(chosen, -1);
        chosen[slot] = place;
        Selection one = selection(chosen, options, new int[0]);
        for (Selection selection : front) {
          Selection both = selection.with(one, selection.capability);
          if (both.settle(slots, decided)) {
            extended.add(both);
          }
        }
      }
    }
    return Front.open(extended);
  }

  private Selection selection(int[] chosen, BitSet options, int[] capability) {
    long cost = 0;
    long score = 0;
    int pieces = 0;
    for (int i = options.nextSetBit(0); i >= 0; i = options.nextSetBit(i + 1)) {
      Option option = slots.options.get(i);
      cost = Math.addExact(cost, costs[i]);
      score = Math.addExact(score, option.score());
      pieces += option.prints() || option.fires() ? 1 : 0;
    }
    int[] clauses = new int[slots.clauses.size()];
    for (int i = 0; i < clauses.length; i++) {
      clauses[i] = slots.clauses.get(i).state(options);
    }
    return new Selection(cost, score, pieces, chosen, capability, clauses);
  }

  /** All selections of some slots, the beaten ones dropped as they come. */
  private final class Block {
    private final BitSet members;
    private final int forced;
    private final Function<BitSet, int[]> signature;
    private final int[] chosen = Selection.empty(slots).chosen;
    private final BitSet options = new BitSet();
    private List<Selection> found = new ArrayList<>();
    private int limit = BATCH;

    Block(BitSet members, int forced, Function<BitSet, int[]> signature) {
      this.members = members;
      this.forced = forced;
      this.signature = signature;
    }

    List<Selection> front() {
      decide(members.nextSetBit(0));
      return Front.open(found);
    }

    private void decide(int slot) {
      if (slot < 0) {
        add();
        return;
      }
      int[] choices = slots.choices.get(slot);
      for (int place = 0; place < choices.length; place++) {
        int option = choices[place];
        if (slots.allows(slot, option, forced)) {
          chosen[slot] = place;
          if (option != Slots.NONE) {
            options.set(option);
          }
          decide(members.nextSetBit(slot + 1));
          if (option != Slots.NONE) {
            options.clear(option);
          }
          chosen[slot] = -1;
        }
      }
    }

    private void add() {
      Selection selection = selection(chosen.clone(), options, signature.apply(options));
      if (selection.settle(slots, members)) {
        found.add(selection);
      }
      if (found.size() > limit) {
        found = Front.open(found);
        limit = Math.max(BATCH, 2 * found.size());
      }
    }
  }
}
