/**
 * Whether a firing can come out: {@link dev.kilnledger.thermal.check.FiringCheck#standard()} holds
 * a setup against its rules and answers with a {@link dev.kilnledger.thermal.check.FiringReport},
 * every rule with at least one finding, but for some that ask about carbon where there is none. A
 * rule of your own implements {@link dev.kilnledger.thermal.check.FiringRule}. What each code means
 * stands at {@link dev.kilnledger.thermal.check.FiringFinding}.
 */
@NullMarked
package dev.kilnledger.thermal.check;

import org.jspecify.annotations.NullMarked;
