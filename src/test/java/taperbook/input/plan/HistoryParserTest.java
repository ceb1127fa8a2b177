package taperbook.input.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.input.folder.ReportFileParser;
import taperbook.plan.ReportPlan;
import taperbook.session.InputFile;

final class HistoryParserTest {
  @Test
  void a_report_is_a_draft_by_default() {
    ReportPlan plan = check("published: 2026-04-24").value().orElseThrow();
    assertThat(plan.heading().history()).isEqualTo(ReportPlan.History.DRAFT);
    assertThat(plan.heading().versionDay()).contains(LocalDate.of(2026, 4, 24));
  }

  @Test
  void corrections_have_a_date_and_a_reason_with_commas_and_colons() {
    ReportPlan plan =
        check(
                "published: 2026-04-24\nstate: published\ncorrections:\n"
                    + "  - 2026-05-02: at 6:38, misread\n  - 2026-06-01: typing error")
            .value()
            .orElseThrow();
    assertThat(plan.heading().history().published()).isTrue();
    assertThat(plan.heading().history().corrections())
        .containsExactly(
            new ReportPlan.Reason(LocalDate.of(2026, 5, 2), "at 6:38, misread"),
            new ReportPlan.Reason(LocalDate.of(2026, 6, 1), "typing error"));
    assertThat(plan.heading().versionDay()).contains(LocalDate.of(2026, 6, 1));
  }

  @Test
  void an_unknown_state_is_refused() {
    assertThat(problem("published: 2026-04-24\nstate: publised"))
        .isEqualTo(
            "reports/r.md:5:8 found \"publised\" expected one of the words draft, published"
                + " to fix write published");
  }

  @Test
  void publication_requires_a_date() {
    assertThat(problem("state: published"))
        .isEqualTo(
            "reports/r.md:4:8 found no day of publication expected the day on which the report was"
                + " first published to fix write \"published: 2026-03-14\" with that day");
    assertThat(problem("corrections:\n  - 2026-05-02: misread"))
        .startsWith("reports/r.md:5:5 found no day of publication");
  }

  @Test
  void a_correction_requires_a_reason_and_dates_in_order() {
    assertThat(problem("published: 2026-04-24\ncorrections:\n  - 2026-05-02"))
        .isEqualTo(
            "reports/r.md:6:5 found \"2026-05-02\" expected a day, a colon and the reason to fix"
                + " write it as in \"- 2026-05-02: the power at 6:38 was misread\"");
    assertThat(problem("published: 2026-04-24\ncorrections:\n  - 2026-04-24: misread"))
        .isEqualTo(
            "reports/r.md:6:5 found \"2026-04-24\" expected a day after 2026-04-24, the one before"
                + " it to fix write the corrections in their order, each with a day of its own");
    assertThat(problem("published: 2026-04-24\ncorrections:\n  - in May: misread"))
        .startsWith("reports/r.md:6:5 found \"in May\" expected a day in ISO 8601");
  }

  private static String problem(String lines) {
    List<Problem> problems = check(lines).problems();
    assertThat(problems).hasSize(1);
    Problem p = problems.get(0);
    return p.place()
        + " found "
        + p.found()
        + " expected "
        + p.expected()
        + " to fix "
        + p.remedy();
  }

  private static Checked<ReportPlan> check(String lines) {
    String text = "---\ntitle: R\nsession: s\n" + lines + "\n---\nText.\n";
    return ReportFileParser.read(
            new InputFile("reports/r.md", text.getBytes(StandardCharsets.UTF_8)))
        .then(
            raw ->
                ReportPlanParser.check(
                    "r", raw, Set.of("s"), Set.of(), Set.of("report"), name -> false));
  }
}
