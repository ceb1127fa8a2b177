package taperbook.build;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import taperbook.diagnostics.Checked;
import taperbook.format.NumberFormatter;
import taperbook.input.folder.InMemoryFolder;
import taperbook.metric.ReportMetrics.Again;
import taperbook.output.data.NumbersJson;
import taperbook.plan.Plan;
import taperbook.plan.ReportPlan;
import taperbook.result.CommonGround;
import taperbook.result.MovedNumber;
import taperbook.result.ReportResult;
import taperbook.session.InputFile;
import taperbook.verify.CarriedReport;
import taperbook.verify.NumbersFile;
import taperbook.workspace.MetricRerun;
import taperbook.workspace.Project;
import taperbook.workspace.ProjectTemplates;

/** Recomputes the numbers of a report from files in memory. */
final class MetricReruns implements MetricRerun {
  /** Recomputes nothing: moves are reported by their size only, without causes. */
  static final MetricRerun NONE =
      new MetricRerun() {
        @Override
        public Optional<NumbersFile> numbers(Map<String, InputFile> files, int redraw) {
          return Optional.empty();
        }

        @Override
        public boolean requestSameNumbers(
            Map<String, InputFile> one, Map<String, InputFile> other) {
          return true;
        }

        @Override
        public boolean isPrintedAlike(MovedNumber number) {
          return false;
        }
      };

  private final ReportPlan plan;
  private final ProjectTemplates templates;
  private final Optional<CommonGround> ground;
  private final NumberFormatter wording;

  /**
   * Creates a recomputation for a report.
   *
   * @param plan the current plan of the report
   * @param templates the project's own templates
   * @param ground the windows that are taken from the published version
   */
  MetricReruns(ReportPlan plan, ProjectTemplates templates, Optional<CommonGround> ground) {
    this.plan = plan;
    this.templates = templates;
    this.ground = ground;
    this.wording = new NumberFormatter(plan.style());
  }

  @Override
  public Optional<NumbersFile> numbers(Map<String, InputFile> files, int redraw) {
    Project project = project(files);
    return plan(project)
        .flatMap(p -> Pipeline.measured(project, p, new Again(ground, redraw)).value())
        .map(MetricReruns::written);
  }

  /** Returns the numbers in the form in which a version publishes them, without its inputs. */
  static NumbersFile written(ReportResult result) {
    byte[] json = new NumbersJson(result, List.of()).bytes();
    return NumbersFile.read(CarriedReport.NUMBERS, json).value().orElseThrow();
  }

  private Project project(Map<String, InputFile> files) {
    return new Project(new InMemoryFolder(files), templates.names());
  }

  private Optional<ReportPlan> plan(Project project) {
    Checked<Plan> read = project.plan(plan.name());
    return read.value().flatMap(p -> p.fold(Optional::of, library -> Optional.empty()));
  }

  @Override
  public boolean requestSameNumbers(Map<String, InputFile> one, Map<String, InputFile> other) {
    Optional<ReportPlan> before = plan(project(one));
    Optional<ReportPlan> after = plan(project(other));
    return before.isPresent()
        && after.isPresent()
        && before.get().subject().equals(after.get().subject())
        && before.get().wishes().equals(after.get().wishes())
        && before.get().style().basis() == after.get().style().basis();
  }

  @Override
  public boolean isPrintedAlike(MovedNumber number) {
    return wording.isPrintedAlike(number);
  }
}
