package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.resource.Aged;
import dev.kilnledger.costing.resource.Consumed;
import dev.kilnledger.costing.resource.Depreciated;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Durable;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.costing.resource.RunDown;
import dev.kilnledger.costing.resource.Staircase;
import dev.kilnledger.costing.resource.Tails;
import dev.kilnledger.costing.resource.ToppedUp;
import dev.kilnledger.costing.resource.Wearing;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;

/**
 * The packs of one resource in doubles, as {@link dev.kilnledger.costing.resource.Staircase} counts
 * them in integers: the need is base + step x uses, and what is wanted is need - stock. Where a
 * count is so near a whole number of packs that doubles cannot tell, the answer is {@link
 * Double#NaN}, and the staircase has to decide.
 */
final class PackCount {
  /** Beyond this, doubles do not hold every whole number. */
  private static final double MOST_WHOLE = 1e15;

  private final boolean metered;
  private final List<DrawnFigure> figures = new ArrayList<>();
  private final Setter setter;
  private double group = 1;
  private double base;
  private double step;
  private double stock;
  private double content;
  private double most = Double.MAX_VALUE;
  private boolean whole;

  /** Whether what is there throughout is at least that of one whole use. */
  private boolean atLeastOne;

  /** Computes the figures of a trial. */
  private interface Setter {
    void set(PackCount count, double[] drawn);
  }

  PackCount(LedgerPlan plan, Resource resource, Binding binding) {
    Offer offer = plan.offerOf(resource);
    metered = offer.metered() || resource instanceof Depreciated;
    content = offer.content().si();
    setter = setter(plan, resource, offer, binding);
    if (!varies()) {
      set(new double[0]);
      if (!metered && !whole) {
        inWholeNumbers(resource.staircase(offer, plan.workload()));
      }
    }
  }

  /** Takes figures that never vary in a measure of which all are whole numbers, if doubles can. */
  private void inWholeNumbers(Staircase need) {
    BigDecimal each = need.perUse();
    BigDecimal start = need.lacking(BigInteger.ZERO);
    int decimals =
        Math.max(0, Math.max(each.scale(), Math.max(start.scale(), need.holds().scale())));
    double largest =
        each.abs().max(start.abs()).max(need.holds()).scaleByPowerOfTen(decimals).doubleValue();
    if (largest < MOST_WHOLE) {
      base = start.scaleByPowerOfTen(decimals).doubleValue();
      stock = 0;
      step = each.scaleByPowerOfTen(decimals).doubleValue();
      content = need.holds().scaleByPowerOfTen(decimals).doubleValue();
      whole = true;
    }
  }

  private Setter setter(LedgerPlan plan, Resource resource, Offer offer, Binding binding) {
    String item = resource.item();
    double pack = offer.content().si();
    if (resource instanceof Durable durable) {
      return (count, drawn) -> {
        count.base = 1;
        count.stock = durable.owned() ? 1 : 0;
      };
    }
    if (resource instanceof Wearing wearing) {
      DrawnFigure life = figure(binding, FigureName.life(item), wearing.life());
      DrawnFigure each = each(plan, wearing.driver(), binding);
      double left = wearing.usesLeft().si();
      return (count, drawn) -> {
        count.step = each.si(drawn);
        count.stock = left;
        count.content = pack * life.si(drawn);
      };
    }
    if (resource instanceof Depreciated depreciated) {
      DrawnFigure life = figure(binding, FigureName.life(item), depreciated.life());
      DrawnFigure each = each(plan, depreciated.driver(), binding);
      DrawnFigure price = figure(binding, FigureName.price(plan, offer), Amounts.ratio(1));
      double salvage = depreciated.salvage().getAmount().doubleValue();
      return (count, drawn) -> {
        double charged = 1 - salvage / price.si(drawn);
        count.step = charged * each.si(drawn);
        count.content = life.si(drawn);
        count.most = charged * count.content;
      };
    }
    if (resource instanceof ToppedUp toppedUp) {
      DrawnFigure fill = figure(binding, FigureName.fill(item), toppedUp.fill());
      DrawnFigure loss = figure(binding, FigureName.loss(item), toppedUp.loss());
      double owned = si(toppedUp.owned());
      return (count, drawn) -> {
        count.step = fill.si(drawn) * loss.si(drawn);
        count.base = fill.si(drawn) - count.step;
        count.stock = owned;
      };
    }
    if (resource instanceof RunDown runDown) {
      DrawnFigure fill = figure(binding, FigureName.fill(item), runDown.fill());
      DrawnFigure loss = figure(binding, FigureName.loss(item), runDown.loss());
      double owned = si(runDown.owned());
      return (count, drawn) -> {
        count.step = fill.si(drawn);
        count.stock = owned;
        count.group = firingsPerFill(runDown, loss, drawn);
      };
    }
    if (resource instanceof Aged aged) {
      DrawnFigure fill = figure(binding, FigureName.fill(item), aged.fill());
      DrawnFigure life = figure(binding, FigureName.life(item), Amounts.ratio(aged.cycles()));
      double owned = si(aged.owned());
      return (count, drawn) -> {
        count.step = fill.si(drawn);
        count.stock = owned;
        count.group = life.si(drawn);
      };
    }
    Consumed consumed = (Consumed) resource;
    DrawnFigure quantity = figure(binding, binding.quantity(consumed), consumed.quantity());
    double owned = si(consumed.owned());
    if (consumed.tails() == Tails.STRANDED && !offer.metered()) {
      BigDecimal ownedDecimal = consumed.owned().map(PackCount::decimal).orElse(BigDecimal.ZERO);
      BigDecimal packDecimal = decimal(offer.content());
      return (count, drawn) -> {
        count.step = 1;
        count.stock = servings(owned, ownedDecimal, quantity, drawn);
        count.content = servings(pack, packDecimal, quantity, drawn);
      };
    }
    return (count, drawn) -> {
      count.step = quantity.si(drawn);
      count.stock = owned;
    };
  }

  private DrawnFigure figure(Binding binding, String name, Amount<?> stated) {
    DrawnFigure figure = binding.figure(name, stated);
    figures.add(figure);
    return figure;
  }

  /** What one event takes of a driver; 1 where events are counted. */
  private DrawnFigure each(LedgerPlan plan, Driver driver, Binding binding) {
    return figure(
        binding, FigureName.amount(driver), plan.amounts().getOrDefault(driver, Amounts.ratio(1)));
  }

  private static double firingsPerFill(RunDown runDown, DrawnFigure loss, double[] drawn) {
    if (!loss.varies()) {
      return runDown.firingsPerFill();
    }
    double losses = Math.log(runDown.minimum().si()) / Math.log1p(-loss.si(drawn));
    if (WholeNumbers.isNear(losses, losses)) {
      return RunDown.builder()
          .from(runDown)
          .loss(Amounts.ratio(loss.decimal(drawn).doubleValue()))
          .build()
          .firingsPerFill();
    }
    return Math.floor(losses) + 1;
  }

  /** How many whole quantities a content holds. */
  private static double servings(
      double held, BigDecimal decimal, DrawnFigure quantity, double[] drawn) {
    double servings = held / quantity.si(drawn);
    return WholeNumbers.isNear(servings, servings)
        ? decimal.divideToIntegralValue(quantity.decimal(drawn)).doubleValue()
        : Math.floor(servings);
  }

  private static double si(Optional<Amount<?>> amount) {
    return amount.map(Amount::si).orElse(0.0);
  }

  private static BigDecimal decimal(Amount<?> amount) {
    return exact(amount);
  }

  private static <Q extends Quantity<Q>> BigDecimal exact(Amount<Q> amount) {
    return amount.decimalIn(amount.kind().siUnit());
  }

  boolean isMetered() {
    return metered;
  }

  /** Whether the count for a number of events differs from trial to trial. */
  boolean varies() {
    return figures.stream().anyMatch(DrawnFigure::varies);
  }

  void set(double[] drawn) {
    setter.set(this, drawn);
    atLeastOne = base > 0;
    whole =
        WholeNumbers.isWhole(base)
            && WholeNumbers.isWhole(step)
            && WholeNumbers.isWhole(stock)
            && WholeNumbers.isWhole(content);
  }

  /** The packs, or measures, for a number of events; NaN where doubles cannot tell. */
  double of(double events) {
    if (events == 0) {
      return 0;
    }
    double uses = events;
    if (group != 1) {
      uses = events / group;
      if (WholeNumbers.isWhole(events)) {
        uses = Math.ceil(uses); // a quotient of whole numbers
      } else if (WholeNumbers.isNear(uses, uses)) {
        return Double.NaN;
      } else {
        uses = Math.ceil(uses);
      }
    }
    double counted = atLeastOne ? Math.max(uses, 1) : uses;
    double needed = step * counted;
    double packs = (base - stock + needed) / content;
    if (metered) {
      return Math.max(0, Math.min(packs, most / content));
    }
    double terms = Math.abs(base) + stock + needed;
    boolean exact = whole && WholeNumbers.isWhole(counted) && terms < MOST_WHOLE;
    if (!exact && WholeNumbers.isNear(packs, terms / content)) {
      return Double.NaN;
    }
    return Math.max(0, Math.ceil(packs));
  }

  /** Packs used in the long run, for so many events for each part. */
  double usage(double perPart) {
    return perPart / group * step / content;
  }
}
