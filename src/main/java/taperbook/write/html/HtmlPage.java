package taperbook.write.html;

import java.nio.charset.StandardCharsets;

/** The page for browsers: what the template gave, with the fonts put in. */
public final class HtmlPage {
  /** What a template prints where the rules for the fonts are to be. */
  public static final String FONTS = "/*fonts*/";

  private HtmlPage() {}

  /** The page as UTF-8, one file that needs no other. */
  public static byte[] bytes(String page) {
    return page.replace(FONTS, WebFonts.rules(page)).getBytes(StandardCharsets.UTF_8);
  }
}
