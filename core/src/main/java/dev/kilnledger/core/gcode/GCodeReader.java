package dev.kilnledger.core.gcode;

import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.core.finding.Severity.WARNING;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.progress.Progress;
import dev.kilnledger.core.reading.ByteSource;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Length;

/**
 * Reads what a print programme extrudes, line by line, in constant memory.
 *
 * <p>Understood are motion (G0 to G3 in the planes G17 to G19, G4), units (G20, G21), absolute and
 * relative positions (G90, G91, G92, homing by G28), all after NIST RS274/NGC and ISO 6983, and by
 * the custom of extruding machines M82, M83, T and E. Line numbers and checksums are checked.
 * Everything else is passed over and counted. A line that cannot be understood moves nothing and is
 * told with its number; where that leaves a doubt, a finding says so.
 *
 * <p>Net filament is what is fed beyond where it was ever fed before: feeding after a retraction
 * only makes it good. Example: {@code G21 M83 / G1 X0 Y0 Z0.2 F1200 / G1 X10 E0.5 / G1 E-2 / G1 E2
 * / G1 X20 E0.5}, a line each, is 1 mm of filament from 0 to 20 mm, and takes 1.2 s at least: 20 mm
 * of way and 4 mm of filament at 20 mm/s.
 */
public final class GCodeReader {
  private static final int MOST_LINES_TOLD = 100;
  private static final int LONGEST_BEGINNING = 60;
  private static final Source STANDARD =
      Source.quoted("NIST RS274/NGC, Kramer, Proctor and Messina (2000); ISO 6983");
  private static final Source CUSTOM =
      Source.commonPractice("extruding machines start in millimetres, with M82 and E at zero");
  private static final GCodeReader STANDARD_READER =
      new GCodeReader(Amounts.millimetres(1), ExtrusionMode.ABSOLUTE);

  private final Amount<Length> unit;
  private final ExtrusionMode mode;

  /**
   * A reader for machines that start in another state than usual.
   *
   * @param unit what a 1 means before G20 or G21 say it: 1 mm or 1 inch
   * @param mode what E means before M82 or M83 say it
   */
  public GCodeReader(Amount<Length> unit, ExtrusionMode mode) {
    this.unit = unit;
    this.mode = mode;
  }

  /** {@return a reader for machines that start in millimetres and absolute extrusion} */
  public static GCodeReader standard() {
    return STANDARD_READER;
  }

  /**
   * Reads a programme.
   *
   * @param source the programme
   * @return what it extrudes
   * @throws IOException if the bytes cannot be read; no programme is refused for what it holds
   */
  public PrintProgramme read(ByteSource source) throws IOException {
    return read(source, Progress.unheard());
  }

  /**
   * Reads a programme and tells how far it has come. If the thread is interrupted the reading stops
   * and the answer holds what was read so far, not {@linkplain PrintProgramme#complete() complete}.
   *
   * @param source the programme
   * @param progress hears how far it has come, where the size of the source is known
   * @return what it extrudes
   * @throws IOException if the bytes cannot be read; no programme is refused for what it holds
   */
  public PrintProgramme read(ByteSource source, Progress progress) throws IOException {
    long size = source.size();
    Machine machine = new Machine(unit.in(TradeUnits.MILLIMETRE), mode);
    Block block = new Block();
    Words passedOver = new Words();
    List<UnreadLine> unread = new ArrayList<>();
    long lines = 0;
    long comments = 0;
    long unreadLines = 0;
    boolean complete = true;
    try (InputStream in = source.open()) {
      LineReader reader = new LineReader(in);
      long told = 0;
      while (reader.advance()) {
        lines++;
        block.parse(reader.buffer(), reader.start());
        reader.endAt(block.end());
        String problem;
        if (reader.tooLong()) {
          problem = "longer than " + LineReader.LONGEST_LINE + " characters";
        } else {
          comments += block.comments();
          problem = block.problem();
          String name = block.passedOver();
          if (name != null) {
            passedOver.count(name);
          } else if (problem == null) {
            problem = machine.run(block, passedOver);
          }
        }
        if (problem != null) {
          unreadLines++;
          if (unread.size() < MOST_LINES_TOLD) {
            unread.add(UnreadLine.of(lines, beginning(reader), problem));
          }
        }
        if (reader.bytesRead() != told) {
          told = reader.bytesRead();
          if (size > 0) {
            progress.at(Math.min(1, (double) told / size));
          }
          if (Thread.currentThread().isInterrupted()) {
            complete = false;
            break;
          }
        }
      }
    }
    return PrintProgramme.builder()
        .complete(complete)
        .lines(lines)
        .comments(comments)
        .tools(tools(machine))
        .extent(machine.extent().extent())
        .firstLayer(machine.firstLayer().extent())
        .leastTime(Amounts.seconds(machine.seconds()))
        .passedOver(passedOver.counts())
        .unreadLines(unreadLines)
        .firstUnreadLines(unread)
        .findings(findings(machine, unreadLines, unread, complete))
        .build();
  }

  private static List<ToolUse> tools(Machine machine) {
    List<ToolUse> tools = new ArrayList<>();
    machine
        .filaments()
        .forEach(
            (number, filament) -> {
              if (filament.net() > 0) {
                tools.add(
                    ToolUse.builder()
                        .tool(number)
                        .netFilament(Amounts.millimetres(filament.net()))
                        .retractions(filament.retractions())
                        .drawnBack(Amounts.millimetres(filament.drawnBack()))
                        .build());
              }
            });
    return tools;
  }

  private static String beginning(LineReader reader) {
    int length = Math.min(LONGEST_BEGINNING, reader.stop() - reader.start());
    StringBuilder text = new StringBuilder(length);
    for (int i = 0; i < length; i++) {
      char c = (char) (reader.buffer()[reader.start() + i] & 0xff);
      text.append(c >= ' ' && c < 127 ? c : '?');
    }
    return text.toString();
  }

  private List<Finding> findings(
      Machine machine, long unreadLines, List<UnreadLine> unread, boolean complete) {
    String subject = "print programme";
    List<Finding> findings = new ArrayList<>();
    findings.add(
        GCodeFinding.LINES_UNDERSTOOD
            .about(subject)
            .severity(complete && unreadLines == 0 ? PASSED : WARNING)
            .message(
                !complete
                    ? "the reading was interrupted: all figures are of its beginning only"
                    : unreadLines == 0
                        ? "every line is understood, or passed over as nothing of motion"
                        : "lines that could not be understood: "
                            + unreadLines
                            + ", the first is line "
                            + unread.get(0).number()
                            + " ("
                            + unread.get(0).reason()
                            + "); they are not counted")
            .measured(Amounts.ratio((double) unreadLines))
            .basis(STANDARD)
            .build());
    findings.add(
        GCodeFinding.LENGTH_UNIT_STATED
            .about(subject)
            .severity(machine.unitAssumed() ? NOTE : PASSED)
            .message(
                machine.unitAssumed()
                    ? "neither G20 nor G21 says the unit; a 1 is taken to be " + unit
                    : "the unit is stated")
            .basis(CUSTOM)
            .build());
    findings.add(
        GCodeFinding.EXTRUSION_MODE_STATED
            .about(subject)
            .severity(machine.modeAssumed() ? NOTE : PASSED)
            .message(
                machine.modeAssumed()
                    ? "E stands where neither M82 nor M83 has said what it means; it is taken as "
                        + (mode == ExtrusionMode.ABSOLUTE
                            ? "a position, or as a way under G91"
                            : "a way")
                    : "what E means is stated")
            .basis(CUSTOM)
            .build());
    findings.add(
        GCodeFinding.EXTRUSION_START_SET
            .about(subject)
            .severity(machine.startAssumed() ? NOTE : PASSED)
            .message(
                machine.startAssumed()
                    ? "the filament's position is used before G92 has set it; it is taken to start"
                        + " at zero"
                    : "the filament's position is set, or not needed")
            .basis(CUSTOM)
            .build());
    findings.add(
        GCodeFinding.MOTION_TIMED
            .about(subject)
            .severity(machine.untimed() == 0 ? PASSED : NOTE)
            .message(
                machine.untimed() == 0
                    ? "the least time holds every motion"
                    : "motions without a feed rate or from an unknown position, not in the least"
                        + " time: "
                        + machine.untimed())
            .measured(Amounts.ratio((double) machine.untimed()))
            .basis(STANDARD)
            .build());
    findings.add(
        GCodeFinding.EXTENT_COMPLETE
            .about(subject)
            .severity(machine.nowhere() == 0 ? PASSED : UNDETERMINED)
            .message(
                machine.nowhere() == 0
                    ? "all that is extruded lies within the extent"
                    : "motions that extrude at an unknown position, not in the extent: "
                        + machine.nowhere())
            .measured(Amounts.ratio((double) machine.nowhere()))
            .basis(STANDARD)
            .build());
    return findings;
  }
}
