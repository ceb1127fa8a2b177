package taperbook.app;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.check.VehicleCheck;
import taperbook.claims.ArticleFigures;
import taperbook.claims.FigureCheck;
import taperbook.draw.Figure;
import taperbook.draw.FigureSet;
import taperbook.draw.compare.CompareFigures;
import taperbook.measure.ReportMeasuring;
import taperbook.model.InputFile;
import taperbook.model.RangeTest;
import taperbook.model.ReportPlan;
import taperbook.model.ReportResult;
import taperbook.model.Session;
import taperbook.problem.Checked;
import taperbook.problem.Problem;
import taperbook.problem.Severity;
import taperbook.write.ReportFiles;
import taperbook.write.ReportWriter;
import taperbook.write.Templates;
import taperbook.write.WriteJob;

/**
 * The stages in their order, one line each: read and check (in {@link Project}), measure, hold the
 * article's figures against it, draw, write. Data flows one way, and this is the only place where
 * one stage's result becomes the next one's input.
 */
final class Pipeline {
  private final Project project;
  private final OwnTemplates templates;
  private final ProgramStamp program;
  private final MadeDate madeDate;

  Pipeline(Project project, OwnTemplates templates, ProgramStamp program, MadeDate madeDate) {
    this.project = project;
    this.templates = templates;
    this.program = program;
    this.madeDate = madeDate;
  }

  /** What a report says, with the files it is made into. */
  record Made(ReportResult result, ReportFiles files) {}

  /** All files of a report, or every problem on the way. */
  Checked<Made> make(ReportSources sources) {
    return measured(sources)
        .then(
            result -> {
              WriteJob job = job(sources, result);
              List<Problem> typed = FigureCheck.of(result).problems();
              if (typed.stream().anyMatch(p -> p.severity() == Severity.ERROR)) {
                List<Problem> all = new ArrayList<>(typed);
                all.addAll(new ReportWriter().problems(job));
                return Checked.refused(all);
              }
              return Checked.of(result, typed)
                  .then(r -> new ReportWriter().write(job))
                  .then(files -> Checked.good(new Made(result, files)));
            });
  }

  /** What making the report would meet; nothing is kept. */
  Making.Findings findings(ReportSources sources) {
    Checked<ReportResult> measured = measured(sources);
    List<Problem> all = new ArrayList<>(measured.problems());
    Optional<ArticleFigures> figures = measured.value().map(FigureCheck::of);
    figures.ifPresent(f -> all.addAll(f.problems()));
    measured
        .value()
        .ifPresent(result -> all.addAll(new ReportWriter().problems(job(sources, result))));
    return new Making.Findings(all, figures);
  }

  /** What is measured for a report; nothing is drawn or written. */
  Checked<ReportResult> measured(ReportSources sources) {
    ReportPlan.Subject subject = sources.plan().subject();
    List<String> names = new ArrayList<>(List.of(subject.session()));
    names.addAll(subject.compare());
    Checked<List<Session>> sessions = Project.all(names, project::session);
    Checked<List<RangeTest>> tests = Project.all(subject.rangeTests(), project::rangeTest);
    List<Problem> problems = new ArrayList<>(sessions.problems());
    problems.addAll(tests.problems());
    if (sessions.value().isEmpty() || tests.value().isEmpty()) {
      return Checked.refused(problems);
    }
    List<Session> found = sessions.value().get();
    problems.addAll(VehicleCheck.check(found, tests.value().get()));
    return Checked.of(
        ReportMeasuring.measure(
            sources.plan(), found.get(0), found.subList(1, found.size()), tests.value().get()),
        problems);
  }

  private WriteJob job(ReportSources sources, ReportResult result) {
    List<Figure> figures = new ArrayList<>(FigureSet.draw(result));
    figures.addAll(CompareFigures.draw(result));
    LocalDate made = madeDate.of(result);
    List<InputFile> inputs = new ArrayList<>(sources.files());
    inputs.addAll(templates.files());
    Templates all = templates.withBuiltIn();
    return new WriteJob(result, figures, all, inputs, made, program.name());
  }
}
