package taperbook.input.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import taperbook.session.InputFile;

/**
 * Inputs by hand that follow the cases of the npm package csv-spectrum 2.0.0 (BSD-2-Clause), with
 * the documented records, and after RFC 4180, section 2.
 *
 * <p>Its case location_coordinates is omitted: its JSON contradicts its CSV.
 */
final class CsvParserReferenceTest {
  static Stream<Arguments> cases() {
    return Stream.of(
        row(
            "comma_in_quotes",
            "first,last,address,city,zip\nAda,Oak,120 any st.,\"Anytown, WW\",08123\n",
            List.of("Ada", "Oak", "120 any st.", "Anytown, WW", "08123")),
        row("empty", "a,b,c\n1,\"\",\"\"\n2,3,4", List.of("1", "", ""), List.of("2", "3", "4")),
        row(
            "empty_crlf",
            "a,b,c\r\n1,\"\",\"\"\r\n2,3,4\r\n",
            List.of("1", "", ""),
            List.of("2", "3", "4")),
        row(
            "escaped_quotes",
            "a,b\n1,\"ha \"\"ha\"\" ha\"\n3,4\n",
            List.of("1", "ha \"ha\" ha"),
            List.of("3", "4")),
        row(
            "json",
            "key,val\n1,\"{\"\"type\"\": \"\"Point\"\", \"\"coordinates\"\": [102.0, 0.5]}\"\n",
            List.of("1", "{\"type\": \"Point\", \"coordinates\": [102.0, 0.5]}")),
        row(
            "newlines",
            "a,b,c\n1,2,3\n\"Once upon \na time\",5,6\n7,8,9\n",
            List.of("1", "2", "3"),
            List.of("Once upon \na time", "5", "6"),
            List.of("7", "8", "9")),
        row(
            "newlines_crlf",
            "a,b,c\r\n1,2,3\r\n\"Once upon \r\na time\",5,6\r\n7,8,9\r\n",
            List.of("1", "2", "3"),
            List.of("Once upon \r\na time", "5", "6"),
            List.of("7", "8", "9")),
        row(
            "quotes_and_newlines",
            "a,b\n1,\"ha \n\"\"ha\"\" \nha\"\n3,4\n",
            List.of("1", "ha \n\"ha\" \nha"),
            List.of("3", "4")),
        row("simple", "a,b,c\n1,2,3\n", List.of("1", "2", "3")),
        row("simple_crlf", "a,b,c\r\n1,2,3\r\n", List.of("1", "2", "3")),
        row(
            "utf8",
            "a,b,c\n1,2,3\n4,5,\u02a4\n",
            List.of("1", "2", "3"),
            List.of("4", "5", "\u02a4")),
        row("RFC 4180, rule 2: no end of the last line", "a,b\r\n1,2", List.of("1", "2")),
        row("RFC 4180, rule 4: spaces belong to the cell", "h,i\r\na, b\r\n", List.of("a", " b")));
  }

  private static Arguments row(String name, String text, List<String> only) {
    return Arguments.of(name, text, List.of(only));
  }

  private static Arguments row(String name, String text, List<String> one, List<String> two) {
    return Arguments.of(name, text, List.of(one, two));
  }

  private static Arguments row(
      String name, String text, List<String> one, List<String> two, List<String> three) {
    return Arguments.of(name, text, List.of(one, two, three));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void records_are_as_documented(String name, String text, List<List<String>> records) {
    InputFile file = new InputFile("t.csv", text.getBytes(StandardCharsets.UTF_8));
    CsvTable table = CsvParser.read(file).value().orElseThrow();
    assertThat(table.rows().stream().map(CsvRow::cells))
        .as(name)
        .containsExactlyElementsOf(records);
  }

  @Test
  void spaces_are_kept_in_the_cell_and_ignored_in_its_value() {
    assertThat(new CsvRow(1, List.of(" b ")).cell(0)).isEqualTo("b");
  }
}
