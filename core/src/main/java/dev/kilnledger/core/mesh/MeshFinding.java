package dev.kilnledger.core.mesh;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.FindingCode;

/** What the measuring of a mesh finds. */
public enum MeshFinding implements FindingCode {
  /** Whether the mesh is closed, so that it has an inside. */
  MESH_CLOSED("mesh-closed"),
  /** Whether the facets look outwards. */
  MESH_OUTWARDS("mesh-outwards"),
  /** Whether there are facets without area. */
  FACETS_WITH_AREA("facets-with-area"),
  /** How well the thickest section is known. */
  THICKEST_SECTION("thickest-section");

  private final String code;

  MeshFinding(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }

  /** Starts a finding with this code. */
  Finding.Builder about(String subject) {
    return Finding.builder().code(this).subject(subject);
  }
}
