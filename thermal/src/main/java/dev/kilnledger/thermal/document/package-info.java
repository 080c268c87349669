/**
 * Profiles, routes and firings as JSON documents, and what a user measures once and uses again: the
 * kinetics of a binder and the sintering curve of a powder.
 */
@NullMarked
package dev.kilnledger.thermal.document;

import org.jspecify.annotations.NullMarked;
