package dev.kilnledger.thermal.design;

import dev.kilnledger.thermal.check.FiringReport;
import dev.kilnledger.thermal.profile.FiringRoute;
import java.util.List;

/**
 * Programmes that were held against the check, one for each stage, what it answered, and how long
 * they take: until the kiln may be opened, where that is known.
 */
record Candidate(
    List<Programme> programmes, FiringRoute route, FiringReport report, double minutes) {}
