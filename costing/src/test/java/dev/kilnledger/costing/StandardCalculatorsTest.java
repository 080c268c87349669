package dev.kilnledger.costing;

import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.costing.accounting.CapitalRecovery;
import dev.kilnledger.costing.accounting.DecliningBalanceDepreciation;
import dev.kilnledger.costing.accounting.StraightLineDepreciation;
import dev.kilnledger.costing.accounting.UnitsOfProductionDepreciation;
import dev.kilnledger.costing.breakeven.BreakEven;
import dev.kilnledger.costing.breakeven.Substitution;
import dev.kilnledger.costing.comparison.JobComparer;
import dev.kilnledger.costing.comparison.StatementComparer;
import dev.kilnledger.costing.document.JobDesk;
import dev.kilnledger.costing.document.PriceListCsv;
import dev.kilnledger.costing.explanation.CrossingExplainer;
import dev.kilnledger.costing.explanation.PurchaseExplainer;
import dev.kilnledger.costing.explanation.QuoteExplainer;
import dev.kilnledger.costing.explanation.StatementExplainer;
import dev.kilnledger.costing.job.JobExplainer;
import dev.kilnledger.costing.job.WholeJob;
import dev.kilnledger.costing.ledger.Ledger;
import dev.kilnledger.costing.ledger.RandomYields;
import dev.kilnledger.costing.offer.PriceCheck;
import dev.kilnledger.costing.purchase.EconomicOrderQuantity;
import dev.kilnledger.costing.purchase.PurchasePlanner;
import dev.kilnledger.costing.purchase.WagnerWhitin;
import dev.kilnledger.costing.quote.CostPlusQuoter;
import dev.kilnledger.costing.quote.LargestRemainder;
import dev.kilnledger.costing.uncertainty.FirstOrder;
import dev.kilnledger.costing.uncertainty.MonteCarlo;
import dev.kilnledger.costing.uncertainty.OneAtATime;
import dev.kilnledger.costing.uncertainty.SobolAnalysis;
import dev.kilnledger.costing.yield.BinomialYield;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is ready for everybody needs nothing stated to be there. */
class StandardCalculatorsTest {
  static Stream<Supplier<Object>> standards() {
    return Stream.of(
        CapitalRecovery::standard,
        DecliningBalanceDepreciation::standard,
        StraightLineDepreciation::standard,
        UnitsOfProductionDepreciation::standard,
        BreakEven::standard,
        Substitution::standard,
        JobComparer::standard,
        StatementComparer::standard,
        JobDesk::standard,
        PriceListCsv::standard,
        CrossingExplainer::standard,
        PurchaseExplainer::standard,
        QuoteExplainer::standard,
        StatementExplainer::standard,
        JobExplainer::standard,
        WholeJob::standard,
        Ledger::standard,
        RandomYields::standard,
        PriceCheck::standard,
        EconomicOrderQuantity::standard,
        PurchasePlanner::standard,
        WagnerWhitin::standard,
        CostPlusQuoter::standard,
        LargestRemainder::standard,
        FirstOrder::standard,
        MonteCarlo::standard,
        OneAtATime::standard,
        SobolAnalysis::standard,
        BinomialYield::standard);
  }

  @ParameterizedTest
  @MethodSource("standards")
  void areReadyForEverybody(Supplier<Object> standard) {
    assertThat(standard.get()).isNotNull().hasSameClassAs(standard.get());
  }
}
