package taperbook.output.view;

import java.nio.charset.StandardCharsets;
import taperbook.chart.model.DarkScheme;

/** The browser page: the template's output with embedded fonts. */
public final class HtmlPage {
  /** Placeholder of the font rules in a template's output. */
  public static final String FONTS = "/*fonts*/";

  /** Placeholder of the rules for charts on a dark background in a style sheet. */
  public static final String DARK_CHARTS = "/*charts on dark*/";

  private HtmlPage() {}

  /** Returns the page as UTF-8, a self-contained file. */
  public static byte[] bytes(String page) {
    return page.replace(FONTS, WebFonts.rules(page))
        .replace(DARK_CHARTS, DarkScheme.rules(".card"))
        .getBytes(StandardCharsets.UTF_8);
  }
}
