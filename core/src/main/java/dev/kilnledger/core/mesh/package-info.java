/**
 * Meshes from files: {@link dev.kilnledger.core.mesh.StlFile} and {@link
 * dev.kilnledger.core.mesh.ThreeMfFile} give their facets one by one, {@link
 * dev.kilnledger.core.mesh.MeshMeasure} makes volume, area, extent and the thickest section of
 * them, and {@link dev.kilnledger.core.mesh.StlScaling} writes a copy scaled for printing.
 */
@NullMarked
package dev.kilnledger.core.mesh;

import org.jspecify.annotations.NullMarked;
