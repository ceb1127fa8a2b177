package taperbook.output.view;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.BitSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** Embeds fonts in a page as style rules, subset to the letters in use. */
final class WebFonts {
  private record Face(String family, String weight, String style, String file) {}

  private static final String SERIF = "Noto Serif";

  private static final List<Face> FACES =
      List.of(
          new Face("Noto Sans", "400", "normal", "NotoSans-Regular.ttf"),
          new Face("Noto Sans", "700", "normal", "NotoSans-Bold.ttf"),
          new Face(SERIF, "700", "normal", "NotoSerif-Bold.ttf"));

  // Characters that are always included: number symbols, ellipsis, and times.
  private static final String ALWAYS = " 0123456789.,-\u2212\u2013\u2026\u00a0hmins";

  /** Elements in the second font family: headings, the answer and large numbers. */
  private static final Pattern LARGE =
      Pattern.compile(
          "<h([1-6])\\b.*?</h\\1>|<div class=\"answer\">.*?</div>"
              + "|<(p|span) class=\"figure-value\">.*?</\\2>",
          Pattern.DOTALL);

  // Shaping tables refer to glyph ids, which subsetting changes: if kept, they would swap letters.
  private static final List<String> TABLES =
      List.of(
          "OS/2", "cmap", "gasp", "glyf", "head", "hhea", "hmtx", "loca", "maxp", "name", "post");

  private WebFonts() {}

  /** Returns the rules for all fonts of a page. */
  static String rules(String page) {
    Set<Integer> letters = lettersOf(page + ALWAYS);
    Set<Integer> large =
        lettersOf(
            LARGE.matcher(page).results().map(MatchResult::group).collect(Collectors.joining())
                + ALWAYS);
    return FACES.stream()
        .map(face -> rule(face, face.family().equals(SERIF) ? large : letters))
        .collect(Collectors.joining("\n"));
  }

  /** Uses a bit set for speed: a page has a hundred distinct letters in a million characters. */
  private static Set<Integer> lettersOf(String text) {
    BitSet letters = new BitSet();
    text.codePoints().forEach(letters::set);
    return letters.stream().boxed().collect(Collectors.toCollection(TreeSet::new));
  }

  private static String rule(Face face, Set<Integer> letters) {
    return "@font-face{font-family:\""
        + face.family()
        + "\";font-weight:"
        + face.weight()
        + ";font-style:"
        + face.style()
        + ";font-display:swap;src:url(data:font/ttf;base64,"
        + Base64.getEncoder().encodeToString(subset(face.file(), letters))
        + ")}";
  }

  /** Returns the font with the outlines of these letters only. */
  static byte[] subset(String file, Set<Integer> letters) {
    String path = "/taperbook/fonts/" + file;
    try (InputStream in = WebFonts.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks its own " + path);
      }
      try (TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in))) {
        TTFSubsetter subsetter = new TTFSubsetter(font, TABLES);
        subsetter.addAll(letters);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        subsetter.writeToStream(out);
        return out.toByteArray();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(path, e);
    }
  }
}
