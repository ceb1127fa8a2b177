package taperbook.write.pdf;

import java.io.InputStream;

/** The fonts of a PDF, by the addresses that its style rules use. */
final class PdfFonts {
  /** Scheme of the addresses. */
  static final String SCHEME = "font";

  private PdfFonts() {}

  static String rules() {
    return rule("Noto Sans", "normal", "normal", "NotoSans-Regular.ttf")
        + rule("Noto Sans", "bold", "normal", "NotoSans-Bold.ttf")
        + rule("Noto Sans", "normal", "italic", "NotoSans-Italic.ttf")
        + rule("Noto Serif", "bold", "normal", "NotoSerif-Bold.ttf");
  }

  private static String rule(String family, String weight, String style, String file) {
    return "@font-face{font-family:\""
        + family
        + "\";font-weight:"
        + weight
        + ";font-style:"
        + style
        + ";src:url(\""
        + SCHEME
        + ":"
        + file
        + "\");-fs-pdf-font-embed:embed;-fs-pdf-font-encoding:Identity-H}\n";
  }

  static InputStream open(String address) {
    String path = "/taperbook/fonts/" + address.substring(SCHEME.length() + 1);
    InputStream in = PdfFonts.class.getResourceAsStream(path);
    if (in == null) {
      throw new IllegalArgumentException("no font has the address " + address);
    }
    return in;
  }
}
