package dev.kilnledger.core.gcode;

/** The codes that tell of motion and extrusion, in tenths. */
final class GCodes {
  static final int RAPID = 0;
  static final int LINEAR = 10;
  static final int CLOCKWISE = 20;
  static final int COUNTERCLOCKWISE = 30;
  static final int DWELL = 40;
  static final int PLANE_XY = 170;
  static final int PLANE_ZX = 180;
  static final int PLANE_YZ = 190;
  static final int INCHES = 200;
  static final int MILLIMETRES = 210;
  static final int HOME = 280;
  static final int ABSOLUTE = 900;
  static final int RELATIVE = 910;
  static final int SET_POSITION = 920;
  static final int EXTRUDE_ABSOLUTE = Block.M + 820;
  static final int EXTRUDE_RELATIVE = Block.M + 830;
  static final int EXTRUDE_VOLUME = Block.M + 2000;

  private GCodes() {}

  static boolean isMotion(int code) {
    return code == RAPID || code == LINEAR || isArc(code);
  }

  static boolean isArc(int code) {
    return code == CLOCKWISE || code == COUNTERCLOCKWISE;
  }

  static boolean isKnown(int code) {
    return switch (code) {
      case RAPID, LINEAR, CLOCKWISE, COUNTERCLOCKWISE, DWELL -> true;
      case PLANE_XY, PLANE_ZX, PLANE_YZ, INCHES, MILLIMETRES -> true;
      case HOME, ABSOLUTE, RELATIVE, SET_POSITION -> true;
      case EXTRUDE_ABSOLUTE, EXTRUDE_RELATIVE, EXTRUDE_VOLUME -> true;
      default -> false;
    };
  }
}
