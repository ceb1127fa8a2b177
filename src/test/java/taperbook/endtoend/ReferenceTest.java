package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import taperbook.build.CommandContext;
import taperbook.build.LibraryIntake;
import taperbook.diagnostics.Checked;
import taperbook.plan.LibraryPlan;
import taperbook.plan.Plan;
import taperbook.plan.ReportPlan;
import taperbook.result.ReportNumber;
import taperbook.result.ReportResult;
import taperbook.workspace.Project;

/** Compares the committed reference with the lists of the program. */
final class ReferenceTest {
  private static final Path REFERENCE = Path.of("src/docs/reference.md");
  private static final String ALL =
      """
      ---
      title: Every number
      session: finch-quarry-lane
      compare: finch-quarry-lane-first, veldt-quarry-lane
      range test: finch-ring-road
      distances: 100 km
      units: km
      ---
      """;

  @TempDir private Path folder = Path.of("");

  @Test
  void the_reference_is_current() throws IOException {
    String actual = ReferenceText.of(numbers());
    if (Boolean.getBoolean("reference.update")) {
      Files.writeString(REFERENCE, actual);
    }
    assertThat(Files.readString(REFERENCE))
        .as("run mvn test -Dtest=ReferenceTest -Dreference.update=true")
        .isEqualTo(actual);
  }

  @Test
  void the_readme_links_to_the_reference() throws IOException {
    assertThat(Files.readString(Path.of("README.md"))).contains("](src/docs/reference.md)");
  }

  /** Numbers of a report that has every kind: two sessions of one car, and another car's. */
  private List<ReportNumber> numbers() throws IOException {
    Workplace place = Workplace.withDemo(folder);
    place.replace(
        "sessions/finch-quarry-lane-first/conditions.csv",
        "Northmoor Finch, first battery revision",
        "Northmoor Finch, second battery revision");
    Files.writeString(place.path("reports/all.md"), ALL);
    CommandContext context = CommandContext.in(folder, Map.of());
    Plan plan = context.project().plan("all").value().orElseThrow();
    ReportPlan report = (ReportPlan) plan;
    Checked<ReportResult> result =
        context.project().sources(report).then(s -> context.pipeline(s).measured());
    List<ReportNumber> all = new ArrayList<>();
    result.value().orElseThrow().numbers().forEach(numbers -> all.addAll(numbers.all()));
    all.addAll(ofLibrary(context.project()));
    return all;
  }

  private static List<ReportNumber> ofLibrary(Project project) {
    Plan plan = project.plan("library").value().orElseThrow();
    LibraryPlan library = (LibraryPlan) plan;
    LibraryIntake intake = LibraryIntake.withoutArticle(library);
    intake.take(intake.measured("finch-quarry-lane", project.visitSession("finch-quarry-lane")));
    return intake.result().row("finch-quarry-lane").orElseThrow().numbers().all();
  }
}
