package taperbook.read;

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

/** Texts without quotes, split by ourselves and by Commons CSV. */
final class UnquotedRowsPropertyTest {
  private static final String[] PIECES = {
    "12.5", "a", " ", "\t", "x y", ",", ",", ",", ";", "\n", "\r", "\r\n", "\u00e4", "", "0"
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
