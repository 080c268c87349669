package dev.kilnledger.core.mesh;

import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.TradeUnits.MILLIMETRE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.Law;
import dev.kilnledger.core.part.PerAxis;
import dev.kilnledger.core.progress.Progress;
import dev.kilnledger.core.reading.ByteSource;
import dev.kilnledger.core.reading.UnreadableInputException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/**
 * What holds for every mesh, whatever file it stands in. Coordinates are multiples of 1/16 mm below
 * 256 mm, which single precision holds exactly, so that the files differ in nothing but their form.
 */
class MeshLawsTest {
  /** Sums over a few dozen facets, each a product of three coordinates. */
  private static final double ROUNDING = 1e-9;

  /** Boxes that do not touch, in millimetres. */
  record Boxes(List<int[]> sides) {
    List<double[]> facets() {
      List<double[]> facets = new ArrayList<>();
      double at = -100;
      for (int[] side : sides) {
        facets.addAll(Bodies.box(at, -50, 3, side[0] / 16.0, side[1] / 16.0, side[2] / 16.0));
        at += side[0] / 16.0 + 1;
      }
      return facets;
    }

    double volume() {
      return sides.stream().mapToDouble(s -> (double) s[0] * s[1] * s[2] / 4096).sum();
    }

    double area() {
      return sides.stream()
          .mapToDouble(s -> 2.0 * (s[0] * s[1] + s[1] * s[2] + s[2] * s[0]) / 256)
          .sum();
    }

    @Override
    public String toString() {
      return sides.stream()
          .map(s -> s[0] / 16.0 + " x " + s[1] / 16.0 + " x " + s[2] / 16.0)
          .toList()
          .toString();
    }
  }

  @Provide
  Arbitrary<Boxes> boxes() {
    Arbitrary<Integer> side = Arbitraries.integers().between(1, 480);
    return Combinators.combine(side, side, side)
        .as((x, y, z) -> new int[] {x, y, z})
        .list()
        .ofMinSize(1)
        .ofMaxSize(4)
        .map(Boxes::new);
  }

  @Law
  void isReadFromEveryKindOfFileAsItWasPrinted(@ForAll("boxes") Boxes boxes) throws IOException {
    List<double[]> facets = boxes.facets();
    String object = "<resources><object id=\"1\">" + Bodies.mesh(facets) + "</object></resources>";
    byte[] threeMf =
        Bodies.threeMf(Bodies.model("", object + "<build><item objectid=\"1\"/></build>"));
    for (Facets file :
        List.of(
            stl(Bodies.binary(facets)),
            stl(Bodies.text(facets)),
            ThreeMfFile.of(ByteSource.of(threeMf)))) {
      List<double[]> read = read(file);
      assertThat(read).hasSameSizeAs(facets);
      for (int i = 0; i < read.size(); i++) {
        assertThat(read.get(i)).isEqualTo(facets.get(i));
      }
    }
  }

  /** Fewer tries: a closed mesh is filled with two million cubes. */
  @Property(tries = 4, seed = "20261125")
  void hasTheVolumeAndAreaOfGeometry(@ForAll("boxes") Boxes boxes) throws IOException {
    MeshSize size = MeshMeasure.standard().measure(stl(Bodies.binary(boxes.facets())));
    assertThat(size.closed()).isTrue();
    assertThat(size.volume().orElseThrow().si() * 1e9)
        .isCloseTo(boxes.volume(), within(ROUNDING * boxes.volume()));
    assertThat(size.area().si() * 1e6).isCloseTo(boxes.area(), within(ROUNDING * boxes.area()));
    // The largest ball in a box is as wide as its shortest side.
    double widest = 0;
    for (int[] s : boxes.sides()) {
      widest = Math.max(widest, Math.min(s[0], Math.min(s[1], s[2])) / 16.0);
    }
    var span = size.thickestSection().orElseThrow().span();
    assertThat(widest)
        .isBetween(span.low().in(MILLIMETRE) - ROUNDING, span.high().in(MILLIMETRE) + ROUNDING);
  }

  @Law
  void sumsTheSameInAnyOrderAndPlace(@ForAll("boxes") Boxes boxes, @ForAll int seed)
      throws IOException {
    List<double[]> facets = boxes.facets();
    FacetSums straight = sums(facets);
    Random random = new Random(seed);
    Collections.shuffle(facets, random);
    // Turned over in itself each facet stays the same, as does the body moved by whole millimetres.
    int by = random.nextInt(100);
    List<double[]> moved = new ArrayList<>();
    for (double[] f : facets) {
      moved.add(
          new double[] {
            f[3] + by, f[4], f[5] - by, f[6] + by, f[7], f[8] - by, f[0] + by, f[1], f[2] - by
          });
    }
    FacetSums other = sums(moved);
    assertThat(other.edges().closed()).isTrue();
    // Sums of thousands of cubic millimetres about another origin.
    assertThat(other.volume()).isCloseTo(straight.volume(), within(1e-6));
    assertThat(other.area()).isCloseTo(straight.area(), within(ROUNDING * straight.area()));
    assertThat(other.reaches().get(0).length()).isEqualTo(straight.reaches().get(0).length());
  }

  @Law
  void isOpenWithoutAnyOneOfItsFacets(@ForAll("boxes") Boxes boxes, @ForAll int which)
      throws IOException {
    List<double[]> facets = boxes.facets();
    facets.remove(Math.floorMod(which, facets.size()));
    assertThat(sums(facets).edges().closed()).isFalse();
  }

  @Law
  void looksInwardsWhereAllFacetsAreTurnedOver(@ForAll("boxes") Boxes boxes) throws IOException {
    List<double[]> turned = new ArrayList<>();
    for (double[] f : boxes.facets()) {
      turned.add(new double[] {f[0], f[1], f[2], f[6], f[7], f[8], f[3], f[4], f[5]});
    }
    assertThat(sums(turned).volume())
        .isCloseTo(-boxes.volume(), within(ROUNDING * 1e3 * boxes.volume() + 1e-6));
    assertThat(sums(turned).edges().closed()).isTrue();
  }

  @Law
  void growsByTheFactorsOfItsAxes(
      @ForAll("boxes") Boxes boxes,
      @ForAll @DoubleRange(min = 1, max = 1.5) double x,
      @ForAll @DoubleRange(min = 1, max = 1.5) double y)
      throws IOException {
    for (byte[] file : List.of(Bodies.binary(boxes.facets()), Bodies.text(boxes.facets()))) {
      ByteArrayOutputStream copy = new ByteArrayOutputStream();
      StlScaling.standard()
          .write(stl(file), PerAxis.of(ratio(x), ratio(y), ratio(1)), copy, Progress.unheard());
      List<double[]> before = read(stl(file));
      List<double[]> after = read(stl(copy.toByteArray()));
      for (int i = 0; i < before.size(); i++) {
        for (int k = 0; k < 9; k += 3) {
          // One rounding to single precision.
          assertThat((float) after.get(i)[k]).isEqualTo((float) (before.get(i)[k] * x));
          assertThat((float) after.get(i)[k + 1]).isEqualTo((float) (before.get(i)[k + 1] * y));
          assertThat(after.get(i)[k + 2]).isEqualTo(before.get(i)[k + 2]);
        }
      }
    }
  }

  @Example
  void isNotScaledBeyondWhatTheFormatHolds() {
    byte[] file = Bodies.binary(Bodies.box(0, 0, 0, 3e38, 1, 1));
    assertThatThrownBy(
            () ->
                StlScaling.standard()
                    .write(
                        stl(file),
                        PerAxis.of(ratio(1.2), ratio(1), ratio(1)),
                        new ByteArrayOutputStream(),
                        Progress.unheard()))
        .isInstanceOf(UnreadableInputException.class)
        .hasMessageContaining("single precision");
  }

  private static StlFile stl(byte[] bytes) {
    return StlFile.of(ByteSource.of(bytes), millimetres(1));
  }

  private static List<double[]> read(Facets file) throws IOException {
    List<double[]> facets = new ArrayList<>();
    file.forEach(
        (ax, ay, az, bx, by, bz, cx, cy, cz) ->
            facets.add(new double[] {ax, ay, az, bx, by, bz, cx, cy, cz}),
        Progress.unheard());
    return facets;
  }

  private static FacetSums sums(List<double[]> facets) throws IOException {
    FacetSums sums = new FacetSums();
    stl(Bodies.binary(facets)).forEach(sums, Progress.unheard());
    return sums;
  }
}
