package taperbook.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
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
import taperbook.output.data.CorrectionsCsv;
import taperbook.plan.ReportPlan;
import taperbook.plan.ReportPlan.Season;
import taperbook.prosecheck.ArticleFigures;
import taperbook.prosecheck.FigureCheck;
import taperbook.result.CommonGround;
import taperbook.result.Correction;
import taperbook.result.ReportResult;
import taperbook.session.InputFile;
import taperbook.session.InputHash;
import taperbook.session.RangeTest;
import taperbook.session.Session;
import taperbook.workspace.MetricRerun;
import taperbook.workspace.Project;
import taperbook.workspace.PublishedVersions;
import taperbook.workspace.ReportSources;
import taperbook.workspace.Revision;

/**
 * The stages of a session's report in order: read and check (in {@link Project}), measure, check
 * the article's figures against the results, draw, write. Data flows in one direction, and this is
 * the only place where the result of one stage becomes the input of the next.
 */
public final class Pipeline implements ReportBuild {
  /** Shares of the work that are done when a step begins, measured on the demo. */
  private static final double MEASURING = 0.02;

  private static final double REVISING = 0.55;

  private static final double WRITING = 0.6;

  private final CommandContext context;
  private final ReportSources sources;
  private final PublishedVersions earlier;

  /**
   * Creates the pipeline of a report.
   *
   * @param earlier the versions of it that were published
   */
  Pipeline(CommandContext context, ReportSources sources, PublishedVersions earlier) {
    this.context = context;
    this.sources = sources;
    this.earlier = earlier;
  }

  @Override
  public ReportPlan plan() {
    return sources.plan();
  }

  @Override
  public String fingerprint() {
    List<InputHash> inputs = new ArrayList<>(hashes(sources.files()));
    plan().heading().versionDay().ifPresent(d -> inputs.addAll(earlier.hashesBefore(d)));
    return context.fingerprint(inputs);
  }

  @Override
  public List<String> paths() {
    Set<String> paths = new TreeSet<>(context.templatePaths());
    for (InputFile file : sources.files()) {
      paths.add(file.path());
      if (file.path().startsWith(Project.SESSIONS)) {
        paths.add(file.path().substring(0, file.path().lastIndexOf('/')));
      }
    }
    paths.addAll(earlier.paths());
    return List.copyOf(paths);
  }

  @Override
  public Checked<Made> make(ProgressListener steps, Consumer<byte[]> firstPage) {
    steps.begin(MEASURING, Texts.of("command.pipeline.measuring"));
    return measured()
        .then(
            result -> {
              steps.begin(REVISING, Texts.of("command.pipeline.comparing_with_what_was_published"));
              return revised(result, new MetricReruns(plan(), context.templates(), ground()))
                  .then(
                      outcome -> {
                        steps.begin(WRITING, Texts.of("command.common.drawing_and_writing"));
                        return written(result, outcome, firstPage);
                      });
            });
  }

  /** Returns the windows that are taken from the published version. */
  private Optional<CommonGround> ground() {
    Set<String> sessions = new TreeSet<>(plan().subject().compare());
    sessions.add(plan().subject().session());
    sessions.addAll(plan().subject().repeats());
    return plan().heading().versionDay().flatMap(day -> earlier.ground(day, sessions));
  }

  private Checked<Made> written(
      ReportResult result, Revision.Outcome outcome, Consumer<byte[]> firstPage) {
    ReportJob job = job(result, outcome.corrections());
    List<Problem> typed = FigureCheck.of(result).problems();
    if (typed.stream().anyMatch(p -> p.severity() == Severity.ERROR)) {
      List<Problem> all = new ArrayList<>(typed);
      all.addAll(ReportWriter.problems(job));
      return Checked.refused(all);
    }
    Summary summary = new Summary(result);
    return Checked.of(job, typed)
        .then(j -> ReportWriter.write(j, firstPage))
        .then(
            files ->
                Checked.good(
                    new Made(
                        kept(files, outcome),
                        fingerprint(),
                        List.of(),
                        summary.lines(),
                        summary.printed())));
  }

  /**
   * Returns the files together with the published versions, including this one if it is published.
   */
  private ReportFiles kept(ReportFiles files, Revision.Outcome outcome) {
    Map<String, byte[]> kept = new TreeMap<>(earlier.files());
    outcome
        .freeze()
        .ifPresent(day -> kept.put(PublishedVersions.keptFile(day), files.bytes("report.pdf")));
    return files.with(kept);
  }

  /** Compares the numbers with those of the earlier versions. */
  private Checked<Revision.Outcome> revised(ReportResult result, MetricRerun again) {
    Revision revision = new Revision(plan(), earlier, again);
    return revision
        .withoutNumbers()
        .orElseGet(
            () -> revision.of(MetricReruns.written(result), inputs(), context.program().name()));
  }

  @Override
  public Findings findings(ProgressListener steps) {
    steps.begin(MEASURING, Texts.of("command.pipeline.measuring"));
    Checked<ReportResult> measured = measured();
    List<Problem> all = new ArrayList<>(measured.problems());
    Optional<ArticleFigures> figures = measured.value().map(FigureCheck::of);
    figures.ifPresent(f -> all.addAll(f.problems()));
    if (measured.value().isPresent()) {
      ReportResult result = measured.value().get();
      Checked<Revision.Outcome> revised = revised(result, MetricReruns.NONE);
      all.addAll(revised.problems());
      List<Correction> corrections =
          revised.value().map(Revision.Outcome::corrections).orElse(List.of());
      all.addAll(ReportWriter.problems(job(result, corrections)));
    }
    return new Findings(all, figures);
  }

  /**
   * Measures the report on the windows of its published version; adds a notice for sessions that
   * have the same readings.
   */
  public Checked<ReportResult> measured() {
    Optional<CommonGround> ground = ground();
    // The first file is the tester's text with the front matter, which is in the plan.
    List<InputHash> data = hashes(sources.files().subList(1, sources.files().size()));
    Checked<ReportResult> measured =
        context
            .results()
            .result(
                plan(),
                data,
                ground,
                () -> measured(context.project(), plan(), new Again(ground, 0)));
    List<Problem> problems = new ArrayList<>(measured.problems());
    problems.addAll(DuplicateReadings.check(hashes(sources.files())));
    return new Checked<>(measured.value(), problems);
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

  ReportJob job(ReportResult result, List<Correction> corrections) {
    List<Figure> figures = context.results().figures(result);
    List<InputFile> inputs = inputs();
    if (!corrections.isEmpty()) {
      String path = PublishedVersions.recordPath(plan().name());
      inputs.add(new InputFile(path, CorrectionsCsv.bytes(corrections)));
    }
    return context.job(result, figures, hashes(inputs), inputs, corrections);
  }

  private List<InputFile> inputs() {
    List<InputFile> inputs = new ArrayList<>(sources.files());
    inputs.addAll(context.templates().files());
    return inputs;
  }

  private static List<InputHash> hashes(List<InputFile> files) {
    return files.stream().map(InputFile::withoutContent).toList();
  }
}
