package taperbook.output.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Set;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class WebFontsTest {
  private static final byte[] SUBSET =
      WebFonts.subset("NotoSans-Regular.ttf", Set.of((int) 'o', (int) 'r', (int) '7'));

  @Test
  void keeps_only_the_requested_glyphs() throws IOException {
    try (TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(SUBSET))) {
      var letters = font.getUnicodeCmapLookup();
      assertThat(letters.getGlyphId('o')).isPositive();
      assertThat(letters.getGlyphId('7')).isPositive();
      assertThat(letters.getGlyphId('x')).isZero();
      assertThat(font.getNumberOfGlyphs()).isEqualTo(4);
    }
  }

  @Test
  void has_no_table_that_refers_to_original_glyph_ids() throws IOException {
    try (TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(SUBSET))) {
      assertThat(font.getTableMap().keySet())
          .contains("OS/2", "cmap", "glyf", "head", "hmtx", "name", "post")
          .doesNotContain("GSUB", "GPOS", "GDEF");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"NotoSans-Regular", "NotoSans-Bold", "NotoSans-Italic", "NotoSerif-Bold"})
  void every_face_has_a_minus_sign_as_wide_as_its_plus_sign(String face) throws IOException {
    byte[] bytes = WebFonts.subset(face + ".ttf", Set.of((int) '+', 0x2212));
    try (TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(bytes))) {
      int plus = font.getUnicodeCmapLookup().getGlyphId('+');
      int minus = font.getUnicodeCmapLookup().getGlyphId(0x2212);
      assertThat(minus).isPositive().isNotEqualTo(plus);
      assertThat(font.getAdvanceWidth(minus)).isEqualTo(font.getAdvanceWidth(plus));
    }
  }

  @Test
  void embeds_three_faces_without_a_url() {
    String rules = WebFonts.rules("abc");
    assertThat(rules.split("@font-face", -1)).hasSize(4);
    assertThat(rules).doesNotContain("http");
  }
}
