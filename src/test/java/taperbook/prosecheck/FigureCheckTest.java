package taperbook.prosecheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import taperbook.diagnostics.Problem;
import taperbook.prosecheck.TypedFigure.Verdict;

final class FigureCheckTest {
  @Test
  void a_contradicted_figure_is_reported_with_location_result_and_remedy() {
    assertThat(sentences("Text.\n\nThe car **peaked at 184 kW** there.\n"))
        .containsExactly(
            "reports/finch.md:14:21: found \"The car peaked at 184 kW there.\", 13 kW more than the"
                + " result; expected peak power: 171 kW, give or take 0.5 kW. To fix: write"
                + " ${number(\"peak_power\")}, or correct the figure, or end the line with"
                + " <!-- deliberate --> if it is meant to differ. [figure-contradicted]");
  }

  @Test
  void a_contradicted_fact_is_corrected_in_the_input_and_not_by_a_call() {
    assertThat(sentences("Outside it was 18 \u00b0C."))
        .singleElement()
        .asString()
        .contains("7 \u00b0C more than the result")
        .contains("correct the figure, or the item ambient temperature of the input")
        .doesNotContain("number(");
  }

  @Test
  void a_mark_on_the_line_permits_a_contradicted_figure() {
    ArticleFigures figures = of("It peaked at 184 kW. <!-- deliberate -->\n");
    assertThat(figures.problems()).isEmpty();
    assertThat(figures.figures()).extracting(TypedFigure::verdict).containsOnly(Verdict.DELIBERATE);
  }

  @Test
  void a_mark_applies_to_its_line_only() {
    ArticleFigures figures =
        of("It peaked at 184 kW, <!-- deliberate -->\nand it took 22 minutes from 10 % to 80 %.\n");
    assertThat(figures.problems()).hasSize(1);
    assertThat(figures.problems().get(0).place().line()).isEqualTo(13);
  }

  @Test
  void an_unneeded_mark_is_a_notice() {
    assertThat(sentences("It peaked at 171 kW. <!-- deliberate -->\n"))
        .containsExactly(
            "reports/finch.md:12: found a mark <!-- deliberate --> on a line where nothing is"
                + " contradicted; expected the mark only on a line with a figure that differs from"
                + " the results on purpose. To fix: remove the mark. [mark-not-needed]");
  }

  @Test
  void a_mark_in_code_is_ignored() {
    assertThat(sentences("End the line with `<!-- deliberate -->`.\n")).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "`It peaked at 184 kW.`",
        "```\nIt peaked at 184 kW.\n```",
        "<!-- It peaked at 184 kW. -->",
        "[It peaked](x \"at 184 kW\").",
        "It peaked at ${number(\"peak_power\") + \" 184 kW\"}.",
        "See https://example.org/peaked-at-184-kW now.",
        "[x]: https://example.org \"It peaked at 184 kW\""
      })
  void text_that_is_not_prose_is_ignored(String article) {
    assertThat(of(article).figures()).isEmpty();
  }

  @Test
  void a_figure_that_names_a_number_of_the_report_is_not_counted() {
    assertThat(of("From 10 % to 80 % took ${number(\"time_soc_10_80\")}.").figures()).isEmpty();
    assertThat(of("${number(\"time_to_add_100_km\")} bought 100 km.").figures()).isEmpty();
  }

  @Test
  void a_withheld_number_contradicts_nothing() {
    assertThat(of("It reached 90 % after 50 minutes.").problems()).isEmpty();
  }

  @Test
  void a_sentence_across_lines_keeps_its_locations() {
    TypedFigure figure = of("On that day the power\npeaked at\n184 kW.").figures().get(0);
    assertThat(figure.place().toString()).isEqualTo("reports/finch.md:14:1");
    assertThat(figure.verdict()).isEqualTo(Verdict.CONTRADICTED);
  }

  @Test
  void a_passage_under_the_heading_of_another_car_is_not_compared() {
    assertThat(of("## The Veldt Carrier\n\nIt peaked at 143 kW.\n").problems()).isEmpty();
    assertThat(of("## The Finch\n\nIt peaked at 143 kW.\n").problems()).hasSize(1);
  }

  @Tag("slow")
  @ParameterizedTest
  @ValueSource(
      strings = {
        "${",
        "](",
        "()",
        "1,000,",
        "<",
        "`",
        "![](",
        "| ",
        "a 1 kW ",
        "\"",
        "more than ",
        "> "
      })
  @Timeout(20)
  void a_long_repetition_is_parsed_in_time(String piece) {
    String article = piece.repeat(20_000);
    assertThatCode(() -> of(article)).doesNotThrowAnyException();
    assertThatCode(() -> of("](" + article)).doesNotThrowAnyException();
  }

  @Test
  void any_mixture_of_words_and_marks_has_locations_within_the_article() {
    String[] parts = {
      "It peaked at ",
      "184 kW",
      " 10-80 % ",
      "in ",
      "six ",
      "minutes",
      "\n",
      "\n\n",
      "| ",
      "# ",
      "`",
      "**",
      "<!-- ",
      " -->",
      "[",
      "](",
      ")",
      "${",
      "}",
      "\"",
      ". ",
      "- ",
      "> ",
      "6:27",
      "\u00a0"
    };
    for (int seed = 1; seed <= 200; seed++) {
      Random random = new Random(seed);
      StringBuilder text = new StringBuilder();
      for (int i = 0; i < 60; i++) {
        text.append(parts[random.nextInt(parts.length)]);
      }
      String[] lines = text.toString().split("\n", -1);
      for (TypedFigure figure : of(text.toString()).figures()) {
        String line = lines[figure.place().line() - InventedCharge.FIRST_LINE];
        assertThat(line.charAt(figure.place().column() - 1))
            .as("seed " + seed)
            .isEqualTo(figure.written().charAt(0));
      }
    }
  }

  private static ArticleFigures of(String article) {
    return FigureCheck.of(InventedCharge.with(article));
  }

  private static List<String> sentences(String article) {
    return of(article).problems().stream().map(Problem::sentence).toList();
  }
}
