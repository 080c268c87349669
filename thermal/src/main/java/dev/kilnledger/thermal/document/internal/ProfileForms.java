package dev.kilnledger.thermal.document.internal;

import static dev.kilnledger.core.document.internal.Forms.TEXT;
import static dev.kilnledger.core.document.internal.Forms.amount;

import dev.kilnledger.core.document.internal.Field;
import dev.kilnledger.core.document.internal.FieldValues;
import dev.kilnledger.core.document.internal.Form;
import dev.kilnledger.core.document.internal.Forms;
import dev.kilnledger.core.document.internal.MaterialForms;
import dev.kilnledger.core.document.internal.ObjectForm;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.thermal.profile.GetterFill;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.thermal.profile.ProfileBuilder;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Kind;
import dev.kilnledger.units.quantity.HeatingRate;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;

/** The forms of profiles, stages and routes. */
public final class ProfileForms {
  /** A profile. */
  public static final ObjectForm<Profile> PROFILE = profileForm();

  private final ObjectForm<FiringRoute> route;

  /**
   * The forms.
   *
   * @param materials the forms of packing powders and getters
   */
  public ProfileForms(MaterialForms materials) {
    route = routeForm(stageForm(materials));
  }

  /** {@return the form of a route} */
  public ObjectForm<FiringRoute> route() {
    return route;
  }

  /** A segment as it is told: where it leads, and how long it takes or how fast it is. */
  private record Told(
      Amount<Temperature> to,
      Optional<Amount<Time>> duration,
      Optional<Amount<HeatingRate>> rate) {}

  /**
   * A segment starts where the one before it ended, so that it tells its end only. Its time is
   * written, of which the rate follows; by a rate it may be read.
   */
  private static ObjectForm<Profile> profileForm() {
    ObjectForm<Told> segment =
        ObjectForm.<Told>named(
                "segment",
                "A ramp to a temperature, or a hold at the one before, over a time; a ramp may be"
                    + " told by its rate instead.")
            .onOneLine();
    var to = segment.required("to", amount(Kind.TEMPERATURE), Told::to);
    var duration = segment.optional("duration", amount(Kind.TIME), Told::duration);
    var rate = segment.optional("rate", amount(Kind.HEATING_RATE), Told::rate);
    segment.read(values -> told(values, to, duration, rate));
    ObjectForm<Profile> form =
        ObjectForm.named("profile", "The programme of a kiln: ramps and holds without gaps.");
    var start = form.required("start", amount(Kind.TEMPERATURE), Profile::start);
    var segments = form.required("segments", Forms.list(segment), ProfileForms::told);
    return form.read(values -> profile(values.get(start), values.get(segments)));
  }

  private static Told told(
      FieldValues values,
      Field<Amount<Temperature>> to,
      Field<Optional<Amount<Time>>> duration,
      Field<Optional<Amount<HeatingRate>>> rate) {
    if (values.get(duration).isPresent() == values.get(rate).isPresent()) {
      throw new IllegalArgumentException(
          (values.get(rate).isPresent() ? "duration and rate are" : "neither duration nor rate is")
              + " stated; accepted is one of the two");
    }
    return new Told(values.get(to), values.get(duration), values.get(rate));
  }

  private static List<Told> told(Profile profile) {
    return profile.segments().stream()
        .map(segment -> new Told(segment.end(), Optional.of(segment.duration()), Optional.empty()))
        .toList();
  }

  private static Profile profile(Amount<Temperature> start, List<Told> segments) {
    ProfileBuilder profile = Profile.from(start);
    Amount<Temperature> from = start;
    for (Told segment : segments) {
      if (segment.rate().isPresent()) {
        profile.rampTo(segment.to(), segment.rate().get());
      } else if (segment.to().equals(from)) {
        profile.hold(segment.duration().orElseThrow());
      } else {
        profile.rampOver(segment.to(), segment.duration().orElseThrow());
      }
      from = segment.to();
    }
    return profile.build();
  }

  private static ObjectForm<FiringStage> stageForm(MaterialForms materials) {
    ObjectForm<GetterFill> fill = ObjectForm.nameless();
    var getter = fill.required("getter", materials.getter(), GetterFill::getter);
    var mass = fill.required("mass", amount(Kind.MASS), GetterFill::mass);
    fill.read(values -> GetterFill.of(values.get(getter), values.get(mass)));
    ObjectForm<FiringStage> form =
        ObjectForm.named("stage", "One firing of a route: its profile, and what it is packed in.");
    var purpose =
        form.required("purpose", Forms.choice(FiringStage.Purpose.class), FiringStage::purpose);
    var name = form.defaulted("name", TEXT, FiringStage::name);
    var profile = form.required("profile", PROFILE, FiringStage::profile);
    var packing = form.required("packing", materials.packingPowder(), FiringStage::packing);
    var packingMass = form.required("packingMass", amount(Kind.MASS), FiringStage::packingMass);
    var fills = form.optional("getter", fill, FiringStage::getter);
    return form.read(
        values -> {
          FiringStage.Builder stage =
              values.get(purpose) == FiringStage.Purpose.DEBINDING
                  ? FiringStage.debinding()
                  : FiringStage.sintering();
          values.get(name).ifPresent(stage::name);
          return stage
              .profile(values.get(profile))
              .packing(values.get(packing))
              .packingMass(values.get(packingMass))
              .getter(values.get(fills))
              .build();
        });
  }

  private static ObjectForm<FiringRoute> routeForm(Form<FiringStage> stage) {
    ObjectForm<FiringRoute> form =
        ObjectForm.named("route", "The firings a charge goes through, debinding first.");
    var stages = form.required("stages", Forms.list(stage), FiringRoute::stages);
    return form.read(values -> FiringRoute.of(values.get(stages)));
  }
}
