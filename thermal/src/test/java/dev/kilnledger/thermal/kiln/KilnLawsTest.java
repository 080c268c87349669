package dev.kilnledger.thermal.kiln;

import static dev.kilnledger.units.Amounts.joulesPerKilogramKelvin;
import static dev.kilnledger.units.Amounts.kilograms;
import static dev.kilnledger.units.Amounts.kilowatts;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static dev.kilnledger.units.TradeUnits.KILOWATT_HOUR;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.thermal.Workbench;
import dev.kilnledger.thermal.energy.ChargeItem;
import dev.kilnledger.thermal.energy.EnergyBalance;
import dev.kilnledger.thermal.energy.EnergyLine;
import dev.kilnledger.thermal.energy.QuasiSteadyEnergy;
import dev.kilnledger.thermal.profile.AnyProfile;
import dev.kilnledger.thermal.profile.AnyProfile.Programme;
import dev.kilnledger.units.Amounts;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

/** What holds for every kiln and every programme: energy is conserved, and power has its limit. */
@Domain(AnyProfile.class)
@Domain(DomainContext.Global.class)
class KilnLawsTest {
  private static Kiln kiln(double kilowatts) {
    return Workbench.kiln(1300)
        .power(kilowatts(kilowatts))
        .wall(
            List.of(
                Workbench.layer("firebrick", 115, 0.35, 800),
                Workbench.layer("fibre board", 50, 0.12, 260)))
        .build();
  }

  private static List<ChargeItem> charge(double kilograms) {
    return List.of(
        ChargeItem.of(
            "packing",
            kilograms(kilograms),
            Sourced.of(joulesPerKilogramKelvin(1100), Source.user("invented for the tests"))));
  }

  private static KilnRun run(Kiln kiln, Programme programme, double kilograms) {
    return TransientKiln.standard().run(kiln, programme.profile(), charge(kilograms));
  }

  private static double kilowattHours(EnergyBalance balance) {
    return balance.total().in(KILOWATT_HOUR);
  }

  @Property(tries = 20, seed = "20261125")
  void endsWhatItIsSuppliedInWallAndCharge(
      @ForAll Programme programme,
      @ForAll @DoubleRange(min = 1, max = 8) double kilowatts,
      @ForAll @DoubleRange(min = 0.1, max = 10) double kilograms) {
    KilnRun run = run(kiln(kilowatts), programme, kilograms);
    double supplied = run.energySupplied().in(KILOWATT_HOUR);
    // Stepped in double arithmetic: thousands of steps, each rounded.
    assertThat(kilowattHours(run.energy())).isCloseTo(supplied, within(1e-6 * (1 + supplied)));
    double byUse =
        Arrays.stream(EnergyLine.Use.values())
            .mapToDouble(use -> run.energy().total(use).in(KILOWATT_HOUR))
            .sum();
    assertThat(byUse).isCloseTo(kilowattHours(run.energy()), within(1e-9 * (1 + supplied)));
    double most = kilowatts * run.duration().in(HOUR);
    assertThat(supplied).isBetween(-1e-9, most * (1 + 1e-9));
  }

  @Property(tries = 20, seed = "20261125")
  void drawsNoMoreThanItsPowerAndIsNoHotterThanItsProgramme(
      @ForAll Programme programme, @ForAll @DoubleRange(min = 0.5, max = 8) double kilowatts) {
    Kiln kiln = kiln(kilowatts);
    KilnRun run = run(kiln, programme, 2);
    double hottest = Math.max(programme.profile().peak().si(), 293.15);
    double ceiling = TransientKiln.standard().ceiling(kiln).si();
    for (KilnPoint point : run.points()) {
      assertThat(point.power().si()).isBetween(0.0, kilowatts * 1000 * (1 + 1e-9));
      assertThat(point.actual().si()).isLessThanOrEqualTo(hottest + 0.05);
      assertThat(point.actual().si()).isLessThanOrEqualTo(Math.max(ceiling, 373.15) + 0.05);
      assertThat(point.actual().si()).isGreaterThanOrEqualTo(293.15 - 0.05);
      assertThat(point.skin().si()).isLessThanOrEqualTo(point.actual().si() + 0.05);
    }
  }

  @Property(tries = 15, seed = "20261125")
  void takesTheSameEnergyWithASegmentCutInTwo(
      @ForAll Programme programme,
      @ForAll @IntRange(max = 5) int which,
      @ForAll @DoubleRange(min = 0.2, max = 0.8) double share) {
    Kiln kiln = kiln(20);
    double whole =
        kilowattHours(TransientKiln.standard().balance(kiln, programme.profile(), charge(2)));
    double cut =
        kilowattHours(
            TransientKiln.standard().balance(kiln, programme.cut(which, share), charge(2)));
    // The steps of the two fall differently; the standard step is good to some parts in a thousand.
    assertThat(cut).isCloseTo(whole, within(0.005 * (0.1 + whole)));
  }

  @Property(tries = 15, seed = "20261125")
  void takesNoLessEnergyForMoreCharge(
      @ForAll Programme programme, @ForAll @DoubleRange(min = 0.1, max = 5) double more) {
    // Heated only: a charge that ends cooler than it started gives its heat back.
    Programme heating = new Programme(20, programme.steps().subList(0, 1));
    double here = kilowattHours(run(kiln(20), heating, 1).energy());
    double heavier = kilowattHours(run(kiln(20), heating, 1 + more).energy());
    assertThat(heavier).isGreaterThanOrEqualTo(here - 0.005 * (0.1 + here));
  }

  @Property(tries = 30, seed = "20261125")
  void addsUpTheSameEnergyAsItsLinesInTheQuickModel(
      @ForAll Programme programme, @ForAll @DoubleRange(min = 0.1, max = 10) double kilograms) {
    EnergyBalance balance =
        QuasiSteadyEnergy.standard().balance(kiln(6), programme.profile(), charge(kilograms));
    double lines =
        balance.lines().stream().mapToDouble(line -> line.energy().in(KILOWATT_HOUR)).sum();
    assertThat(kilowattHours(balance)).isCloseTo(lines, within(1e-12 * (1 + lines)));
    assertThat(balance.lines()).allSatisfy(line -> assertThat(line.energy().si() >= 0).isTrue());
  }

  @Property(tries = 10, seed = "20261125")
  void reachesATemperatureNoSoonerWithMoreCharge(
      @ForAll @DoubleRange(min = 2, max = 8) double kilowatts,
      @ForAll @DoubleRange(min = 0.1, max = 10) double more,
      @ForAll @IntRange(min = 200, max = 700) int celsius) {
    var to = Amounts.celsius(celsius);
    List<FullPowerPoint> light = TransientKiln.standard().fullPower(kiln(kilowatts), charge(1), to);
    List<FullPowerPoint> heavy =
        TransientKiln.standard().fullPower(kiln(kilowatts), charge(1 + more), to);
    FullPowerPoint first = light.get(light.size() - 1);
    FullPowerPoint second = heavy.get(heavy.size() - 1);
    if (second.temperature().equals(first.temperature())) {
      assertThat(second.time()).isGreaterThanOrEqualTo(first.time());
    }
  }
}
