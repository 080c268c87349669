package dev.kilnledger.examples.gate;

import dev.kilnledger.core.part.Stage;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.costing.document.AccountFigures;
import dev.kilnledger.costing.document.AnswerFigures;
import dev.kilnledger.costing.document.FindingFigures;
import dev.kilnledger.costing.document.LineFigures;
import dev.kilnledger.costing.document.PassageFigures;
import dev.kilnledger.costing.document.StatementFigures;
import dev.kilnledger.costing.document.SurchargeFigures;
import dev.kilnledger.costing.job.JobAnswer;
import dev.kilnledger.costing.resource.Stock;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.StageForecast;
import dev.kilnledger.units.Amount;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Map;
import org.joda.money.BigMoney;

/**
 * The figures of an answer by name, in SI units and in money.
 *
 * <p>Ten significant digits: a change of a model or of a constant moves a figure by far more, while
 * the last bits of {@code Math.exp} and the like, which the platform leaves to each virtual machine
 * (within 1 ulp, some 1e-16 of the value), grow to less through the steppers.
 */
final class GoldenText {
  private static final MathContext DIGITS = new MathContext(10, RoundingMode.HALF_EVEN);

  private final Map<String, String> figures = new LinkedHashMap<>();

  private GoldenText() {}

  static Map<String, String> of(JobAnswer answer) {
    GoldenText text = new GoldenText();
    AnswerFigures all = AnswerFigures.of(answer);
    text.put("worst finding", all.worst().toString());
    all.findings().forEach(text::finding);
    all.cautions().forEach(caution -> text.put("caution", caution.toString()));
    text.passage(all.passage());
    text.put("firing, duration", all.firing().duration());
    text.put("firing, energy", all.firing().energy());
    text.put("firing, getter", all.firing().getter());
    text.forecast(answer.forecast());
    text.statement(all.statement());
    return text.figures;
  }

  /** The same name again gets a number, so that none is lost. */
  private void put(String name, String value) {
    String free = name;
    for (int i = 2; figures.containsKey(free); i++) {
      free = name + " #" + i;
    }
    figures.put(free, value);
  }

  private void put(String name, Amount<?> amount) {
    put(name, number(BigDecimal.valueOf(amount.si())));
  }

  private void put(String name, Span<?> span) {
    put(name + ", low", span.low());
    put(name + ", high", span.high());
  }

  private void put(String name, Estimate<?> estimate) {
    put(name, estimate.expected());
    put(name, estimate.span());
  }

  private static String number(BigDecimal value) {
    BigDecimal rounded = value.round(DIGITS).stripTrailingZeros();
    return Math.abs(rounded.scale()) > 20 ? rounded.toString() : rounded.toPlainString();
  }

  private static String money(BigMoney money) {
    return number(money.getAmount()) + " " + money.getCurrencyUnit().getCode();
  }

  private void finding(FindingFigures finding) {
    StringBuilder value = new StringBuilder(finding.severity().toString());
    finding.measured().ifPresent(it -> value.append(" at ").append(number(si(it))));
    finding.limit().ifPresent(it -> value.append(" by ").append(number(si(it))));
    put("finding " + finding.code() + ", " + finding.subject(), value.toString());
  }

  private static BigDecimal si(Amount<?> amount) {
    return BigDecimal.valueOf(amount.si());
  }

  private void passage(PassageFigures passage) {
    stage("green part", passage.green());
    stage("brown part", passage.brown());
    stage("sintered part", passage.sintered());
    put("metal", passage.metal());
    put("residue", passage.residue());
    put("shrinkage x", passage.shrinkage().x());
    put("shrinkage y", passage.shrinkage().y());
    put("shrinkage z", passage.shrinkage().z());
    put("oversize x", passage.oversize().x());
    put("oversize y", passage.oversize().y());
    put("oversize z", passage.oversize().z());
    put("filament, mass", passage.filamentMass());
    put("filament, length", passage.filamentLength());
  }

  private void stage(String name, Stage stage) {
    put(name + ", mass", stage.mass());
    put(name + ", volume", stage.volume());
    put(name + ", porosity", stage.porosity());
    put(name + ", x", stage.envelope().x());
    put(name + ", y", stage.envelope().y());
    put(name + ", z", stage.envelope().z());
  }

  private void forecast(FiringForecast forecast) {
    forecast.stages().forEach(this::stage);
    forecast.burnOut().ifPresent(it -> put("binder remaining", it.remaining()));
    forecast.density().ifPresent(it -> put("sintered density by curve", it.density()));
    put("sintered density by literature", forecast.literatureDensity().density());
  }

  private void stage(StageForecast stage) {
    String name = "forecast of " + stage.stage().name();
    stage
        .kiln()
        .ifPresent(
            run -> {
              put(name + ", kiln's peak", run.peak());
              put(name + ", duration", run.duration());
              put(name + ", waited", run.waited());
              put(name + ", until opening", run.untilOpening());
              run.energy()
                  .lines()
                  .forEach(
                      line ->
                          put(
                              name + ", energy: " + line.use() + " " + line.subject(),
                              line.energy()));
            });
    put(name + ", core's peak", stage.core().corePeak());
    put(name + ", greatest lag", stage.core().greatestLag().lag());
    stage
        .oxygen()
        .ifPresent(
            budget -> {
              put(name + ", carbon needed", budget.carbonNeeded());
              put(name + ", carbon monoxide", budget.carbonMonoxide().mass());
              put(name + ", oxygen too slow", budget.tooSlow());
            });
  }

  private void statement(StatementFigures statement) {
    account(statement.firstPart());
    account(statement.secondPart());
    account(statement.lastPart());
    account(statement.allParts());
    account(statement.usage());
    account(statement.leftovers());
    put("average of all parts", money(statement.average().exact()));
    put("average less leftovers", money(statement.averageLessLeftovers().exact()));
    put("first shopping list", money(statement.firstShoppingList().total().exact()));
    put("shopping list", money(statement.shoppingList().total().exact()));
    statement.stocks().forEach(this::stock);
    statement
        .nextPurchase()
        .ifPresent(next -> put("next purchase", "part " + next.part() + ", " + next.items()));
    statement.caveats().forEach(caveat -> put("caveat", caveat.code().toString()));
  }

  private void account(AccountFigures account) {
    put(account.title(), money(account.total().exact()));
    for (LineFigures line : account.lines()) {
      put(
          account.title() + ", " + line.item() + " " + line.entry().toString(),
          number(line.packs()) + " at " + money(line.price()) + " = " + money(line.amount()));
    }
    for (SurchargeFigures surcharge : account.surcharges()) {
      put(account.title() + ", " + surcharge.title(), money(surcharge.amount()));
    }
  }

  private void stock(Stock stock) {
    put("left of " + stock.item(), stock.left());
    stock.nextPurchase().ifPresent(part -> put("next " + stock.item(), "part " + part));
  }
}
