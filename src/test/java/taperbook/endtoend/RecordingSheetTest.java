package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import taperbook.cli.ExitStatus;
import taperbook.session.ConditionItem;
import taperbook.session.Item;
import taperbook.session.ItemKind;
import taperbook.session.RangeItem;

/** Layout of the recording sheets on paper. */
@Tag("slow")
final class RecordingSheetTest {
  private static final double POINTS_PER_MM = 72 / 25.4;

  @TempDir private Path folder = Path.of("");

  private PDDocument sheet(String... options) throws IOException {
    Workplace place = new Workplace(folder);
    List<String> arguments = new ArrayList<>(List.of("blank", "sheet"));
    arguments.addAll(List.of(options));
    assertThat(place.run(arguments.toArray(String[]::new)))
        .as(place.err())
        .isEqualTo(ExitStatus.DONE);
    String name = place.out().replaceAll("  written\\s*", "");
    return Loader.loadPDF(place.path(name).toFile());
  }

  private static String text(PDDocument pdf) throws IOException {
    return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
  }

  /** ISO 216: A4 is 210 mm by 297 mm; letter paper is 8.5 in by 11 in. */
  @ParameterizedTest
  @CsvSource({
    "session, a4, 210, 297",
    "range-test, a4, 210, 297",
    "session, letter, 215.9, 279.4",
    "range-test, letter, 215.9, 279.4"
  })
  void a_sheet_has_two_pages_of_the_requested_paper(
      String kind, String paper, double widthMm, double heightMm) throws IOException {
    try (PDDocument pdf = sheet(kind, "--paper", paper)) {
      assertThat(pdf.getNumberOfPages()).isEqualTo(2);
      for (PDPage page : pdf.getPages()) {
        PDRectangle box = page.getMediaBox();
        assertThat(box.getWidth() / POINTS_PER_MM).isCloseTo(widthMm, within(0.1));
        assertThat(box.getHeight() / POINTS_PER_MM).isCloseTo(heightMm, within(0.1));
      }
    }
  }

  @Test
  void a_sheet_has_every_item_and_starts_with_the_cautions() throws IOException {
    Map<String, Item[]> items = new TreeMap<>();
    items.put("session", ConditionItem.values());
    items.put("range-test", RangeItem.values());
    for (Map.Entry<String, Item[]> kind : items.entrySet()) {
      try (PDDocument pdf = sheet(kind.getKey())) {
        String text = text(pdf);
        for (Item item : kind.getValue()) {
          if (item.kind().form() == ItemKind.Form.MOMENT) {
            assertThat(text).containsIgnoringCase(item.words() + " ______");
          } else {
            String hint = item.explanation().replaceAll(";.*", ".").replace('\'', '\u2019');
            assertThat(text).contains(item.words() + (item.required() ? " * " : " ") + hint);
          }
        }
        assertThat(text.indexOf("Safety first")).isBetween(0, 350);
        assertThat(text)
            .contains("Never read, write or film while driving")
            .contains("vehicle\u2019s manual")
            .contains("damaged connector")
            .contains("licensed people")
            .contains("Run low");
      }
    }
  }

  @Test
  void a_session_sheet_has_the_items_that_are_most_easily_forgotten() throws IOException {
    try (PDDocument pdf = sheet()) {
      assertThat(text(pdf))
          .contains("navigation", "Arrive warm", "Note the battery temperature", "who shares")
          .contains("read the state of charge", "clock with seconds in frame", "Photograph")
          .contains("nearest", "down if 100 % shows only as charging ends")
          .contains("at changes", "at set times", "best at each change of the displayed state");
    }
  }

  @Test
  void units_follow_the_choice() throws IOException {
    try (PDDocument pdf = sheet("range-test", "--units", "mi")) {
      assertThat(text(pdf))
          .contains("mph", "Wh/mi", "psi", "\u00b0F", "F E ft", "F E lb")
          .doesNotContain("km", "\u00b0C", "F E m ", "F E kg");
    }
    try (PDDocument pdf = sheet("session", "--units", "mi")) {
      assertThat(text(pdf)).contains("\u00b0F", "temperature \u00b0F").doesNotContain("\u00b0C");
    }
  }

  @ParameterizedTest
  @CsvSource({"session, a4", "range-test, a4", "session, letter", "range-test, letter"})
  void words_to_mark_are_on_one_line_and_no_letter_is_below_eight_points(String kind, String paper)
      throws IOException {
    Item[] items = kind.equals("session") ? ConditionItem.values() : RangeItem.values();
    try (PDDocument pdf = sheet(kind, "--paper", paper)) {
      Lines lines = new Lines();
      lines.getText(pdf);
      assertThat(lines.smallest).isGreaterThanOrEqualTo(7.95f);
      for (Item item : items) {
        List<String> words = new ArrayList<>(item.kind().words());
        words.remove("not known");
        if (item.kind().form() == ItemKind.Form.WORD) {
          assertThat(lines.byHeight.values().stream().map(StringBuilder::toString))
              .as(item.words())
              .anyMatch(line -> line.contains(String.join("", words).replace(" ", "")));
        }
      }
    }
  }

  /** The text of each line without spaces, and the size of the smallest letter in points. */
  private static final class Lines extends PDFTextStripper {
    private final Map<String, StringBuilder> byHeight = new TreeMap<>();
    private float smallest = Float.MAX_VALUE;

    @Override
    protected void processTextPosition(TextPosition letter) {
      smallest = Math.min(smallest, letter.getYScale());
      byHeight
          .computeIfAbsent(
              getCurrentPageNo() + " " + Math.round(letter.getY()), y -> new StringBuilder())
          .append(letter.getUnicode().replace("\u00a0", "").strip());
    }
  }

  /** At least two rows to write into, in addition to those of the marks and the head. */
  @Test
  void the_readings_have_spare_rows() throws IOException {
    try (PDDocument pdf = sheet("session")) {
      assertThat(rows(pdf.getDocumentCatalog().getStructureTreeRoot().getKids()))
          .isGreaterThanOrEqualTo(1 + 18 + 2);
    }
  }

  private static long rows(List<Object> kids) {
    return kids.stream()
        .filter(PDStructureElement.class::isInstance)
        .map(PDStructureElement.class::cast)
        .mapToLong(e -> (e.getStructureType().equals("TR") ? 1 : 0) + rows(e.getKids()))
        .sum();
  }

  /** Eight millimetres are sufficient for handwriting. */
  @Test
  void rows_of_readings_are_at_least_eight_millimetres_apart() throws IOException {
    try (PDDocument pdf = sheet("session", "--paper", "letter")) {
      Marks marks = new Marks();
      marks.setStartPage(2);
      marks.getText(pdf);
      assertThat(marks.found.keySet())
          .contains("10 %", "15 %", "20 %", "45 %", "75 %", "80 %", "90 %", "100 %");
      List<Float> heights = marks.found.values().stream().sorted().toList();
      assertThat(heights).hasSize(17);
      for (int i = 1; i < heights.size(); i++) {
        assertThat((heights.get(i) - heights.get(i - 1)) / POINTS_PER_MM)
            .isGreaterThanOrEqualTo(7.99);
      }
    }
  }

  private static final class Marks extends PDFTextStripper {
    private final Map<String, Float> found = new TreeMap<>();

    @Override
    protected void writeString(String text, List<TextPosition> positions) {
      if (text.strip().matches("[0-9]+ %")) {
        found.put(text.strip(), positions.get(0).getY());
      }
    }
  }

  @Test
  void a_sheet_declares_pdf_a_and_ua_and_is_reproducible() throws IOException {
    byte[] first;
    try (PDDocument pdf = sheet()) {
      var catalog = pdf.getDocumentCatalog();
      String xmp = new String(catalog.getMetadata().toByteArray(), StandardCharsets.UTF_8);
      assertThat(xmp)
          .contains("<pdfaid:part>3</pdfaid:part>", "<pdfuaid:part>1</pdfuaid:part>")
          .contains("Recording sheet: charging session");
      assertThat(catalog.getMarkInfo().isMarked()).isTrue();
      assertThat(catalog.getStructureTreeRoot()).isNotNull();
      for (PDPage page : pdf.getPages()) {
        for (COSName font : page.getResources().getFontNames()) {
          assertThat(page.getResources().getFont(font).isEmbedded()).isTrue();
        }
      }
      Path file = folder.resolve("recording-sheet-session-a4.pdf");
      first = Files.readAllBytes(file);
      Files.delete(file);
    }
    try (PDDocument again = sheet()) {
      assertThat(again.getNumberOfPages()).isEqualTo(2);
      assertThat(Files.readAllBytes(folder.resolve("recording-sheet-session-a4.pdf")))
          .isEqualTo(first);
    }
  }
}
