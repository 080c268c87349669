package dev.kilnledger.thermal.design;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.FindingCode;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.thermal.energy.EnergyFinding;
import dev.kilnledger.units.Amount;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How bad each finding may be for a candidate to count as feasible. Findings are told apart by
 * code, subject and, as each stage may have one, their order.
 */
final class Tolerance {
  private static final double ROUNDING = 1e-9;

  /** What a finding is recognised by in the answers about other candidates. */
  record Key(FindingCode code, String subject, int order) {}

  private final Severity accepted;
  private final Map<Key, Severity> lifted;
  private final Map<Key, Double> worst;

  private Tolerance(Severity accepted, Map<Key, Severity> lifted, Map<Key, Double> worst) {
    this.accepted = accepted;
    this.lifted = lifted;
    this.worst = worst;
  }

  static Tolerance of(Severity accepted) {
    return new Tolerance(accepted, Map.of(), Map.of());
  }

  static Map<Key, Finding> byKey(List<Finding> findings) {
    Map<Key, Finding> byKey = new LinkedHashMap<>();
    for (Finding finding : findings) {
      int order = 0;
      while (byKey.containsKey(new Key(finding.code(), finding.subject(), order))) {
        order++;
      }
      byKey.put(new Key(finding.code(), finding.subject(), order), finding);
    }
    return byKey;
  }

  /** The findings that are worse than allowed, by key, in the order of the rules. */
  Map<Key, Finding> violated(Candidate candidate) {
    Map<Key, Finding> violated = byKey(candidate.report().findings());
    violated.entrySet().removeIf(entry -> isAllowed(entry.getKey(), entry.getValue()));
    return violated;
  }

  private boolean isAllowed(Key key, Finding finding) {
    int beyond = finding.severity().compareTo(allowed(key));
    double farthest = worst.getOrDefault(key, Double.POSITIVE_INFINITY);
    return beyond < 0 || (beyond == 0 && excess(finding) <= farthest * (1 + ROUNDING));
  }

  /**
   * How far what was measured lies from the limit, as a share of it; zero where that says nothing.
   */
  private static double excess(Finding finding) {
    if (finding.severity().compareTo(Severity.WARNING) < 0
        || finding.measured().isEmpty()
        || finding.limit().isEmpty()) {
      return 0;
    }
    Amount<?> measured = finding.measured().get();
    Amount<?> limit = finding.limit().get();
    return measured.kind().equals(limit.kind()) && limit.si() != 0
        ? Math.abs(measured.si() / limit.si() - 1)
        : 0;
  }

  /** The sum of what a candidate is beyond the limits that are lifted. */
  double excess(Candidate candidate) {
    return byKey(candidate.report().findings()).entrySet().stream()
        .filter(entry -> lifted.containsKey(entry.getKey()))
        .mapToDouble(entry -> excess(entry.getValue()))
        .sum();
  }

  /**
   * This, with nothing that is lifted allowed to be farther beyond its limit than in a candidate.
   */
  Tolerance boundBy(Candidate candidate) {
    Map<Key, Double> bounds = new HashMap<>();
    byKey(candidate.report().findings())
        .forEach(
            (key, finding) -> {
              if (lifted.containsKey(key) && excess(finding) > 0) {
                bounds.put(key, excess(finding));
              }
            });
    return new Tolerance(accepted, lifted, bounds);
  }

  boolean isKept(Candidate candidate) {
    return violated(candidate).isEmpty();
  }

  private Severity allowed(Key key) {
    // A programme that the kiln cannot cool by is no programme, though no part suffers from it.
    Severity usual = key.code() == EnergyFinding.COOLS_AS_PROGRAMMED ? Severity.PASSED : accepted;
    return lifted.getOrDefault(key, usual);
  }

  /** How far a candidate is from being feasible: the worst findings count first. */
  long distance(Candidate candidate) {
    long distance = 0;
    for (Finding finding : violated(candidate).values()) {
      distance += weight(finding.severity());
    }
    return distance;
  }

  private static long weight(Severity severity) {
    return switch (severity) {
      case STOP -> 1L << 40;
      case WARNING -> 1L << 20;
      case UNDETERMINED, NOTE, PASSED -> 1;
    };
  }

  /** This, with each finding allowed to be as bad as in the best of some candidates. */
  Tolerance liftedTo(List<Candidate> candidates) {
    Map<Key, Severity> least = new HashMap<>();
    for (Candidate candidate : candidates) {
      byKey(candidate.report().findings())
          .forEach(
              (key, finding) ->
                  least.merge(key, finding.severity(), (a, b) -> a.compareTo(b) < 0 ? a : b));
    }
    for (Candidate candidate : candidates) {
      // Where the check did not even ask, there was nothing to object to.
      Map<Key, Finding> answered = byKey(candidate.report().findings());
      least.keySet().removeIf(key -> !answered.containsKey(key));
    }
    least.keySet().removeIf(key -> key.code() == EnergyFinding.COOLS_AS_PROGRAMMED);
    least.entrySet().removeIf(entry -> entry.getValue().compareTo(allowed(entry.getKey())) <= 0);
    Map<Key, Severity> all = new HashMap<>(lifted);
    all.putAll(least);
    return new Tolerance(accepted, all, worst);
  }

  /** The findings of a candidate that are only allowed because nothing better was seen. */
  List<Finding> liftedIn(Candidate candidate) {
    List<Finding> found = new ArrayList<>();
    byKey(candidate.report().findings())
        .forEach(
            (key, finding) -> {
              if (lifted.containsKey(key)) {
                found.add(finding);
              }
            });
    return found;
  }
}
