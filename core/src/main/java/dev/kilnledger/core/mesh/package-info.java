/** Meshes. */
@NullMarked
package dev.kilnledger.core.mesh;

import org.jspecify.annotations.NullMarked;
