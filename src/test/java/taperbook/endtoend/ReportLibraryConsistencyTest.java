package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import taperbook.build.CommandContext;
import taperbook.build.LibraryIntake;
import taperbook.format.NumberFormatter;
import taperbook.plan.LibraryPlan;
import taperbook.plan.ReportPlan;
import taperbook.result.LibraryRow;
import taperbook.result.Numbers;
import taperbook.result.ReportNumber;
import taperbook.result.ReportResult;
import taperbook.workspace.Project;

/** A number of a session is the same in a report and in a library. */
@Tag("slow")
final class ReportLibraryConsistencyTest {
  @TempDir private Path folder = Path.of("");

  @Test
  void each_number_of_the_demo_is_equal_in_report_and_library() throws IOException {
    Workplace.withDemo(folder);
    CommandContext context = CommandContext.in(folder, Map.of());
    Project project = context.project();
    Map<String, Numbers> library = library(project);
    List<String> compared = new ArrayList<>();
    for (String report : List.of("finch-first-look", "veldt-long-plateau")) {
      ReportPlan plan = (ReportPlan) project.plan(report).value().orElseThrow();
      ReportResult result =
          project.sources(plan).then(s -> context.pipeline(s).measured()).value().orElseThrow();
      for (Numbers numbers : result.numbers()) {
        for (ReportNumber number : numbers.all()) {
          Numbers row = library.getOrDefault(number.origin().session(), new Numbers(List.of()));
          if (number.origin().against().isEmpty() && row.find(number.id()).isPresent()) {
            checkSame(row.get(number.id()), number, plan.style());
            compared.add(number.origin().session() + " " + number.id());
          }
        }
      }
    }
    assertThat(compared)
        .contains(
            "finch-quarry-lane time_to_add_100_km",
            "finch-quarry-lane driven_range_full",
            "finch-quarry-lane-first peak_hold_time",
            "finch-quarry-lane-first time_soc_20_80",
            "veldt-quarry-lane peak_hold_time",
            "veldt-quarry-lane energy_per_soc")
        .hasSizeGreaterThan(30);
  }

  private static void checkSame(ReportNumber row, ReportNumber report, ReportPlan.Style style) {
    NumberFormatter formatter = new NumberFormatter(style);
    String what = report.origin().session() + " " + report.id();
    assertThat(row.outcome()).as(what).isEqualTo(report.outcome());
    assertThat(formatter.value(row)).as(what).isEqualTo(formatter.value(report));
    assertThat(formatter.range(row)).as(what).isEqualTo(formatter.range(report));
  }

  /** The rows of the demo's library by session, measured without a cache. */
  private static Map<String, Numbers> library(Project project) {
    LibraryPlan plan = (LibraryPlan) project.plan("library").value().orElseThrow();
    LibraryIntake intake = LibraryIntake.withoutArticle(plan);
    project.rangeTestNames().forEach(n -> intake.rangeTest(n, project.visitRangeTest(n)));
    project.sessionNames().forEach(n -> intake.take(intake.measured(n, project.visitSession(n))));
    Map<String, Numbers> rows = new LinkedHashMap<>();
    for (LibraryRow row : intake.result().rows()) {
      rows.put(row.session(), row.numbers());
    }
    return rows;
  }
}
