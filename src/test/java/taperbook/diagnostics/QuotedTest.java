package taperbook.diagnostics;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

final class QuotedTest {
  @Test
  void textIsEnclosedInQuotes() {
    assertThat(Quoted.of("12,5")).isEqualTo("\"12,5\"");
    assertThat(Quoted.of("")).isEqualTo("\"\"");
  }

  @Test
  void lineEndsAndOtherControlsBecomeSpaces() {
    assertThat(Quoted.of("a\r\nb\u001b[31m")).isEqualTo("\"a  b [31m\"");
  }

  @Test
  void longTextIsCutBetweenCharactersAndMarked() {
    String car = "\ud83d\ude97";
    assertThat(Quoted.of(car.repeat(60))).isEqualTo("\"" + car.repeat(60) + "\"");
    assertThat(Quoted.of(car.repeat(61))).isEqualTo("\"" + car.repeat(60) + "\u2026\"");
  }
}
