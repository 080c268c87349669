package dev.kilnledger.core.mesh;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.part.Extent;
import dev.kilnledger.core.part.Part;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.immutables.value.Value;

/** How large the body within a mesh is. */
@Value.Immutable
@ValueStyle
public interface MeshSize extends Serializable {
  /** {@return the number of facets, 1 or more} */
  long facets();

  /** {@return how many of them have no area} */
  long facetsWithoutArea();

  /**
   * {@return whether every edge is shared by facets that go along it in opposite directions, so
   * that the mesh is watertight and has an inside}
   */
  boolean closed();

  /** {@return the volume inside; empty where the mesh is not closed} */
  Optional<Amount<Volume>> volume();

  /** {@return the area of all facets} */
  Amount<Area> area();

  /** {@return the smallest box around it} */
  Extent extent();

  /**
   * {@return the thickest section, the diameter of the largest ball inside, with its span; empty
   * where the mesh is not closed, or was measured without it}
   */
  Optional<Estimate<Length>> thickestSection();

  /** {@return what was found, passed ones too} */
  List<Finding> findings();

  /**
   * The finished part of this mesh, with the expected thickest section.
   *
   * @param name the name of the part
   * @return the part
   * @throws IllegalArgumentException if the mesh is not closed or is flat, or was measured without
   *     its thickest section
   */
  default Part toPart(String name) {
    new Problems("mesh of " + name)
        .require(
            volume().isPresent(),
            "the mesh is not closed and has no volume; accepted is a watertight mesh, or a part"
                + " whose volume is stated")
        .require(
            volume().isEmpty() || thickestSection().isPresent(),
            "the mesh was measured without its thickest section; accepted is the standard measure,"
                + " or a part whose section is stated")
        .refuseIfAny();
    return Part.builder()
        .name(name)
        .finishedVolume(volume().orElseThrow())
        .envelope(extent().envelope())
        .thickestSection(thickestSection().orElseThrow().expected())
        .build();
  }

  /**
   * Starts one.
   *
   * @return an empty builder
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link MeshSize} values. */
  final class Builder extends ImmutableMeshSize.Builder {
    Builder() {}
  }
}
