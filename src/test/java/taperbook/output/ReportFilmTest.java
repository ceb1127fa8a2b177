package taperbook.output;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import taperbook.output.share.FilmScript;
import taperbook.plan.ReportPlan;
import taperbook.result.ReportResult;

final class ReportFilmTest {
  private static final String SCRIPT =
      new String(InventedReport.written().bytes("film/script.md"), UTF_8);

  private static final ReportPlan.Film WITH_CHARTS = new ReportPlan.Film(true, OptionalInt.empty());

  @Test
  void points_are_in_time_order() {
    Matcher codes = Pattern.compile("(?m)^## (\\d+):(\\d\\d)$").matcher(SCRIPT);
    List<Integer> seconds = new ArrayList<>();
    while (codes.find()) {
      seconds.add(60 * Integer.parseInt(codes.group(1)) + Integer.parseInt(codes.group(2)));
    }
    assertThat(seconds).hasSizeGreaterThan(5).isSorted().startsWith(0);
  }

  @Test
  void captions_are_short() {
    Matcher captions = Pattern.compile("(?m)^- On screen: (.*)$").matcher(SCRIPT);
    int found = 0;
    while (captions.find()) {
      found++;
      assertThat(captions.group(1).replace("\\", "")).hasSizeLessThanOrEqualTo(42);
    }
    assertThat(found).isGreaterThan(5);
  }

  @Test
  void a_point_has_the_time_of_its_number_with_its_uncertainty() {
    // The invented report has 60 % after 740 s, which are 12 min 20 s.
    int mark = SCRIPT.indexOf("- On screen: 60 % after ");
    assertThat(mark).isPositive();
    String before = SCRIPT.substring(0, mark);
    String code = before.substring(before.lastIndexOf("## ") + 3).strip();
    String after = SCRIPT.substring(mark, SCRIPT.indexOf("Rests on", mark));
    String[] parts = code.split(":", 2);
    int minutes = Integer.parseInt(parts[0]);
    int rest = Integer.parseInt(parts[1]);
    assertThat(after).contains("60 % after " + minutes + " min " + rest + " s");
    assertThat(after).containsPattern("give or take|between");
  }

  @Test
  void the_film_time_is_in_brackets_if_stated() {
    ReportJob job = filmed(new ReportPlan.Film(false, OptionalInt.of(200)));
    String script =
        new String(new FilmScript(InventedReport.result(job), job.date()).bytes(), UTF_8);
    // 60 % after 18:50, in a film that started 3:20 earlier.
    assertThat(script)
        .contains("That is 3:20 of the film", "## 0:00 (3:20 of the film)\n")
        .contains("## 18:50 (22:10 of the film)\n\n- On screen: 60 % after 18 min 50 s\n")
        .doesNotContain("Add the time");
    assertThat(SCRIPT).contains("Add the time", "## 0:00\n").doesNotContain("of the film");
  }

  @Test
  void a_withheld_number_has_no_point() {
    assertThat(SCRIPT).doesNotContain("100 % after").doesNotContain("withheld:");
  }

  @Test
  void the_script_warns_of_filming_while_driving() {
    assertThat(SCRIPT).contains("Never film, read displays or write while driving.");
  }

  @Tag("slow")
  @Test
  void film_pictures_are_created_only_if_requested() {
    assertThat(InventedReport.written().all().keySet())
        .filteredOn(p -> p.startsWith("film/"))
        .containsExactly("film/script.md");
    assertThat(ReportWriter.write(filmed(WITH_CHARTS)).value().orElseThrow().all().keySet())
        .contains(
            "film/power-over-soc-dark.png",
            "film/power-over-soc-clear.png",
            "film/power-over-soc-small.png");
  }

  private static ReportJob filmed(ReportPlan.Film film) {
    ReportJob job = InventedReport.job();
    ReportPlan plan = InventedReport.result(job).plan();
    ReportPlan.Style style = plan.style();
    ReportPlan filmed =
        new ReportPlan(
            plan.name(),
            plan.heading(),
            plan.subject(),
            plan.wishes(),
            new ReportPlan.Style(
                style.units(), style.basis(), style.template(), film, style.paper()),
            plan.article());
    return InventedReport.with(
        job,
        new ReportResult(
            filmed, InventedReport.result(job).main(), InventedReport.result(job).compared()));
  }
}
