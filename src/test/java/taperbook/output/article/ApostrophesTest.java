package taperbook.output.article;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class ApostrophesTest {
  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '"',
      delimiter = '|',
      value = {
        "the car's own|the car\u2019s own",
        "the car&#39;s own|the car\u2019s own",
        "the displays' rounding|the displays\u2019 rounding",
        "<b>Finch</b>'s range|<b>Finch</b>\u2019s range",
        "it isn't|it isn\u2019t",
        "found 'miles' there|found 'miles' there",
        "the car's 'miles' there|the car\u2019s 'miles' there",
        "<code>the car's</code> and the car's|<code>the car's</code> and the car\u2019s",
        "<script>a='b's'</script>|<script>a='b's'</script>",
        "<style>a{b:'c'}</style>|<style>a{b:'c'}</style>",
        "<!-- the car's -->|<!-- the car's -->",
        "<img alt=\"the car's\"/>|<img alt=\"the car's\"/>"
      })
  void an_apostrophe_is_curly_and_a_quote_is_unchanged(String html, String expected) {
    assertThat(Apostrophes.set(html)).isEqualTo(expected);
  }

  @Test
  void a_template_prints_curly_apostrophes() {
    assertThat(
            new RestrictedTemplates(Map.of("page.ftlh", "The car's ${what}."))
                .page("page.ftlh", Map.of("what", "driver's seat"))
                .value())
        .contains("The car\u2019s driver\u2019s seat.");
  }
}
