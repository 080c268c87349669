package dev.kilnledger.thermal.energy;

import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.equipment.WallLayer;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.Relations;
import dev.kilnledger.units.TradeUnits;
import dev.kilnledger.units.quantity.HeatTransferCoefficient;
import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;

/**
 * A kiln's wall of plane layers in the steady state (Fourier's law in series, any textbook of heat
 * transfer): {@code U = 1 / (sum L/k + 1/h)}, {@code q = U (T_inside - T_ambient)}, each layer's
 * temperature falling along a straight line.
 *
 * <p>The area is the chamber's inner surface: edges, corners, door and openings, which lose more,
 * are not in it. The inner face is taken to be as hot as the chamber.
 *
 * <p>Example: 115 mm of 0.35 W/(m K) and 50 mm of 0.12 W/(m K), 10 W/(m2 K) outside, 1100 °C inside
 * and 25 °C outside, lose 1271.83 W/m2; the layers meet at 682.1 °C and the skin has 152.2 °C.
 */
public final class SteadyWall {
  private final Kiln kiln;
  private final double resistance; // m2 K / W, film included

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
  }

  /** {@return the heat that passes per area and kelvin, U} */
  public Amount<HeatTransferCoefficient> transmittance() {
    return Amounts.wattsPerSquareMetreKelvin(1 / resistance);
  }

  /**
   * The heat that passes the whole wall.
   *
   * @param inside the temperature of the chamber
   * @param ambient the temperature of the room
   * @return U A (T_inside - T_ambient)
   */
  public Amount<Power> loss(Amount<Temperature> inside, Amount<Temperature> ambient) {
    return Amounts.watts(lossPerKelvin() * (inside.si() - ambient.si()));
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
    double flux = (inside.si() - ambient.si()) / resistance;
    double passed = 0;
    List<Amount<Temperature>> faces = new ArrayList<>(List.of(inside));
    for (WallLayer layer : kiln.wall()) {
      passed += resistanceOf(layer);
      faces.add(Relations.shifted(inside, Amounts.kelvinDifference(-flux * passed)));
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
    double difference = inside.si() - ambient.si();
    return storePerKelvin().stream()
        .map(store -> Amounts.joules(store * difference).to(TradeUnits.KILOWATT_HOUR))
        .toList();
  }

  /**
   * The time in which the wall settles: (sum L/k) (sum rho c L), which for one layer is L2 / a with
   * its diffusivity a.
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

  /** U A, W/K. */
  double lossPerKelvin() {
    return kiln.innerSurface().si() / resistance;
  }

  /** The heat stored in each layer per kelvin between inside and ambient, J/K. */
  List<Double> storePerKelvin() {
    List<Double> shares = meanShares();
    List<Double> store = new ArrayList<>();
    for (int i = 0; i < shares.size(); i++) {
      store.add(kiln.innerSurface().si() * capacityOf(kiln.wall().get(i)) * shares.get(i));
    }
    return store;
  }

  /** The mean temperature of each layer above ambient, as a share of the chamber's. */
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

  private static double layerResistance(Kiln kiln) {
    return kiln.wall().stream().mapToDouble(SteadyWall::resistanceOf).sum();
  }

  private static double resistanceOf(WallLayer layer) {
    return layer.thickness().si() / layer.conductivity().si();
  }

  private static double capacityOf(WallLayer layer) {
    return layer.density().si() * layer.heatCapacity().si() * layer.thickness().si();
  }
}
