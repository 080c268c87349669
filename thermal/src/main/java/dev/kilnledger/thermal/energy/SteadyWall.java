package dev.kilnledger.thermal.energy;

import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.units.TradeUnits.CELSIUS;

import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.equipment.WallLayer;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.Relations;
import dev.kilnledger.units.TradeUnits;
import dev.kilnledger.units.quantity.HeatTransferCoefficient;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;

/**
 * A kiln's wall of plane layers in the steady state (Fourier's law in series, any textbook of heat
 * transfer): {@code U = 1 / (sum L/k + 1/h)}, {@code q = U (T_inside - T_ambient)}, each layer's
 * temperature falling along a straight line. A layer whose conductivity changes with temperature
 * passes {@code q = (integral of k dT) / L}, its k at the mean of its two faces, exact for a
 * straight line; q then is the root of one increasing function.
 *
 * <p>The area is the chamber's inner surface: edges, corners, door and openings, which lose more,
 * are not in it. The inner face is taken to be as hot as the chamber.
 *
 * <p>Example: 115 mm of 0.35 W/(m K) and 50 mm of 0.12 W/(m K), 10 W/(m2 K) outside, 1100 °C inside
 * and 25 °C outside, lose 1271.83 W/m2; the layers meet at 682.1 °C and the skin has 152.2 °C. 115
 * mm of 0.12 W/(m K) at 0 °C with a slope of 0.00015 W/(m K2) pass 1849.30 W/m2 from 1100 to 80 °C.
 */
public final class SteadyWall {
  private final Kiln kiln;
  private final double resistance; // m2 K / W, film included, conductivities as stated
  private final boolean constant;

  /**
   * The wall of a kiln.
   *
   * @param kiln a kiln whose wall is known
   * @throws IllegalArgumentException if the kiln has no wall layers
   */
  public SteadyWall(Kiln kiln) {
    new Problems("kiln " + kiln.name())
        .require(
            !kiln.wall().isEmpty(),
            "the wall has no layers; accepted is at least one, or a model that needs none such as"
                + " DutyFactorEnergy")
        .refuseIfAny();
    this.kiln = kiln;
    this.resistance = layerResistance(kiln) + 1 / kiln.outsideFilm().si();
    this.constant = kiln.wall().stream().allMatch(WallLayer::isConstant);
  }

  /** {@return whether no conductivity changes with temperature, so that U is the same always} */
  public boolean isConstant() {
    return constant;
  }

  /** {@return the heat that passes per area and kelvin, U, with all conductivities as stated} */
  public Amount<HeatTransferCoefficient> transmittance() {
    return Amounts.wattsPerSquareMetreKelvin(1 / resistance);
  }

  /**
   * The heat that passes per area and kelvin between two temperatures.
   *
   * @param inside the temperature of the chamber
   * @param ambient the temperature of the room
   * @return U, its limit where the temperatures are equal
   */
  public Amount<HeatTransferCoefficient> transmittance(
      Amount<Temperature> inside, Amount<Temperature> ambient) {
    if (constant) {
      return transmittance();
    }
    double difference = inside.si() - ambient.si();
    SlopedWall wall = new SlopedWall(kiln, ambient.si());
    return Amounts.wattsPerSquareMetreKelvin(
        difference == 0 ? wall.coldTransmittance() : wall.flux(inside.si()) / difference);
  }

  /**
   * The heat that passes the whole wall.
   *
   * @param inside the temperature of the chamber
   * @param ambient the temperature of the room
   * @return q A, which is U A (T_inside - T_ambient)
   */
  public Amount<Power> loss(Amount<Temperature> inside, Amount<Temperature> ambient) {
    return Amounts.watts(lossWatts(inside.si(), ambient.si()));
  }

  /**
   * The temperature of the chamber at which the wall passes a power: what a kiln approaches that is
   * given no more.
   *
   * @param power the power
   * @param ambient the temperature of the room
   * @return the temperature
   */
  public Amount<Temperature> insideAt(Amount<Power> power, Amount<Temperature> ambient) {
    double difference =
        constant
            ? power.si() / lossPerKelvin()
            : new SlopedWall(kiln, ambient.si()).faces(power.si() / kiln.innerSurface().si())[0]
                - ambient.si();
    return Relations.shifted(ambient, Amounts.kelvinDifference(difference));
  }

  /**
   * The temperatures of the faces from the inside outwards: the inner face, where layers meet, and
   * the skin.
   *
   * @param inside the temperature of the chamber
   * @param ambient the temperature of the room
   * @return one temperature more than there are layers
   */
  public List<Amount<Temperature>> faces(Amount<Temperature> inside, Amount<Temperature> ambient) {
    List<Amount<Temperature>> faces = new ArrayList<>(List.of(inside));
    for (double drop : dropsBelow(inside.si(), ambient.si())) {
      faces.add(Relations.shifted(inside, Amounts.kelvinDifference(-drop)));
    }
    return List.copyOf(faces);
  }

  /**
   * The heat stored in each layer, from the inside outwards, over what it holds at ambient
   * temperature: A rho c L (mean temperature of the layer - T_ambient).
   *
   * @param inside the temperature of the chamber
   * @param ambient the temperature of the room
   * @return one energy for each layer
   */
  public List<Amount<Energy>> stored(Amount<Temperature> inside, Amount<Temperature> ambient) {
    return Arrays.stream(storedJoules(inside.si(), ambient.si()))
        .mapToObj(store -> Amounts.joules(store).to(TradeUnits.KILOWATT_HOUR))
        .toList();
  }

  /**
   * The time in which the wall settles: (sum L/k) (sum rho c L), which for one layer is L2 / a with
   * its diffusivity a; conductivities as stated.
   *
   * @return the time
   */
  public Amount<Time> settlingTime() {
    double capacity = 0;
    for (WallLayer layer : kiln.wall()) {
      capacity += capacityOf(layer);
    }
    return Amounts.seconds(layerResistance(kiln) * capacity).to(TradeUnits.HOUR);
  }

  /**
   * Whether the temperatures of a firing lie where conductivities that change with temperature are
   * known to be above zero.
   *
   * @param hottest the highest temperature of the firing
   * @return the finding, empty where no conductivity changes with temperature
   */
  public Optional<Finding> range(Amount<Temperature> hottest) {
    if (constant) {
      return Optional.empty();
    }
    boolean inside = !hottest.isGreaterThan(kiln.peakTemperature());
    String told = "conductivities of the wall are straight lines from 0 °C to ";
    return Optional.of(
        Finding.builder()
            .code(EnergyFinding.WALL_CONDUCTIVITY)
            .severity(inside ? PASSED : UNDETERMINED)
            .subject(kiln.name())
            .measured(hottest)
            .limit(kiln.peakTemperature())
            .message(
                told
                    + kiln.peakTemperature().format(CELSIUS, 0)
                    + (inside
                        ? ", which the firing keeps to"
                        : "; the firing goes to "
                            + hottest.format(CELSIUS, 0)
                            + ", where they are held: loss and store are a guess there"))
            .basis(kiln.source().orElse(Source.user("conductivities as entered with the kiln")))
            .build());
  }

  int layers() {
    return kiln.wall().size();
  }

  /** U A with all conductivities as stated, W/K. */
  double lossPerKelvin() {
    return kiln.innerSurface().si() / resistance;
  }

  /** The loss between two temperatures in K, W. */
  double lossWatts(double inside, double ambient) {
    return constant
        ? lossPerKelvin() * (inside - ambient)
        : kiln.innerSurface().si() * new SlopedWall(kiln, ambient).flux(inside);
  }

  /** The heat in each layer over what it holds at ambient temperature, J. */
  double[] storedJoules(double inside, double ambient) {
    double[] stored = new double[kiln.wall().size()];
    if (constant) {
      List<Double> perKelvin = storePerKelvin();
      Arrays.setAll(stored, i -> perKelvin.get(i) * (inside - ambient));
      return stored;
    }
    SlopedWall wall = new SlopedWall(kiln, ambient);
    double[] means = wall.means(wall.faces(wall.flux(inside)));
    Arrays.setAll(
        stored,
        i -> kiln.innerSurface().si() * capacityOf(kiln.wall().get(i)) * (means[i] - ambient));
    return stored;
  }

  /** The heat stored in each layer of constant conductivity per kelvin from ambient, J/K. */
  List<Double> storePerKelvin() {
    List<Double> shares = meanShares();
    List<Double> store = new ArrayList<>();
    for (int i = 0; i < shares.size(); i++) {
      store.add(kiln.innerSurface().si() * capacityOf(kiln.wall().get(i)) * shares.get(i));
    }
    return store;
  }

  /** The mean temperature of each layer above ambient, as a share of the chamber's; constant. */
  List<Double> meanShares() {
    List<Double> shares = new ArrayList<>();
    double passed = 0;
    for (WallLayer layer : kiln.wall()) {
      double ofLayer = resistanceOf(layer);
      shares.add(1 - (passed + ofLayer / 2) / resistance);
      passed += ofLayer;
    }
    return shares;
  }

  /** How far each outer face of a layer lies below the chamber, K. */
  private double[] dropsBelow(double inside, double ambient) {
    double[] drops = new double[kiln.wall().size()];
    if (constant) {
      double flux = (inside - ambient) / resistance;
      double passed = 0;
      for (int i = 0; i < drops.length; i++) {
        passed += resistanceOf(kiln.wall().get(i));
        drops[i] = flux * passed;
      }
      return drops;
    }
    SlopedWall wall = new SlopedWall(kiln, ambient);
    double[] faces = wall.faces(wall.flux(inside));
    Arrays.setAll(drops, i -> inside - faces[i + 1]);
    return drops;
  }

  private static double layerResistance(Kiln kiln) {
    return kiln.wall().stream().mapToDouble(SteadyWall::resistanceOf).sum();
  }

  private static double resistanceOf(WallLayer layer) {
    return layer.thickness().si() / layer.conductivity().si();
  }

  /** The heat that a square metre of a layer takes up per kelvin, J/(m2 K). */
  static double capacityOf(WallLayer layer) {
    return layer.density().si() * layer.heatCapacity().si() * layer.thickness().si();
  }
}
