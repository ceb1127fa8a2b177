package taperbook.build;

import java.util.ArrayList;
import java.util.List;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.i18n.Texts;
import taperbook.input.DuplicateReadings;
import taperbook.metric.LibraryMetrics;
import taperbook.metric.VehicleRanking;
import taperbook.output.ReportJob;
import taperbook.plan.LibraryPlan;
import taperbook.result.Drives;
import taperbook.result.LeftOut;
import taperbook.result.LibraryResult;
import taperbook.result.LibraryRow;
import taperbook.session.InputFile;
import taperbook.session.InputHash;
import taperbook.session.RangeTest;
import taperbook.session.Session;
import taperbook.workspace.VisitedSession;

/**
 * Adds the sessions of a folder to a library, one after the other: each is read, checked and
 * measured, and only its row, its hashes and its problems are kept. The files themselves are kept
 * while they are few enough to be attached to the PDF.
 */
public final class LibraryIntake {
  /** Maximum number of a folder's problems that the page lists; the command reports all of them. */
  private static final int MAX_REASONS = 3;

  /** Spread between runs from other sources: none is known. */
  private static final double NO_RUN_SPREAD = 0;

  private final LibraryPlan plan;
  private final List<InputHash> inputs = new ArrayList<>();
  private final List<InputFile> attached = new ArrayList<>();
  private final List<LibraryRow> rows = new ArrayList<>();
  private final List<RangeTest> rangeTests = new ArrayList<>();
  private final List<LeftOut> leftOut = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();
  private RowCache memory = RowCache.none();
  private long bytes;

  private LibraryIntake(LibraryPlan plan) {
    this.plan = plan;
  }

  /** Creates an intake whose first file is the library's own text. */
  static LibraryIntake with(LibraryPlan plan, InputFile article) {
    LibraryIntake intake = new LibraryIntake(plan);
    intake.keep(List.of(article), List.of(article.withoutContent()));
    return intake;
  }

  /** Creates an intake that only produces rows. */
  public static LibraryIntake withoutArticle(LibraryPlan plan) {
    return new LibraryIntake(plan);
  }

  /** Records entries of the folder that cannot be read, such as invalid names. */
  void strays(List<Problem> strays) {
    problems.addAll(strays);
    for (Problem stray : strays) {
      inputs.add(strayMark(stray));
      leftOut.add(
          new LeftOut(
              stray.place().toString(),
              Texts.of("command.library_intake.folder"),
              List.of(stray.sentence()),
              0));
    }
  }

  /** Represents such an entry in the fingerprint; not a file. */
  static InputHash strayMark(Problem stray) {
    return new InputHash(stray.sentence(), "", 0);
  }

  /** Enables a cache: known rows are taken from it, and new rows are added to it. */
  void remember(RowCache rows) {
    memory = rows;
  }

  /** Writes the rows to the cache. */
  void keepRows() {
    memory.write();
  }

  /** Adds a range test; all range tests must be added before the first session. */
  public void rangeTest(String name, VisitedSession<RangeTest> visited) {
    Checked<RangeTest> test = visited.value();
    keep(visited.files(), visited.hashes());
    test.value().ifPresent(rangeTests::add);
    report(name, Texts.of("command.library_intake.range_test"), test);
  }

  /**
   * A session that was read and measured.
   *
   * @param name name of its folder
   * @param row its row, or all problems of its files
   * @param files its files that could be read
   * @param hashes path and hash of all its files
   */
  record Measured(
      String name, Checked<LibraryRow> row, List<InputFile> files, List<InputHash> hashes) {
    Measured {
      files = List.copyOf(files);
      hashes = List.copyOf(hashes);
    }
  }

  /**
   * Checks and measures a session without adding it; several sessions may be processed
   * concurrently.
   */
  public Measured measured(String name, VisitedSession<Session> visited) {
    Checked<LibraryRow> row =
        memory
            .find(key(visited.hashes()))
            .map(Checked::good)
            .orElseGet(() -> visited.value().then(s -> Checked.good(measured(s))));
    return new Measured(name, row, visited.files(), visited.hashes());
  }

  private LibraryRow measured(Session session) {
    return LibraryMetrics.measure(plan, session, rangeTests);
  }

  /** Adds a session, or records why it is left out. */
  public void take(Measured session) {
    keep(session.files(), session.hashes());
    session.row().value().ifPresent(rows::add);
    if (session.row().problems().isEmpty()) {
      session.row().value().ifPresent(row -> memory.keep(key(session.hashes()), row));
    }
    report(session.name(), Texts.of("command.library_intake.session"), session.row());
  }

  /**
   * Returns the paths and hashes of a session's files: the row follows from these bytes and the
   * plan.
   */
  private static String key(List<InputHash> files) {
    StringBuilder key = new StringBuilder();
    files.forEach(f -> key.append(f.path()).append(' ').append(f.sha256()).append('\n'));
    return key.toString();
  }

  private void keep(List<InputFile> files, List<InputHash> hashes) {
    inputs.addAll(hashes);
    bytes += hashes.stream().mapToLong(InputHash::bytes).sum();
    if (bytes > ReportJob.MOST_ATTACHED_BYTES) {
      attached.clear();
    } else {
      attached.addAll(files);
    }
  }

  private void report(String name, String kind, Checked<?> checked) {
    List<Problem> all = checked.problems();
    problems.addAll(all);
    if (checked.isUsable()) {
      return;
    }
    List<String> sentences = all.stream().map(Problem::sentence).limit(MAX_REASONS).toList();
    leftOut.add(new LeftOut(name, kind, sentences, all.size() - sentences.size()));
  }

  /** Returns the library of all rows that were added. */
  public LibraryResult result() {
    return new LibraryResult(
        plan,
        rows,
        leftOut,
        unusedDrives(),
        VehicleRanking.of(rows, plan.windowTimeId(), NO_RUN_SPREAD),
        VehicleRanking.of(rows, LibraryPlan.DAY_TIME, NO_RUN_SPREAD));
  }

  /** Returns the drives that differ in speed or weather from the first drive of their vehicle. */
  private List<String> unusedDrives() {
    return rows.stream()
        .map(row -> row.about().vehicle())
        .distinct()
        .map(vehicle -> Drives.of(vehicle, rangeTests))
        .flatMap(d -> d.named().stream().filter(t -> !d.agreeing().contains(t)))
        .map(RangeTest::name)
        .sorted()
        .toList();
  }

  /** Returns path and hash of every file, in the order of addition. */
  List<InputHash> inputs() {
    return List.copyOf(inputs);
  }

  /** Returns the files themselves; none if they are too large. */
  List<InputFile> attached() {
    return List.copyOf(attached);
  }

  /** Returns all problems that were found. */
  public List<Problem> problems() {
    List<Problem> all = new ArrayList<>(problems);
    all.addAll(DuplicateReadings.check(inputs));
    return all;
  }
}
