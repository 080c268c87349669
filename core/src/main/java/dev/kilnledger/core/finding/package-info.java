/**
 * What checks answer with. A {@link dev.kilnledger.core.finding.Finding} has a stable {@link
 * dev.kilnledger.core.finding.FindingCode} for programs, a {@link
 * dev.kilnledger.core.finding.Severity} from passed to stop, a message for people, what was
 * measured, the limit, and the source the limit stands on. Where an input is missing it is
 * undetermined, never passed. A {@link dev.kilnledger.core.finding.Caution} goes with whatever can
 * hurt someone.
 */
@NullMarked
package dev.kilnledger.core.finding;

import org.jspecify.annotations.NullMarked;
