package dev.kilnledger.benchmarks;

import dev.kilnledger.core.material.Feedstock;
import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.core.part.MassBalancePassage;
import dev.kilnledger.core.part.Part;
import dev.kilnledger.core.part.Passage;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import javax.measure.quantity.Length;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;

/**
 * A part from green to sintered, for a thousand parts of as many feedstocks: masses, volumes and
 * porosities of the three stages, shrinkage and oversize with their bands, lengths to print, and
 * the length of filament. With {@link MassBalancePassage} from a part in typed amounts, and with
 * the same formulas on doubles in SI, whose results are kept in one record.
 *
 * <p>Both start from the metal's mass fraction and work the solids loading out for each part, and
 * both hand out every figure, the library's passage with its stages as one object, read in gram,
 * millimetre and metre. The library also checks what it is given; lines of explanation and findings
 * are made when asked for, which {@code withFindings} and {@code withLines} do.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@OperationsPerInvocation(PassageBenchmark.COUNT)
public class PassageBenchmark {
  static final int COUNT = 1000;

  /** What the hand-written formulas start from, in SI. */
  record Stock(
      double metalMassFraction,
      double metalDensity,
      double binderDensity,
      double charPerBinder,
      double lowDensity,
      double expectedDensity,
      double highDensity,
      double filamentDiameter) {}

  /** A part wanted, in SI. */
  record Wanted(double volume, double x, double y, double z) {}

  /** What both variants hand out, in SI. */
  record Figures(
      double greenMass,
      double brownMass,
      double sinteredMass,
      double metal,
      double residue,
      double greenVolume,
      double greenPorosity,
      double brownPorosity,
      double sinteredPorosity,
      double lowShrinkage,
      double shrinkage,
      double highShrinkage,
      double lowOversize,
      double oversize,
      double highOversize,
      double greenX,
      double greenY,
      double greenZ,
      double filament) {}

  final Amount<Length> diameter = Amounts.millimetres(1.75);
  final Feedstock[] feedstocks = new Feedstock[COUNT];
  final Stock[] stocks = new Stock[COUNT];
  final Part[] parts = new Part[COUNT];
  final Wanted[] wanted = new Wanted[COUNT];

  /** Makes the parts of both variants from the same numbers. */
  public PassageBenchmark() {
    Feedstock copper = MaterialLibrary.standard().feedstock("copper in polylactide, generic");
    SplittableRandom random = new SplittableRandom(1);
    for (int i = 0; i < COUNT; i++) {
      Envelope envelope =
          Envelope.of(
              Amounts.millimetres(random.nextDouble(10, 100)),
              Amounts.millimetres(random.nextDouble(10, 100)),
              Amounts.millimetres(random.nextDouble(10, 100)));
      feedstocks[i] =
          Feedstock.builder()
              .name("feedstock " + i)
              .alloy(copper.alloy())
              .binder(copper.binder())
              .metalMassFraction(Amounts.massPercent(random.nextDouble(85, 92)))
              .source(Source.user("invented"))
              .build();
      stocks[i] = stock(feedstocks[i], diameter);
      parts[i] =
          Part.builder()
              .name("part " + i)
              .finishedVolume(envelope.volume().multiply(random.nextDouble(0.2, 0.9)))
              .envelope(envelope)
              .thickestSection(Amounts.millimetres(6))
              .build();
      wanted[i] =
          new Wanted(
              parts[i].finishedVolume().orElseThrow().si(),
              envelope.x().si(),
              envelope.y().si(),
              envelope.z().si());
    }
  }

  private static Stock stock(Feedstock feedstock, Amount<Length> diameter) {
    var density = feedstock.alloy().expectedRelativeDensity().value();
    return new Stock(
        feedstock.metalMassFraction().si(),
        feedstock.alloy().fullDensity().value().si(),
        feedstock.binder().density().value().expected().si(),
        feedstock.binder().residue().value().expected().si(),
        density.span().low().si(),
        density.expected().si(),
        density.span().high().si(),
        diameter.si());
  }

  /**
   * The passages of typed parts, every figure read.
   *
   * @param kept takes the figures
   */
  @Benchmark
  public void passage(Blackhole kept) {
    for (int i = 0; i < COUNT; i++) {
      Passage passage = MassBalancePassage.standard().passage(parts[i], feedstocks[i]);
      kept.consume(passage);
      read(passage, kept);
    }
  }

  /**
   * The same, and every finding.
   *
   * @param kept takes the figures
   */
  @Benchmark
  public void withFindings(Blackhole kept) {
    for (int i = 0; i < COUNT; i++) {
      Passage passage = MassBalancePassage.standard().passage(parts[i], feedstocks[i]);
      read(passage, kept);
      kept.consume(passage.findings());
    }
  }

  /**
   * The same, and every line of explanation.
   *
   * @param kept takes the figures
   */
  @Benchmark
  public void withLines(Blackhole kept) {
    for (int i = 0; i < COUNT; i++) {
      Passage passage = MassBalancePassage.standard().passage(parts[i], feedstocks[i]);
      read(passage, kept);
      kept.consume(passage.lines());
    }
  }

  /**
   * The passages by formulas on doubles.
   *
   * @param kept takes the figures
   */
  @Benchmark
  public void doubles(Blackhole kept) {
    for (int i = 0; i < COUNT; i++) {
      kept.consume(figures(wanted[i], stocks[i]));
    }
  }

  private void read(Passage passage, Blackhole kept) {
    kept.consume(passage.green().mass().in(TradeUnits.GRAM));
    kept.consume(passage.brown().mass().in(TradeUnits.GRAM));
    kept.consume(passage.sintered().mass().in(TradeUnits.GRAM));
    kept.consume(passage.oversize());
    kept.consume(passage.green().envelope().x().in(TradeUnits.MILLIMETRE));
    kept.consume(passage.filamentLength(diameter).in(TradeUnits.METRE));
  }

  /** {@return the figures of a typed part, to be compared} */
  Figures figures(Part part, Feedstock feedstock) {
    Passage passage = MassBalancePassage.standard().passage(part, feedstock);
    Estimate<?> shrinkage = passage.shrinkage().y();
    Estimate<?> oversize = passage.oversize().y();
    return new Figures(
        passage.green().mass().si(),
        passage.brown().mass().si(),
        passage.sintered().mass().si(),
        passage.metal().si(),
        passage.residue().si(),
        passage.green().volume().si(),
        passage.green().porosity().si(),
        passage.brown().porosity().si(),
        passage.sintered().porosity().si(),
        shrinkage.span().low().si(),
        shrinkage.expected().si(),
        shrinkage.span().high().si(),
        oversize.span().low().si(),
        oversize.expected().si(),
        oversize.span().high().si(),
        passage.green().envelope().x().si(),
        passage.green().envelope().y().si(),
        passage.green().envelope().z().si(),
        passage.filamentLength(diameter).si());
  }

  /** {@return the figures of a part by formulas on doubles} */
  static Figures figures(Wanted part, Stock stock) {
    double solid = stock.metalMassFraction / stock.metalDensity;
    double loading = solid / (solid + (1 - stock.metalMassFraction) / stock.binderDensity);
    double low = 1 - Math.cbrt(loading / stock.lowDensity);
    double shrinkage = 1 - Math.cbrt(loading / stock.expectedDensity);
    double high = 1 - Math.cbrt(loading / stock.highDensity);
    double kept = 1 - shrinkage;
    double ratio = kept * kept * kept;
    double volume = part.volume / ratio;
    double metal = loading * stock.metalDensity * volume;
    double binder = (1 - loading) * stock.binderDensity * volume;
    double residue = stock.charPerBinder * binder;
    double strand = loading * stock.metalDensity + (1 - loading) * stock.binderDensity;
    double section = Math.PI / 4 * stock.filamentDiameter * stock.filamentDiameter;
    return new Figures(
        metal + binder,
        metal + residue,
        metal + residue,
        metal,
        residue,
        volume,
        0,
        1 - loading,
        1 - loading / ratio,
        low,
        shrinkage,
        high,
        1 / (1 - low),
        1 / kept,
        1 / (1 - high),
        part.x / kept,
        part.y / kept,
        part.z / kept,
        (metal + binder) / (strand * section));
  }
}
