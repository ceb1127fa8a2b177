package taperbook.chart.model;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The type that charts are set in: Noto Sans, carried along, never a font of the system. */
public final class Typeface {
  private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);
  private static final Font REGULAR = load("NotoSans-Regular.ttf");
  private static final Font BOLD = load("NotoSans-Bold.ttf");

  private Typeface() {}

  /** The font at a size in pixels. */
  public static Font font(boolean bold, double size) {
    return (bold ? BOLD : REGULAR).deriveFont((float) size);
  }

  /** True of bold fonts that were made here. */
  public static boolean isBold(Font font) {
    return font.getFontName(Locale.ROOT).equals(BOLD.getFontName(Locale.ROOT));
  }

  /** Width of a text in pixels at a size in pixels. */
  public static double width(String text, boolean bold, double size) {
    return font(bold, size).getStringBounds(text, CONTEXT).getWidth();
  }

  /** A text in lines no wider than so many pixels, as far as its words allow that. */
  public static List<String> wrapped(String text, boolean bold, double size, double width) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.split(" ", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && width(longer, bold, size) > width) {
        lines.add(line);
        line = word;
      } else {
        line = longer;
      }
    }
    lines.add(line);
    return lines;
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
