package dev.kilnledger.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.core.gcode.GCodeReader;
import dev.kilnledger.core.mesh.MeshMeasure;
import dev.kilnledger.core.mesh.StlFile;
import dev.kilnledger.core.part.MassBalancePassage;
import dev.kilnledger.core.reading.ByteSource;
import dev.kilnledger.costing.uncertainty.MonteCarlo;
import dev.kilnledger.costing.uncertainty.Trials;
import dev.kilnledger.examples.WindowWorkshop;
import dev.kilnledger.examples.catalogue.CatalogueRow;
import dev.kilnledger.examples.catalogue.PricedCatalogue;
import dev.kilnledger.examples.catalogue.WorkshopPricing;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.Relations;
import dev.kilnledger.units.TradeUnits;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.junit.jupiter.api.Test;

/** What a call may allocate. Bytes do not depend on the machine's load, so they may be asserted. */
class AllocationBudgetTest {

  /** A header of 12 bytes, two doubles and one reference, rounded up to eight: 32 bytes. */
  private static final long ONE_AMOUNT = 32;

  @Test
  void everyAmountMadeIsOneObject() {
    Amount<Mass> mass = Amounts.grams(12.5);
    Amount<Mass> other = Amounts.kilograms(2);
    Amount<Volume> volume = Amounts.cubicCentimetres(3);
    assertThat(Allocation.bytes(() -> Amounts.grams(12.5))).isEqualTo(ONE_AMOUNT);
    assertThat(Allocation.bytes(() -> Amount.of(12.5, TradeUnits.GRAM))).isEqualTo(ONE_AMOUNT);
    assertThat(Allocation.bytes(() -> mass.to(TradeUnits.POUND))).isEqualTo(ONE_AMOUNT);
    assertThat(Allocation.bytes(() -> mass.add(mass))).isEqualTo(ONE_AMOUNT);
    assertThat(Allocation.bytes(() -> mass.subtract(other))).isEqualTo(ONE_AMOUNT);
    assertThat(Allocation.bytes(() -> mass.multiply(3))).isEqualTo(ONE_AMOUNT);
    assertThat(Allocation.bytes(() -> Relations.densityOf(mass, volume))).isEqualTo(ONE_AMOUNT);
  }

  @Test
  void readingAndComparingMakesNothing() {
    Amount<Mass> mass = Amounts.grams(12.5);
    Amount<Mass> other = Amounts.kilograms(2);
    assertThat(Allocation.bytes(() -> mass.in(TradeUnits.OUNCE) > 1 ? mass : other)).isZero();
    assertThat(Allocation.bytes(() -> mass.compareTo(other) < 0 ? mass : other)).isZero();
    assertThat(Allocation.bytes(() -> mass.ratio(other) < 1 ? mass : other)).isZero();
    assertThat(Allocation.bytes(() -> mass.equals(other) ? mass : other)).isZero();
  }

  /**
   * A passage with its stages holds some 25 amounts of 32 bytes and 10 values of 24 to 80; as much
   * again is made on the way, and goes when compiled. Lines and findings would be 40 times as much.
   */
  @Test
  void aPassageIsSomeSixtyObjects() {
    PassageBenchmark benchmark = new PassageBenchmark();
    MassBalancePassage model = MassBalancePassage.standard();
    assertThat(Allocation.bytes(() -> model.passage(benchmark.parts[0], benchmark.feedstocks[0])))
        .isLessThanOrEqualTo(2200);
  }

  /** Some 15 lines, 5 stocks and 5 accounts take 16 kB; what they say is shared. */
  @Test
  void aStatementTakesLessThanTwentyKilobytes() {
    LedgerBenchmark benchmark = new LedgerBenchmark();
    assertThat(Allocation.bytes(benchmark::statementOfThousand)).isLessThan(20_000);
    assertThat(Allocation.bytes(benchmark::statementOfMillion)).isLessThan(20_000);
  }

  /**
   * Four figures of 8 bytes, written by block and then as one, are 64 bytes of a trial. The rest is
   * the start of 64 blocks, 1 kB of each of the 10,000 trials here and 100 bytes of 100,000.
   */
  @Test
  void aTrialTakesLessThanFifteenHundredBytes() {
    MonteCarloBenchmark benchmark = new MonteCarloBenchmark();
    Trials trials = Trials.fixed(10_000, 7);
    MonteCarlo one = new MonteCarlo(1);
    assertThat(
            Allocation.bytes(
                () -> one.statement(benchmark.plan, MonteCarloBenchmark.PARTS, trials)))
        .isLessThan(1_500L * trials.number());
  }

  /** The mixes of packs that are weighed, 500 or so, are most of 340 kB. */
  @Test
  void aPurchasePlanOfTwentyOffersTakesLessThanFourHundredKilobytes() {
    PurchaseBenchmark benchmark = new PurchaseBenchmark();
    assertThat(Allocation.bytes(benchmark::planner))
        .isLessThan(400_000L * benchmark.problems.size());
  }

  /**
   * Two integrals over nine points: four arrays of nine doubles for each, 88 bytes a piece, make
   * 704 bytes; three times that for the calculators, their checks, exponential integrals and
   * result.
   */
  @Test
  void theIntegralsOfAProfileAreTheirArrays() {
    ProfileIntegralsBenchmark benchmark = new ProfileIntegralsBenchmark();
    assertThat(Allocation.bytes(benchmark::closedForm)).isLessThanOrEqualTo(3000);
  }

  /**
   * A run of 60 cells and some 180 points told: five amounts of 32 bytes and a point of 40 for
   * each, 36 kB; as much again for 24 arrays of cells, findings and their texts. Nothing for each
   * step.
   */
  @Test
  void aConductionRunIsThePointsItTells() {
    ConductionBenchmark benchmark = new ConductionBenchmark();
    assertThat(Allocation.bytes(benchmark::finiteVolumes)).isLessThanOrEqualTo(130_000);
  }

  /** Three arrays of eight doubles, eight amounts with their list, a record for each mode found. */
  @Test
  void anEigenmodeUpdateIsItsAnswer() {
    EigenmodeBenchmark benchmark = new EigenmodeBenchmark();
    assertThat(Allocation.bytes(benchmark::eigenmodes)).isLessThanOrEqualTo(4000);
  }

  /** Ten times as many lines allocate not a byte more; arcs and comments are among them. */
  @Test
  void aLineOfAPrintProgrammeAllocatesNothing() throws IOException {
    ByteSource few = programme(100_000);
    ByteSource many = programme(1_000_000);
    GCodeReader reader = GCodeReader.standard();
    long grown =
        Allocation.bytes(() -> read(reader, many)) - Allocation.bytes(() -> read(reader, few));
    // what the answer's figures take as text or boxed numbers may differ by a few bytes
    assertThat(grown).isLessThan(1000);
  }

  @Test
  void aFacetAllocatesNothing() throws IOException {
    StlFile few = torus(20);
    StlFile many = torus(400);
    long grown = Allocation.bytes(() -> measure(many)) - Allocation.bytes(() -> measure(few));
    // 15,200 facets more
    assertThat(grown).isLessThan(1000);
  }

  /** Some 1.5 MB were measured for a row whose firing is known: passage, charge and ledger. */
  @Test
  void aRowOfACatalogueAllocatesTwoMegabytesAtMost() {
    WorkshopPricing pricing = new WorkshopPricing(PricedCatalogue.workshop());
    CatalogueRow row = new CatalogueRow(WindowWorkshop.latchCams(1).part(), "tin bronze 90/10");
    pricing.apply(row);
    assertThat(Allocation.bytes(() -> pricing.apply(row))).isLessThan(2_000_000);
  }

  private static ByteSource programme(int bytes) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PrintProgrammeText.write(out, bytes);
    return ByteSource.of(out.toByteArray());
  }

  private static StlFile torus(int around) throws IOException {
    Path file = Files.createTempFile("torus", ".stl");
    TorusFile.write(file, around, 20);
    byte[] bytes = Files.readAllBytes(file);
    Files.delete(file);
    return StlFile.of(ByteSource.of(bytes), Amounts.millimetres(1));
  }

  private static Object read(GCodeReader reader, ByteSource source) {
    try {
      return reader.read(source);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Object measure(StlFile mesh) {
    try {
      return MeshMeasure.withoutSection().measure(mesh);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
