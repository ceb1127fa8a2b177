package taperbook.workspace;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Severity;
import taperbook.input.PlanParser;
import taperbook.input.RangeTestParser;
import taperbook.input.csv.CsvParser;
import taperbook.input.csv.CsvTable;
import taperbook.input.facts.FactsParser;
import taperbook.input.folder.InputFolder;
import taperbook.input.folder.Listing;
import taperbook.input.folder.ReportFileParser;
import taperbook.input.mapping.ColumnMap;
import taperbook.input.mapping.ColumnMapProposal;
import taperbook.plan.Plan;
import taperbook.plan.ReportPlan;
import taperbook.quantity.Quantity;
import taperbook.quantity.Unit;
import taperbook.session.ConditionItem;
import taperbook.session.InputFile;
import taperbook.session.InputHash;
import taperbook.session.Item;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;
import taperbook.session.Session;

/**
 * The project folder as the commands use it: its content and the parsed form of each part. Each
 * file is read only once, so that all results are based on the same bytes.
 */
public final class Project {
  public static final String SESSIONS = "sessions/";

  private static final String SESSIONS_FOLDER = "sessions";
  private static final String REPORTS_FOLDER = "reports";

  private final InputFolder folder;
  private final Set<String> templateNames;
  private final Listing sessions;
  private final Listing rangeTests;
  private final Listing reports;
  private final Map<String, Checked<InputFile>> files = new HashMap<>();
  private final Map<String, Checked<Session>> sessionsRead = new HashMap<>();
  private final Map<String, Checked<RangeTest>> rangeTestsRead = new HashMap<>();

  public Project(InputFolder folder, Set<String> templateNames) {
    this.folder = folder;
    this.templateNames = Set.copyOf(templateNames);
    this.sessions = folder.sessions();
    this.rangeTests = folder.rangeTests();
    this.reports = folder.reports();
  }

  public List<String> sessionNames() {
    return sessions.names();
  }

  public List<String> rangeTestNames() {
    return rangeTests.names();
  }

  public List<String> reportNames() {
    return reports.names();
  }

  /**
   * Returns the problems of the folders themselves, such as invalid names. A missing folder is not
   * a problem before the first report exists, because it has not been created yet.
   */
  public List<Problem> folderProblems() {
    boolean early = reportNames().isEmpty();
    Set<Problem> all = new LinkedHashSet<>();
    if (!early || folder.has(SESSIONS_FOLDER)) {
      all.addAll(strayProblems());
    }
    if (!early || folder.has(REPORTS_FOLDER)) {
      all.addAll(reports.problems());
    }
    return List.copyOf(all);
  }

  /**
   * Returns true if there is a folder of this name for a session or range test that contains
   * neither.
   */
  private boolean isStarted(String name) {
    return folder.has(SESSIONS + name)
        && !sessionNames().contains(name)
        && !rangeTestNames().contains(name);
  }

  /** Returns true if there is a folder for sessions or for reports. */
  public boolean isStarted() {
    return folder.has(SESSIONS_FOLDER) || folder.has(REPORTS_FOLDER);
  }

  /**
   * Returns the problems of entries in {@code sessions/} that are neither a session nor a range
   * test.
   */
  public List<Problem> strayProblems() {
    Set<Problem> all = new LinkedHashSet<>(sessions.problems());
    all.addAll(rangeTests.problems());
    return List.copyOf(all);
  }

  /** Returns the folder of all sessions and range tests, and each folder in it. */
  public List<String> sessionFolders() {
    return folder.sessionFolders();
  }

  /** Returns the file with a report's own text. */
  public Checked<InputFile> article(String report) {
    return file(articlePath(report));
  }

  private static String articlePath(String report) {
    return "reports/" + report + ".md";
  }

  /** Returns the plan of a report. */
  public Checked<Plan> plan(String report) {
    return article(report)
        .then(ReportFileParser::read)
        .then(
            raw ->
                PlanParser.check(
                    report,
                    raw,
                    Set.copyOf(sessionNames()),
                    Set.copyOf(rangeTestNames()),
                    templateNames,
                    this::isStarted));
  }

  /** Returns the content of every file that a session's report is built from. */
  public Checked<ReportSources> sources(ReportPlan plan) {
    return filesOf(plan.subject(), articlePath(plan.name()))
        .then(f -> Checked.good(new ReportSources(plan, f)));
  }

  private Checked<List<InputFile>> filesOf(ReportPlan.Subject subject, String reportPath) {
    Set<String> paths = new LinkedHashSet<>();
    paths.add(reportPath);
    paths.addAll(sessionPaths(subject.session()));
    subject.compare().forEach(name -> paths.addAll(sessionPaths(name)));
    subject.repeats().forEach(name -> paths.addAll(sessionPaths(name)));
    subject.stops().forEach(name -> paths.addAll(sessionPaths(name)));
    subject.rangeTests().forEach(name -> paths.addAll(rangeTestPaths(name)));
    subject.season().sessions().forEach(name -> paths.addAll(sessionPaths(name)));
    subject.season().drives().forEach(name -> paths.addAll(rangeTestPaths(name)));
    return all(List.copyOf(paths), this::file);
  }

  private SessionFiles sessionFiles(String name) {
    return new SessionFiles(name, folder::has, this::uncached);
  }

  private List<String> sessionPaths(String name) {
    return sessionFiles(name).paths();
  }

  private List<String> rangeTestPaths(String name) {
    List<String> paths = new ArrayList<>(List.of(SESSIONS + name + "/range-test.csv"));
    String legs = SESSIONS + name + "/legs.csv";
    if (folder.has(legs)) {
      paths.add(legs);
    }
    return paths;
  }

  /** Returns the session of this name, or all problems of its files. */
  public Checked<Session> session(String name) {
    return sessionsRead.computeIfAbsent(name, n -> sessionFiles(n).session(this::file));
  }

  /**
   * Proposes a {@code columns.csv} for each session whose readings have an unknown layout and no
   * column map yet.
   *
   * @param problems the problems of sessions
   */
  public List<ColumnMapProposal> proposals(Collection<Problem> problems) {
    Set<String> wanted = ColumnMapProposal.wantedFor(problems);
    return sessionNames().stream()
        .filter(name -> wanted.contains(SESSIONS + name + "/" + ColumnMap.DEFAULT_READINGS))
        .filter(name -> !folder.has(SESSIONS + name + "/" + ColumnMap.FILE_NAME))
        .flatMap(name -> proposal(name).stream())
        .toList();
  }

  private Optional<ColumnMapProposal> proposal(String name) {
    return uncached(SESSIONS + name + "/" + ColumnMap.DEFAULT_READINGS)
        .value()
        .flatMap(ColumnMapProposal::of)
        .map(proposal -> proposal.withErrors(errors(name, proposal)));
  }

  /** Returns the number of errors that the session would have with the proposal saved. */
  private long errors(String name, ColumnMapProposal proposal) {
    Function<String, Checked<InputFile>> read =
        path -> path.equals(proposal.path()) ? Checked.good(proposal.file()) : uncached(path);
    return new SessionFiles(name, p -> p.equals(proposal.path()) || folder.has(p), read)
        .session(read).problems().stream().filter(p -> p.severity() == Severity.ERROR).count();
  }

  /** Returns the range test of this name, or all problems of its files. */
  public Checked<RangeTest> rangeTest(String name) {
    return rangeTestsRead.computeIfAbsent(
        name, n -> rangeTest(n, rangeTestPaths(n).stream().map(this::table).toList()));
  }

  private static Checked<RangeTest> rangeTest(String name, List<Checked<CsvTable>> tables) {
    return RangeTestParser.checkRead(name, tables.get(0), tables.stream().skip(1).findFirst());
  }

  /**
   * Returns the distance unit of range tests and a session, whether or not they have values: that
   * of the first range test that has one, otherwise that of the session's odometer.
   */
  public Optional<Unit> distanceUnit(String session, List<String> rangeTests) {
    return Stream.concat(
            rangeTests.stream()
                .map(name -> unit(name + "/range-test.csv", RangeItem.class, RangeItem.DISTANCE)),
            Stream.of(
                unit(session + "/conditions.csv", ConditionItem.class, ConditionItem.ODOMETER)))
        .flatMap(Optional::stream)
        .filter(unit -> unit.quantity() == Quantity.DISTANCE)
        .findFirst();
  }

  private <I extends Enum<I> & Item> Optional<Unit> unit(String path, Class<I> items, I item) {
    return table(SESSIONS + path)
        .value()
        .flatMap(t -> new FactsParser<>(t, items, new ProblemLog(t.file())).unit(item));
  }

  /** Returns path and hash of each cached file; reports are built from these files. */
  public List<InputHash> kept() {
    return files.entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .flatMap(entry -> entry.getValue().value().stream())
        .map(InputFile::withoutContent)
        .toList();
  }

  /** Returns the session of this name as cached, or reads it without caching it. */
  public VisitedSession<Session> visitSession(String name) {
    SessionFiles session = sessionFiles(name);
    Checked<Session> known = sessionsRead.get(name);
    return visit(session.paths(), read -> known == null ? session.session(read) : known);
  }

  /** Reads the range test of this name without caching it. */
  public VisitedSession<RangeTest> visitRangeTest(String name) {
    List<String> paths = rangeTestPaths(name);
    return visit(
        paths,
        read ->
            rangeTest(
                name, paths.stream().map(path -> read.apply(path).then(CsvParser::read)).toList()));
  }

  /** Returns path and hash of each file of a session without caching the files. */
  public List<InputHash> sessionHashes(String name) {
    return hashes(sessionPaths(name));
  }

  /** Returns path and hash of each file of a range test without caching the files. */
  public List<InputHash> rangeTestHashes(String name) {
    return hashes(rangeTestPaths(name));
  }

  private List<InputHash> hashes(List<String> paths) {
    return paths.stream().map(path -> VisitedSession.hash(path, uncached(path).value())).toList();
  }

  private <T> VisitedSession<T> visit(
      List<String> paths, Function<Function<String, Checked<InputFile>>, Checked<T>> parser) {
    Map<String, Checked<InputFile>> read = new LinkedHashMap<>();
    paths.forEach(path -> read.put(path, uncached(path)));
    return new VisitedSession<>(
        () -> parser.apply(path -> Optional.ofNullable(read.get(path)).orElseThrow()),
        read.values().stream().flatMap(file -> file.value().stream()).toList(),
        read.entrySet().stream()
            .map(file -> VisitedSession.hash(file.getKey(), file.getValue().value()))
            .toList());
  }

  private Checked<InputFile> uncached(String path) {
    Checked<InputFile> kept = files.get(path);
    return kept == null ? folder.read(path) : kept;
  }

  private Checked<CsvTable> table(String path) {
    return file(path).then(CsvParser::read);
  }

  private Checked<InputFile> file(String path) {
    return files.computeIfAbsent(path, folder::read);
  }

  /** Returns all values, or the problems of all refused items. */
  public static <A, B> Checked<List<B>> all(List<A> items, Function<A, Checked<B>> each) {
    List<B> values = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (A item : items) {
      Checked<B> checked = each.apply(item);
      checked.value().ifPresent(values::add);
      problems.addAll(checked.problems());
    }
    return Checked.of(values, problems);
  }
}
