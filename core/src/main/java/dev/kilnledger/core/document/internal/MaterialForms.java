package dev.kilnledger.core.document.internal;

import static dev.kilnledger.core.document.internal.Forms.SOURCE;
import static dev.kilnledger.core.document.internal.Forms.TEXT;
import static dev.kilnledger.core.document.internal.Forms.amount;
import static dev.kilnledger.core.document.internal.Forms.estimate;
import static dev.kilnledger.core.document.internal.Forms.sourced;
import static dev.kilnledger.core.document.internal.Forms.span;

import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.core.material.Binder;
import dev.kilnledger.core.material.CarbonProtection;
import dev.kilnledger.core.material.Composition;
import dev.kilnledger.core.material.CrucibleMaterial;
import dev.kilnledger.core.material.Element;
import dev.kilnledger.core.material.Feedstock;
import dev.kilnledger.core.material.Getter;
import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.core.material.NozzleMaterial;
import dev.kilnledger.core.material.PackingPowder;
import dev.kilnledger.units.Kind;
import java.util.LinkedHashMap;
import java.util.Map;

/** The forms of materials; one that a library knows may stand by its name. */
public final class MaterialForms {
  private static final Form<Element> ELEMENT = element();

  private final Form<Alloy> alloy;
  private final Form<Binder> binder;
  private final Form<Feedstock> feedstock;
  private final Form<PackingPowder> packingPowder;
  private final Form<Getter> getter;
  private final Form<CrucibleMaterial> crucibleMaterial;
  private final Form<NozzleMaterial> nozzleMaterial;
  private final ObjectForm<MaterialLibrary> library;

  /**
   * The forms.
   *
   * @param known the materials that may stand by their name
   */
  public MaterialForms(MaterialLibrary known) {
    alloy = Forms.known(known.alloys(), Alloy::name, alloyForm());
    binder = Forms.known(known.binders(), Binder::name, binderForm());
    feedstock = Forms.known(known.feedstocks(), Feedstock::name, feedstockForm());
    packingPowder = Forms.known(known.packingPowders(), PackingPowder::name, packingForm());
    getter = Forms.known(known.getters(), Getter::name, getterForm());
    crucibleMaterial =
        Forms.known(known.crucibleMaterials(), CrucibleMaterial::name, crucibleForm());
    nozzleMaterial = Forms.known(known.nozzleMaterials(), NozzleMaterial::name, nozzleForm());
    library = libraryForm();
  }

  /** {@return the form of a metal} */
  public Form<Alloy> alloy() {
    return alloy;
  }

  /** {@return the form of a binder} */
  public Form<Binder> binder() {
    return binder;
  }

  /** {@return the form of a feedstock} */
  public Form<Feedstock> feedstock() {
    return feedstock;
  }

  /** {@return the form of a packing powder} */
  public Form<PackingPowder> packingPowder() {
    return packingPowder;
  }

  /** {@return the form of a getter} */
  public Form<Getter> getter() {
    return getter;
  }

  /** {@return the form of what crucibles are made of} */
  public Form<CrucibleMaterial> crucibleMaterial() {
    return crucibleMaterial;
  }

  /** {@return the form of what nozzles are made of} */
  public Form<NozzleMaterial> nozzleMaterial() {
    return nozzleMaterial;
  }

  /** {@return the form of a library} */
  public ObjectForm<MaterialLibrary> library() {
    return library;
  }

  private static Form<Element> element() {
    Map<String, Element> symbols = new LinkedHashMap<>();
    for (Element element : Element.values()) {
      symbols.put(element.symbol(), element);
    }
    return Forms.choice(symbols);
  }

  private static <V> Form<Map<Element, V>> byElement(Form<V> value) {
    return Forms.map(
        symbol -> {
          for (Element element : Element.values()) {
            if (element.symbol().equals(symbol)) {
              return element;
            }
          }
          throw new IllegalArgumentException(
              "\"" + symbol + "\" is no element known here; accepted is a symbol such as Cu");
        },
        Element::symbol,
        value);
  }

  private static ObjectForm<Composition> compositionForm() {
    ObjectForm<Composition> form =
        ObjectForm.named("composition", "What a metal is made of, by a standard.");
    var designation = form.required("designation", TEXT, Composition::designation);
    var balance = form.required("balance", ELEMENT, Composition::balance);
    var ranges =
        form.withDefault(
            "ranges", byElement(span(Kind.MASS_FRACTION)), Map.of(), Composition::ranges);
    var nominal =
        form.required("nominal", byElement(amount(Kind.MASS_FRACTION)), Composition::nominal);
    var otherLimits = form.withDefault("otherLimits", TEXT, "", Composition::otherLimits);
    var source = form.required("source", SOURCE, Composition::source);
    return form.read(
        values ->
            Composition.builder()
                .designation(values.get(designation))
                .balance(values.get(balance))
                .ranges(values.get(ranges))
                .nominal(values.get(nominal))
                .otherLimits(values.get(otherLimits))
                .source(values.get(source))
                .build());
  }

  private static ObjectForm<CarbonProtection> carbonForm() {
    ObjectForm<CarbonProtection> form =
        ObjectForm.named("carbonProtection", "What carbon as getter does for a metal.");
    var suitability =
        form.required(
            "suitability",
            Forms.choice(CarbonProtection.Suitability.class),
            CarbonProtection::suitability);
    var element = form.required("decidingElement", ELEMENT, CarbonProtection::decidingElement);
    var reducesAbove =
        form.optional(
            "reducesAbove", sourced(amount(Kind.TEMPERATURE)), CarbonProtection::reducesAbove);
    var remark = form.required("remark", TEXT, CarbonProtection::remark);
    var source = form.required("source", SOURCE, CarbonProtection::source);
    return form.read(
        values ->
            CarbonProtection.builder()
                .suitability(values.get(suitability))
                .decidingElement(values.get(element))
                .reducesAbove(values.get(reducesAbove))
                .remark(values.get(remark))
                .source(values.get(source))
                .build());
  }

  private static ObjectForm<Alloy> alloyForm() {
    ObjectForm<Alloy> form = ObjectForm.named("alloy", "A metal or alloy.");
    var name = form.required("name", TEXT, Alloy::name);
    var composition = form.required("composition", compositionForm(), Alloy::composition);
    var fullDensity =
        form.required("fullDensity", sourced(amount(Kind.DENSITY)), Alloy::fullDensity);
    var solidus = form.required("solidus", sourced(amount(Kind.TEMPERATURE)), Alloy::solidus);
    var liquidus = form.required("liquidus", sourced(amount(Kind.TEMPERATURE)), Alloy::liquidus);
    var window =
        form.required("sinteringWindow", sourced(span(Kind.TEMPERATURE)), Alloy::sinteringWindow);
    var usualPeak = form.optional("usualPeak", sourced(amount(Kind.TEMPERATURE)), Alloy::usualPeak);
    var hold = form.required("sinteringHold", sourced(span(Kind.TIME)), Alloy::sinteringHold);
    var density =
        form.required(
            "expectedRelativeDensity",
            sourced(estimate(Kind.VOLUME_FRACTION)),
            Alloy::expectedRelativeDensity);
    var expansion =
        form.required(
            "linearExpansion", sourced(amount(Kind.LINEAR_EXPANSION)), Alloy::linearExpansion);
    var heat =
        form.required(
            "heatCapacity", sourced(amount(Kind.SPECIFIC_HEAT_CAPACITY)), Alloy::heatCapacity);
    var hotHeat =
        form.required(
            "hotHeatCapacity",
            sourced(amount(Kind.SPECIFIC_HEAT_CAPACITY)),
            Alloy::hotHeatCapacity);
    var hardness =
        form.required("powderHardness", sourced(span(Kind.RATIO)), Alloy::powderHardness);
    var carbon = form.required("carbonProtection", carbonForm(), Alloy::carbonProtection);
    var tolerance =
        form.optional("mixtureTolerance", sourced(amount(Kind.RATIO)), Alloy::mixtureTolerance);
    var cautions = form.set("cautions", FindingForms.CAUTION, Alloy::cautions);
    return form.read(
        values ->
            Alloy.builder()
                .name(values.get(name))
                .composition(values.get(composition))
                .fullDensity(values.get(fullDensity))
                .solidus(values.get(solidus))
                .liquidus(values.get(liquidus))
                .sinteringWindow(values.get(window))
                .usualPeak(values.get(usualPeak))
                .sinteringHold(values.get(hold))
                .expectedRelativeDensity(values.get(density))
                .linearExpansion(values.get(expansion))
                .heatCapacity(values.get(heat))
                .hotHeatCapacity(values.get(hotHeat))
                .powderHardness(values.get(hardness))
                .carbonProtection(values.get(carbon))
                .mixtureTolerance(values.get(tolerance))
                .cautions(values.get(cautions))
                .build());
  }

  private static ObjectForm<Binder> binderForm() {
    ObjectForm<Binder> form = ObjectForm.named("binder", "The polymer that holds the powder.");
    var name = form.required("name", TEXT, Binder::name);
    var density = form.required("density", sourced(estimate(Kind.DENSITY)), Binder::density);
    var decomposition =
        form.required("decomposition", sourced(span(Kind.TEMPERATURE)), Binder::decomposition);
    var residue = form.required("residue", sourced(estimate(Kind.MASS_FRACTION)), Binder::residue);
    var products = form.list("hazardousProducts", TEXT, Binder::hazardousProducts);
    return form.read(
        values ->
            Binder.builder()
                .name(values.get(name))
                .density(values.get(density))
                .decomposition(values.get(decomposition))
                .residue(values.get(residue))
                .hazardousProducts(values.get(products))
                .build());
  }

  private ObjectForm<Feedstock> feedstockForm() {
    ObjectForm<Feedstock> form =
        ObjectForm.named("feedstock", "Metal powder in a binder, as filament.");
    var name = form.required("name", TEXT, Feedstock::name);
    var metal = form.required("alloy", alloy, Feedstock::alloy);
    var polymer = form.required("binder", binder, Feedstock::binder);
    var metalShare =
        form.optional(
            "metalMassFraction", amount(Kind.MASS_FRACTION), Feedstock::statedMetalMassFraction);
    var binderShare =
        form.optional(
            "binderMassFraction", amount(Kind.MASS_FRACTION), Feedstock::statedBinderMassFraction);
    var loading =
        form.optional(
            "solidsLoading", amount(Kind.VOLUME_FRACTION), Feedstock::statedSolidsLoading);
    var range =
        form.optional(
            "metalMassFractionRange",
            sourced(span(Kind.MASS_FRACTION)),
            Feedstock::metalMassFractionRange);
    var source = form.required("source", SOURCE, Feedstock::source);
    var generic = form.withDefault("generic", Forms.TRUTH, false, Feedstock::generic);
    return form.read(
        values ->
            Feedstock.builder()
                .name(values.get(name))
                .alloy(values.get(metal))
                .binder(values.get(polymer))
                .statedMetalMassFraction(values.get(metalShare))
                .statedBinderMassFraction(values.get(binderShare))
                .statedSolidsLoading(values.get(loading))
                .metalMassFractionRange(values.get(range))
                .source(values.get(source))
                .generic(values.get(generic))
                .build());
  }

  private static ObjectForm<PackingPowder> packingForm() {
    ObjectForm<PackingPowder> form =
        ObjectForm.named("packingPowder", "The powder in which parts lie in the crucible.");
    var name = form.required("name", TEXT, PackingPowder::name);
    var skeletal =
        form.required(
            "skeletalDensity", sourced(amount(Kind.DENSITY)), PackingPowder::skeletalDensity);
    var apparent =
        form.required(
            "apparentDensity", sourced(span(Kind.DENSITY)), PackingPowder::apparentDensity);
    var tap = form.required("tapDensity", sourced(span(Kind.DENSITY)), PackingPowder::tapDensity);
    var limit =
        form.required(
            "temperatureLimit", sourced(amount(Kind.TEMPERATURE)), PackingPowder::temperatureLimit);
    var heat =
        form.required(
            "heatCapacity",
            sourced(amount(Kind.SPECIFIC_HEAT_CAPACITY)),
            PackingPowder::heatCapacity);
    var uses = form.set("uses", Forms.choice(PackingPowder.Use.class), PackingPowder::uses);
    var cautions = form.set("cautions", FindingForms.CAUTION, PackingPowder::cautions);
    return form.read(
        values ->
            PackingPowder.builder()
                .name(values.get(name))
                .skeletalDensity(values.get(skeletal))
                .apparentDensity(values.get(apparent))
                .tapDensity(values.get(tap))
                .temperatureLimit(values.get(limit))
                .heatCapacity(values.get(heat))
                .uses(values.get(uses))
                .cautions(values.get(cautions))
                .build());
  }

  private static ObjectForm<Getter> getterForm() {
    ObjectForm<Getter> form =
        ObjectForm.named("getter", "The carbon that takes the oxygen of the crucible's air.");
    var name = form.required("name", TEXT, Getter::name);
    var grain = form.required("grain", Forms.choice(Getter.Grain.class), Getter::grain);
    var bulk = form.required("bulkDensity", sourced(span(Kind.DENSITY)), Getter::bulkDensity);
    var ash = form.required("ash", sourced(span(Kind.MASS_FRACTION)), Getter::ash);
    var onset =
        form.required("oxidationOnset", sourced(span(Kind.TEMPERATURE)), Getter::oxidationOnset);
    var heat =
        form.defaulted(
            "heatCapacity", sourced(amount(Kind.SPECIFIC_HEAT_CAPACITY)), Getter::heatCapacity);
    return form.read(
        values -> {
          Getter.Builder getter =
              Getter.builder()
                  .name(values.get(name))
                  .grain(values.get(grain))
                  .bulkDensity(values.get(bulk))
                  .ash(values.get(ash))
                  .oxidationOnset(values.get(onset));
          values.get(heat).ifPresent(getter::heatCapacity);
          return getter.build();
        });
  }

  private static ObjectForm<CrucibleMaterial> crucibleForm() {
    ObjectForm<CrucibleMaterial> form =
        ObjectForm.named("crucibleMaterial", "What a crucible is made of.");
    var name = form.required("name", TEXT, CrucibleMaterial::name);
    var limit =
        form.required(
            "serviceLimit", sourced(amount(Kind.TEMPERATURE)), CrucibleMaterial::serviceLimit);
    var cyclic =
        form.optional(
            "cyclicLimit", sourced(amount(Kind.TEMPERATURE)), CrucibleMaterial::cyclicLimit);
    var remark = form.required("remark", TEXT, CrucibleMaterial::remark);
    return form.read(
        values ->
            CrucibleMaterial.builder()
                .name(values.get(name))
                .serviceLimit(values.get(limit))
                .cyclicLimit(values.get(cyclic))
                .remark(values.get(remark))
                .build());
  }

  private static ObjectForm<NozzleMaterial> nozzleForm() {
    ObjectForm<NozzleMaterial> form =
        ObjectForm.named("nozzleMaterial", "What a nozzle is made of.");
    var name = form.required("name", TEXT, NozzleMaterial::name);
    var hardness = form.required("hardness", sourced(span(Kind.RATIO)), NozzleMaterial::hardness);
    return form.read(
        values ->
            NozzleMaterial.builder().name(values.get(name)).hardness(values.get(hardness)).build());
  }

  private ObjectForm<MaterialLibrary> libraryForm() {
    ObjectForm<MaterialLibrary> form = ObjectForm.named("materials", "Materials by name.");
    var alloys = form.list("alloys", alloy, MaterialLibrary::alloys);
    var binders = form.list("binders", binder, MaterialLibrary::binders);
    var feedstocks = form.list("feedstocks", feedstock, MaterialLibrary::feedstocks);
    var powders = form.list("packingPowders", packingPowder, MaterialLibrary::packingPowders);
    var getters = form.list("getters", getter, MaterialLibrary::getters);
    var crucibles =
        form.list("crucibleMaterials", crucibleMaterial, MaterialLibrary::crucibleMaterials);
    var nozzles = form.list("nozzleMaterials", nozzleMaterial, MaterialLibrary::nozzleMaterials);
    return form.read(
        values ->
            MaterialLibrary.builder()
                .alloys(values.get(alloys))
                .binders(values.get(binders))
                .feedstocks(values.get(feedstocks))
                .packingPowders(values.get(powders))
                .getters(values.get(getters))
                .crucibleMaterials(values.get(crucibles))
                .nozzleMaterials(values.get(nozzles))
                .build());
  }
}
