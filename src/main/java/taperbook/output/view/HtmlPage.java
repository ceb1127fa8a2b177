package taperbook.output.view;

import java.nio.charset.StandardCharsets;
import taperbook.chart.model.DarkScheme;

/** The page for browsers: what the template gave, with the fonts put in. */
public final class HtmlPage {
  /** What a template prints where the rules for the fonts are to be. */
  public static final String FONTS = "/*fonts*/";

  /** What a style sheet holds where the rules for charts on a dark ground are to be. */
  public static final String DARK_CHARTS = "/*charts on dark*/";

  private HtmlPage() {}

  /** The page as UTF-8, one file that needs no other. */
  public static byte[] bytes(String page) {
    return page.replace(FONTS, WebFonts.rules(page))
        .replace(DARK_CHARTS, DarkScheme.rules(".card"))
        .getBytes(StandardCharsets.UTF_8);
  }
}
