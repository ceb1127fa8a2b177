package taperbook.output.pdf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;

/** The fonts of a PDF, by the URLs in its style rules. */
final class PdfFonts {
  /** Scheme of the URLs. */
  static final String SCHEME = "font";

  private static final int GSUB = 0x47535542;
  private static final int HIDDEN = 0x47535558;

  /** The font family of charts and text. */
  static final String SANS = "Noto Sans";

  private PdfFonts() {}

  static String rules() {
    return rule(SANS, "normal", "normal", "NotoSans-Regular.ttf")
        + rule(SANS, "bold", "normal", "NotoSans-Bold.ttf")
        + rule(SANS, "normal", "italic", "NotoSans-Italic.ttf")
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

  /** Opens the font of a URL, without its ligatures. */
  static InputStream open(String address) {
    String path = "/taperbook/fonts/" + address.substring(SCHEME.length() + 1);
    try (InputStream in = PdfFonts.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalArgumentException("no font has the address " + address);
      }
      return new ByteArrayInputStream(withoutLigatures(in.readAllBytes()));
    } catch (IOException e) {
      throw new UncheckedIOException(path, e);
    }
  }

  /**
   * Hides the glyph substitution table. Otherwise the PDF library sets "fi" as one glyph without a
   * character mapping, so that the text cannot be searched or read aloud.
   *
   * @see <a href="https://learn.microsoft.com/typography/opentype/spec/otff">OpenType: the table
   *     directory, 12 bytes in, has records of 16 bytes that begin with a tag</a>
   */
  private static byte[] withoutLigatures(byte[] font) {
    ByteBuffer buffer = ByteBuffer.wrap(font);
    int tables = Short.toUnsignedInt(buffer.getShort(4));
    for (int at = 12; at < 12 + 16 * tables; at += 16) {
      if (buffer.getInt(at) == GSUB) {
        buffer.putInt(at, HIDDEN);
      }
    }
    return font;
  }
}
