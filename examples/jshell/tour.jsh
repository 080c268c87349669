// A tour of the library: /open examples/jshell/tour.jsh
// It writes files for charts to target/tour.
// The workshop, its equipment and its prices are invented; the materials are the library's.

var charts = Files.createDirectories(Path.of("target", "tour"));

// 1. A feedstock, its metal and its binder, each fact with its source
var bronze = library.feedstock("tin bronze 90/10 in polylactide, generic");
show(bronze);

// 2. A part on its way from green to sintered, and how much larger it has to be printed
var cam = Part.builder().
    name("latch cam").
    finishedVolume(cubicCentimetres(2)).
    envelope(Envelope.of(millimetres(30), millimetres(18), millimetres(8))).
    thickestSection(millimetres(5)).
    build();
var passage = MassBalancePassage.standard().passage(cam, bronze);
show(passage);
show(passage.line("oversize along x"));

// 3. A whole job: will it come out?
var answer = WholeJob.standard().answer(WindowWorkshop.latchCams(100));
show(answer.job().route());
show(answer.atLeast(Severity.UNDETERMINED));

// What the core of the charge feels while sintering; its whole course goes into a file for a chart
var core = answer.forecast().hottest().core();
var lag = core.greatestLag();
show("core behind the kiln by at most " + lag.lag().format(KELVIN_DIFFERENCE, 0)
    + ", " + lag.time().format(HOUR, 1) + " after the start");
csv(sheet(core), charts.resolve("core.csv"));

// 4. What the first, the second and the hundredth part cost
show(answer.statement());
csv(cash(answer.statement().plan(), 100), charts.resolve("cash.csv"));

// 5. A sweep over the parts in a charge
List<JobAnswer> sweep = new ArrayList<>();
for (int parts = 1; parts <= 4; parts++) {
  sweep.add(WholeJob.standard().answer(
      Job.builder().from(answer.job()).partsPerCharge(parts).build()));
}
var charges = Sheet.of("parts per charge", sweep).
    count("parts", a -> a.job().partsPerCharge()).
    amount("energy", KILOWATT_HOUR, 2, a -> a.firing().energy()).
    amount("core lag", KELVIN_DIFFERENCE, 1, a -> a.forecast().hottest().core().greatestLag().lag()).
    money("usage per part", EUR, a -> a.statement().usage().total()).
    money("average of 100", EUR, a -> a.statement().average()).
    text("worst finding", a -> a.worst());
show(charges);
csv(charges, charts.resolve("charges.csv"));

// 6. A sweep over the alloys of the library: the same part in each feedstock
var metals = Sheet.of("the cam in every feedstock", library.feedstocks()).
    text("feedstock", f -> f.name()).
    amount("solids", VOLUME_PERCENT, 1, f -> f.solidsLoading()).
    amount("filament", GRAM, 1, f -> MassBalancePassage.standard().passage(cam, f).filamentMass()).
    amount("oversize", ONE, 3, f ->
        MassBalancePassage.standard().passage(cam, f).oversize().x().expected()).
    amount("window from", CELSIUS, 0, f -> f.alloy().sinteringWindow().value().low()).
    amount("to", CELSIUS, 0, f -> f.alloy().sinteringWindow().value().high()).
    text("carbon", f -> f.alloy().carbonProtection().suitability());
show(metals);
csv(metals, charts.resolve("metals.csv"));
