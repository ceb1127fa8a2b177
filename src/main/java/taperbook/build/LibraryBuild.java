package taperbook.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import taperbook.chart.library.LibraryFigures;
import taperbook.cli.ProgressListener;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.SourceLocation;
import taperbook.i18n.Texts;
import taperbook.output.ReportJob;
import taperbook.output.ReportWriter;
import taperbook.plan.LibraryPlan;
import taperbook.result.LibraryResult;
import taperbook.result.ReportNumber;
import taperbook.session.InputFile;
import taperbook.session.InputHash;
import taperbook.workspace.Project;

/**
 * Builds a library: processes session by session up to its row, and then all rows together. A
 * session with errors does not prevent the others from being shown; the page names it, and its
 * problems are reported.
 */
final class LibraryBuild implements ReportBuild {
  /**
   * Share of the work that is done when all sessions are read; approximate, for a hundred sessions.
   */
  private static final double WRITING = 0.6;

  private final LibraryPlan plan;
  private final InputFile article;
  private final CommandContext commandContext;

  /** The files as of the last time they were read. */
  private final List<InputHash> inputs = new ArrayList<>();

  LibraryBuild(LibraryPlan plan, InputFile article, CommandContext commandContext) {
    this.plan = plan;
    this.article = article;
    this.commandContext = commandContext;
  }

  @Override
  public LibraryPlan plan() {
    return plan;
  }

  @Override
  public String fingerprint() {
    Project project = commandContext.project();
    inputs.clear();
    inputs.add(article.withoutContent());
    project.strayProblems().forEach(stray -> inputs.add(LibraryIntake.strayMark(stray)));
    project.rangeTestNames().forEach(name -> inputs.addAll(project.rangeTestHashes(name)));
    OrderedExecutor.each(project.sessionNames(), project::sessionHashes, inputs::addAll);
    return commandContext.fingerprint(inputs);
  }

  @Override
  public List<String> paths() {
    Project project = commandContext.project();
    if (!project.strayProblems().isEmpty()) {
      return List.of();
    }
    Set<String> paths = new TreeSet<>(commandContext.templatePaths());
    paths.addAll(project.sessionFolders());
    inputs.forEach(input -> paths.add(input.path()));
    return List.copyOf(paths);
  }

  @Override
  public Checked<Made> make(ProgressListener steps, Consumer<byte[]> firstPage) {
    LibraryIntake intake = intake(true, steps);
    LibraryResult result = intake.result();
    if (result.rows().isEmpty()) {
      return Checked.refused(empty(intake));
    }
    inputs.clear();
    inputs.addAll(intake.inputs());
    steps.begin(WRITING, Texts.of("command.common.drawing_and_writing"));
    return ReportWriter.write(job(intake, result), firstPage)
        .then(
            files ->
                Checked.good(
                    new Made(
                        files,
                        commandContext.fingerprint(intake.inputs()),
                        intake.problems(),
                        summary(result),
                        List.of())));
  }

  @Override
  public Findings findings(ProgressListener steps) {
    LibraryIntake intake = intake(false, steps);
    LibraryResult result = intake.result();
    if (result.rows().isEmpty()) {
      return new Findings(empty(intake), Optional.empty());
    }
    List<Problem> all = new ArrayList<>(intake.problems());
    all.addAll(ReportWriter.problems(job(intake, result)));
    return new Findings(all, Optional.empty());
  }

  /**
   * Reads and measures all sessions of the folder.
   *
   * @param remembering whether cached rows are used
   * @param steps is notified of each session
   */
  LibraryIntake intake(boolean remembering, ProgressListener steps) {
    LibraryIntake intake = LibraryIntake.with(plan, article);
    Project project = commandContext.project();
    intake.strays(project.strayProblems());
    project.rangeTestNames().forEach(n -> intake.rangeTest(n, project.visitRangeTest(n)));
    if (remembering) {
      intake.remember(
          commandContext.memory(plan, intake.inputs().subList(1, intake.inputs().size())));
    }
    List<String> names = project.sessionNames();
    AtomicInteger taken = new AtomicInteger();
    OrderedExecutor.each(
        names,
        name -> intake.measured(name, project.visitSession(name)),
        session -> {
          int count = taken.incrementAndGet();
          steps.begin(
              WRITING * count / names.size(),
              Texts.of("command.library_build.session_of", count, names.size()));
          intake.take(session);
        });
    intake.keepRows();
    return intake;
  }

  private List<Problem> empty(LibraryIntake intake) {
    List<Problem> all = new ArrayList<>(intake.problems());
    all.add(
        new Problem(
            ProblemCode.LIBRARY_EMPTY,
            SourceLocation.file(article.path()),
            Texts.of("command.library_build.no_session_in_sessions_that"),
            Texts.of("command.library_build.at_least_one_session_for"),
            commandContext.project().sessionNames().isEmpty()
                ? Texts.of("command.library_build.add_session")
                : Texts.of("command.library_build.mend_sessions_that_are_there")));
    return all;
  }

  private ReportJob job(LibraryIntake intake, LibraryResult result) {
    List<InputHash> inputs = new ArrayList<>();
    intake.inputs().stream().filter(i -> !i.sha256().isEmpty()).forEach(inputs::add);
    List<InputFile> attached = new ArrayList<>();
    if (!result.isLarge()) {
      attached.addAll(intake.attached());
    }
    for (InputFile template : commandContext.templates().files()) {
      inputs.add(template.withoutContent());
      if (!attached.isEmpty()) {
        attached.add(template);
      }
    }
    return commandContext.job(result, LibraryFigures.draw(result), inputs, attached, List.of());
  }

  private static List<String> summary(LibraryResult result) {
    List<ReportNumber> numbers = result.numbers().stream().flatMap(n -> n.all().stream()).toList();
    long withheld = numbers.stream().filter(n -> n.withheld().isPresent()).count();
    int left = result.leftOut().size();
    return List.of(
        Texts.of(
            "command.library_build.numbers_withheld_left_out",
            Texts.count(result.rows().size(), "count.session", "count.sessions"),
            numbers.size(),
            withheld,
            left == 0 ? Texts.of("command.library_build.nothing") : String.valueOf(left)));
  }
}
