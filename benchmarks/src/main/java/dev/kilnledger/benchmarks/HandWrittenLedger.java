package dev.kilnledger.benchmarks;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** The statement of {@link CostedPart}, as one would write it for that one part in decimals. */
final class HandWrittenLedger {
  private static final String PACKS = "ceil((base + step x uses) / content)";
  private static final String MEASURES = "step x uses / content";
  private static final String USAGE = "step / (content x parts of a use)";

  private final List<Item> items =
      List.of(
          new Item("printer", "1", "0", "1", "900", false, false),
          new Item("kiln", "1", "0", "1", "3200", false, false),
          new Item("crucible", "0", "1", "6", "45", true, false),
          new Item("filament", "0", "128", "500", "60", false, false),
          new Item("packing powder", "1710", "90", "1000", "18", true, false),
          new Item("carbon", "0", "300", "1000", "22", true, false),
          new Item("energy", "0", "28", "1", "0.30", true, true));

  /** The same for any number of parts. */
  private final Account usage = usage(items);

  /** What one item takes, in the measure of its packs. */
  private record Item(
      String name,
      BigDecimal base,
      BigDecimal step,
      BigDecimal content,
      BigDecimal price,
      boolean perFiring,
      boolean metered) {
    Item(
        String name,
        String base,
        String step,
        String content,
        String price,
        boolean perFiring,
        boolean metered) {
      this(
          name,
          new BigDecimal(base),
          new BigDecimal(step),
          new BigDecimal(content),
          new BigDecimal(price),
          perFiring,
          metered);
    }

    long uses(long parts) {
      return perFiring
          ? (parts + CostedPart.PARTS_PER_FIRING - 1) / CostedPart.PARTS_PER_FIRING
          : parts;
    }

    BigDecimal need(long parts) {
      return base.add(step.multiply(BigDecimal.valueOf(uses(parts))));
    }

    /** What is paid for n parts, over {@link #divisor}. */
    BigDecimal count(long parts) {
      if (parts == 0) {
        return BigDecimal.ZERO;
      }
      return metered ? need(parts) : need(parts).divide(content, 0, RoundingMode.CEILING);
    }

    BigDecimal divisor() {
      return metered ? content : BigDecimal.ONE;
    }
  }

  /** A line of an account: count / divisor packs. */
  record Line(
      String item,
      BigDecimal count,
      BigDecimal divisor,
      BigDecimal price,
      String formula,
      BigDecimal amount) {
    static Line of(Item item, BigDecimal count, BigDecimal divisor, String formula) {
      BigDecimal dividend = item.price.multiply(count);
      BigDecimal amount =
          divisor.compareTo(BigDecimal.ONE) == 0
              ? dividend
              : dividend.divide(divisor, MathContext.DECIMAL128);
      return new Line(item.name, count, divisor, item.price, formula, amount);
    }
  }

  /** Lines and their sum. */
  record Account(String title, List<Line> lines, BigDecimal total) {}

  /** What is left of an item, and the part that makes the next pack necessary; 0 if none does. */
  record Left(String item, BigDecimal left, long nextPurchase) {}

  /** The accounts of n parts, and what is left. */
  record Answer(
      Account first,
      Account second,
      Account last,
      Account all,
      Account usage,
      BigDecimal average,
      List<Left> left) {}

  Answer statement(long parts) {
    Account all = between("parts 1 to " + parts, 0, parts);
    return new Answer(
        between("part 1", 0, 1),
        between("part 2", 1, 2),
        between("part " + parts, parts - 1, parts),
        all,
        usage,
        all.total.divide(BigDecimal.valueOf(parts), MathContext.DECIMAL128),
        left(parts));
  }

  private Account between(String title, long after, long until) {
    List<Line> lines = new ArrayList<>();
    for (Item item : items) {
      BigDecimal count = item.count(until).subtract(item.count(after));
      if (count.signum() > 0) {
        lines.add(Line.of(item, count, item.divisor(), item.metered ? MEASURES : PACKS));
      }
    }
    return account(title, lines);
  }

  private static Account usage(List<Item> items) {
    List<Line> lines = new ArrayList<>();
    for (Item item : items) {
      if (item.step.signum() > 0) {
        BigDecimal parts =
            item.perFiring ? BigDecimal.valueOf(CostedPart.PARTS_PER_FIRING) : BigDecimal.ONE;
        lines.add(Line.of(item, item.step, item.content.multiply(parts), USAGE));
      }
    }
    return account("usage per part", lines);
  }

  private static Account account(String title, List<Line> lines) {
    BigDecimal total = BigDecimal.ZERO;
    for (Line line : lines) {
      total = total.add(line.amount);
    }
    return new Account(title, lines, total);
  }

  private List<Left> left(long parts) {
    List<Left> left = new ArrayList<>();
    for (Item item : items) {
      if (!item.metered) {
        BigDecimal held = item.count(parts).multiply(item.content);
        BigDecimal used = item.step.multiply(BigDecimal.valueOf(item.uses(parts)));
        left.add(new Left(item.name, held.subtract(used), next(item, held)));
      }
    }
    return left;
  }

  private static long next(Item item, BigDecimal held) {
    if (item.step.signum() == 0) {
      return 0;
    }
    long uses = held.subtract(item.base).divide(item.step, 0, RoundingMode.FLOOR).longValueExact();
    return (item.perFiring ? uses * CostedPart.PARTS_PER_FIRING : uses) + 1;
  }
}
