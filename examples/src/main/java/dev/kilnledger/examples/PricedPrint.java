package dev.kilnledger.examples;

import static dev.kilnledger.units.TradeUnits.GRAM;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static dev.kilnledger.units.TradeUnits.METRE;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.gcode.GCodeReader;
import dev.kilnledger.core.gcode.PrintProgramme;
import dev.kilnledger.core.gcode.ToolUse;
import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.core.part.MassBalancePassage;
import dev.kilnledger.core.part.Part;
import dev.kilnledger.core.part.Passage;
import dev.kilnledger.core.part.PerAxis;
import dev.kilnledger.core.reading.ByteSource;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.costing.job.Job;
import dev.kilnledger.costing.job.JobAnswer;
import dev.kilnledger.costing.job.WholeJob;
import dev.kilnledger.costing.ledger.Statement;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;

/**
 * Runs after a print programme has been written: reads how much it extrudes, prices the part that
 * comes of it in the window workshop, holds it against kiln and profile, and writes the programme
 * again with comments of its own in front. Everything else stays as it was, byte for byte.
 */
public final class PricedPrint {
  private static final String MARK = "; kilnledger: ";

  private PricedPrint() {}

  /**
   * Prices a print programme.
   *
   * @param arguments the programme, where to write it, and the thickest section of the finished
   *     part in millimetres, which no programme tells
   * @throws IOException if a file cannot be read or written
   */
  public static void main(String[] arguments) throws IOException {
    if (arguments.length != 3) {
      throw new IllegalArgumentException(
          arguments.length
              + " arguments; accepted are three: the programme, where to write it, the thickest"
              + " section in mm");
    }
    Amount<Length> section = Amounts.millimetres(Double.parseDouble(arguments[2]));
    write(Path.of(arguments[0]), Path.of(arguments[1]), section);
  }

  /** Writes a programme with what it costs and what was found in front. */
  static void write(Path from, Path to, Amount<Length> thickestSection) throws IOException {
    PrintProgramme programme = GCodeReader.standard().read(ByteSource.of(from));
    Job job = job(programme, WindowWorkshop.latchCams(2), thickestSection);
    String end = lineEnd(from);
    try (OutputStream out = Files.newOutputStream(to)) {
      for (String line : comments(programme, WholeJob.standard().answer(job))) {
        out.write((MARK + line + end).getBytes(StandardCharsets.UTF_8));
      }
      Files.copy(from, out);
    }
  }

  /** The workshop's job for the part that is printed: all that the first tool extrudes. */
  static Job job(PrintProgramme programme, Job workshop, Amount<Length> thickestSection) {
    if (programme.tools().size() != 1) {
      throw new IllegalArgumentException(
          programme.tools().size() + " tools extrude; accepted is one, with the metal's filament");
    }
    ToolUse use = programme.tools().get(0);
    Amount<Length> bore = workshop.printer().nozzle().bore();
    Envelope extent = programme.extent().orElseThrow().envelope();
    Envelope green =
        Envelope.of(
            extent.x().add(bore), extent.y().add(bore), programme.extent().orElseThrow().highZ());
    PerAxis<Estimate<Dimensionless>> oversize = passage(workshop, workshop.part()).oversize();
    Part part =
        Part.builder()
            .name("printed part")
            .finishedMass(
                use.mass(workshop.feedstock(), workshop.printer().filamentDiameter())
                    .multiply(workshop.feedstock().metalMassFraction().si()))
            .envelope(
                Envelope.of(
                    green.x().divide(oversize.x().expected().si()),
                    green.y().divide(oversize.y().expected().si()),
                    green.z().divide(oversize.z().expected().si())))
            .thickestSection(thickestSection)
            .build();
    return Job.builder().from(workshop).part(part).build();
  }

  private static Passage passage(Job job, Part part) {
    return MassBalancePassage.standard().passage(part, job.feedstock(), job.conditions());
  }

  private static List<String> comments(PrintProgramme programme, JobAnswer answer) {
    Statement cost = answer.statement();
    List<String> lines = new ArrayList<>();
    lines.add(
        "filament "
            + answer.passage().filamentMass().format(GRAM, 1)
            + ", "
            + programme.netFilament().format(METRE, 2)
            + "; prints for more than "
            + programme.leastTime().format(HOUR, 2));
    lines.add(
        "first part "
            + cost.money(cost.firstPart().total())
            + ", second "
            + cost.money(cost.secondPart().total())
            + ", in the long run "
            + cost.money(cost.usage().total())
            + " (invented prices)");
    programme.findings().stream().filter(PricedPrint::matters).forEach(f -> lines.add(told(f)));
    answer.findings().stream().filter(PricedPrint::matters).forEach(f -> lines.add(told(f)));
    lines.add("local codes, safety data sheets and licensed practice decide");
    return lines;
  }

  private static boolean matters(Finding finding) {
    return finding.severity().compareTo(Severity.UNDETERMINED) >= 0;
  }

  private static String told(Finding finding) {
    return finding.severity() + " " + finding.subject() + ": " + finding.message();
  }

  /** The end of the programme's first line, so that the comments end alike. */
  private static String lineEnd(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      byte[] start = in.readNBytes(1 << 16);
      for (int i = 0; i < start.length; i++) {
        if (start[i] == '\n') {
          return i > 0 && start[i - 1] == '\r' ? "\r\n" : "\n";
        }
      }
      return "\n";
    }
  }
}
