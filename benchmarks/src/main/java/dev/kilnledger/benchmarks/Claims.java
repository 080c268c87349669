package dev.kilnledger.benchmarks;

import java.util.List;

/** What each part of the library has to reach. */
final class Claims {
  private Claims() {}

  /** The rows, in the order of the modules. */
  static final List<Claim> ALL =
      List.of(
          new Claim(
              "amount, create: from a number of grams, against a record of a double",
              "AmountBenchmark.createAmount",
              "AmountBenchmark.createRecord",
              3),
          new Claim(
              "amount, create: from a number of grams, against the quantities of the reference implementation",
              "AmountBenchmark.createAmount",
              "AmountBenchmark.createQuantity",
              1.0 / 50),
          new Claim(
              "amount, convert: kilograms to gram, against a record of a double",
              "AmountBenchmark.convertAmount",
              "AmountBenchmark.convertRecord",
              3),
          new Claim(
              "amount, convert: kilograms to gram, against the quantities of the reference implementation",
              "AmountBenchmark.convertAmount",
              "AmountBenchmark.convertQuantity",
              1.0 / 50),
          new Claim(
              "amount, read: kilograms in gram, against a record of a double",
              "AmountBenchmark.readAmount",
              "AmountBenchmark.readRecord",
              3),
          new Claim(
              "amount, read: kilograms in gram, against the quantities of the reference implementation",
              "AmountBenchmark.readAmount",
              "AmountBenchmark.readQuantity",
              1.0 / 50),
          new Claim(
              "amount, add: two masses, against a record of a double",
              "AmountBenchmark.addAmount",
              "AmountBenchmark.addRecord",
              3),
          new Claim(
              "amount, add: two masses, against the quantities of the reference implementation",
              "AmountBenchmark.addAmount",
              "AmountBenchmark.addQuantity",
              1.0 / 50),
          new Claim(
              "amount, compare: gram with kilogram, against a record of a double",
              "AmountBenchmark.compareAmount",
              "AmountBenchmark.compareRecord",
              3),
          new Claim(
              "amount, compare: gram with kilogram, against the quantities of the reference implementation",
              "AmountBenchmark.compareAmount",
              "AmountBenchmark.compareQuantity",
              1.0 / 50),
          new Claim(
              "amount, chain: volume to mass, one gram added, against a record of a double",
              "AmountBenchmark.chainAmount",
              "AmountBenchmark.chainRecord",
              3),
          new Claim(
              "amount, chain: volume to mass, one gram added, against the quantities of the reference implementation",
              "AmountBenchmark.chainAmount",
              "AmountBenchmark.chainQuantity",
              1.0 / 50),
          new Claim(
              "part passage from typed input, against the same formulas on doubles",
              "PassageBenchmark.passage",
              "PassageBenchmark.doubles",
              5),
          new Claim(
              "fresh JVM to first printed result, against an empty main and a second",
              "StartupBenchmark.firstProgram",
              "StartupBenchmark.emptyMainAfterOneSecond",
              1),
          new Claim(
              "burn-out and densification integrals of 30 h, against an adaptive integrator",
              "ProfileIntegralsBenchmark.closedForm",
              "ProfileIntegralsBenchmark.integrator",
              1.0 / 20),
          new Claim(
              "the same against adaptive quadrature",
              "ProfileIntegralsBenchmark.closedForm",
              "ProfileIntegralsBenchmark.quadrature",
              1.0 / 20),
          new Claim(
              "conduction over 30 h to 0.5 K, against a stiff method on the same cells",
              "ConductionBenchmark.finiteVolumes",
              "ConductionBenchmark.stiffIntegrator",
              1.0 / 3),
          new Claim(
              "the same against an explicit adaptive method",
              "ConductionBenchmark.finiteVolumes",
              "ConductionBenchmark.explicitIntegrator",
              1.0 / 10),
          new Claim(
              "conduction by eigenmodes against finite volumes of larger error",
              "EigenmodeBenchmark.eigenmodes",
              "EigenmodeBenchmark.finiteVolumes",
              1.0 / 100),
          new Claim(
              "ledger: statement of parts 1, 2 and 1,000, against decimals written for the plan",
              "LedgerBenchmark.statementOfThousand",
              "LedgerBenchmark.byHandOfThousand",
              3),
          new Claim(
              "the statement of 1,000,000 parts against that of 1,000",
              "LedgerBenchmark.statementOfMillion",
              "LedgerBenchmark.statementOfThousand",
              5),
          new Claim(
              "purchase plan: 20 offers, need of 100,000, against an integer solver",
              "PurchaseBenchmark.planner",
              "PurchaseBenchmark.integerSolver",
              1),
          new Claim(
              "Monte Carlo: 100,000 trials on one core against one loop over doubles",
              "MonteCarloBenchmark.oneThread",
              "MonteCarloBenchmark.byHand",
              3),
          new Claim(
              "the same by two threads against one, on two cores or more",
              "MonteCarloBenchmark.twoThreads",
              "MonteCarloBenchmark.oneThread",
              0.65),
          new Claim(
              "print programme read and run, against making words of its bytes",
              "PrintProgrammeBenchmark.programme",
              "PrintProgrammeBenchmark.words",
              1.5),
          new Claim(
              "STL of 1,000,000 facets: volume, area, box, closed, against the sums alone",
              "MeshBenchmark.size",
              "MeshBenchmark.sums",
              2),
          new Claim(
              "catalogue of 1,000 rows, against one job in a loop",
              "CatalogueBenchmark.batch",
              "CatalogueBenchmark.loop",
              1.5));
}
