package dev.kilnledger.examples.guide;

import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.TradeUnits.GRAM;
import static dev.kilnledger.units.TradeUnits.METRE;
import static dev.kilnledger.units.TradeUnits.MINUTE;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.gcode.GCodeReader;
import dev.kilnledger.core.gcode.PrintProgramme;
import dev.kilnledger.core.gcode.ToolUse;
import dev.kilnledger.core.gcode.UnreadLine;
import dev.kilnledger.core.material.Feedstock;
import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.core.reading.ByteSource;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** The program of the guide to print programmes. */
public final class PrintProgrammes {
  private PrintProgrammes() {}

  /**
   * Prints what the guide shows.
   *
   * @param arguments the print programme
   * @throws IOException if it cannot be read
   */
  public static void main(String[] arguments) throws IOException {
    if (arguments.length != 1) {
      throw new IllegalArgumentException(
          arguments.length + " arguments; accepted is one: the print programme");
    }
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    // spotless:off
    Path file = Path.of(arguments[0]);
    PrintProgramme programme = GCodeReader.standard().read(ByteSource.of(file));
    out.println(programme.lines() + " lines, " + programme.unreadLines() + " not understood");
    out.println("filament: " + programme.netFilament().format(METRE, 3));
    out.println("prints for more than " + programme.leastTime().format(MINUTE, 1));
    programme.extent().ifPresent(extent -> out.println(extent.envelope().format()));
    // spotless:on
    metal(programme, out);
    doubts(programme, out);
  }

  private static void metal(PrintProgramme programme, PrintStream out) {
    // spotless:off
    Feedstock copper = MaterialLibrary.standard().feedstock("copper in polylactide, generic");
    ToolUse tool = programme.tools().get(0);
    out.println("green: " + tool.mass(copper, millimetres(1.75)).format(GRAM, 2));
    // spotless:on
  }

  private static void doubts(PrintProgramme programme, PrintStream out) {
    // spotless:off
    for (UnreadLine line : programme.firstUnreadLines()) {
      out.println("line " + line.number() + ": " + line.reason());
    }
    for (Finding finding : programme.findings()) {
      out.println(finding.severity() + " " + finding.message());
    }
    out.println("passed over: " + programme.passedOver());
    // spotless:on
  }
}
