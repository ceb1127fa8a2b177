package taperbook.app.making;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import taperbook.app.project.OwnTemplates;
import taperbook.app.project.Project;
import taperbook.app.publish.Remeasuring;
import taperbook.measure.ReportMeasuring.Again;
import taperbook.model.CommonGround;
import taperbook.model.InputFile;
import taperbook.model.MovedNumber;
import taperbook.model.Plan;
import taperbook.model.ReportPlan;
import taperbook.problem.Checked;
import taperbook.proof.CarriedReport;
import taperbook.proof.NumbersFile;
import taperbook.read.CarriedFolder;
import taperbook.words.Wording;
import taperbook.write.data.NumbersJson;

/** Measures a report again from files in memory. */
final class Remeasured implements Remeasuring {
  /** Measures nothing again: moves are told by their size alone, without causes. */
  static final Remeasuring NOT =
      new Remeasuring() {
        @Override
        public Optional<NumbersFile> numbers(Map<String, InputFile> files, int redraw) {
          return Optional.empty();
        }

        @Override
        public boolean askAlike(Map<String, InputFile> one, Map<String, InputFile> other) {
          return true;
        }

        @Override
        public boolean isPrintedAlike(MovedNumber number) {
          return false;
        }
      };

  private final ReportPlan plan;
  private final OwnTemplates templates;
  private final Optional<CommonGround> ground;
  private final Wording wording;

  /**
   * Of a report.
   *
   * @param plan what it asks for now
   * @param templates the folder's own templates
   * @param ground the windows that are taken over from what was published before
   */
  Remeasured(ReportPlan plan, OwnTemplates templates, Optional<CommonGround> ground) {
    this.plan = plan;
    this.templates = templates;
    this.ground = ground;
    this.wording = new Wording(plan.style());
  }

  @Override
  public Optional<NumbersFile> numbers(Map<String, InputFile> files, int redraw) {
    Project project = project(files);
    return plan(project)
        .flatMap(p -> Pipeline.measured(project, p, new Again(ground, redraw)).value())
        .flatMap(
            result ->
                NumbersFile.read(CarriedReport.NUMBERS, new NumbersJson(result, List.of()).bytes())
                    .value());
  }

  private Project project(Map<String, InputFile> files) {
    return new Project(new CarriedFolder(files), templates.names());
  }

  private Optional<ReportPlan> plan(Project project) {
    Checked<Plan> read = project.plan(plan.name());
    return read.value().flatMap(p -> p.fold(Optional::of, library -> Optional.empty()));
  }

  @Override
  public boolean askAlike(Map<String, InputFile> one, Map<String, InputFile> other) {
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
