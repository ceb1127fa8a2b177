package taperbook.output.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;
import org.jspecify.annotations.Nullable;

/**
 * Maps every font request to the bundled font, so that the PDF library neither searches the system
 * for fonts nor stores a font list in the user's home directory.
 */
final class BundledFonts implements FontMapper {
  private static final String PATH = "/taperbook/fonts/NotoSans-Regular.ttf";

  private final TrueTypeFont font = load();

  @Override
  public FontMapping<TrueTypeFont> getTrueTypeFont(
      String baseFont, @Nullable PDFontDescriptor descriptor) {
    return new FontMapping<>(font, true);
  }

  @Override
  public FontMapping<FontBoxFont> getFontBoxFont(
      String baseFont, @Nullable PDFontDescriptor descriptor) {
    return new FontMapping<>(font, true);
  }

  @Override
  @SuppressWarnings("NullAway") // The library has no other way to say that no OpenType font fits.
  public CIDFontMapping getCIDFont(
      String baseFont,
      @Nullable PDFontDescriptor descriptor,
      @Nullable PDCIDSystemInfo information) {
    return new CIDFontMapping(null, font, true);
  }

  private static TrueTypeFont load() {
    try (InputStream in = BundledFonts.class.getResourceAsStream(PATH)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks its own " + PATH);
      }
      return new TTFParser().parse(new RandomAccessReadBuffer(in));
    } catch (IOException e) {
      throw new UncheckedIOException(PATH, e);
    }
  }
}
