package dev.kilnledger.examples;

import dev.kilnledger.core.explanation.Explanation;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.BigMoney;
import org.joda.money.BigMoneyProvider;

/**
 * Works out the formula of an explanation from the figures below it, as a reader with a pocket
 * calculator would: names, numbers, + - x /, brackets and a few functions. It knows nothing of the
 * library's computations.
 */
final class FormulaReader {
  private static final String PACKS = "packs(n) = ";
  private static final String RISE = "rise per part in the long run of ";

  /** So long a run that the steps of packs and charges no longer show. */
  private static final double LONG_RUN = 1e9;

  /** The ends of a span. */
  enum End {
    LEAST("least"),
    MOST("most");

    private final String word;

    End(String word) {
      this.word = word;
    }
  }

  private final Map<String, Double> names = new HashMap<>();
  private String text = "";
  private int at;

  private FormulaReader() {}

  /** The figure that the formula gives; empty where the formula is not one to calculate. */
  static Optional<Double> figure(Explanation node, End end) {
    String formula = node.formula().orElseThrow();
    if (formula.startsWith("sum of")) {
      return Optional.of(node.children().stream().mapToDouble(child -> number(child, end)).sum());
    }
    FormulaReader reader = new FormulaReader();
    reader.names.put("pi", Math.PI);
    for (Explanation child : node.children()) {
      // of a span the one end or the other; its formula names what differs at both ends once
      reader.names.put(child.what().replaceFirst(" " + end.word + "$", ""), number(child, end));
    }
    try {
      if (formula.startsWith(RISE)) {
        String rising = formula.substring(RISE.length());
        if (rising.contains("min(1, ")) {
          // what is written off rises up to the whole, and not in the very long run
          double none = reader.with("n", 0).value(rising);
          return Optional.of(reader.with("n", 1).value(rising) - none);
        }
        double before = reader.with("n", LONG_RUN).value(rising);
        return Optional.of((reader.with("n", 2 * LONG_RUN).value(rising) - before) / LONG_RUN);
      }
      int packs = formula.indexOf(PACKS);
      if (packs < 0) {
        return Optional.of(reader.value(formula));
      }
      double n = reader.name("n");
      double through = reader.packs(n, formula.substring(packs + PACKS.length()));
      boolean byMeasure = formula.startsWith("max(0, x)", packs + PACKS.length());
      boolean difference =
          formula.startsWith("packs(n) - packs(n - 1)")
              || (byMeasure && formula.contains("packs by measure as used"));
      return Optional.of(
          difference
              ? through - reader.packs(n - 1, formula.substring(packs + PACKS.length()))
              : through);
    } catch (Unreadable e) {
      return Optional.empty();
    }
  }

  /** The number of a figure: in the SI unit, or in units of the currency. */
  static double number(Explanation node, End end) {
    Object value = node.value();
    if (value instanceof Amount<?> amount) {
      return amount.si();
    }
    if (value instanceof Estimate<?> estimate) {
      return estimate.expected().si();
    }
    if (value instanceof Span<?> span) {
      return (end == End.LEAST ? span.low() : span.high()).si();
    }
    if (value instanceof BigMoneyProvider money) {
      return BigMoney.of(money).getAmount().doubleValue();
    }
    return value instanceof BigDecimal number ? number.doubleValue() : Double.NaN;
  }

  private FormulaReader with(String name, double value) {
    names.put(name, value);
    return this;
  }

  /** No part needs no packs. */
  private double packs(double n, String counted) {
    int x = counted.indexOf(", x = ");
    if (n == 0) {
      return 0;
    }
    double need = with("n", n).value(counted.substring(x + ", x = ".length()));
    return with("x", need).value(counted.substring(0, x));
  }

  private double value(String formula) {
    text = formula;
    at = 0;
    double value = sum();
    if (at < text.length() && !text.startsWith(",", at)) {
      throw new Unreadable();
    }
    return value;
  }

  private double sum() {
    double value = taken("-") ? -product() : product();
    while (true) {
      if (taken(" + ")) {
        value += product();
      } else if (taken(" - ")) {
        value -= product();
      } else {
        return value;
      }
    }
  }

  private double product() {
    double value = factor();
    while (true) {
      if (taken(" x ")) {
        value *= factor();
      } else if (taken(" / ")) {
        value /= factor();
      } else {
        return value;
      }
    }
  }

  private double factor() {
    for (String function : List.of("ceil(", "floor(", "cbrt(", "min(", "max(", "(")) {
      if (taken(function)) {
        List<Double> arguments = new ArrayList<>(List.of(sum()));
        while (taken(", ")) {
          arguments.add(sum());
        }
        if (!taken(")")) {
          throw new Unreadable();
        }
        double first = arguments.get(0);
        return switch (function) {
          // what is whole but for the rounding of doubles is whole
          case "ceil(" -> Math.ceil(first - 1e-9 * Math.max(1e-3, Math.abs(first)));
          case "floor(" -> Math.floor(first + 1e-9 * Math.max(1e-3, Math.abs(first)));
          case "cbrt(" -> Math.cbrt(first);
          case "min(" -> Math.min(first, arguments.get(1));
          case "max(" -> Math.max(first, arguments.get(1));
          default -> first;
        };
      }
    }
    int end = at;
    while (end < text.length() && "0123456789.".indexOf(text.charAt(end)) >= 0) {
      end++;
    }
    if (end > at) {
      double number = Double.parseDouble(text.substring(at, end));
      at = end;
      return number;
    }
    Optional<String> longest =
        names.keySet().stream()
            .filter(name -> text.startsWith(name, at))
            .max(Comparator.comparing(String::length));
    String name = longest.orElseThrow(Unreadable::new);
    at += name.length();
    return name(name);
  }

  private double name(String name) {
    Double value = names.get(name);
    if (value == null) {
      throw new Unreadable();
    }
    return value;
  }

  private boolean taken(String token) {
    boolean there = text.startsWith(token, at);
    at += there ? token.length() : 0;
    return there;
  }

  /** The formula says more than arithmetic can. */
  private static final class Unreadable extends RuntimeException {
    private static final long serialVersionUID = 1;
  }
}
