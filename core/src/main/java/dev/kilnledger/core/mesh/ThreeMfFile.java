package dev.kilnledger.core.mesh;

import dev.kilnledger.core.progress.Progress;
import dev.kilnledger.core.reading.ByteSource;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.io.IOException;
import java.util.Map;
import javax.measure.quantity.Length;

/**
 * The meshes that a 3MF file builds (3MF Core Specification): its unit, its build items, and the
 * components of its objects, each placed by its transform. What no item builds is left out.
 * Extensions are passed over unless the file requires them, and then it is refused.
 *
 * <p>The file is gone through twice, first for its structure, then for the meshes; in memory are
 * the corners of one object at a time. No document type or external entity is read.
 */
public final class ThreeMfFile implements Facets {
  private static final Map<String, Amount<Length>> UNITS =
      Map.of(
          "micron", Amounts.micrometres(1),
          "millimeter", Amounts.millimetres(1),
          "centimeter", Amounts.centimetres(1),
          "inch", Amounts.inches(1),
          "foot", Amounts.inches(12),
          "meter", Amounts.metres(1));

  private final ThreeMfPackage file;
  private final ThreeMfLimits limits;

  private ThreeMfFile(ThreeMfPackage file, ThreeMfLimits limits) {
    this.file = file;
    this.limits = limits;
  }

  /**
   * A 3MF file within the standard limits.
   *
   * @param source its bytes
   * @return the mesh; nothing is read yet
   */
  public static ThreeMfFile of(ByteSource source) {
    return of(source, ThreeMfLimits.standard());
  }

  /**
   * A 3MF file.
   *
   * @param source its bytes
   * @param limits how much it may hold
   * @return the mesh; nothing is read yet
   */
  public static ThreeMfFile of(ByteSource source, ThreeMfLimits limits) {
    return new ThreeMfFile(new ThreeMfPackage(source, limits), limits);
  }

  @Override
  public Amount<Length> unit() throws IOException {
    return unit(structure(Progress.unheard()));
  }

  private static Amount<Length> unit(ThreeMfModel model) throws IOException {
    Amount<Length> unit = UNITS.get(model.unit());
    if (unit == null) {
      throw ThreeMfPackage.problem(
          "model",
          "its unit is '" + model.unit() + "'",
          "micron, millimeter, centimeter, inch, foot or meter");
    }
    return unit;
  }

  @Override
  public void forEach(FacetConsumer consumer, Progress progress) throws IOException {
    ThreeMfModel model = structure(progress.between(0, 0.5));
    unit(model);
    file.readModel(new ThreeMfMeshes(model, limits, consumer), progress.between(0.5, 1));
  }

  private ThreeMfModel structure(Progress progress) throws IOException {
    ThreeMfModel model = new ThreeMfModel(limits);
    file.readModel(model, progress);
    model.resolve();
    return model;
  }
}
