package dev.kilnledger.core.mesh;

import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.units.TradeUnits.CUBIC_CENTIMETRE;
import static dev.kilnledger.units.TradeUnits.MILLIMETRE;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.part.Extent;
import dev.kilnledger.core.progress.Progress;
import dev.kilnledger.core.reading.InputProblem;
import dev.kilnledger.core.reading.UnreadableInputException;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;

/**
 * Measures the body within a mesh: volume as the sum of {@code v1 . (v2 x v3) / 6} over its facets
 * (divergence theorem), area, extent, whether it is closed, and its thickest section from about two
 * million small cubes. The file is gone through twice, in constant memory; {@linkplain
 * #withoutSection() without the section} once, if the mesh is closed.
 *
 * <p>Where bodies of a mesh overlap, what they share is counted for each of them. A gap that is
 * narrower than two cubes may be overlooked, and the section then taken across it.
 *
 * <p>Example: a box of 30 x 20 x 10 mm has 6 cm3, 22 cm2 and a thickest section of 10 mm, found to
 * within the side of a cube, 0.15 mm, times twice the root of 3.
 */
public final class MeshMeasure {
  private static final double CUBES = 2_000_000;
  private static final double FURTHEST = 1e9;
  private static final Source MODEL =
      Source.recomputed("divergence theorem; Euclidean distance transform of small cubes");
  private static final MeshMeasure STANDARD = new MeshMeasure(true);
  private static final MeshMeasure WITHOUT_SECTION = new MeshMeasure(false);

  private final boolean withSection;

  private MeshMeasure(boolean withSection) {
    this.withSection = withSection;
  }

  /** {@return the measure} */
  public static MeshMeasure standard() {
    return STANDARD;
  }

  /**
   * {@return a measure that leaves the thickest section out, for who knows it or does not need it;
   * all else is the same, in a fraction of the time}
   */
  public static MeshMeasure withoutSection() {
    return WITHOUT_SECTION;
  }

  /**
   * Measures a mesh.
   *
   * @param mesh the mesh
   * @return its size
   * @throws UnreadableInputException if the file is not what it should be, or holds no facet
   * @throws IOException if the bytes cannot be read
   */
  public MeshSize measure(Facets mesh) throws IOException {
    return measure(mesh, Progress.unheard());
  }

  /**
   * Measures a mesh and tells how far it has come.
   *
   * @param mesh the mesh
   * @param progress hears how far it has come, where the size of the file is known
   * @return its size
   * @throws UnreadableInputException if the file is not what it should be, or holds no facet
   * @throws java.io.InterruptedIOException if the thread is interrupted meanwhile
   * @throws IOException if the bytes cannot be read
   */
  public MeshSize measure(Facets mesh, Progress progress) throws IOException {
    FacetSums sums = new FacetSums();
    double first = withSection ? 0.4 : 1;
    mesh.forEach(sums, progress.between(0, first));
    if (sums.facets() == 0) {
      throw new UnreadableInputException(
          InputProblem.of("mesh", "it has no facet", "at least four, around a body"));
    }
    if (!sums.isWithin(FURTHEST)) {
      throw new UnreadableInputException(
          InputProblem.of(
              "mesh",
              "a corner lies further out than " + FURTHEST,
              "coordinates up to that, plus or minus"));
    }
    double metres = mesh.unit().si();
    boolean closed = sums.edges().closed() && sums.hasInside();
    MeshSize.Builder size =
        MeshSize.builder()
            .facets(sums.facets())
            .facetsWithoutArea(sums.flat())
            .closed(closed)
            .area(Amounts.squareMetres(sums.area() * metres * metres))
            .extent(extent(sums, mesh.unit()));
    size.addFindings(
        closed
            ? finding(PASSED, "every edge is shared by facets that fit, so the mesh is watertight")
            : finding(WARNING, whyOpen(mesh, sums)),
        outwards(sums, closed),
        flat(sums));
    if (closed) {
      size.volume(
          Amounts.cubicMetres(Math.abs(sums.volume()) * metres * metres * metres)
              .to(CUBIC_CENTIMETRE));
    }
    if (closed && withSection) {
      VoxelBody body = new VoxelBody(sums.reaches(), CUBES);
      mesh.forEach(body, progress.between(first, 0.8));
      Estimate<Length> section = section(body, sums, mesh.unit());
      size.thickestSection(section).addFindings(section(body, section));
      progress.at(1);
    }
    return size.build();
  }

  private static Extent extent(FacetSums sums, Amount<Length> unit) {
    List<Amount<Length>> ends = new ArrayList<>();
    for (Reach reach : sums.reaches()) {
      ends.add(unit.multiply(reach.low()));
      ends.add(unit.multiply(reach.high()));
    }
    return Extent.builder()
        .lowX(ends.get(0))
        .highX(ends.get(1))
        .lowY(ends.get(2))
        .highY(ends.get(3))
        .lowZ(ends.get(4))
        .highZ(ends.get(5))
        .build();
  }

  /**
   * With the largest distance D from a centre inside to one outside, and the side h of a cube, the
   * largest ball has a diameter from 2 D - 2 sqrt(3) h to 2 D + sqrt(3) h: a centre lies within
   * sqrt(3)/2 h of the ball's, and one outside within sqrt(3) h of the surface. Of a plate it is 2
   * D - h or 2 D, as its thickness falls on the cubes.
   */
  private static Estimate<Length> section(VoxelBody body, FacetSums sums, Amount<Length> unit) {
    double side = body.side();
    double twice = 2 * new DistanceField(body).largest() * side;
    double most = Double.POSITIVE_INFINITY;
    for (Reach reach : sums.reaches()) {
      most = Math.min(most, reach.length());
    }
    double high = Math.min(most, twice + Math.sqrt(3) * side);
    double low = Math.min(high, Math.max(0, twice - 2 * Math.sqrt(3) * side));
    double expected = Math.min(high, Math.max(low, twice - side / 2));
    return Estimate.of(
        unit.multiply(low), unit.multiply(expected > 0 ? expected : high), unit.multiply(high));
  }

  private static Finding section(VoxelBody body, Estimate<Length> section) {
    boolean rough = section.span().low().si() < section.span().high().si() / 2;
    return MeshFinding.THICKEST_SECTION
        .about("mesh")
        .severity(rough || body.brokenColumns() > 0 ? NOTE : PASSED)
        .message(
            "the thickest section lies between "
                + section.span().low().format(MILLIMETRE, 2)
                + " and "
                + section.span().high().format(MILLIMETRE, 2)
                + (rough ? ": the body is thin for its size" : "")
                + (body.brokenColumns() > 0
                    ? "; facets that touch or cross were left out in places: "
                        + body.brokenColumns()
                    : ""))
        .measured(section.expected())
        .basis(MODEL)
        .build();
  }

  private static Finding finding(Severity severity, String message) {
    return MeshFinding.MESH_CLOSED
        .about("mesh")
        .severity(severity)
        .message(message)
        .basis(MODEL)
        .build();
  }

  /** Goes through an open mesh once more where the facets have to be asked. */
  private static String whyOpen(Facets mesh, FacetSums sums) throws IOException {
    if (sums.edges().closed()) {
      return "the facets enclose nothing";
    }
    EdgePairs pairs = new EdgePairs();
    mesh.forEach(pairs, Progress.unheard());
    return pairs.paired()
        ? "some facets look the other way than their neighbours: what is inside is not known"
        : "some edges have no second facet, so the mesh has holes and no volume";
  }

  private static Finding outwards(FacetSums sums, boolean closed) {
    Optional<Boolean> outwards = closed ? Optional.of(sums.volume() > 0) : Optional.empty();
    return MeshFinding.MESH_OUTWARDS
        .about("mesh")
        .severity(outwards.map(well -> well ? PASSED : NOTE).orElse(UNDETERMINED))
        .message(
            outwards
                .map(
                    well ->
                        well
                            ? "the facets look outwards"
                            : "all facets look inwards; the volume is taken as it is")
                .orElse("which way the facets look cannot be told of a mesh that is not closed"))
        .basis(MODEL)
        .build();
  }

  private static Finding flat(FacetSums sums) {
    return MeshFinding.FACETS_WITH_AREA
        .about("mesh")
        .severity(sums.flat() == 0 ? PASSED : NOTE)
        .message(
            sums.flat() == 0
                ? "every facet has an area"
                : "facets without area: " + sums.flat() + "; they do no harm to these figures")
        .measured(Amounts.ratio((double) sums.flat()))
        .basis(MODEL)
        .build();
  }
}
