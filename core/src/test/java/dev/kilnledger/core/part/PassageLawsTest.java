package dev.kilnledger.core.part;

import static dev.kilnledger.core.part.TestStock.binder;
import static dev.kilnledger.core.part.TestStock.fractions;
import static dev.kilnledger.core.part.TestStock.metal;
import static dev.kilnledger.core.part.TestStock.sourced;
import static dev.kilnledger.units.Amounts.cubicCentimetres;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.Amounts.volumeFraction;
import static dev.kilnledger.units.TradeUnits.CUBIC_CENTIMETRE;
import static dev.kilnledger.units.TradeUnits.GRAM;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.Law;
import dev.kilnledger.core.material.Feedstock;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Source;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/**
 * What holds for the passage of every part: mass is conserved, shrinkage is what the volumes say,
 * and each input pulls the way it must. Figures are products of a few factors, each rounded once.
 */
class PassageLawsTest {
  private static final double ROUNDING = 1e-12;

  /** A job in figures: densities in g/cm3, shares from 0 to 1, the finished volume in cm3. */
  record Figures(
      double volume,
      double metalDensity,
      double binderDensity,
      double loading,
      double voids,
      double relativeDensity,
      double residue) {

    Feedstock feedstock() {
      return Feedstock.builder()
          .name("test feedstock")
          .alloy(metal(metalDensity, relativeDensity, relativeDensity, relativeDensity))
          .binder(binder(binderDensity, residue, residue, residue))
          .solidsLoading(volumeFraction(loading))
          .source(Source.user("invented for tests"))
          .build();
    }

    Part part() {
      double side = Math.cbrt(volume) * 10 + 1;
      return Part.builder()
          .name("cube")
          .finishedVolume(cubicCentimetres(volume))
          .envelope(Envelope.of(millimetres(side), millimetres(side), millimetres(side)))
          .thickestSection(millimetres(side))
          .build();
    }

    Passage passage() {
      return MassBalancePassage.standard()
          .passage(
              part(),
              feedstock(),
              PrintConditions.builder().strandVoids(volumeFraction(voids)).build());
    }
  }

  @Provide
  Arbitrary<Figures> figures() {
    return Combinators.combine(
            share(0.1, 500),
            share(2, 20),
            share(0.8, 1.6),
            share(0.3, 0.7),
            share(0, 0.2),
            share(0.75, 1),
            share(0, 0.05))
        .as(Figures::new);
  }

  private static Arbitrary<Double> share(double low, double high) {
    return Arbitraries.doubles().between(low, high).ofScale(4);
  }

  @Law
  void conservesTheMetalAtEveryStage(@ForAll("figures") Figures figures) {
    Passage passage = figures.passage();
    double full = figures.metalDensity();
    for (Stage stage : List.of(passage.green(), passage.brown(), passage.sintered())) {
      double binderOrChar = stage.mass().subtract(passage.metal()).in(GRAM);
      assertThat(binderOrChar).isGreaterThanOrEqualTo(-ROUNDING * stage.mass().in(GRAM));
    }
    // Metal fills what is no pore in the sintered part, at its full density.
    double filled = 1 - passage.sintered().porosity().si();
    close(passage.metal().in(GRAM), filled * figures.volume() * full);
    double green = passage.green().volume().in(CUBIC_CENTIMETRE);
    close(passage.metal().in(GRAM), figures.loading() * (1 - figures.voids()) * green * full);
  }

  @Law
  void losesAsMuchAsBurns(@ForAll("figures") Figures figures) {
    Passage passage = figures.passage();
    double binder = passage.green().mass().subtract(passage.metal()).in(GRAM);
    close(passage.residue().in(GRAM), figures.residue() * binder);
    close(passage.binderBurnt().in(GRAM), (1 - figures.residue()) * binder);
    assertThat(passage.sintered().mass()).isEqualTo(passage.brown().mass());
  }

  @Law
  void shrinksByWhatTheVolumesSay(@ForAll("figures") Figures figures) {
    Passage passage = figures.passage();
    double ratio = passage.sintered().volume().ratio(passage.green().volume());
    close(ratio, passage.shrinkage().volumeRatio().si());
    double side = passage.part().envelope().x().ratio(passage.green().envelope().x());
    close(side * side * side, ratio);
    assertThat(passage.oversize().x().expected().si()).isCloseTo(1 / side, within(ROUNDING));
  }

  @Law
  void growsInProportionToTheVolume(
      @ForAll("figures") Figures figures, @ForAll @DoubleRange(min = 1.01, max = 9) double times) {
    Figures larger =
        new Figures(
            figures.volume() * times,
            figures.metalDensity(),
            figures.binderDensity(),
            figures.loading(),
            figures.voids(),
            figures.relativeDensity(),
            figures.residue());
    close(
        larger.passage().filamentMass().in(GRAM),
        times * figures.passage().filamentMass().in(GRAM));
  }

  @Law
  void takesTheSameFilamentWhateverTheVoidsBetweenStrands(@ForAll("figures") Figures figures) {
    Figures solid =
        new Figures(
            figures.volume(),
            figures.metalDensity(),
            figures.binderDensity(),
            figures.loading(),
            0,
            figures.relativeDensity(),
            figures.residue());
    Passage without = solid.passage();
    Passage with = figures.passage();
    close(with.filamentMass().in(GRAM), without.filamentMass().in(GRAM));
    assertThat(with.oversize().x().expected().si())
        .isGreaterThanOrEqualTo(without.oversize().x().expected().si() - ROUNDING);
  }

  @Law
  void shrinksLessTheMoreMetalIsInTheFeedstock(
      @ForAll("figures") Figures figures, @ForAll @DoubleRange(min = 0.01, max = 0.3) double more) {
    Figures fuller =
        new Figures(
            figures.volume(),
            figures.metalDensity(),
            figures.binderDensity(),
            Math.min(0.99, figures.loading() + more),
            figures.voids(),
            figures.relativeDensity(),
            figures.residue());
    assertThat(fuller.passage().oversize().x().expected().si())
        .isLessThan(figures.passage().oversize().x().expected().si());
    assertThat(fuller.passage().filamentMass()).isLessThan(figures.passage().filamentMass());
  }

  @Law
  void weighsWhatIsAskedForWhereTheMassIsGiven(
      @ForAll("figures") Figures figures, @ForAll @DoubleRange(min = 1, max = 900) double mass) {
    Part byMass =
        Part.builder()
            .name("by mass")
            .finishedMass(dev.kilnledger.units.Amounts.grams(mass))
            .envelope(Envelope.of(millimetres(99), millimetres(99), millimetres(99)))
            .thickestSection(millimetres(5))
            .build();
    Passage passage = MassBalancePassage.standard().passage(byMass, figures.feedstock());
    close(passage.sintered().mass().in(GRAM), mass);
    Part byVolume = Part.builder().from(byMass).finishedVolume(passage.sintered().volume()).build();
    Passage again = MassBalancePassage.standard().passage(byVolume, figures.feedstock());
    close(again.green().mass().in(GRAM), passage.green().mass().in(GRAM));
  }

  @Law
  void holdsTheFinishedSizeWithinItsBand(
      @ForAll @DoubleRange(min = 0.05, max = 0.15) double low,
      @ForAll @DoubleRange(max = 0.05) double above,
      @ForAll @DoubleRange(max = 0.05) double further,
      @ForAll @DoubleRange(min = 1, max = 300) double length) {
    LinearShrinkage shrinkage =
        LinearShrinkage.uniform(
            Estimate.of(ratio(low), ratio(low + above), ratio(low + above + further)));
    Envelope wanted = Envelope.of(millimetres(length), millimetres(length), millimetres(length));
    var off = shrinkage.deviation(wanted).x();
    assertThat(off.low().si()).isLessThanOrEqualTo(0);
    assertThat(off.high().si()).isGreaterThanOrEqualTo(0);
    // What is printed with the expected oversize and shrinks by an end of the band.
    double printed = shrinkage.greenOf(wanted).x().si();
    close(wanted.x().si() + off.high().si(), printed * (1 - low));
    close(wanted.x().si() + off.low().si(), printed * (1 - low - above - further));
  }

  @Law
  void calibratesTheSameInAnyOrderOfCoupons(
      @ForAll @IntRange(min = 2, max = 8) int coupons, @ForAll int seed) {
    List<Coupon> list = new ArrayList<>();
    Random random = new Random(seed);
    for (int i = 0; i < coupons; i++) {
      double left = 0.84 + 0.02 * random.nextDouble();
      list.add(
          Coupon.of(
              Envelope.of(millimetres(20), millimetres(30), millimetres(10)),
              Envelope.of(millimetres(20 * left), millimetres(30 * left), millimetres(10 * left))));
    }
    ShrinkageCalibration one = StudentShrinkageCalibration.standard().calibrate(list);
    Collections.shuffle(list, random);
    ShrinkageCalibration other = StudentShrinkageCalibration.standard().calibrate(list);
    close(one.mean().x().si(), other.mean().x().si());
    assertThat(one.ofTheMean().orElseThrow().x().span().high().si())
        .isCloseTo(other.ofTheMean().orElseThrow().x().span().high().si(), within(1e-10));
    // One part scatters more than the mean of many.
    assertThat(one.ofTheNextPart().orElseThrow().x().span().high())
        .isGreaterThanOrEqualTo(one.ofTheMean().orElseThrow().x().span().high());
  }

  @Law
  void comesBackFromItsBytes(@ForAll("figures") Figures figures) throws Exception {
    Passage passage = figures.passage();
    assertThat(copied(passage)).isEqualTo(passage);
  }

  @Law
  void holdsItsDensityWithinItsStatedBand(
      @ForAll("figures") Figures figures, @ForAll @DoubleRange(max = 0.2) double spread) {
    double low = Math.max(0.7, figures.relativeDensity() - spread);
    PrintConditions conditions =
        PrintConditions.builder()
            .finalRelativeDensity(sourced(fractions(low, figures.relativeDensity(), 1)))
            .build();
    Passage passage =
        MassBalancePassage.standard().passage(figures.part(), figures.feedstock(), conditions);
    var band = passage.shrinkage().x();
    assertThat(band.expected()).isBetween(band.span().low(), band.span().high());
    close(1 - passage.sintered().porosity().si(), figures.relativeDensity());
  }

  private static void close(double actual, double expected) {
    assertThat(actual).isCloseTo(expected, within(ROUNDING * Math.max(1, Math.abs(expected))));
  }

  private static Object copied(Object value) throws IOException, ClassNotFoundException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(value);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      return in.readObject();
    }
  }
}
