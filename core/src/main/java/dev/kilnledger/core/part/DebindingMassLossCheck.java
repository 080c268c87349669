package dev.kilnledger.core.part;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.material.Feedstock;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.MassFraction;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Mass;

/**
 * Tells from the mass lost in debinding how much binder may be left.
 *
 * <p>With w the metal's share of the green mass g, b the brown mass, a the packing powder sticking
 * to it and x the metal's gain as oxide, the share of the binder left is {@code (b - a - w g (1 +
 * x)) / ((1 - w) g)}: conservation of mass. It is monotone in every one of them, so the corners of
 * their ranges give the ends of the interval.
 *
 * <p>Oxide and powder weigh like binder left: where they are not stated the interval starts at
 * zero, and the check can pass but cannot warn. Nor can it with a generic feedstock, whose metal
 * mass fraction stands for a class of filaments, unless the fraction of the one in use is stated.
 * Copper in air gained 8 % at 400 °C in a published trial (read second-hand), most of the 10 % of
 * binder that a copper filament may hold.
 */
public final class DebindingMassLossCheck {
  private static final Span<MassFraction> NO_GAIN =
      Span.of(Amounts.massFraction(0), Amounts.massFraction(0));
  private static final Span<Mass> NO_POWDER = Span.of(Amounts.grams(0), Amounts.grams(0));

  /** For the rounding of the differences, so that a part may lose all its binder, or none. */
  private static final double ROUNDING = 1e-9;

  private static final DebindingMassLossCheck STANDARD = new DebindingMassLossCheck();

  private DebindingMassLossCheck() {}

  /** {@return the check} */
  public static DebindingMassLossCheck standard() {
    return STANDARD;
  }

  /**
   * Checks a debound part.
   *
   * @param feedstock what it was printed from
   * @param weighing its weighings
   * @return the binder that may be left; the finding passes if no more than the highest char can be
   *     left, warns if more is left for certain or if the weighings contradict what was stated, and
   *     is undetermined otherwise
   */
  public BinderLeft check(Feedstock feedstock, DebindingWeighing weighing) {
    Span<MassFraction> metal =
        weighing
            .metalMassFraction()
            .orElseGet(() -> Span.of(feedstock.metalMassFraction(), feedstock.metalMassFraction()));
    Span<MassFraction> residue = feedstock.binder().residue().value().span();
    boolean allStated =
        weighing.oxidationGain().isPresent() && weighing.adheringPowder().isPresent();
    Span<MassFraction> apparent = apparent(weighing, metal);
    double low = allStated ? apparent.low().si() : Math.min(0, apparent.low().si());
    double high = apparent.high().si();
    Optional<Span<MassFraction>> interval =
        high < -ROUNDING || low > 1 + ROUNDING
            ? Optional.empty()
            : Optional.of(Span.of(share(low), share(high)));
    double green = weighing.greenMass().si();
    double either = 2 * weighing.balanceUncertainty().si();
    double loss = green - weighing.brownMass().si();
    return BinderLeft.builder()
        .expectedLoss(
            Span.of(
                Amounts.kilograms(green * (1 - metal.high().si()) * (1 - residue.high().si())),
                Amounts.kilograms(green * (1 - metal.low().si()) * (1 - residue.low().si()))))
        .measuredLoss(Span.of(Amounts.kilograms(loss - either), Amounts.kilograms(loss + either)))
        .interval(interval)
        .finding(finding(feedstock, weighing, interval, apparent))
        .build();
  }

  private static Amount<MassFraction> share(double value) {
    return Amounts.massFraction(Math.max(0, Math.min(value, 1)));
  }

  private static Finding finding(
      Feedstock feedstock,
      DebindingWeighing weighing,
      Optional<Span<MassFraction>> interval,
      Span<MassFraction> apparent) {
    Amount<MassFraction> limit = feedstock.binder().residue().value().span().high();
    Severity severity;
    String message;
    Amount<MassFraction> measured;
    if (interval.isEmpty()) {
      boolean below = apparent.high().si() < 0;
      severity = Severity.WARNING;
      measured = below ? apparent.high() : apparent.low();
      message =
          below
              ? "more was lost than the binder weighed: metal fell off, or the filament holds more"
                  + " binder than stated"
              : "the part weighs more than its metal and all its binder: it gained more than"
                  + " stated";
    } else {
      Span<MassFraction> left = interval.get();
      measured = left.high();
      String text = Percent.of(left) + " of the binder is left";
      if (!left.high().isGreaterThan(limit)) {
        severity = Severity.PASSED;
        message = text + ", no more than its char";
      } else if (feedstock.generic() && weighing.metalMassFraction().isEmpty()) {
        severity = Severity.UNDETERMINED;
        message =
            text
                + " by a generic feedstock: state the metal mass fraction of the spool in use to"
                + " know";
      } else if (left.low().isGreaterThan(limit)) {
        severity = Severity.WARNING;
        message = text + ", more than its char: debind longer before sintering";
      } else {
        severity = Severity.UNDETERMINED;
        message = text + ": " + whatMayHideIt(weighing);
      }
    }
    return Finding.builder()
        .code(PartFinding.BINDER_LEFT)
        .severity(severity)
        .subject(weighing.specimen())
        .message(message)
        .measured(measured)
        .limit(limit)
        .basis(Source.recomputed("conservation of mass; char: " + residueOf(feedstock)))
        .build();
  }

  private static String residueOf(Feedstock feedstock) {
    return feedstock.binder().residue().source().cite();
  }

  private static String whatMayHideIt(DebindingWeighing weighing) {
    if (weighing.oxidationGain().isEmpty() && weighing.adheringPowder().isEmpty()) {
      return "oxide or packing powder sticking to the part may weigh as much, and neither is stated";
    }
    if (weighing.oxidationGain().isEmpty()) {
      return "oxide may weigh as much, and its gain is not stated";
    }
    if (weighing.adheringPowder().isEmpty()) {
      return "packing powder sticking to the part may weigh as much, and it is not stated";
    }
    return "the ranges stated are too wide to tell";
  }

  private static Span<MassFraction> apparent(DebindingWeighing weighing, Span<MassFraction> metal) {
    Span<Mass> green = around(weighing.greenMass(), weighing.balanceUncertainty());
    Span<Mass> brown = around(weighing.brownMass(), weighing.balanceUncertainty());
    Span<MassFraction> gain = weighing.oxidationGain().orElse(NO_GAIN);
    Span<Mass> powder = weighing.adheringPowder().orElse(NO_POWDER);
    double lowest = Double.POSITIVE_INFINITY;
    double highest = Double.NEGATIVE_INFINITY;
    // Brown mass, powder and gain act one way each; metal and green mass either way.
    for (Amount<MassFraction> w : List.of(metal.low(), metal.high())) {
      for (Amount<Mass> g : List.of(green.low(), green.high())) {
        lowest = Math.min(lowest, left(w, g, brown.low(), powder.high(), gain.high()));
        highest = Math.max(highest, left(w, g, brown.high(), powder.low(), gain.low()));
      }
    }
    return Span.of(Amounts.massFraction(lowest), Amounts.massFraction(highest));
  }

  private static Span<Mass> around(Amount<Mass> mass, Amount<Mass> uncertainty) {
    return Span.of(mass.subtract(uncertainty), mass.add(uncertainty));
  }

  private static double left(
      Amount<MassFraction> metal,
      Amount<Mass> green,
      Amount<Mass> brown,
      Amount<Mass> powder,
      Amount<MassFraction> gain) {
    double metalMass = metal.si() * green.si();
    double binderMass = green.si() - metalMass;
    return (brown.si() - powder.si() - metalMass * (1 + gain.si())) / binderMass;
  }
}
