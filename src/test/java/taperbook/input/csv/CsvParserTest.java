package taperbook.input.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.session.InputFile;

final class CsvParserTest {
  @Test
  void rows_keep_their_cells_and_line_numbers() {
    CsvTable table = table("a,b\n1,2\n3,4\n");
    assertThat(table.file()).isEqualTo("t.csv");
    assertThat(table.header()).isEqualTo(new CsvRow(1, List.of("a", "b")));
    assertThat(table.rows())
        .containsExactly(new CsvRow(2, List.of("1", "2")), new CsvRow(3, List.of("3", "4")));
  }

  @ParameterizedTest
  @ValueSource(strings = {",", ";", "\t"})
  void the_delimiter_is_detected_in_the_header(String delimiter) {
    CsvTable table = table("a|b|c\n1|2|3\n".replace("|", delimiter));
    assertThat(table.delimiter()).isEqualTo(delimiter.charAt(0));
    assertThat(table.takesDecimalComma()).isEqualTo(!delimiter.equals(","));
    assertThat(table.rows().get(0).cells()).containsExactly("1", "2", "3");
  }

  @Test
  void delimiters_inside_quotes_are_ignored() {
    CsvTable table = table("\"a,b,c,d\";e\n1;2\n");
    assertThat(table.delimiter()).isEqualTo(';');
    assertThat(table.header().cells()).containsExactly("a,b,c,d", "e");
  }

  @Test
  void delimiters_below_the_header_are_ignored() {
    assertThat(table("\n\na;b\n1;2,3\n").rows().get(0).cells()).containsExactly("1", "2,3");
  }

  @Test
  void a_header_of_one_column_accepts_commas() {
    assertThat(table("note\n\"a;b\"\n").delimiter()).isEqualTo(',');
  }

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r"})
  void every_line_ending_is_accepted_and_counted(String end) {
    CsvTable table = table(String.join(end, "a,b", "", "1,2", "  ", "3,4"));
    assertThat(table.rows().stream().map(CsvRow::line)).containsExactly(3, 5);
    assertThat(table.rows().get(1).cells()).containsExactly("3", "4");
  }

  @Test
  void a_byte_order_mark_is_ignored() {
    assertThat(table("\ufeffa,b\n1,2\n").header().cells()).containsExactly("a", "b");
  }

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r"})
  void records_with_quoted_line_breaks_keep_their_first_line_number(String end) {
    String text = "a,b|\"x|y\",1||\"p||q\",\"r|s\"|z,4|".replace("|", end);
    CsvTable table = table(text);
    assertThat(table.rows().stream().map(CsvRow::line)).containsExactly(2, 5, 9);
    assertThat(table.rows().get(0).cells().get(0)).isEqualTo("x" + end + "y");
  }

  @Test
  void characters_of_any_byte_length_do_not_shift_line_numbers() {
    String wide = "\u00b0\u20ac\ud83d\ude97".repeat(5000);
    CsvTable table = table("\ufeffa,b\r\n" + wide + ",1\r\n\"" + wide + "\n\",2\r\n\r\n3,4");
    assertThat(table.rows().stream().map(CsvRow::line)).containsExactly(2, 3, 6);
    assertThat(table.rows().get(0).cell(0)).isEqualTo(wide);
  }

  @Test
  void rows_of_blank_cells_are_skipped() {
    assertThat(table("a,b,,\n,,,\n1,2,,\n , ,,,,\n").rows())
        .containsExactly(new CsvRow(3, List.of("1", "2", "", "")));
  }

  @Test
  void cells_beyond_a_short_row_are_empty() {
    CsvRow row = table("a,b,c\n 1 \n").rows().get(0);
    assertThat(row.cell(0)).isEqualTo("1");
    assertThat(row.cell(2)).isEmpty();
  }

  @Test
  void text_beyond_the_header_is_a_problem() {
    assertThat(problems("a,b\n1,2,,x,y\n3,4\n5,6,z\n"))
        .containsExactly(
            "t.csv:2:4: found \"x\" in cell 4; expected at most 2 cells, as many as the header has."
                + " To fix: put a cell that contains a comma between double quotes, write numbers"
                + " with a decimal point, or add the missing column head. [row-too-long]",
            "t.csv:4:3: found \"z\" in cell 3; expected at most 2 cells, as many as the header has."
                + " To fix: put a cell that contains a comma between double quotes, write numbers"
                + " with a decimal point, or add the missing column head. [row-too-long]");
    assertThat(problems("a;b\n1;2;3\n"))
        .containsExactly(
            "t.csv:2:3: found \"3\" in cell 3; expected at most 2 cells, as many as the header has."
                + " To fix: put a cell that contains the delimiter between double quotes, or add"
                + " the missing column head. [row-too-long]");
  }

  @Test
  void many_similar_problems_are_grouped() {
    List<String> problems = problems("a,b\n" + "1,2,3\n".repeat(1000));
    assertThat(problems).hasSize(4);
    assertThat(problems.get(3)).contains("found 997 more like these, on lines 5 to 1001;");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "\n \n", "\ufeff", ",,\n,,\n"})
  void a_file_without_text_is_empty(String text) {
    assertThat(problems(text))
        .containsExactly(
            "t.csv: found an empty file; expected a row of column heads and at least one row below"
                + " it. To fix: write the column heads and the rows, or remove the file."
                + " [csv-empty]");
  }

  @Test
  void header_alone_is_empty() {
    assertThat(problems("\na,b\n,\n"))
        .containsExactly(
            "t.csv:2: found column heads without a row below them; expected at least one row."
                + " To fix: write the rows, or remove the file. [csv-empty]");
  }

  @Test
  void an_unclosed_quote_is_reported_at_its_opening() {
    assertThat(problems("a,b\n1,2\n3,\"4\n5,6\n"))
        .containsExactly(
            "t.csv:3:2: found a quote that opens here and never closes; expected quotes around"
                + " whole cells only. To fix: put the whole cell between double quotes and double"
                + " those inside it. [csv-broken]");
  }

  @Test
  void every_misplaced_quote_is_reported() {
    assertThat(problems("a,b\n1,5\" tyre\n\"x\"y,2\n\"p\nq\" ,2\n"))
        .containsExactly(
            "t.csv:2:2: found a quote inside a cell that does not begin with one; expected quotes"
                + " around whole cells only. To fix: put the whole cell between double quotes and"
                + " double those inside it. [csv-broken]",
            "t.csv:3:1: found text after a closing quote; expected quotes around whole cells only."
                + " To fix: put the whole cell between double quotes and double those inside it."
                + " [csv-broken]",
            "t.csv:5:1: found text after a closing quote; expected quotes around whole cells only."
                + " To fix: put the whole cell between double quotes and double those inside it."
                + " [csv-broken]");
  }

  @Test
  void invalid_utf8_is_reported_with_its_line() {
    byte[] latin = "a,b\r\n1,2\r\n3,\u00b0C\r\n".getBytes(StandardCharsets.ISO_8859_1);
    assertThat(sentences(CsvParser.read(new InputFile("t.csv", latin))))
        .containsExactly(
            "t.csv:3: found the byte 0xb0; expected text in UTF-8. To fix: save the file again"
                + " with the encoding UTF-8 (in a spreadsheet: CSV UTF-8). [text-not-utf8]");
  }

  @Test
  void a_truncated_character_at_the_end_is_not_utf8() {
    byte[] cut = {'a', '\n', (byte) 0xe2, (byte) 0x82};
    assertThat(sentences(CsvParser.read(new InputFile("t.csv", cut))))
        .singleElement()
        .asString()
        .startsWith("t.csv:2: found the byte 0xe2;");
  }

  @Test
  void utf16_and_utf32_are_not_utf8() {
    byte[] marked = "a,b\n".getBytes(StandardCharsets.UTF_16);
    byte[] unmarked = "a,b\n".getBytes(StandardCharsets.UTF_16LE);
    assertThat(sentences(CsvParser.read(new InputFile("t.csv", marked))).get(0))
        .startsWith("t.csv:1: found the byte 0xfe;");
    assertThat(sentences(CsvParser.read(new InputFile("t.csv", unmarked))).get(0))
        .startsWith("t.csv:1: found the byte 0x00;");
  }

  private static CsvTable table(String text) {
    return CsvParser.read(file(text)).value().orElseThrow();
  }

  private static List<String> problems(String text) {
    return sentences(CsvParser.read(file(text)));
  }

  private static List<String> sentences(Checked<?> checked) {
    assertThat(checked.isUsable()).isFalse();
    return checked.problems().stream().map(Problem::sentence).toList();
  }

  private static InputFile file(String text) {
    return new InputFile("t.csv", text.getBytes(StandardCharsets.UTF_8));
  }
}
