package dev.kilnledger.core.material;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.immutables.value.Value;

/**
 * Materials by name: the standard ones, the user's own, or both. Every name stands once in its
 * family, and the lists keep the order in which the materials were added.
 *
 * <p>A figure of the standard library that joins figures of different standing has the weakest of
 * them, and its condition or source says which part was read.
 */
@Value.Immutable
@ValueStyle
public interface MaterialLibrary extends Serializable {
  /** {@return the alloys, in the order added} */
  List<Alloy> alloys();

  /** {@return the binders, in the order added} */
  List<Binder> binders();

  /** {@return the feedstocks, in the order added} */
  List<Feedstock> feedstocks();

  /** {@return the packing powders, in the order added} */
  List<PackingPowder> packingPowders();

  /** {@return the getters, in the order added} */
  List<Getter> getters();

  /** {@return the crucible materials, in the order added} */
  List<CrucibleMaterial> crucibleMaterials();

  /** {@return the nozzle materials, in the order added} */
  List<NozzleMaterial> nozzleMaterials();

  /** {@return the library that comes with this software; its feedstocks are all generic} */
  static MaterialLibrary standard() {
    return StandardLibrary.MATERIALS;
  }

  /** {@return a library without materials} */
  static MaterialLibrary empty() {
    return builder().build();
  }

  /**
   * The materials of this library and then those of another.
   *
   * @param other the other library; what is identical in both stands once
   * @return a library with both
   * @throws IllegalArgumentException if a name means different things in the two, with all such
   *     names and both meanings
   */
  default MaterialLibrary combinedWith(MaterialLibrary other) {
    Problems problems = new Problems("combined material library");
    MaterialLibrary combined =
        builder()
            .alloys(merged("alloy", alloys(), other.alloys(), Alloy::name, problems))
            .binders(merged("binder", binders(), other.binders(), Binder::name, problems))
            .feedstocks(
                merged("feedstock", feedstocks(), other.feedstocks(), Feedstock::name, problems))
            .packingPowders(
                merged(
                    "packing powder",
                    packingPowders(),
                    other.packingPowders(),
                    PackingPowder::name,
                    problems))
            .getters(merged("getter", getters(), other.getters(), Getter::name, problems))
            .crucibleMaterials(
                merged(
                    "crucible material",
                    crucibleMaterials(),
                    other.crucibleMaterials(),
                    CrucibleMaterial::name,
                    problems))
            .nozzleMaterials(
                merged(
                    "nozzle material",
                    nozzleMaterials(),
                    other.nozzleMaterials(),
                    NozzleMaterial::name,
                    problems))
            .build();
    problems.refuseIfAny();
    return combined;
  }

  /**
   * The alloy of a name.
   *
   * @param name the exact name, such as {@code "tin bronze 90/10"}
   * @return the alloy
   * @throws IllegalArgumentException if there is none, with all accepted names
   */
  default Alloy alloy(String name) {
    return find("alloy", alloys(), Alloy::name, name);
  }

  /**
   * The binder of a name.
   *
   * @param name the exact name, such as {@code "polylactide"}
   * @return the binder
   * @throws IllegalArgumentException if there is none, with all accepted names
   */
  default Binder binder(String name) {
    return find("binder", binders(), Binder::name, name);
  }

  /**
   * The feedstock of a name.
   *
   * @param name the exact name, such as {@code "copper in polylactide, generic"}
   * @return the feedstock
   * @throws IllegalArgumentException if there is none, with all accepted names
   */
  default Feedstock feedstock(String name) {
    return find("feedstock", feedstocks(), Feedstock::name, name);
  }

  /**
   * The packing powder of a name.
   *
   * @param name the exact name, such as {@code "alumina"}
   * @return the packing powder
   * @throws IllegalArgumentException if there is none, with all accepted names
   */
  default PackingPowder packingPowder(String name) {
    return find("packing powder", packingPowders(), PackingPowder::name, name);
  }

  /**
   * The getter of a name.
   *
   * @param name the exact name, such as {@code "granular activated carbon"}
   * @return the getter
   * @throws IllegalArgumentException if there is none, with all accepted names
   */
  default Getter getter(String name) {
    return find("getter", getters(), Getter::name, name);
  }

  /**
   * The crucible material of a name.
   *
   * @param name the exact name, such as {@code "stainless steel 310S"}
   * @return the crucible material
   * @throws IllegalArgumentException if there is none, with all accepted names
   */
  default CrucibleMaterial crucibleMaterial(String name) {
    return find("crucible material", crucibleMaterials(), CrucibleMaterial::name, name);
  }

  /**
   * The nozzle material of a name.
   *
   * @param name the exact name, such as {@code "hardened tool steel"}
   * @return the nozzle material
   * @throws IllegalArgumentException if there is none, with all accepted names
   */
  default NozzleMaterial nozzleMaterial(String name) {
    return find("nozzle material", nozzleMaterials(), NozzleMaterial::name, name);
  }

  /**
   * Starts a library of one's own.
   *
   * @return an empty builder
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link MaterialLibrary} values. */
  final class Builder extends ImmutableMaterialLibrary.Builder {
    Builder() {}
  }

  /**
   * Refuses a name that stands twice in a family.
   *
   * @throws IllegalArgumentException with all such names
   */
  @Value.Check
  default void check() {
    Problems problems = new Problems("material library");
    requireDistinct("alloy", alloys(), Alloy::name, problems);
    requireDistinct("binder", binders(), Binder::name, problems);
    requireDistinct("feedstock", feedstocks(), Feedstock::name, problems);
    requireDistinct("packing powder", packingPowders(), PackingPowder::name, problems);
    requireDistinct("getter", getters(), Getter::name, problems);
    requireDistinct("crucible material", crucibleMaterials(), CrucibleMaterial::name, problems);
    requireDistinct("nozzle material", nozzleMaterials(), NozzleMaterial::name, problems);
    problems.refuseIfAny();
  }

  private static <T> T find(String family, List<T> all, Function<T, String> name, String asked) {
    return all.stream()
        .filter(each -> name.apply(each).equals(asked))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "no "
                        + family
                        + " is named \""
                        + asked
                        + "\"; accepted "
                        + (all.isEmpty()
                            ? "is none, as this library holds no " + family
                            : all.stream()
                                .map(each -> "\"" + name.apply(each) + "\"")
                                .collect(Collectors.joining(", ", "are ", "")))));
  }

  private static <T> Iterable<T> merged(
      String family, List<T> ours, List<T> theirs, Function<T, String> name, Problems problems) {
    Map<String, T> byName = new LinkedHashMap<>();
    ours.forEach(each -> byName.put(name.apply(each), each));
    for (T their : theirs) {
      T our = byName.putIfAbsent(name.apply(their), their);
      if (our != null && !our.equals(their)) {
        problems.require(
            false,
            family
                + " \""
                + name.apply(their)
                + "\" is "
                + our
                + " in one library and "
                + their
                + " in the other; accepted is one meaning, or another name");
      }
    }
    return byName.values();
  }

  private static <T> void requireDistinct(
      String family, List<T> all, Function<T, String> name, Problems problems) {
    Map<String, Long> counts =
        all.stream()
            .collect(Collectors.groupingBy(name, LinkedHashMap::new, Collectors.counting()));
    counts.forEach(
        (each, count) ->
            problems.require(
                count == 1,
                family
                    + " \""
                    + each
                    + "\" stands "
                    + count
                    + " times; accepted is once, or another name"));
  }
}
