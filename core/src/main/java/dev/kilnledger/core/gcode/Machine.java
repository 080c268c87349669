package dev.kilnledger.core.gcode;

import static dev.kilnledger.core.gcode.GCodes.ABSOLUTE;
import static dev.kilnledger.core.gcode.GCodes.COUNTERCLOCKWISE;
import static dev.kilnledger.core.gcode.GCodes.DWELL;
import static dev.kilnledger.core.gcode.GCodes.EXTRUDE_ABSOLUTE;
import static dev.kilnledger.core.gcode.GCodes.EXTRUDE_RELATIVE;
import static dev.kilnledger.core.gcode.GCodes.EXTRUDE_VOLUME;
import static dev.kilnledger.core.gcode.GCodes.HOME;
import static dev.kilnledger.core.gcode.GCodes.INCHES;
import static dev.kilnledger.core.gcode.GCodes.MILLIMETRES;
import static dev.kilnledger.core.gcode.GCodes.PLANE_XY;
import static dev.kilnledger.core.gcode.GCodes.PLANE_YZ;
import static dev.kilnledger.core.gcode.GCodes.PLANE_ZX;
import static dev.kilnledger.core.gcode.GCodes.RELATIVE;
import static dev.kilnledger.core.gcode.GCodes.SET_POSITION;

import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * A machine that runs blocks and keeps count of what it extrudes, in millimetres and seconds. A
 * position that nobody has told is not a number.
 */
final class Machine {
  private static final int MOST_TOOLS = 256;
  private static final int NONE = -1;

  /** For the planes XY, ZX and YZ: the axes of the plane and the one across it. */
  private static final int[][] PLANES = {{0, 1, 2}, {2, 0, 1}, {1, 2, 0}};

  private final double[] position = {Double.NaN, Double.NaN, Double.NaN};
  private final double[] target = new double[3];
  private final Map<Integer, Filament> filaments = new TreeMap<>();
  private final Arc arc = new Arc();
  private final Bounds extent = new Bounds();
  private boolean positionCounts; // the extent holds the position
  private final Bounds firstLayer = new Bounds();
  private double firstHeight = Double.POSITIVE_INFINITY;
  private Filament filament = new Filament();
  private double millimetres;
  private boolean unitStated;
  private boolean relative;
  private boolean extrudeRelative;
  private boolean modeStated;
  private boolean modeAssumed;
  private double extruded;
  private boolean startSet;
  private boolean startAssumed;
  private int[] plane = PLANES[0];
  private int motion = NONE;
  private double feed = Double.NaN;
  private double seconds;
  private boolean lengths;
  private long untimed;
  private long nowhere;

  Machine(double millimetres, ExtrusionMode mode) {
    this.millimetres = millimetres;
    this.extrudeRelative = mode == ExtrusionMode.RELATIVE;
    filaments.put(0, filament);
  }

  /** Runs a block; answers why it cannot, and then nothing has moved, or null. */
  @Nullable String run(Block block, Words passedOver) {
    int moving = NONE;
    boolean otherThanMotion = false;
    boolean otherCode = false;
    boolean setting = false;
    boolean dwelling = false;
    boolean homing = false;
    for (int i = 0; i < block.codeCount(); i++) {
      int code = block.code(i);
      if (GCodes.isMotion(code)) {
        if (moving != NONE) {
          return "two motions in one line; accepted is one";
        }
        moving = code;
      } else if (code == EXTRUDE_VOLUME) {
        return "M200 makes E a volume; accepted is filament as a length";
      } else {
        otherThanMotion = true;
        otherCode |= !GCodes.isKnown(code);
        setting |= code == SET_POSITION;
        dwelling |= code == DWELL;
        homing |= code == HOME;
      }
    }
    if (moving == NONE && block.hasAxes() && !otherCode && !setting && !homing) {
      if (motion == NONE) {
        return "axis words without a motion; accepted is one of G0 to G3 before them";
      }
      moving = motion;
    }
    if (moving == NONE && otherCode && block.has('E')) {
      return "an E with a code that is not known; accepted is one of G0 to G3 and G92";
    }
    if (moving != NONE && setting) {
      return "G92 and a motion in one line; accepted is one of them";
    }
    if (block.has('T') && !chooses(block.value('T'))) {
      return "there is no tool of that number; accepted are "
          + MOST_TOOLS
          + " tools of whole numbers from 0 up";
    }
    if (otherThanMotion) {
      setModes(block, passedOver);
    }
    if (block.has('F')) {
      feed = block.value('F') * millimetres / 60;
    }
    if (dwelling) {
      // Extruding machines take P as milliseconds; seconds, as in RS274/NGC, would be longer.
      double wait =
          block.has('S') ? block.value('S') : block.has('P') ? block.value('P') / 1000 : 0;
      seconds += Math.max(0, wait);
    }
    if (homing) {
      home(block);
    } else if (setting) {
      set(block);
    } else if (moving != NONE) {
      motion = moving;
      return move(block);
    }
    return null;
  }

  private boolean chooses(double tool) {
    Integer number = (int) tool;
    if (tool < 0 || tool != number) {
      return false;
    }
    Filament chosen = filaments.get(number);
    if (chosen == null) {
      if (filaments.size() == MOST_TOOLS) {
        return false;
      }
      chosen = new Filament();
      filaments.put(number, chosen);
    }
    filament = chosen;
    return true;
  }

  private void setModes(Block block, Words passedOver) {
    for (int i = 0; i < block.codeCount(); i++) {
      int code = block.code(i);
      switch (code) {
        case INCHES, MILLIMETRES -> {
          millimetres = code == INCHES ? 25.4 : 1;
          unitStated = true;
        }
        case ABSOLUTE, RELATIVE -> relative = code == RELATIVE;
        case EXTRUDE_ABSOLUTE, EXTRUDE_RELATIVE -> {
          extrudeRelative = code == EXTRUDE_RELATIVE;
          modeStated = true;
        }
        case PLANE_XY -> plane = PLANES[0];
        case PLANE_ZX -> plane = PLANES[1];
        case PLANE_YZ -> plane = PLANES[2];
        default -> {
          if (!GCodes.isKnown(code)) {
            passedOver.count(Block.codeName(code));
          }
        }
      }
    }
  }

  private void home(Block block) {
    boolean all = !block.has('X') && !block.has('Y') && !block.has('Z');
    for (int axis = 0; axis < 3; axis++) {
      if (all || block.has(axis(axis))) {
        position[axis] = Double.NaN;
      }
    }
  }

  private void set(Block block) {
    positionCounts = false;
    boolean all = !block.hasAxes();
    for (int axis = 0; axis < 3; axis++) {
      if (all || block.has(axis(axis))) {
        position[axis] = all ? 0 : block.value(axis(axis)) * millimetres;
        lengths = true;
      }
    }
    if (all || block.has('E')) {
      extruded = all ? 0 : block.value('E') * millimetres;
      startSet = true;
    }
  }

  private @Nullable String move(Block block) {
    lengths |= block.hasAxes();
    double squares = 0;
    for (int axis = 0; axis < 3; axis++) {
      double by = 0;
      target[axis] = position[axis];
      if (block.has(axis(axis))) {
        double value = block.value(axis(axis)) * millimetres;
        target[axis] = relative ? position[axis] + value : value;
        by = relative ? value : value - position[axis];
      }
      squares += by * by;
    }
    double way = Math.sqrt(squares);
    boolean curved = GCodes.isArc(motion);
    if (curved) {
      if (!bend(block)) {
        return "no arc leads to that end; accepted are offsets I, J, K or a radius R that fit, from"
            + " a known position";
      }
      double climb = target[plane[2]] - position[plane[2]];
      way = Math.sqrt(arc.length() * arc.length() + climb * climb);
    }
    double feeding = feeding(block);
    boolean leaves = feeding != 0 && filament.move(feeding);
    double length = way == 0 ? Math.abs(feeding) : way;
    if (feed > 0 && length > 0) {
      seconds += length / feed;
    } else if (length != 0) {
      untimed++;
    }
    if (leaves && way != 0) {
      extrude(curved);
    } else {
      positionCounts &= way == 0;
    }
    position[0] = target[0];
    position[1] = target[1];
    position[2] = target[2];
    return null;
  }

  /** Lays the arc of a block; false if none leads there. */
  private boolean bend(Block block) {
    double x = position[plane[0]];
    double y = position[plane[1]];
    double toX = target[plane[0]];
    double toY = target[plane[1]];
    boolean ccw = motion == COUNTERCLOCKWISE;
    if (Double.isNaN(x + y + toX + toY)) {
      return false;
    }
    if (block.has('R')) {
      return arc.of(x, y, toX, toY, block.value('R') * millimetres, ccw);
    }
    return arc.about(x, y, toX, toY, offset(block, plane[0]), offset(block, plane[1]), ccw);
  }

  private double offset(Block block, int axis) {
    char letter = (char) ('I' + axis);
    return block.has(letter) ? block.value(letter) * millimetres : 0;
  }

  private static char axis(int axis) {
    return (char) ('X' + axis);
  }

  /** How far the block moves the filament. */
  private double feeding(Block block) {
    if (!block.has('E')) {
      return 0;
    }
    // All axes alike in the standard, until a word of its own is there for the filament.
    boolean byItself = modeStated ? extrudeRelative : extrudeRelative || relative;
    modeAssumed |= !modeStated;
    double value = block.value('E') * millimetres;
    if (byItself) {
      extruded += value;
      return value;
    }
    startAssumed |= !startSet;
    double feeding = value - extruded;
    extruded = value;
    return feeding;
  }

  private void extrude(boolean curved) {
    double sum = position[0] + position[1] + position[2] + target[0] + target[1] + target[2];
    if (Double.isNaN(sum)) {
      nowhere++;
      positionCounts = false;
      return;
    }
    include(extent, !positionCounts, curved);
    positionCounts = true;
    if (position[2] == target[2] && target[2] <= firstHeight) {
      if (target[2] < firstHeight) {
        firstHeight = target[2];
        firstLayer.clear();
      }
      include(firstLayer, true, curved);
    }
  }

  private void include(Bounds bounds, boolean withStart, boolean curved) {
    if (withStart) {
      bounds.include(position[0], position[1], position[2]);
    }
    bounds.include(target[0], target[1], target[2]);
    if (curved) {
      arc.include(bounds, plane[0], plane[1]);
    }
  }

  Map<Integer, Filament> filaments() {
    return filaments;
  }

  Bounds extent() {
    return extent;
  }

  Bounds firstLayer() {
    return firstLayer;
  }

  double seconds() {
    return seconds;
  }

  /** Lengths came before or without a unit. */
  boolean unitAssumed() {
    return lengths && !unitStated;
  }

  boolean modeAssumed() {
    return modeAssumed;
  }

  boolean startAssumed() {
    return startAssumed;
  }

  /** Motions of which the time is not known. */
  long untimed() {
    return untimed;
  }

  /** Extruding motions of which the place is not known. */
  long nowhere() {
    return nowhere;
  }
}
