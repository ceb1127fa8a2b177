package taperbook.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.diagnostics.ProblemCode;
import taperbook.output.article.ArticleText;
import taperbook.plan.ReportPlan;
import taperbook.result.ReportResult;

/** The answer at the top of a report, composed or by the tester. */
final class AnswerTest {
  private static final ReportResult RESULT = InventedReport.result("Text.", "Title");

  private static ReportResult with(String answer) {
    ReportPlan plan = RESULT.plan();
    ReportPlan.Heading heading =
        new ReportPlan.Heading(
            "Title",
            "A. Tester",
            Optional.empty(),
            ReportPlan.History.DRAFT,
            Optional.of(new ReportPlan.Article(answer, "reports/look.md", 5)));
    return new ReportResult(
        new ReportPlan(
            plan.name(), heading, plan.subject(), plan.wishes(), plan.style(), plan.article()),
        RESULT.main(),
        RESULT.compared());
  }

  private static String words(Checked<String> answer) {
    return Jsoup.parse(answer.value().orElseThrow()).text().replace('\u00a0', ' ');
  }

  private static Checked<String> answer(ReportResult result) {
    return new ArticleText(result, Set.of()).answer(result);
  }

  /** 830 s, 2010 s and 405 s, spoken. */
  @Test
  void is_composed_of_the_added_distances_and_the_peak() {
    assertThat(words(answer(RESULT)))
        .isEqualTo(
            "150 km in about 14 minutes, 300 km in about 34 minutes; 128 kW within 2 % for about 7"
                + " minutes.");
  }

  @Test
  void is_the_one_of_the_front_matter_if_present() {
    assertThat(words(answer(with("It took **${number(\"peak_power\")}**."))))
        .isEqualTo("It took 128 kW.");
  }

  @Test
  void an_unknown_id_is_reported_at_its_line() {
    List<Problem> problems = answer(with("${number(\"peak_powr\")}")).problems();
    assertThat(problems).extracting(Problem::code).containsExactly(ProblemCode.NUMBER_UNKNOWN);
    assertThat(problems.get(0).place()).hasToString("reports/look.md:5:1");
  }
}
