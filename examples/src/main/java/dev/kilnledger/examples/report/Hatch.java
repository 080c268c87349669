package dev.kilnledger.examples.report;

import java.awt.Color;
import java.awt.Paint;
import java.awt.PaintContext;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.ColorModel;

/**
 * A colour with a pattern of lines on it, so that areas differ in black and white as well. {@link
 * SvgPicture} writes it as a pattern of vectors; anything else that paints with it gets the colour.
 *
 * @param color the colour below
 * @param marks the path of the lines in a square of 8, in the letters of SVG; empty for none
 */
record Hatch(Color color, String marks) implements Paint {
  /** The colour below, as the style sheets have it. */
  String hex() {
    return "#" + Integer.toHexString(color.getRGB()).substring(2); // without its opacity
  }

  @Override
  public PaintContext createContext(
      ColorModel model,
      Rectangle device,
      Rectangle2D user,
      AffineTransform transform,
      RenderingHints hints) {
    return color.createContext(model, device, user, transform, hints);
  }

  @Override
  public int getTransparency() {
    return OPAQUE;
  }
}
