package dev.kilnledger.core.equipment;

import dev.kilnledger.core.internal.layout.CirclesInBox;
import dev.kilnledger.core.internal.layout.CirclesInCircle;
import dev.kilnledger.core.internal.layout.Layer;
import dev.kilnledger.core.internal.layout.RectanglesInBox;
import dev.kilnledger.core.internal.layout.RectanglesInCircle;
import dev.kilnledger.core.internal.layout.Spot;
import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.core.part.Outline;
import dev.kilnledger.core.part.PrintAxis;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Arranges equal parts in a crucible, in layers that are all alike.
 *
 * <p>A layer is
 *
 * <ul>
 *   <li>round parts in a round crucible: the best known packing of circles in a circle up to 20
 *       parts, with q = (D/2 - w + g/2) / ((d + g)/2) for a crucible of diameter D, wall clearance
 *       w, parts of diameter d a gap g apart (proven up to 12); beyond, the best of hexagonal rows,
 *       square rows and rings, a lower bound;
 *   <li>round parts in a box: the best of square and staggered rows, a lower bound;
 *   <li>other parts in a round crucible: rows across it, each of them straight or turned, exact
 *       among such rows;
 *   <li>other parts in a box: up to four blocks of rows, turned against each other, exact among
 *       such blocks.
 * </ul>
 *
 * <p>Beside the arrangement found it tells how many no arrangement can exceed: for round parts by
 * Oler's inequality and the packings proven, for others by area. Where both agree it is proven.
 * Counting stops at about a thousand parts to a layer and at a thousand layers.
 *
 * <p>Example: discs of 30 mm, 10 mm high, in a crucible of 160 mm inside and 100 mm high with 10 mm
 * of packing everywhere: q = (80 - 10 + 5) / 20 = 3.75. Nine circles want 3.613 and ten want 3.813,
 * so nine go into a layer. (100 - 10 - 10 + 10) / (10 + 10) gives 4 layers, and 36 parts.
 */
public final class PatternArranger {
  private static final int MOST = 1000;
  private static final PatternArranger STANDARD = new PatternArranger();

  private PatternArranger() {}

  /** {@return the arranger} */
  public static PatternArranger standard() {
    return STANDARD;
  }

  /**
   * The most parts found.
   *
   * @param cavity the crucible's inside
   * @param part the part
   * @param spacing the packing to keep around it
   * @return the arrangement, with whichever side down holds most, as printed where others hold no
   *     more; empty where not even one part fits
   */
  public Optional<Arrangement> most(Cavity cavity, ChargePart part, Spacing spacing) {
    Optional<Arrangement> best = Optional.empty();
    int atMost = 0;
    for (PrintAxis up : List.of(PrintAxis.Z, PrintAxis.X, PrintAxis.Y)) {
      if (part.upright().contains(up)) {
        Optional<Arrangement> found = upright(cavity, part, spacing, up);
        atMost = Math.max(atMost, found.map(Arrangement::atMost).orElse(0));
        if (found.map(Arrangement::capacity).orElse(0)
            > best.map(Arrangement::capacity).orElse(0)) {
          best = found;
        }
      }
    }
    int bound = atMost;
    return best.map(
        arrangement ->
            Arrangement.builder()
                .from(arrangement)
                .atMost(bound)
                .optimality(
                    arrangement.capacity() == bound
                        ? Arrangement.Optimality.PROVEN
                        : arrangement.optimality())
                .build());
  }

  private static Optional<Arrangement> upright(
      Cavity cavity, ChargePart part, Spacing spacing, PrintAxis up) {
    Envelope standing = part.standing(up);
    double height =
        cavity.height().si()
            - spacing.floor().si()
            - spacing.cover().si()
            - spacing.headroom().si();
    double step = standing.z().si() + spacing.betweenLayers().si();
    int layers =
        Fit.fits(standing.z().si(), height)
            ? Math.min(MOST, Fit.times(height + spacing.betweenLayers().si(), step))
            : 0;
    boolean round = part.outline() == Outline.ROUND && up == PrintAxis.Z;
    Layer layer = layer(cavity, standing, round, spacing);
    if (layers == 0 || layer.spots().isEmpty()) {
      return Optional.empty();
    }
    int found = layer.spots().size();
    return Optional.of(
        Arrangement.builder()
            .cavity(cavity)
            .part(part)
            .spacing(spacing)
            .up(up)
            .addAllPlaces(
                layer.spots().stream()
                    .sorted(Comparator.comparingLong(PatternArranger::nanometresFromMiddle))
                    .map(PatternArranger::place)
                    .toList())
            .layersAtMost(layers)
            .parts(layers * found)
            .atMost((int) Math.min(Integer.MAX_VALUE, (long) layers * layer.atMost()))
            .optimality(
                layer.bestKnown()
                    ? Arrangement.Optimality.BEST_KNOWN
                    : Arrangement.Optimality.LOWER_BOUND)
            .basis(
                layer.bestKnown()
                    ? Source.published("best known packings of equal circles in a circle")
                    : Source.recomputed(layer.pattern()))
            .build());
  }

  /** Whole ones, so that rounding does not decide between places at one distance. */
  private static long nanometresFromMiddle(Spot spot) {
    return Math.round(1e9 * spot.fromMiddle());
  }

  private static Place place(Spot spot) {
    return Place.of(
        Amounts.metres(spot.x()).to(TradeUnits.MILLIMETRE),
        Amounts.metres(spot.y()).to(TradeUnits.MILLIMETRE),
        spot.turned());
  }

  private static Layer layer(Cavity cavity, Envelope part, boolean round, Spacing spacing) {
    double wall = spacing.wall().si();
    double gap = spacing.betweenParts().si();
    double x = part.x().si();
    double y = part.y().si();
    double diameter = Math.max(x, y);
    double each = (round ? diameter : x) + gap;
    double area = each * ((round ? diameter : y) + gap);
    if (cavity instanceof RoundCavity crucible) {
      double all = crucible.diameter().si() / 2 - wall;
      double radius = Math.min(all, Math.sqrt(MOST * area / Math.PI));
      return wholeFloor(
          round
              ? CirclesInCircle.most(radius - diameter / 2, diameter + gap)
              : RectanglesInCircle.most(radius, x, y, gap),
          radius < all);
    }
    BoxCavity box = (BoxCavity) cavity;
    double length = box.length().si() - 2 * wall;
    double width = box.width().si() - 2 * wall;
    double share = Math.min(1, Math.sqrt(MOST * area / Math.abs(length * width)));
    return wholeFloor(
        round
            ? CirclesInBox.most(share * length - diameter, share * width - diameter, diameter + gap)
            : RectanglesInBox.most(share * length, share * width, x, y, gap),
        share < 1);
  }

  /** Where only the middle of the floor was searched nothing is known of the whole. */
  private static Layer wholeFloor(Layer layer, boolean middleOnly) {
    return middleOnly ? new Layer(layer.spots(), Integer.MAX_VALUE, false, layer.pattern()) : layer;
  }
}
