package dev.kilnledger.core.mesh;

import static dev.kilnledger.units.TradeUnits.CUBIC_MILLIMETRE;
import static dev.kilnledger.units.TradeUnits.MILLIMETRE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.part.Part;
import dev.kilnledger.core.progress.Progress;
import dev.kilnledger.core.reading.ByteSource;
import dev.kilnledger.core.reading.UnreadableInputException;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MeshMeasureTest {
  private static MeshSize measure(List<double[]> facets) throws IOException {
    return MeshMeasure.standard()
        .measure(StlFile.of(ByteSource.of(Bodies.binary(facets)), Amounts.millimetres(1)));
  }

  private static Severity severity(MeshSize size, MeshFinding code) {
    return size.findings().stream()
        .filter(finding -> finding.code() == code)
        .findFirst()
        .orElseThrow()
        .severity();
  }

  @Test
  void javadocExampleComesOutAsStated() throws IOException {
    MeshSize size = measure(Bodies.box(0, 0, 0, 30, 20, 10));
    assertThat(size.closed()).isTrue();
    assertThat(size.volume().orElseThrow().in(CUBIC_MILLIMETRE)).isCloseTo(6000, within(1e-9));
    assertThat(size.area().si()).isCloseTo(22e-4, within(1e-15));
    double side = Math.cbrt(6000.0 / 2_000_000);
    assertThat(side).isCloseTo(0.15, within(0.01));
    var section = size.thickestSection().orElseThrow();
    assertThat(section.span().low().in(MILLIMETRE)).isBetween(10 - 2 * Math.sqrt(3) * side, 10.0);
    assertThat(section.span().high().in(MILLIMETRE)).isEqualTo(10);
    assertThat(size.findings()).allMatch(finding -> finding.severity() == Severity.PASSED);
    assertThat(size.findings())
        .extracting(Finding::message)
        .startsWith(
            "every edge is shared by facets that fit, so the mesh is watertight",
            "the facets look outwards",
            "every facet has an area");
    assertThat(size.findings().get(3).message())
        .matches("the thickest section lies between 9\\.\\d\\d mm and 10\\.00 mm");
    assertThat(size.findings())
        .extracting(finding -> finding.code().code())
        .containsExactly("mesh-closed", "mesh-outwards", "facets-with-area", "thickest-section");
    Part part = size.toPart("block");
    assertThat(part.envelope().x().in(MILLIMETRE)).isEqualTo(30);
    assertThat(part.finishedVolume()).isEqualTo(size.volume());
  }

  @Test
  void prismOnAPolygonHasTheVolumeOfGeometry() throws IOException {
    // n/2 r2 sin(2 pi/n) h, and the ball that touches sides: 2 r cos(pi/n)
    MeshSize size = measure(Bodies.prism(10, 50, 36));
    double volume = 18 * 100 * Math.sin(Math.PI / 18) * 50;
    // coordinates have single precision
    assertThat(size.volume().orElseThrow().in(CUBIC_MILLIMETRE))
        .isCloseTo(volume, within(1e-6 * volume));
    double ball = 20 * Math.cos(Math.PI / 36);
    var section = size.thickestSection().orElseThrow();
    assertThat(section.span().low().in(MILLIMETRE)).isLessThanOrEqualTo(ball);
    assertThat(section.span().high().in(MILLIMETRE)).isGreaterThanOrEqualTo(ball);
    assertThat(section.expected().in(MILLIMETRE)).isCloseTo(ball, within(0.3));
  }

  @ParameterizedTest
  @ValueSource(doubles = {2, 5, 9})
  void ballInATorusIsAsThickAsItsTube(double small) throws IOException {
    // Pappus: volume 2 pi2 R r2, area 4 pi2 R r; a fine mesh lies within 0.1 % of the surface
    MeshSize size = measure(Bodies.torus(20, small, 240, 120));
    double volume = 2 * Math.PI * Math.PI * 20 * small * small;
    assertThat(size.volume().orElseThrow().in(CUBIC_MILLIMETRE))
        .isCloseTo(volume, within(1e-3 * volume));
    double area = 4 * Math.PI * Math.PI * 20 * small;
    assertThat(size.area().si() * 1e6).isCloseTo(area, within(1e-3 * area));
    var section = size.thickestSection().orElseThrow();
    assertThat(section.span().low().in(MILLIMETRE)).isLessThanOrEqualTo(2 * small);
    assertThat(section.span().high().in(MILLIMETRE)).isGreaterThanOrEqualTo(2 * small * 0.999);
    double width = section.span().high().in(MILLIMETRE) - section.span().low().in(MILLIMETRE);
    double side = Math.cbrt(2 * small * Math.pow(40 + 2 * small, 2) / 2_000_000);
    assertThat(width).isLessThanOrEqualTo(3 * Math.sqrt(3) * side * 1.001);
  }

  @Test
  void bodyFarFromTheOriginKeepsItsVolume() throws IOException {
    MeshSize size = measure(Bodies.box(8192, -8192, 4096, 4, 2, 1));
    assertThat(size.volume().orElseThrow().in(CUBIC_MILLIMETRE)).isCloseTo(8, within(1e-9));
  }

  @Test
  void orderOfFacetsAndOfTheirCornersChangesNothing() throws IOException {
    List<double[]> facets = Bodies.torus(20, 5, 40, 20);
    MeshSize before = measure(facets);
    List<double[]> shuffled = new ArrayList<>();
    for (double[] f : facets) {
      shuffled.add(new double[] {f[3], f[4], f[5], f[6], f[7], f[8], f[0], f[1], f[2]});
    }
    Collections.shuffle(shuffled, new Random(3));
    MeshSize after = measure(shuffled);
    assertThat(after.closed()).isTrue();
    double volume = before.volume().orElseThrow().si();
    assertThat(after.volume().orElseThrow().si()).isCloseTo(volume, within(1e-12 * volume));
    assertThat(after.thickestSection()).isEqualTo(before.thickestSection());
  }

  @Test
  void missingFacetOpensTheMesh() throws IOException {
    List<double[]> facets = Bodies.torus(20, 5, 40, 20);
    for (int missing : new int[] {0, 7, 1599}) {
      List<double[]> open = new ArrayList<>(facets);
      open.remove(missing);
      MeshSize size = measure(open);
      assertThat(size.closed()).isFalse();
      assertThat(size.volume()).isEmpty();
      assertThat(severity(size, MeshFinding.MESH_CLOSED)).isEqualTo(Severity.WARNING);
      assertThat(severity(size, MeshFinding.MESH_OUTWARDS)).isEqualTo(Severity.UNDETERMINED);
      assertThat(size.findings())
          .extracting(Finding::message)
          .startsWith(
              "some edges have no second facet, so the mesh has holes and no volume",
              "which way the facets look cannot be told of a mesh that is not closed");
      assertThatThrownBy(() -> size.toPart("ring"))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("not closed");
    }
  }

  @Test
  void facetThatLooksTheOtherWayIsSaidToDoSo() throws IOException {
    List<double[]> facets = new ArrayList<>(Bodies.box(0, 0, 0, 1, 2, 3));
    double[] f = facets.get(4);
    facets.set(4, new double[] {f[0], f[1], f[2], f[6], f[7], f[8], f[3], f[4], f[5]});
    MeshSize size = measure(facets);
    assertThat(size.closed()).isFalse();
    assertThat(size.findings().get(0).message()).contains("look the other way");
  }

  @Test
  void bodyInsideOutHasItsVolumeAndANote() throws IOException {
    List<double[]> inwards = new ArrayList<>();
    for (double[] f : Bodies.box(0, 0, 0, 1, 2, 3)) {
      inwards.add(new double[] {f[0], f[1], f[2], f[6], f[7], f[8], f[3], f[4], f[5]});
    }
    MeshSize size = measure(inwards);
    assertThat(size.volume().orElseThrow().in(CUBIC_MILLIMETRE)).isCloseTo(6, within(1e-9));
    assertThat(severity(size, MeshFinding.MESH_OUTWARDS)).isEqualTo(Severity.NOTE);
    assertThat(size.findings().get(1).message())
        .isEqualTo("all facets look inwards; the volume is taken as it is");
  }

  @Test
  void hollowIsTakenAway() throws IOException {
    List<double[]> facets = new ArrayList<>(Bodies.box(0, 0, 0, 10, 10, 10));
    for (double[] f : Bodies.box(2, 2, 2, 6, 6, 6)) {
      facets.add(new double[] {f[0], f[1], f[2], f[6], f[7], f[8], f[3], f[4], f[5]});
    }
    MeshSize size = measure(facets);
    assertThat(size.volume().orElseThrow().in(CUBIC_MILLIMETRE)).isCloseTo(784, within(1e-9));
    // a ball in a corner touches three walls and the corner of the hollow:
    // sqrt(3) (2 - r) = r, r = 2 sqrt(3)/(1 + sqrt(3))
    double ball = 4 * Math.sqrt(3) / (1 + Math.sqrt(3));
    var section = size.thickestSection().orElseThrow();
    assertThat(section.span().low().in(MILLIMETRE)).isLessThanOrEqualTo(ball);
    assertThat(section.span().high().in(MILLIMETRE)).isGreaterThanOrEqualTo(ball);
    assertThat(section.expected().in(MILLIMETRE)).isCloseTo(ball, within(0.15));
    // nothing else bounds the span, so it is as wide as the cubes leave it: 3 sqrt(3) sides
    double side = Math.cbrt(1000.0 / 2_000_000);
    assertThat(section.span().high().in(MILLIMETRE) - section.span().low().in(MILLIMETRE))
        .isCloseTo(3 * Math.sqrt(3) * side, within(1e-9));
  }

  @Test
  void sheetTooThinForTheCubesIsSaidToBe() throws IOException {
    MeshSize size = measure(Bodies.box(0, 0, 0, 1000, 1000, 0.05));
    var section = size.thickestSection().orElseThrow();
    assertThat(section.span().contains(Amounts.millimetres(0.05))).isTrue();
    assertThat(severity(size, MeshFinding.THICKEST_SECTION)).isEqualTo(Severity.NOTE);
    assertThat(size.findings().get(3).message()).endsWith(": the body is thin for its size");
    assertThat(size.toPart("sheet").thickestSection().si()).isPositive();
  }

  @Test
  void emptyAndBoundlessMeshesAreRefused() {
    assertThatThrownBy(() -> measure(List.of()))
        .isInstanceOf(UnreadableInputException.class)
        .hasMessageContaining("no facet");
    assertThatThrownBy(() -> measure(Bodies.box(0, 0, 0, 1e20, 1, 1)))
        .isInstanceOf(UnreadableInputException.class)
        .hasMessageContaining("further out");
  }

  /**
   * A box whose upright edge has a corner more on one side than on the other: the gap has no width,
   * lies all above one point, and is a hole nevertheless.
   */
  @Test
  void cornerOnAnEdgeOfItsNeighbourOpensTheMesh() throws IOException {
    List<double[]> facets = Bodies.box(0, 0, 0, 10, 10, 10);
    int cut = -1;
    for (int i = 0; i < facets.size(); i++) {
      double[] f = facets.get(i);
      if (f[0] == f[3] && f[1] == f[4] && f[2] != f[5]) {
        cut = i;
      }
    }
    double[] f = facets.remove(cut);
    double middle = (f[2] + f[5]) / 2;
    facets.add(new double[] {f[0], f[1], f[2], f[0], f[1], middle, f[6], f[7], f[8]});
    facets.add(new double[] {f[0], f[1], middle, f[3], f[4], f[5], f[6], f[7], f[8]});
    assertThat(measure(facets).closed()).isFalse();
  }

  @Test
  void withoutItsSectionAllElseIsTheSame() throws IOException {
    StlFile box =
        StlFile.of(
            ByteSource.of(Bodies.binary(Bodies.box(0, 0, 0, 30, 20, 10))), Amounts.millimetres(1));
    MeshSize size = MeshMeasure.withoutSection().measure(box);
    MeshSize whole = MeshMeasure.standard().measure(box);
    assertThat(size.thickestSection()).isEmpty();
    assertThat(size.volume()).isEqualTo(whole.volume());
    assertThat(size.area()).isEqualTo(whole.area());
    assertThat(size.extent()).isEqualTo(whole.extent());
    assertThat(whole.findings()).containsAll(size.findings());
    assertThatThrownBy(() -> size.toPart("block"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("measured without its thickest section; accepted is");
  }

  @Test
  void flatMeshEnclosesNothing() throws IOException {
    MeshSize size = measure(Bodies.box(0, 0, 0, 10, 10, 0));
    assertThat(size.closed()).isFalse();
    assertThat(size.facetsWithoutArea()).isEqualTo(8);
    assertThat(size.findings())
        .extracting(Finding::message)
        .contains(
            "the facets enclose nothing",
            "facets without area: 8; they do no harm to these figures");
    assertThat(severity(size, MeshFinding.FACETS_WITH_AREA)).isEqualTo(Severity.NOTE);
  }

  /**
   * Two plates 1 mm thick, 10.95 mm from foot to top, whose box has 2000 mm3 and so two million
   * cubes of 0.1 mm. 110 of them are as high as the box, and a rim makes 112: they begin 0.125 mm
   * under it, their centres lie at -0.075, 0.025, 0.125 ... mm, and ten of them in either plate.
   * The middle two are five sides from the next outside: twice that is 1 mm, and of a plate that is
   * as thick as it is, or one side more.
   */
  @Test
  void sectionOfAPlateIsWithinHalfACubeOfWhatTheCubesSay() throws IOException {
    double length = 2000 / (10.95 * 14);
    List<double[]> plates = new ArrayList<>(Bodies.box(0, 0, 0, 14, length, 1));
    plates.addAll(Bodies.box(0, 0, 9.95, 14, length, 1));
    var section = measure(plates).thickestSection().orElseThrow();
    // coordinates of a dozen in single precision
    assertThat(section.expected().in(MILLIMETRE)).isCloseTo(1 - 0.05, within(1e-6));
    assertThat(section.span().low().in(MILLIMETRE))
        .isCloseTo(1 - 2 * Math.sqrt(3) * 0.1, within(1e-6));
    assertThat(section.span().high().in(MILLIMETRE))
        .isCloseTo(1 + Math.sqrt(3) * 0.1, within(1e-6));
  }

  /**
   * Two sheets of 0.01 mm at the foot and the top of a box of 1000 x 1000 x 100 mm: its cubes have
   * a side of the cubic root of 50 mm3, 30 of them stand on end, and the first centres lie at -3.41
   * and 0.27 mm. No centre is in a sheet, and the section is not taken for nothing.
   */
  @Test
  void bodyBetweenAllCubesIsAsThickAsItMayBeAtMost() throws IOException {
    List<double[]> sheets = new ArrayList<>(Bodies.box(0, 0, 0, 1000, 1000, 0.01));
    sheets.addAll(Bodies.box(0, 0, 99.99, 1000, 1000, 0.01));
    MeshSize size = measure(sheets);
    var section = size.thickestSection().orElseThrow();
    assertThat(section.span().low().si()).isZero();
    assertThat(section.expected()).isEqualTo(section.span().high());
    assertThat(section.expected().in(MILLIMETRE))
        .isCloseTo(Math.sqrt(3) * Math.cbrt(50), within(1e-6));
    assertThat(size.findings().get(3).message())
        .isEqualTo(
            "the thickest section lies between 0.00 mm and 6.38 mm: the body is thin for its size");
  }

  /** As if the file lost a facet between the first time it is gone through and the second. */
  @Test
  void columnsThatAreLeftOutAreToldWithTheSection() throws IOException {
    List<double[]> box = Bodies.box(0, 0, 0, 10, 10, 10);
    AtomicInteger times = new AtomicInteger();
    Facets mesh =
        new Facets() {
          @Override
          public Amount<Length> unit() {
            return Amounts.millimetres(1);
          }

          @Override
          public void forEach(FacetConsumer consumer, Progress progress) {
            boolean whole = times.incrementAndGet() == 1;
            for (double[] f : whole ? box : box.subList(1, box.size())) {
              consumer.facet(f[0], f[1], f[2], f[3], f[4], f[5], f[6], f[7], f[8]);
            }
          }
        };
    MeshSize size = MeshMeasure.standard().measure(mesh);
    assertThat(times).hasValue(2);
    assertThat(severity(size, MeshFinding.THICKEST_SECTION)).isEqualTo(Severity.NOTE);
    assertThat(size.findings().get(3).message())
        .matches(
            "the thickest section lies between [\\d.]+ mm and [\\d.]+ mm;"
                + " facets that touch or cross were left out in places: [1-9]\\d*");
  }

  @Test
  void progressRisesToTheWhole() throws IOException {
    StlFile torus =
        StlFile.of(
            ByteSource.of(Bodies.binary(Bodies.torus(20, 5, 60, 50))), Amounts.millimetres(1));
    for (MeshMeasure measure : List.of(MeshMeasure.standard(), MeshMeasure.withoutSection())) {
      List<Double> heard = new ArrayList<>();
      measure.measure(torus, heard::add);
      assertThat(heard).hasSizeGreaterThan(2).isSorted().endsWith(1.0);
      assertThat(heard.get(0)).isBetween(0.0, 0.4);
    }
  }
}
