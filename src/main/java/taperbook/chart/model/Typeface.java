package taperbook.chart.model;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Locale;

/** The typeface of charts: the bundled Noto Sans, never a system font. */
public final class Typeface {
  private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);
  private static final Font REGULAR = load("NotoSans-Regular.ttf");
  private static final Font BOLD = load("NotoSans-Bold.ttf");

  private Typeface() {}

  /** Returns the font at a size in pixels. */
  public static Font font(boolean bold, double size) {
    return (bold ? BOLD : REGULAR).deriveFont((float) size);
  }

  /** Returns true for bold fonts created here. */
  public static boolean isBold(Font font) {
    return font.getFontName(Locale.ROOT).equals(BOLD.getFontName(Locale.ROOT));
  }

  /** Returns the width of a text in pixels at a size in pixels. */
  public static double width(String text, boolean bold, double size) {
    return font(bold, size).getStringBounds(text, CONTEXT).getWidth();
  }

  private static Font load(String file) {
    String resource = "/taperbook/fonts/" + file;
    try (InputStream in = Typeface.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks its font " + resource);
      }
      return Font.createFont(Font.TRUETYPE_FONT, in);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + resource, e);
    } catch (FontFormatException e) {
      throw new IllegalStateException("not a font: " + resource, e);
    }
  }
}
