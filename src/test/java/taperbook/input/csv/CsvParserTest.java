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
  void rowsKeepTheirCellsAndTheirLines() {
    CsvTable table = table("a,b\n1,2\n3,4\n");
    assertThat(table.file()).isEqualTo("t.csv");
    assertThat(table.header()).isEqualTo(new CsvRow(1, List.of("a", "b")));
    assertThat(table.rows())
        .containsExactly(new CsvRow(2, List.of("1", "2")), new CsvRow(3, List.of("3", "4")));
  }

  @ParameterizedTest
  @ValueSource(strings = {",", ";", "\t"})
  void delimiterIsFoundInTheHeader(String delimiter) {
    CsvTable table = table("a|b|c\n1|2|3\n".replace("|", delimiter));
    assertThat(table.delimiter()).isEqualTo(delimiter.charAt(0));
    assertThat(table.takesDecimalComma()).isEqualTo(!delimiter.equals(","));
    assertThat(table.rows().get(0).cells()).containsExactly("1", "2", "3");
  }

  @Test
  void delimitersInsideQuotesDoNotCount() {
    CsvTable table = table("\"a,b,c,d\";e\n1;2\n");
    assertThat(table.delimiter()).isEqualTo(';');
    assertThat(table.header().cells()).containsExactly("a,b,c,d", "e");
  }

  @Test
  void delimitersBelowTheHeaderDoNotCount() {
    assertThat(table("\n\na;b\n1;2,3\n").rows().get(0).cells()).containsExactly("1", "2,3");
  }

  @Test
  void headerOfOneColumnAcceptsCommas() {
    assertThat(table("note\n\"a;b\"\n").delimiter()).isEqualTo(',');
  }

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r"})
  void everyLineEndingIsAcceptedAndCounted(String end) {
    CsvTable table = table(String.join(end, "a,b", "", "1,2", "  ", "3,4"));
    assertThat(table.rows().stream().map(CsvRow::line)).containsExactly(3, 5);
    assertThat(table.rows().get(1).cells()).containsExactly("3", "4");
  }

  @Test
  void byteOrderMarkIsDropped() {
    assertThat(table("\ufeffa,b\n1,2\n").header().cells()).containsExactly("a", "b");
  }

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r"})
  void recordsWithLinesInQuotesKeepTheLineTheyStartOn(String end) {
    String text = "a,b|\"x|y\",1||\"p||q\",\"r|s\"|z,4|".replace("|", end);
    CsvTable table = table(text);
    assertThat(table.rows().stream().map(CsvRow::line)).containsExactly(2, 5, 9);
    assertThat(table.rows().get(0).cells().get(0)).isEqualTo("x" + end + "y");
  }

  @Test
  void lettersOfAnyLengthDoNotMoveTheLines() {
    String wide = "\u00b0\u20ac\ud83d\ude97".repeat(5000);
    CsvTable table = table("\ufeffa,b\r\n" + wide + ",1\r\n\"" + wide + "\n\",2\r\n\r\n3,4");
    assertThat(table.rows().stream().map(CsvRow::line)).containsExactly(2, 3, 6);
    assertThat(table.rows().get(0).cell(0)).isEqualTo(wide);
  }

  @Test
  void rowsOfBlankCellsAreSkipped() {
    assertThat(table("a,b,,\n,,,\n1,2,,\n , ,,,,\n").rows())
        .containsExactly(new CsvRow(3, List.of("1", "2", "", "")));
  }

  @Test
  void cellsBeyondAShortRowAreEmpty() {
    CsvRow row = table("a,b,c\n 1 \n").rows().get(0);
    assertThat(row.cell(0)).isEqualTo("1");
    assertThat(row.cell(2)).isEmpty();
  }

  @Test
  void textBeyondTheHeaderIsAProblem() {
    assertThat(problems("a,b\n1,2,,x,y\n3,4\n5,6,z\n"))
        .containsExactly(
            "t.csv:2:4: found \"x\" in cell 4; expected at most 2 cells, as many as the header has."
                + " To mend: put a cell that contains a comma between double quotes, write numbers"
                + " with a decimal point, or add the missing column head. [row-too-long]",
            "t.csv:4:3: found \"z\" in cell 3; expected at most 2 cells, as many as the header has."
                + " To mend: put a cell that contains a comma between double quotes, write numbers"
                + " with a decimal point, or add the missing column head. [row-too-long]");
    assertThat(problems("a;b\n1;2;3\n"))
        .containsExactly(
            "t.csv:2:3: found \"3\" in cell 3; expected at most 2 cells, as many as the header has."
                + " To mend: put a cell that contains the delimiter between double quotes, or add"
                + " the missing column head. [row-too-long]");
  }

  @Test
  void manySimilarProblemsAreFolded() {
    List<String> problems = problems("a,b\n" + "1,2,3\n".repeat(1000));
    assertThat(problems).hasSize(4);
    assertThat(problems.get(3)).contains("found 997 more like these, on lines 5 to 1001;");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "\n \n", "\ufeff", ",,\n,,\n"})
  void fileWithoutTextIsEmpty(String text) {
    assertThat(problems(text))
        .containsExactly(
            "t.csv: found an empty file; expected a row of column heads and at least one row below"
                + " it. To mend: write the column heads and the rows, or take the file away."
                + " [csv-empty]");
  }

  @Test
  void headerAloneIsEmpty() {
    assertThat(problems("\na,b\n,\n"))
        .containsExactly(
            "t.csv:2: found column heads without a row below them; expected at least one row."
                + " To mend: write the rows, or take the file away. [csv-empty]");
  }

  @Test
  void quoteThatNeverClosesIsReportedWhereItOpens() {
    assertThat(problems("a,b\n1,2\n3,\"4\n5,6\n"))
        .containsExactly(
            "t.csv:3:2: found a quote that opens here and never closes; expected quotes around"
                + " whole cells only. To mend: put the whole cell between double quotes and double"
                + " those inside it. [csv-broken]");
  }

  @Test
  void everyMisplacedQuoteIsReported() {
    assertThat(problems("a,b\n1,5\" tyre\n\"x\"y,2\n\"p\nq\" ,2\n"))
        .containsExactly(
            "t.csv:2:2: found a quote inside a cell that does not begin with one; expected quotes"
                + " around whole cells only. To mend: put the whole cell between double quotes and"
                + " double those inside it. [csv-broken]",
            "t.csv:3:1: found text after a closing quote; expected quotes around whole cells only."
                + " To mend: put the whole cell between double quotes and double those inside it."
                + " [csv-broken]",
            "t.csv:5:1: found text after a closing quote; expected quotes around whole cells only."
                + " To mend: put the whole cell between double quotes and double those inside it."
                + " [csv-broken]");
  }

  @Test
  void byteThatIsNotUtf8IsReportedWithItsLine() {
    byte[] latin = "a,b\r\n1,2\r\n3,\u00b0C\r\n".getBytes(StandardCharsets.ISO_8859_1);
    assertThat(sentences(CsvParser.read(new InputFile("t.csv", latin))))
        .containsExactly(
            "t.csv:3: found the byte 0xb0; expected text in UTF-8. To mend: save the file again"
                + " with the encoding UTF-8 (in a spreadsheet: CSV UTF-8). [text-not-utf8]");
  }

  @Test
  void cutOffCharacterAtTheEndIsNotUtf8() {
    byte[] cut = {'a', '\n', (byte) 0xe2, (byte) 0x82};
    assertThat(sentences(CsvParser.read(new InputFile("t.csv", cut))))
        .singleElement()
        .asString()
        .startsWith("t.csv:2: found the byte 0xe2;");
  }

  @Test
  void wideEncodingsAreNotUtf8() {
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
