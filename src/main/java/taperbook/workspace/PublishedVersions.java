package taperbook.workspace;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import taperbook.diagnostics.Checked;
import taperbook.input.CorrectionsParser;
import taperbook.input.csv.CsvParser;
import taperbook.input.folder.DiskFolder;
import taperbook.input.folder.RegularFile;
import taperbook.result.CommonGround;
import taperbook.result.Correction;
import taperbook.session.InputFile;
import taperbook.session.InputHash;
import taperbook.uptodate.OutputStatus;
import taperbook.verify.CarriedReport;
import taperbook.verify.NumbersFile;
import taperbook.verify.ReportPdfReader;

/**
 * The published versions of a report, stored unchanged in {@code published/} of its folder, and the
 * record of corrections. A stored version is never changed.
 */
public final class PublishedVersions {
  private static final String RECORD = "corrections.csv";
  private static final String FOLDER = "published/";
  private static final Pattern KEPT = Pattern.compile("report-(\\d{4}-\\d{2}-\\d{2})\\.pdf");

  private final String report;
  private final SortedMap<LocalDate, byte[]> kept;
  private final Optional<InputFile> record;
  private final Optional<NumbersFile> carried;

  private PublishedVersions(
      String report,
      SortedMap<LocalDate, byte[]> kept,
      Optional<InputFile> record,
      Optional<NumbersFile> carried) {
    this.report = report;
    this.kept = kept;
    this.record = record;
    this.carried = carried;
  }

  /**
   * Reads the earlier versions in a report's folder.
   *
   * @throws StoppedException if part of it is a link or cannot be read
   */
  public static PublishedVersions in(Path reports, String report) {
    Path folder = PublishedFolder.current(reports, report).resolve(FOLDER);
    SortedMap<LocalDate, byte[]> kept = new TreeMap<>();
    if (RegularFile.exists(folder)) {
      if (!RegularFile.isFolder(folder)) {
        throw StoppedException.reservedPath(folder);
      }
      for (String name : names(folder)) {
        Optional<LocalDate> day = day(name);
        if (day.isPresent()) {
          kept.put(day.get(), bytes(folder.resolve(name), ReportPdfReader.LARGEST_PDF_BYTES));
        }
      }
    }
    return new PublishedVersions(report, kept, record(reports, report), Optional.empty());
  }

  private static List<String> names(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> String.valueOf(file.getFileName())).sorted().toList();
    } catch (IOException e) {
      throw new StoppedException("the folder " + folder + " cannot be read: " + e, e);
    }
  }

  private static byte[] bytes(Path file, long max) {
    try {
      return RegularFile.bytes(file, max);
    } catch (IOException e) {
      String reason = e instanceof FileSystemException f ? f.getReason() : e.getMessage();
      throw new StoppedException(
          file
              + " cannot be read"
              + (reason == null ? "" : ": " + reason)
              + ". Put the file itself there, or remove it, then run again.",
          e);
    }
  }

  /**
   * Returns the record and the windows embedded in a PDF; they are used as they are, because there
   * is no earlier version to compare them with.
   */
  public static PublishedVersions carried(
      String report, Map<String, InputFile> files, NumbersFile numbers) {
    Optional<InputFile> record = Optional.ofNullable(files.get(recordPath(report)));
    return new PublishedVersions(report, new TreeMap<>(), record, Optional.of(numbers));
  }

  private static Optional<LocalDate> day(String fileName) {
    Matcher name = KEPT.matcher(fileName);
    try {
      return name.matches() ? Optional.of(LocalDate.parse(name.group(1))) : Optional.empty();
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  /**
   * Reads the record, which belongs to the tester: while a new version replaces the old one, it is
   * moved from one to the other.
   */
  private static Optional<InputFile> record(Path reports, String report) {
    Path now = reports.resolve(report).resolve(RECORD);
    for (Path file : List.of(now, OutputStatus.old(reports, report).resolve(RECORD), now)) {
      if (RegularFile.exists(file)) {
        byte[] bytes = bytes(file, DiskFolder.LARGEST_FILE_BYTES);
        return Optional.of(new InputFile(recordPath(report), bytes));
      }
    }
    return Optional.empty();
  }

  /** Returns the path of a report's record in the project folder. */
  public static String recordPath(String report) {
    return "reports/" + report + "/" + RECORD;
  }

  /** Returns the path of the record in the report's folder. */
  static String recordFile() {
    return RECORD;
  }

  /** Returns the path of the version of a day in the report's folder. */
  public static String keptFile(LocalDate day) {
    return FOLDER + "report-" + day + ".pdf";
  }

  /** Returns true if this is the content of a PDF without a folder. */
  boolean isCarried() {
    return carried.isPresent();
  }

  /** Returns the versions by their path in the report's folder. */
  public Map<String, byte[]> files() {
    Map<String, byte[]> files = new TreeMap<>();
    kept.forEach((day, pdf) -> files.put(keptFile(day), pdf));
    return files;
  }

  /** Returns the path of their folder and of each version in the project folder. */
  public List<String> paths() {
    String folder = "reports/" + report + "/";
    List<String> paths = new ArrayList<>(List.of(folder + "published"));
    kept.keySet().forEach(day -> paths.add(folder + keptFile(day)));
    return paths;
  }

  /** Returns the hashes that a new version of a day depends on: those of the versions before it. */
  public List<InputHash> hashesBefore(LocalDate day) {
    return kept.headMap(day).entrySet().stream()
        .map(e -> new InputFile(keptFile(e.getKey()), e.getValue()).withoutContent())
        .toList();
  }

  /** Returns the version of a day, if one was published. */
  Optional<Checked<CarriedReport>> of(LocalDate day) {
    return Optional.ofNullable(kept.get(day)).map(pdf -> ReportPdfReader.read(path(day), pdf));
  }

  private String path(LocalDate day) {
    return "reports/" + report + "/" + keptFile(day);
  }

  /**
   * Returns the common ground that a version takes from the previously published one, so that
   * windows do not shift when a reading is corrected.
   *
   * @param day day of the new version
   * @param sessions its sessions; the common ground of other sessions is not taken
   */
  public Optional<CommonGround> ground(LocalDate day, Set<String> sessions) {
    if (carried.isPresent()) {
      return carried.flatMap(NumbersFile::ground).filter(g -> g.frozen().isPresent());
    }
    SortedMap<LocalDate, byte[]> upToDay = kept.headMap(day.plusDays(1));
    if (upToDay.isEmpty()) {
      return Optional.empty();
    }
    LocalDate found = upToDay.lastKey();
    return Optional.ofNullable(kept.get(found))
        .flatMap(pdf -> ReportPdfReader.numbers(path(found), pdf).value())
        .filter(n -> n.sessions().equals(sessions))
        .flatMap(NumbersFile::ground)
        .map(g -> found.equals(day) ? g : g.frozenSince(found));
  }

  /** Returns the day of the newest version that is older than a day. */
  Optional<LocalDate> dayBefore(LocalDate day) {
    SortedMap<LocalDate, byte[]> older = kept.headMap(day);
    return older.isEmpty() ? Optional.empty() : Optional.of(older.lastKey());
  }

  /** Returns the day of the newest version. */
  Optional<LocalDate> newest() {
    return kept.isEmpty() ? Optional.empty() : Optional.of(kept.lastKey());
  }

  /** Returns the recorded corrections. */
  Checked<List<Correction>> recorded() {
    return record
        .map(file -> CsvParser.read(file).then(CorrectionsParser::check))
        .orElseGet(() -> Checked.good(List.of()));
  }
}
