package dev.kilnledger.thermal;

import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.thermal.atmosphere.AirGas;
import dev.kilnledger.thermal.atmosphere.CarbonAtmosphere;
import dev.kilnledger.thermal.atmosphere.GetterBalance;
import dev.kilnledger.thermal.atmosphere.MetalInCarbonGas;
import dev.kilnledger.thermal.atmosphere.Thermochemistry;
import dev.kilnledger.thermal.atmosphere.WellMixedRoom;
import dev.kilnledger.thermal.burnout.BurnOut;
import dev.kilnledger.thermal.burnout.FastestProfile;
import dev.kilnledger.thermal.burnout.KineticFit;
import dev.kilnledger.thermal.chance.ChanceForecast;
import dev.kilnledger.thermal.check.FiringCheck;
import dev.kilnledger.thermal.conduction.EigenmodeConduction;
import dev.kilnledger.thermal.conduction.EnthalpyConduction;
import dev.kilnledger.thermal.conduction.SoakHold;
import dev.kilnledger.thermal.conduction.ZehnerBauerSchluender;
import dev.kilnledger.thermal.densification.Densification;
import dev.kilnledger.thermal.densification.DensificationLimits;
import dev.kilnledger.thermal.densification.SinteringCurveFit;
import dev.kilnledger.thermal.design.ProfileDesigner;
import dev.kilnledger.thermal.design.RuleOfThumb;
import dev.kilnledger.thermal.energy.QuasiSteadyEnergy;
import dev.kilnledger.thermal.kiln.TransientKiln;
import dev.kilnledger.thermal.load.LoadPlanner;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is ready for everybody needs nothing stated to be there. */
class StandardCalculatorsTest {
  static Stream<Supplier<Object>> standards() {
    return Stream.of(
        AirGas::standard,
        CarbonAtmosphere::standard,
        GetterBalance::standard,
        MetalInCarbonGas::standard,
        Thermochemistry::standard,
        WellMixedRoom::standard,
        BurnOut::standard,
        FastestProfile::standard,
        KineticFit::standard,
        ChanceForecast::standard,
        FiringCheck::standard,
        EigenmodeConduction::standard,
        EnthalpyConduction::standard,
        SoakHold::standard,
        ZehnerBauerSchluender::standard,
        Densification::standard,
        DensificationLimits::standard,
        SinteringCurveFit::standard,
        ProfileDesigner::standard,
        RuleOfThumb::standard,
        QuasiSteadyEnergy::standard,
        TransientKiln::standard,
        LoadPlanner::standard);
  }

  @ParameterizedTest
  @MethodSource("standards")
  void areReadyForEverybody(Supplier<Object> standard) {
    assertThat(standard.get()).isNotNull().hasSameClassAs(standard.get());
  }
}
