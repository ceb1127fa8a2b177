package taperbook.input.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Compares texts without quotes with Commons CSV. */
final class UnquotedRowsPropertyTest {
  private static final String[] PIECES = {
    "12.5", "a", " ", "\t", "x y", ",", ",", ",", ";", "\n", "\r", "\r\n", "\u00e4", "", "0", "-",
    "."
  };

  static IntStream seeds() {
    return IntStream.rangeClosed(1, 200);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void rows_and_lines_are_those_of_commons_csv(int seed) throws IOException {
    Random random = new Random(seed);
    StringBuilder text = new StringBuilder();
    for (int i = random.nextInt(60); i >= 0; i--) {
      text.append(PIECES[random.nextInt(PIECES.length)]);
    }
    char delimiter = random.nextBoolean() ? ',' : random.nextBoolean() ? ';' : '\t';
    assertThat(new UnquotedRows(text.toString(), delimiter).list())
        .isEqualTo(byCommonsCsv(text.toString(), delimiter));
  }

  /** Plain decimals by a regular expression, and their values by the JDK. */
  @ParameterizedTest
  @MethodSource("seeds")
  void numbers_are_those_that_the_jdk_parses(int seed) {
    Random random = new Random(seed);
    StringBuilder text = new StringBuilder();
    for (int i = random.nextInt(300); i >= 0; i--) {
      text.append(PIECES[random.nextInt(PIECES.length)]);
    }
    for (CsvRow row : new UnquotedRows(text.toString(), ',').list()) {
      for (int i = 0; i < row.size(); i++) {
        String cell = row.cells().get(i);
        boolean plain = cell.matches(" *-?[0-9]+([.][0-9]+)? *") && digits(cell) <= 15;
        Double expected = plain ? Double.parseDouble(cell) : Double.NaN;
        assertThat(Double.valueOf(row.number(i))).as(cell).isEqualTo(expected);
        assertThat(row.isBlankAt(i)).isEqualTo(cell.isBlank());
        assertThat(row.cell(i)).isEqualTo(cell.strip());
      }
    }
  }

  private static long digits(String cell) {
    return cell.chars().filter(Character::isDigit).count();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void a_range_of_rows_equals_that_range_of_all_rows(int seed) {
    Random random = new Random(seed);
    String text = "a,1\n\nb,2\r\n ,\nc\nd,4,5\n".repeat(1 + random.nextInt(400));
    List<CsvRow> rows = new UnquotedRows(text, ',').list();
    int to = random.nextInt(rows.size() + 1);
    int from = random.nextInt(to + 1);
    assertThat(rows.subList(from, to)).isEqualTo(new ArrayList<>(rows).subList(from, to));
  }

  private static List<CsvRow> byCommonsCsv(String text, char delimiter) throws IOException {
    LineCounter lines = new LineCounter(text);
    List<CsvRow> rows = new ArrayList<>();
    CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(delimiter).get();
    try (CSVParser parser = CSVParser.parse(text, format)) {
      for (CSVRecord record : parser) {
        CsvRow row =
            new CsvRow(lines.lineOfTextAt((int) record.getCharacterPosition()), record.toList());
        if (!row.isBlank()) {
          rows.add(row);
        }
      }
    }
    return rows;
  }
}
