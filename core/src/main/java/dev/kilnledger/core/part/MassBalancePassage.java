package dev.kilnledger.core.part;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.material.Binder;
import dev.kilnledger.core.material.Feedstock;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import dev.kilnledger.units.quantity.VolumeFraction;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;

/**
 * Follows a part from green to sintered by conservation of mass.
 *
 * <p>With phi the solids loading of the strand, v the share of voids between strands and f the
 * relative density after sintering, metal fills phi (1 - v) of the green volume and f of the
 * sintered one. So the linear shrinkage, alike along all axes, is {@code Y = 1 - (phi (1 - v) /
 * f)^(1/3)} (ASM Handbook vol. 7, Powder Metal Technologies; German and Bose, Injection Molding of
 * Metals and Ceramics). Where the shrinkage was measured along each axis, the relative density
 * follows from it instead: {@code f = phi (1 - v) / ((1 - Yx) (1 - Yy) (1 - Yz))}.
 *
 * <p>The brown part keeps the green part's volume; loss of size in debinding counts with the
 * sintering. The binder leaves but for its residue: that char stays as mass in the brown and in the
 * sintered part, so the sintered mass is metal plus char, while the volume is that of the metal at
 * its relative density alone, the char lying in the pores. Char that dissolves in the metal or
 * burns off later is not modelled, and neither is metal gained or lost as oxide.
 */
public final class MassBalancePassage {
  /**
   * How far a stated mass may lie outside what a stated volume means, as a share: both come off
   * drawings and balances rounded.
   */
  public static final double AGREEMENT = 0.01;

  /** For the rounding of a product of three factors. */
  private static final double ROUNDING = 1e-9;

  private static final PrintConditions IDEAL = PrintConditions.ideal();

  private static final MassBalancePassage STANDARD = new MassBalancePassage();

  private MassBalancePassage() {}

  /** {@return the calculator} */
  public static MassBalancePassage standard() {
    return STANDARD;
  }

  /**
   * The passage of a part under {@linkplain PrintConditions#ideal() ideal} conditions.
   *
   * @param part the part wanted
   * @param feedstock what it is printed from
   * @return the passage with its findings
   * @throws IllegalArgumentException if the part's mass and volume contradict each other
   */
  public Passage passage(Part part, Feedstock feedstock) {
    return passage(part, feedstock, IDEAL);
  }

  /**
   * The passage of a part.
   *
   * @param part the part wanted
   * @param feedstock what it is printed from
   * @param conditions how it is printed and fired
   * @return the passage with its findings
   * @throws IllegalArgumentException if the part's mass and volume contradict each other, if its
   *     mass means more volume than its envelope has, or if the shrinkage measured means more than
   *     full density
   */
  public Passage passage(Part part, Feedstock feedstock, PrintConditions conditions) {
    double loading = feedstock.solidsLoading().si();
    double metalInGreen = metalInGreen(feedstock, conditions);
    LinearShrinkage shrinkage = shrinkage(feedstock, conditions, metalInGreen);
    double volumeRatio = shrinkage.volumeRatio().si();

    Problems problems = new Problems(() -> "passage of " + part.name());
    requireRoom(problems, metalInGreen, metalInGreen / volumeRatio);
    double filled = Math.min(metalInGreen / volumeRatio, 1);
    double sinteredVolume = sinteredVolume(part, feedstock, filled);
    BoxLimit.require(problems, Amounts.cubicMetres(sinteredVolume), part.envelope());
    if (part.finishedVolume().isPresent() && part.finishedMass().isPresent()) {
      Span<VolumeFraction> filling =
          conditions.measuredShrinkage().isPresent()
              ? Estimate.exactly(Amounts.volumeFraction(filled)).span()
              : relativeDensity(feedstock, conditions).span();
      requireAgreement(
          problems,
          part.finishedVolume().get(),
          part.finishedMass().get(),
          filling,
          metalAndCharDensity(feedstock));
    }
    problems.refuseIfAny();

    double greenVolume = sinteredVolume / volumeRatio;
    Binder organic = feedstock.binder();
    double binder =
        (1 - loading)
            * (1 - conditions.strandVoids().si())
            * organic.density().value().expected().si()
            * greenVolume;
    double metal = metalInGreen * feedstock.alloy().fullDensity().value().si() * greenVolume;
    double residue = organic.residue().value().expected().si() * binder;
    Envelope printed = shrinkage.greenOf(part.envelope());
    Amount<Volume> volume = cubicCentimetres(greenVolume);
    Amount<Mass> fired = grams(metal + residue);
    Stage green =
        ImmutableStage.of(grams(metal + binder), volume, printed, conditions.strandVoids());
    Stage brown =
        ImmutableStage.of(fired, volume, printed, Amounts.volumeFraction(1 - metalInGreen));
    Stage sintered =
        ImmutableStage.of(
            fired,
            cubicCentimetres(sinteredVolume),
            part.envelope(),
            Amounts.volumeFraction(1 - filled));
    return ImmutablePassage.of(
        part,
        feedstock,
        conditions,
        green,
        brown,
        sintered,
        grams(metal),
        grams(binder),
        grams(residue),
        shrinkage,
        Amounts.volumeFraction(filled));
  }

  /** {@return the share of the green volume that metal fills} */
  static double metalInGreen(Feedstock feedstock, PrintConditions conditions) {
    return feedstock.solidsLoading().si() * (1 - conditions.strandVoids().si());
  }

  /** {@return the mass of metal and char per volume of metal, in SI} */
  static double metalAndCharDensity(Feedstock feedstock) {
    double loading = feedstock.solidsLoading().si();
    double charPerBinder = feedstock.binder().residue().value().expected().si();
    double binderDensity = feedstock.binder().density().value().expected().si();
    return feedstock.alloy().fullDensity().value().si()
        + charPerBinder * (1 - loading) / loading * binderDensity;
  }

  private static void requireRoom(Problems problems, double metalInGreen, double metalInSintered) {
    problems.require(
        metalInSintered <= 1 + ROUNDING,
        () ->
            "the shrinkage measured makes the metal that fills "
                + Amounts.volumeFraction(metalInGreen).format(TradeUnits.VOLUME_FRACTION, 4)
                + " of the green part fill "
                + Amounts.volumeFraction(metalInSintered).format(TradeUnits.VOLUME_FRACTION, 4)
                + " of the sintered one; accepted is up to 1: less shrinkage, a lower solids"
                + " loading or more voids");
  }

  private static Amount<Mass> grams(double kilograms) {
    return Amounts.kilograms(kilograms).to(TradeUnits.GRAM);
  }

  private static Amount<Volume> cubicCentimetres(double cubicMetres) {
    return Amounts.cubicMetres(cubicMetres).to(TradeUnits.CUBIC_CENTIMETRE);
  }

  private static LinearShrinkage shrinkage(
      Feedstock feedstock, PrintConditions conditions, double metalInGreen) {
    if (conditions.measuredShrinkage().isPresent()) {
      return conditions.measuredShrinkage().get().value();
    }
    Estimate<VolumeFraction> relativeDensity = relativeDensity(feedstock, conditions);
    return LinearShrinkage.uniform(
        Estimate.of(
            shrinkage(metalInGreen, relativeDensity.span().low()),
            shrinkage(metalInGreen, relativeDensity.expected()),
            shrinkage(metalInGreen, relativeDensity.span().high())));
  }

  private static Estimate<VolumeFraction> relativeDensity(
      Feedstock feedstock, PrintConditions conditions) {
    return conditions
        .finalRelativeDensity()
        .orElse(feedstock.alloy().expectedRelativeDensity())
        .value();
  }

  private static double sinteredVolume(Part part, Feedstock feedstock, double filled) {
    return part.finishedVolume().isPresent()
        ? part.finishedVolume().get().si()
        : part.finishedMass().orElseThrow().si() / (filled * metalAndCharDensity(feedstock));
  }

  private static Amount<Dimensionless> shrinkage(
      double metalInGreen, Amount<VolumeFraction> relativeDensity) {
    return Amounts.ratio(1 - Math.cbrt(metalInGreen / relativeDensity.si()));
  }

  private static void requireAgreement(
      Problems problems,
      Amount<Volume> volume,
      Amount<Mass> mass,
      Span<VolumeFraction> relativeDensity,
      double firedDensity) {
    double full = volume.si() * firedDensity;
    double low = full * relativeDensity.low().si();
    double high = full * relativeDensity.high().si();
    problems.require(
        mass.si() >= low * (1 - AGREEMENT) && mass.si() <= high * (1 + AGREEMENT),
        () ->
            "a finished volume of "
                + volume
                + " means a finished mass of "
                + Amounts.kilograms(low).format(TradeUnits.GRAM, 2)
                + " to "
                + Amounts.kilograms(high).format(TradeUnits.GRAM, 2)
                + " at relative densities from "
                + relativeDensity.format(TradeUnits.VOLUME_FRACTION, 3)
                + ", but "
                + mass
                + " is stated; accepted is a mass in that range within "
                + Amounts.ratio(AGREEMENT).format(TradeUnits.PERCENT, 0)
                + ", or one of the two");
  }
}
