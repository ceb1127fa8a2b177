package taperbook.input.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import taperbook.session.InputFile;

/** Oversized input is refused before parsing. */
final class CsvParserLimitsTest {
  @Test
  void lines_above_the_limit_are_refused_and_lines_at_the_limit_are_accepted() {
    InputFile file = new InputFile("r.csv", "a\n1\n2\n3\n".getBytes(StandardCharsets.UTF_8));
    assertThat(CsvParser.read(file, CsvLayout.PLAIN, 4).isUsable()).isTrue();
    assertThat(CsvParser.read(file, CsvLayout.PLAIN, 3).problems())
        .extracting(p -> p.sentence())
        .containsExactly(
            "r.csv: found 4 lines; expected at most 3 lines. To fix: keep the rows of one session"
                + " only. [file-too-large]");
    assertThat(CsvParser.MAX_LINES).isEqualTo(10_000_000);
  }
}
