package dev.kilnledger.thermal.design;

import dev.kilnledger.core.progress.Progress;
import dev.kilnledger.thermal.check.FiringCheck;
import dev.kilnledger.thermal.profile.FiringRoute;

/**
 * Designs the fastest programmes that pass a check.
 *
 * <p>The check is the only judge: a route passes where no finding is worse than the task accepts.
 * The search goes over programmes that the controller takes, in its whole degrees and minutes, so
 * that nothing is rounded after it was checked; what is returned was held against the check as it
 * is. What varies are corners, rates, holds and peak; cooling goes as fast as the kiln cools.
 *
 * <p>It takes a few hundred evaluations of the check. What is found is the best within the steps of
 * the search, not proven the best of all; {@link ProfileDesign#stages()} tell for each segment what
 * forbids one step more. Findings that no profile mends, such as those for an input that is
 * missing, are told and otherwise left out of the search. What no rule asks for is not kept either:
 * the design is as sound as the check, and a first firing of test pieces decides.
 *
 * <p>Example: a workshop's own rules ask for no more than 40 K/h from 250 to 400 °C, for 400 °C to
 * be reached, and for 90 min at 950 °C or above. A kiln that heats by 300 K/h then takes 46 min to
 * 250 °C and 225 min to 400; and 186 min to 950 °C, where it stays 90.
 *
 * <pre>{@code
 * FiringCheck rules = new FiringCheck(List.of(slowThroughBinder, hotForLong));
 * ProfileDesign design = new ProfileDesigner(rules).design(DesignTask.of(setup));
 * design.passes();                                       // true
 * design.duration().in(MINUTE);                          // 547
 * StageDesign debinding = design.stages().get(0);
 * debinding.segments().get(1).forbids();                 // 40.2 K/h where 40 are allowed
 * debinding.stage().profile().tableInBothScales();       // to be typed in
 * }</pre>
 */
public final class ProfileDesigner {
  private final FiringCheck check;

  /**
   * A designer.
   *
   * @param check what every route is held against
   */
  public ProfileDesigner(FiringCheck check) {
    this.check = check;
  }

  /** {@return the designer on {@link FiringCheck#standard()}} */
  public static ProfileDesigner standard() {
    return new ProfileDesigner(FiringCheck.standard());
  }

  /**
   * The fastest route found.
   *
   * @param task what it is for
   * @return the design; the best so far where the thread is interrupted, which is noticed between
   *     two evaluations, the thread staying interrupted
   */
  public ProfileDesign design(DesignTask task) {
    return design(task, Progress.unheard());
  }

  /**
   * The fastest route found, with somebody told how far it has got.
   *
   * @param task what it is for
   * @param progress hears after each evaluation how far it has come; what it throws ends the search
   *     and is passed on
   * @return as {@link #design(DesignTask)}
   */
  public ProfileDesign design(DesignTask task, Progress progress) {
    return new Design(task, check, progress).run();
  }

  /**
   * A design beside a route that the user has, both held against the same check.
   *
   * @param design the design
   * @param route the other route, of as many stages for the same purposes
   * @return what differs
   * @throws IllegalArgumentException if the stages do not match
   */
  public ProfileComparison compare(ProfileDesign design, FiringRoute route) {
    return new Comparer(design, check).with(route);
  }
}
