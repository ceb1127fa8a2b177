package taperbook.build;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import taperbook.buildinfo.BuildInfo;
import taperbook.buildinfo.ReportDate;
import taperbook.chart.plots.FigureSet;
import taperbook.chart.render.Figure;
import taperbook.cli.ProgressListener;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.diagnostics.Severity;
import taperbook.i18n.Texts;
import taperbook.input.DuplicateReadings;
import taperbook.input.SeasonCheck;
import taperbook.input.StopsCheck;
import taperbook.input.VehicleCheck;
import taperbook.metric.ReportMetrics;
import taperbook.metric.ReportMetrics.Again;
import taperbook.metric.ReportMetrics.Sessions;
import taperbook.output.ReportFiles;
import taperbook.output.ReportJob;
import taperbook.output.ReportWriter;
import taperbook.output.TemplateWarmUp;
import taperbook.output.Templates;
import taperbook.output.data.CorrectionsCsv;
import taperbook.output.data.NumbersJson;
import taperbook.plan.ReportPlan;
import taperbook.plan.ReportPlan.Season;
import taperbook.prosecheck.ArticleFigures;
import taperbook.prosecheck.FigureCheck;
import taperbook.result.CommonGround;
import taperbook.result.Correction;
import taperbook.result.ReportResult;
import taperbook.session.InputFile;
import taperbook.session.RangeTest;
import taperbook.session.Session;
import taperbook.verify.CarriedReport;
import taperbook.verify.NumbersFile;
import taperbook.workspace.InputTables;
import taperbook.workspace.MetricRerun;
import taperbook.workspace.Project;
import taperbook.workspace.ProjectTemplates;
import taperbook.workspace.PublishedVersions;
import taperbook.workspace.ReportSources;
import taperbook.workspace.Revision;

/**
 * The stages in order: read and check (in {@link Project}), measure, check the article's figures
 * against the results, draw, write. Data flows in one direction, and this is the only place where
 * the result of one stage becomes the input of the next.
 */
public final class Pipeline {
  /** Shares of the work that are done when a step begins, measured on the demo. */
  private static final double MEASURING = 0.02;

  private static final double REVISING = 0.55;

  private static final double WRITING = 0.6;

  private final Project project;
  private final ProjectTemplates templates;
  private final BuildInfo program;
  private final ReportDate madeDate;

  public Pipeline(
      Project project, ProjectTemplates templates, BuildInfo program, ReportDate madeDate) {
    this.project = project;
    this.templates = templates;
    this.program = program;
    this.madeDate = madeDate;
  }

  /** The result of a report with its output files. */
  record Made(ReportResult result, ReportFiles files) {}

  /**
   * Creates all files of a report, or returns all problems.
   *
   * @param earlier the versions of it that were published
   * @param steps receives progress
   */
  Checked<Made> make(ReportSources sources, PublishedVersions earlier, ProgressListener steps) {
    steps.begin(MEASURING, "measuring");
    TemplateWarmUp warmUp =
        TemplateWarmUp.begin(templates.withBuiltIn(), sources.plan().style().template());
    Checked<ReportResult> measured = measured(sources, earlier);
    warmUp.end();
    return measured.then(
        result -> {
          steps.begin(REVISING, Texts.of("command.pipeline.comparing_with_what_was_published"));
          MetricReruns again =
              new MetricReruns(sources.plan(), templates, ground(sources, earlier));
          return revised(sources, earlier, result, again)
              .then(
                  outcome -> {
                    steps.begin(WRITING, Texts.of("command.common.drawing_and_writing"));
                    return written(sources, earlier, result, outcome);
                  });
        });
  }

  /** Returns the windows that are taken from the published version. */
  private static Optional<CommonGround> ground(ReportSources sources, PublishedVersions earlier) {
    ReportPlan plan = sources.plan();
    Set<String> sessions = new TreeSet<>(plan.subject().compare());
    sessions.add(plan.subject().session());
    sessions.addAll(plan.subject().repeats());
    return plan.heading().versionDay().flatMap(day -> earlier.ground(day, sessions));
  }

  private Checked<Made> written(
      ReportSources sources,
      PublishedVersions earlier,
      ReportResult result,
      Revision.Outcome outcome) {
    ReportJob job = job(sources, result, outcome.corrections());
    List<Problem> typed = FigureCheck.of(result).problems();
    if (typed.stream().anyMatch(p -> p.severity() == Severity.ERROR)) {
      List<Problem> all = new ArrayList<>(typed);
      all.addAll(new ReportWriter().problems(job));
      return Checked.refused(all);
    }
    return Checked.of(result, typed)
        .then(r -> new ReportWriter().write(job))
        .then(files -> Checked.good(new Made(result, kept(files, earlier, outcome))));
  }

  /**
   * Returns the files together with the published versions, including this one if it is published.
   */
  private static ReportFiles kept(
      ReportFiles files, PublishedVersions earlier, Revision.Outcome outcome) {
    Map<String, byte[]> kept = new TreeMap<>(earlier.files());
    outcome
        .freeze()
        .ifPresent(day -> kept.put(PublishedVersions.keptFile(day), files.bytes("report.pdf")));
    return files.with(kept);
  }

  private Checked<Revision.Outcome> revised(
      ReportSources sources, PublishedVersions earlier, ReportResult result, MetricRerun again) {
    Revision revision = new Revision(sources.plan(), earlier, again);
    return revision.withoutNumbers().orElseGet(() -> compared(revision, sources, result));
  }

  /** Compares the numbers in their written form with those of the earlier versions. */
  private Checked<Revision.Outcome> compared(
      Revision revision, ReportSources sources, ReportResult result) {
    List<InputFile> inputs = inputs(sources);
    byte[] json = new NumbersJson(result, inputs).bytes();
    return NumbersFile.read(CarriedReport.NUMBERS, json)
        .then(numbers -> revision.of(numbers, inputs, program.name()));
  }

  /** Checks the report as if it were created, without keeping anything. */
  ReportBuild.Findings findings(ReportSources sources, PublishedVersions earlier) {
    Checked<ReportResult> measured = measured(sources, earlier);
    List<Problem> all = new ArrayList<>(measured.problems());
    Optional<ArticleFigures> figures = measured.value().map(FigureCheck::of);
    figures.ifPresent(f -> all.addAll(f.problems()));
    if (measured.value().isPresent()) {
      ReportResult result = measured.value().get();
      Checked<Revision.Outcome> revised = revised(sources, earlier, result, MetricReruns.NONE);
      all.addAll(revised.problems());
      List<Correction> corrections =
          revised.value().map(Revision.Outcome::corrections).orElse(List.of());
      all.addAll(new ReportWriter().problems(job(sources, result, corrections)));
    }
    return new ReportBuild.Findings(all, figures);
  }

  /** Measures a report as if no version of it had been published; nothing is drawn or written. */
  public Checked<ReportResult> measured(ReportSources sources) {
    return withTwins(sources, measured(project, sources.plan(), Again.NO));
  }

  /** Adds a notice for sessions that have the same readings. */
  private static Checked<ReportResult> withTwins(
      ReportSources sources, Checked<ReportResult> measured) {
    List<Problem> problems = new ArrayList<>(measured.problems());
    problems.addAll(
        DuplicateReadings.check(sources.files().stream().map(InputFile::withoutContent).toList()));
    return new Checked<>(measured.value(), problems);
  }

  /** Measures a report on the windows of its published version. */
  public Checked<ReportResult> measured(ReportSources sources, PublishedVersions earlier) {
    Again again = new Again(ground(sources, earlier), 0);
    return withTwins(sources, measured(project, sources.plan(), again));
  }

  /** Measures a report on a project. */
  static Checked<ReportResult> measured(Project project, ReportPlan plan, Again again) {
    ReportPlan.Subject subject = plan.subject();
    List<String> names = new ArrayList<>(List.of(subject.session()));
    names.addAll(subject.compare());
    Checked<List<Session>> sessions = Project.all(names, project::session);
    Checked<List<Session>> repeats = Project.all(subject.repeats(), project::session);
    Checked<List<RangeTest>> tests = Project.all(subject.rangeTests(), project::rangeTest);
    Checked<List<Session>> stops = Project.all(subject.stops(), project::session);
    Checked<List<Session>> runs = Project.all(subject.season().sessions(), project::session);
    Checked<List<RangeTest>> drives = Project.all(subject.season().drives(), project::rangeTest);
    List<Checked<?>> all = List.of(sessions, repeats, tests, stops, runs, drives);
    List<Problem> problems =
        new ArrayList<>(all.stream().flatMap(c -> c.problems().stream()).distinct().toList());
    if (all.stream().anyMatch(c -> c.value().isEmpty())) {
      return Checked.refused(problems);
    }
    List<Session> found = sessions.value().get();
    Season<Session, RangeTest> season =
        new Season<>(runs.value().orElseThrow(), drives.value().orElseThrow());
    problems.addAll(VehicleCheck.check(found, tests.value().get(), season.drives()));
    problems.addAll(VehicleCheck.checkRepeats(found.get(0), repeats.value().get()));
    problems.addAll(StopsCheck.check(found.get(0), stops.value().get()));
    problems.addAll(SeasonCheck.check(found.get(0), season));
    Sessions given =
        new Sessions(
            found.get(0),
            found.subList(1, found.size()),
            repeats.value().get(),
            stops.value().get(),
            season);
    return Checked.of(given, problems)
        .then(g -> Checked.good(ReportMetrics.measure(plan, g, tests.value().get(), again)));
  }

  ReportJob job(ReportSources sources, ReportResult result, List<Correction> corrections) {
    List<Figure> figures = FigureSet.draw(result);
    List<InputFile> inputs = inputs(sources);
    if (!corrections.isEmpty()) {
      String path = PublishedVersions.recordPath(sources.plan().name());
      inputs.add(new InputFile(path, CorrectionsCsv.bytes(corrections)));
    }
    LocalDate made = madeDate.of(result);
    Templates all = templates.withBuiltIn();
    return new ReportJob(
        result, figures, all, inputs, InputTables.of(inputs), corrections, made, program.name());
  }

  private List<InputFile> inputs(ReportSources sources) {
    List<InputFile> inputs = new ArrayList<>(sources.files());
    inputs.addAll(templates.files());
    return inputs;
  }
}
