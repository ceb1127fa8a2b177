package taperbook.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.verapdf.core.VeraPDFException;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;
import taperbook.format.NumberFormatter;
import taperbook.session.InputFile;

@Tag("slow")
final class ReportPdfTest {
  private static final ReportJob JOB = InventedReport.job();
  private static final ReportFiles FILES = InventedReport.written();

  @BeforeAll
  static void startValidator() {
    VeraGreenfieldFoundryProvider.initialise();
  }

  @ParameterizedTest
  @CsvSource({
    "report.pdf, PDFA_3_A",
    "report.pdf, PDFUA_1",
    "methods.pdf, PDFA_3_A",
    "methods.pdf, PDFUA_1"
  })
  void conforms_to_its_standards(String file, PDFAFlavour flavour)
      throws VeraPDFException, IOException {
    // The validator lower-cases names in the default locale, where Turkish has a dotless i.
    Locale before = Locale.getDefault();
    Locale.setDefault(Locale.ROOT);
    try {
      validate(file, flavour);
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void methods_name_their_report_by_hash_on_the_first_page()
      throws IOException, NoSuchAlgorithmException {
    byte[] digest = MessageDigest.getInstance("SHA-256").digest(FILES.bytes("report.pdf"));
    try (PDDocument methods = Loader.loadPDF(FILES.bytes("methods.pdf"))) {
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setEndPage(1);
      String first = stripper.getText(methods).replace('\u00a0', ' ');
      assertThat(first)
          .contains("report.pdf, SHA-256", HexFormat.of().formatHex(digest))
          .contains("Methods: ", "10 May 2026", "Vehicle", "Station");
    }
  }

  private static void validate(String file, PDFAFlavour flavour)
      throws VeraPDFException, IOException {
    try (PDFAParser parser =
            Foundries.defaultInstance()
                .createParser(new ByteArrayInputStream(FILES.bytes(file)), flavour);
        PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
      ValidationResult result = validator.validate(parser);
      List<String> failed =
          result.getTestAssertions().stream()
              .filter(a -> a.getStatus() == TestAssertion.Status.FAILED)
              .map(a -> a.getRuleId().getClause() + " " + a.getMessage() + " " + a.getLocation())
              .distinct()
              .toList();
      assertThat(failed.stream().limit(5)).isEmpty();
      assertThat(result.isCompliant()).isTrue();
    }
  }

  @Test
  void has_its_title_and_metadata() throws IOException {
    try (PDDocument pdf = Loader.loadPDF(FILES.bytes("report.pdf"))) {
      assertThat(pdf.getDocumentInformation().getTitle()).isEqualTo(InventedReport.TITLE);
      assertThat(pdf.getDocumentInformation().getAuthor()).isEqualTo("A. Tester");
      assertThat(pdf.getDocumentCatalog().getLanguage()).isEqualTo("en");
      assertThat(pdf.getDocumentInformation().getCreationDate().toInstant())
          .isEqualTo("2026-05-10T00:00:00Z");
      assertThat(pdf.getNumberOfPages()).isGreaterThan(1);
      assertThat(pdf.getPage(0).getMediaBox().getWidth()).isBetween(595f, 596f);
      assertThat(pdf.getPage(0).getMediaBox().getHeight()).isBetween(841f, 842f);
    }
  }

  @Test
  void prints_every_headline_value_and_its_interval() throws IOException {
    NumberFormatter formatter =
        new NumberFormatter(InventedReport.result(JOB).plan().style().units());
    String text = text("report.pdf");
    for (String id :
        List.of(
            "time_to_add_150_km",
            "time_to_add_300_km",
            "peak_power",
            "peak_hold_time",
            "time_soc_20_80",
            "average_power_20_80")) {
      var number = InventedReport.result(JOB).main().numbers().get(id);
      assertThat(text).contains(spaced(formatter.value(number)));
      assertThat(text).contains(spaced(formatter.range(number)));
    }
  }

  @Test
  void numbers_its_pages_and_repeats_its_title() throws IOException {
    try (PDDocument pdf = Loader.loadPDF(FILES.bytes("report.pdf"))) {
      int pages = pdf.getNumberOfPages();
      for (int page = 1; page <= pages; page++) {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        String text = spaced(stripper.getText(pdf));
        assertThat(text).contains("page " + page + " of " + pages).contains(InventedReport.TITLE);
      }
    }
  }

  @Test
  void has_an_outline_of_its_sections() throws IOException {
    assertThat(outline("report.pdf"))
        .containsSubsequence(
            "The tester\u2019s account",
            "What matters on the road",
            "Minutes, and what a stop buys",
            "Side by side",
            "Range test",
            "Caveats",
            "Checked a second way",
            "Cautions",
            "Files and recomputing");
    assertThat(outline("methods.pdf"))
        .contains(
            "Methods",
            "Definitions",
            "Two ways to each figure",
            "Withheld",
            "Where each number comes from");
  }

  @Test
  void embeds_every_font() throws IOException {
    for (String file : List.of("report.pdf", "methods.pdf")) {
      try (PDDocument pdf = Loader.loadPDF(FILES.bytes(file))) {
        int fonts = 0;
        for (PDPage page : pdf.getPages()) {
          for (COSName name : page.getResources().getFontNames()) {
            assertThat(page.getResources().getFont(name).isEmbedded()).isTrue();
            fonts++;
          }
        }
        assertThat(fonts).isPositive();
      }
    }
  }

  @Test
  void embeds_every_input_and_the_numbers() throws IOException {
    Map<String, byte[]> attached = new LinkedHashMap<>();
    Map<String, String> relations = new LinkedHashMap<>();
    try (PDDocument pdf = Loader.loadPDF(FILES.bytes("report.pdf"))) {
      COSArray array = pdf.getDocumentCatalog().getCOSObject().getCOSArray(COSName.AF);
      for (int i = 0; i < array.size(); i++) {
        COSDictionary dictionary = (COSDictionary) array.getObject(i);
        var specification = new PDComplexFileSpecification(dictionary);
        attached.put(
            specification.getFileUnicode(), specification.getEmbeddedFileUnicode().toByteArray());
        relations.put(specification.getFileUnicode(), dictionary.getNameAsString("AFRelationship"));
      }
      assertThat(pdf.getDocumentCatalog().getNames().getEmbeddedFiles().getNames().keySet())
          .containsExactlyInAnyOrderElementsOf(attached.keySet());
    }
    for (InputFile input : JOB.attached()) {
      assertThat(attached.get(input.path())).isEqualTo(input.bytes());
    }
    assertThat(attached.get("numbers.json")).isEqualTo(FILES.bytes("numbers.json"));
    assertThat(relations)
        .containsEntry("reports/finch-first-look.md", "Source")
        .containsEntry("sessions/finch-quarry-lane/readings.csv", "Data")
        .containsEntry("numbers.json", "Data");
  }

  @Test
  void equal_inputs_give_equal_bytes() {
    ReportFiles again = ReportWriter.write(InventedReport.job()).value().orElseThrow();
    assertThat(again.all().keySet()).isEqualTo(FILES.all().keySet());
    for (String file : FILES.all().keySet()) {
      assertThat(again.bytes(file)).as(file).isEqualTo(FILES.bytes(file));
    }
  }

  /** The key of the range test in the list of files, and the rows after it. */
  private static final Pattern KEY_AND_ROWS =
      Pattern.compile("(F\\d)sessions/finch-ring-road/range-test\\.csv.*\\1:4,7");

  @Test
  void states_the_origin_of_each_number_in_the_appendix() throws IOException {
    String text = text("methods.pdf").replaceAll("\\s", "");
    assertThat(text).contains("time_to_add_150_km_by_energy");
    assertThat(text).containsPattern(KEY_AND_ROWS);
    assertThat(text).contains("Timetoaddadistance,energybasis");
  }

  @Test
  void headline_values_can_be_copied_as_text() throws IOException {
    assertThat(text("report.pdf").getBytes(StandardCharsets.UTF_8)).isNotEmpty();
    assertThat(text("report.pdf")).doesNotContain("\uFFFD").doesNotContain("####");
  }

  private static String text(String file) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(FILES.bytes(file))) {
      return spaced(new PDFTextStripper().getText(pdf));
    }
  }

  /** Normalizes whitespace, since line breaks depend on the page. */
  private static String spaced(String text) {
    return text.replaceAll("[\\s\u00a0]+", " ");
  }

  private static List<String> outline(String file) throws IOException {
    List<String> titles = new ArrayList<>();
    try (PDDocument pdf = Loader.loadPDF(FILES.bytes(file))) {
      for (PDOutlineItem item : pdf.getDocumentCatalog().getDocumentOutline().children()) {
        titles.add(item.getTitle());
        item.children().forEach(child -> titles.add(child.getTitle()));
      }
    }
    return titles;
  }
}
