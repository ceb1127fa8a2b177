package taperbook.input.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import taperbook.diagnostics.Checked;
import taperbook.input.Given;
import taperbook.input.PlanParser;
import taperbook.input.folder.ReportFileParser;
import taperbook.plan.Basis;
import taperbook.plan.LibraryPlan;
import taperbook.plan.Plan;
import taperbook.plan.ReportPlan;
import taperbook.quantity.SocWindow;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.session.InputFile;

final class LibraryPlanParserTest {
  private static final String LEAST = "kind: library\ntitle: T\n";

  @Test
  void every_key_of_a_library_is_accepted() {
    LibraryPlan plan =
        library(
            """
            title: All visits
            kind: library
            author: A. Tester
            published: 2026-03-20
            distances: 100 mi, 150 km
            window: 20-80 %
            units: mi
            basis: rated
            template: fleet
            """);
    assertThat(plan)
        .isEqualTo(
            new LibraryPlan(
                "all",
                new ReportPlan.Heading(
                    "All visits", "A. Tester", Optional.of(LocalDate.of(2026, 3, 20))),
                List.of(
                    new WantedDistance(100, Unit.MILE), new WantedDistance(150, Unit.KILOMETRE)),
                new SocWindow(20, 80),
                new ReportPlan.Style(Unit.MILE, Basis.RATED, "fleet"),
                new ReportPlan.Article("Body\n", "reports/all.md", 12)));
  }

  @Test
  void a_library_requires_a_title_and_no_session() {
    LibraryPlan plan = library(LEAST);
    assertThat(plan.window()).isEqualTo(new SocWindow(10, 80));
    assertThat(plan.style().template()).isEqualTo("library");
    assertThat(plan.distances().get(0)).isEqualTo(new WantedDistance(100, Unit.KILOMETRE));
    assertThat(problems("kind: library\n"))
        .containsExactly(
            "reports/all.md:1: found no key title; expected the title of the report. To fix:"
                + " write \"title: A first look\". [key-missing]");
  }

  @Test
  void a_report_without_a_kind_is_a_session_report() {
    assertThat(good("title: T\nsession: one\n")).isInstanceOf(ReportPlan.class);
    assertThat(good("kind: session\ntitle: T\nsession: one\n")).isInstanceOf(ReportPlan.class);
  }

  @ParameterizedTest
  @CsvSource({
    "session: one",
    "compare: one",
    "stops: one",
    "range test: ring",
    "soc marks: 20",
    "film: yes"
  })
  void a_key_that_selects_sessions_is_refused_with_its_location(String line) {
    assertThat(problems(LEAST + line + "\n"))
        .singleElement()
        .asString()
        .startsWith("reports/all.md:4:1: found \"" + line.substring(0, line.indexOf(':')) + "\"")
        .endsWith("[key-out-of-place]");
  }

  @Test
  void a_session_in_a_library_is_refused_with_a_remedy() {
    assertThat(problems(LEAST + "session: one\n"))
        .containsExactly(
            "reports/all.md:4:1: found \"session\"; expected no such key in a library, which shows"
                + " every session. To fix: remove the line, or write kind: session."
                + " [key-out-of-place]");
  }

  @Test
  void all_problems_are_reported_together() {
    assertThat(problems(LEAST + "session: one\ncompare: two\nunits: miles\nwindow: 9-5 %\n"))
        .hasSize(4);
  }

  @Test
  void a_misspelt_kind_is_reported_once_and_checked_as_the_intended_one() {
    assertThat(problems("kind: libary\ntitle: T\n"))
        .containsExactly(
            "reports/all.md:2:7: found \"libary\"; expected one of the words session,"
                + " library. To fix: write library. [value-not-understood]");
  }

  @Test
  void a_library_with_two_windows_is_refused() {
    assertThat(problems(LEAST + "window: 10-80 %, 20-80 %\n"))
        .containsExactly(
            "reports/all.md:4:18: found \"20-80 %\", window 2 of 2; expected one window for a"
                + " library. To fix: keep the one that is meant. [value-not-understood]");
  }

  @Test
  void each_kind_refuses_the_built_in_template_of_the_other() {
    assertThat(problems(LEAST + "template: report\n"))
        .singleElement()
        .asString()
        .contains("reports/all.md:4:11")
        .contains("name-unknown");
    assertThat(problems("title: T\nsession: one\ntemplate: library\n"))
        .singleElement()
        .asString()
        .contains("name-unknown");
  }

  private static Plan good(String frontMatter) {
    return Given.good(check(frontMatter));
  }

  private static LibraryPlan library(String frontMatter) {
    return good(frontMatter)
        .fold(
            report -> {
              throw new AssertionError(report);
            },
            library -> library);
  }

  private static List<String> problems(String frontMatter) {
    assertThat(check(frontMatter).isUsable()).isFalse();
    return Given.sentences(check(frontMatter));
  }

  private static Checked<Plan> check(String frontMatter) {
    String text = "---\n" + frontMatter + "---\nBody\n";
    InputFile file = new InputFile("reports/all.md", text.getBytes(StandardCharsets.UTF_8));
    return PlanParser.check(
        "all",
        ReportFileParser.read(file).value().orElseThrow(),
        Set.of("one", "two"),
        Set.of("ring"),
        Set.of("report", "library", "fleet"),
        name -> false);
  }
}
