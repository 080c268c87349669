// What a session starts with: every package, the units, and show(...) and csv(...).
import java.io.*;
import java.math.*;
import java.nio.file.*;
import java.time.*;
import java.util.*;
import java.util.function.*;
import java.util.stream.*;
import org.joda.money.*;

import dev.kilnledger.units.*;
import dev.kilnledger.units.quantity.*;
import dev.kilnledger.core.document.*;
import dev.kilnledger.core.equipment.*;
import dev.kilnledger.core.explanation.*;
import dev.kilnledger.core.finding.*;
import dev.kilnledger.core.firing.*;
import dev.kilnledger.core.gcode.*;
import dev.kilnledger.core.material.*;
import dev.kilnledger.core.mesh.*;
import dev.kilnledger.core.part.*;
import dev.kilnledger.core.progress.*;
import dev.kilnledger.core.reading.*;
import dev.kilnledger.core.source.*;
import dev.kilnledger.thermal.atmosphere.*;
import dev.kilnledger.thermal.burnout.*;
import dev.kilnledger.thermal.chance.*;
import dev.kilnledger.thermal.check.*;
import dev.kilnledger.thermal.conduction.*;
import dev.kilnledger.thermal.densification.*;
import dev.kilnledger.thermal.design.*;
import dev.kilnledger.thermal.document.*;
import dev.kilnledger.thermal.energy.*;
import dev.kilnledger.thermal.firing.*;
import dev.kilnledger.thermal.kiln.*;
import dev.kilnledger.thermal.kinetics.*;
import dev.kilnledger.thermal.load.*;
import dev.kilnledger.thermal.profile.*;
import dev.kilnledger.costing.accounting.*;
import dev.kilnledger.costing.breakeven.*;
import dev.kilnledger.costing.comparison.*;
import dev.kilnledger.costing.document.*;
import dev.kilnledger.costing.explanation.*;
import dev.kilnledger.costing.job.*;
import dev.kilnledger.costing.ledger.*;
import dev.kilnledger.costing.offer.*;
import dev.kilnledger.costing.outfit.*;
import dev.kilnledger.costing.purchase.*;
import dev.kilnledger.costing.quote.*;
import dev.kilnledger.costing.resource.*;
import dev.kilnledger.costing.uncertainty.*;
import dev.kilnledger.costing.yield.*;
import dev.kilnledger.examples.*;
import dev.kilnledger.examples.sheet.*;

// Names that stand in two packages: the one that is asked for more often.
import dev.kilnledger.core.part.Stage;
import dev.kilnledger.costing.uncertainty.BudgetLine;

import static dev.kilnledger.examples.sheet.Session.*;
import static dev.kilnledger.examples.sheet.Sheets.*;
import static dev.kilnledger.units.Amounts.*;
import static dev.kilnledger.units.TradeUnits.*;
import static org.joda.money.CurrencyUnit.*;

MaterialLibrary library = MaterialLibrary.standard();
