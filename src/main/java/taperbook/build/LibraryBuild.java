package taperbook.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicInteger;
import taperbook.chart.library.LibraryFigures;
import taperbook.cli.ProgressListener;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.SourceLocation;
import taperbook.format.NumberFormatter;
import taperbook.output.LibraryJob;
import taperbook.output.LibraryWriter;
import taperbook.plan.LibraryPlan;
import taperbook.result.LibraryResult;
import taperbook.session.InputFile;
import taperbook.session.InputHash;
import taperbook.workspace.InputTables;
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
  public Checked<Made> make(ProgressListener steps) {
    LibraryIntake intake = intake(true, steps);
    if (intake.result().rows().isEmpty()) {
      return Checked.refused(empty(intake));
    }
    inputs.clear();
    inputs.addAll(intake.inputs());
    steps.begin(WRITING, "drawing and writing");
    LibraryJob job = job(intake);
    return new LibraryWriter()
        .write(job)
        .then(
            files ->
                Checked.good(
                    new Made(
                        files,
                        commandContext.fingerprint(intake.inputs()),
                        intake.problems(),
                        summary(job.result()),
                        List.of())));
  }

  @Override
  public NumberFormatter wording() {
    return new NumberFormatter(plan.style());
  }

  @Override
  public Findings findings() {
    LibraryIntake intake = intake(false, ProgressListener.NONE);
    if (intake.result().rows().isEmpty()) {
      return new Findings(empty(intake), Optional.empty());
    }
    List<Problem> all = new ArrayList<>(intake.problems());
    all.addAll(new LibraryWriter().problems(job(intake)));
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
          steps.begin(WRITING * count / names.size(), "session " + count + " of " + names.size());
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
            "no session in sessions/ that can be used",
            "at least one session for a library",
            commandContext.project().sessionNames().isEmpty()
                ? "add a session"
                : "mend the sessions that are there"));
    return all;
  }

  private LibraryJob job(LibraryIntake intake) {
    LibraryResult result = intake.result();
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
    return new LibraryJob(
        result,
        LibraryFigures.draw(result),
        commandContext.templates().withBuiltIn(),
        inputs,
        attached,
        InputTables.of(attached),
        commandContext.madeDate().of(result),
        commandContext.program().name());
  }

  private static List<String> summary(LibraryResult result) {
    long withheld =
        result.rows().stream()
            .flatMap(r -> r.numbers().all().stream())
            .filter(n -> n.withheld().isPresent())
            .count();
    int numbers = result.rows().stream().mapToInt(r -> r.numbers().all().size()).sum();
    int left = result.leftOut().size();
    return List.of(
        "  "
            + result.rows().size()
            + (result.rows().size() == 1 ? " session, " : " sessions, ")
            + numbers
            + " numbers, "
            + withheld
            + " withheld; "
            + (left == 0 ? "nothing" : String.valueOf(left))
            + " left out");
  }
}
