package dev.kilnledger.thermal.document;

import dev.kilnledger.core.document.Document;
import dev.kilnledger.core.document.internal.DocumentForm;
import dev.kilnledger.core.document.internal.MaterialForms;
import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.thermal.burnout.BinderKinetics;
import dev.kilnledger.thermal.densification.FittedSinteringCurve;
import dev.kilnledger.thermal.document.internal.FiringForms;
import dev.kilnledger.thermal.document.internal.KineticsForms;
import dev.kilnledger.thermal.document.internal.ProfileForms;
import dev.kilnledger.thermal.document.internal.SinteringForms;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.thermal.profile.Profile;

/**
 * The documents of profiles, routes, firings, and of what is fitted to one's own measurements.
 *
 * <p>A segment of a profile is written with its time; a ramp may be read with its rate instead:
 *
 * <pre>
 * {"document": "profile", "schemaVersion": 1,
 *  "start": {"value": 20, "unit": "Cel"},
 *  "segments": [
 *    {"to": {"value": 820, "unit": "Cel"}, "rate": {"value": 100, "unit": "K/h"}},
 *    {"to": {"value": 820, "unit": "Cel"}, "duration": {"value": 3, "unit": "h"}}]}
 * </pre>
 */
public final class ThermalDocuments {
  private ThermalDocuments() {}

  /** {@return a profile, kind {@code "profile"}} */
  public static Document<Profile> profile() {
    return new DocumentForm<>("profile", 1, ProfileForms.PROFILE);
  }

  /**
   * A route, kind {@code "route"}.
   *
   * @param known the materials that may stand by their name
   * @return the document
   */
  public static Document<FiringRoute> route(MaterialLibrary known) {
    return new DocumentForm<>("route", 1, new ProfileForms(new MaterialForms(known)).route());
  }

  /**
   * All that decides whether a firing can come out, kind {@code "firing"}.
   *
   * @param known the materials that may stand by their name
   * @return the document
   */
  public static Document<FiringSetup> firing(MaterialLibrary known) {
    return new DocumentForm<>("firing", 1, FiringForms.setup(new MaterialForms(known)));
  }

  /** {@return how a binder decomposes, kind {@code "kinetics"}} */
  public static Document<BinderKinetics> kinetics() {
    return new DocumentForm<>("kinetics", 1, KineticsForms.KINETICS);
  }

  /** {@return a sintering curve with what its fit tells, kind {@code "sintering-curve"}} */
  public static Document<FittedSinteringCurve> sinteringCurve() {
    return new DocumentForm<>("sintering-curve", 1, SinteringForms.FITTED);
  }
}
