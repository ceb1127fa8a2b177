package taperbook.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import taperbook.check.CorrectionsCheck;
import taperbook.model.Correction;
import taperbook.model.InputFile;
import taperbook.model.MovedNumber;
import taperbook.problem.Checked;
import taperbook.proof.CarriedReport;
import taperbook.proof.Moves;
import taperbook.proof.NumbersFile;
import taperbook.proof.ReportPdfReader;
import taperbook.read.CsvTableReader;

/**
 * The versions of a report that were published, kept as they were in {@code published/} of its
 * folder, and what was put right since. A published version is the base that later numbers are held
 * against; nothing ever changes it.
 */
final class Revision {
  /** Where the record of corrections stands in a report's folder. */
  static final String CORRECTIONS = "corrections.csv";

  private static final Pattern FROZEN = Pattern.compile("report-(\\d{4}-\\d{2}-\\d{2})\\.pdf");
  private static final String FOLDER = "published/";

  private final String report;
  private final SortedMap<LocalDate, byte[]> frozen;
  private final Optional<InputFile> record;

  private Revision(String report, SortedMap<LocalDate, byte[]> frozen, Optional<InputFile> record) {
    this.report = report;
    this.frozen = frozen;
    this.record = record;
  }

  /** What a report's folder keeps of its earlier versions. */
  static Revision in(Path reports, String report) {
    Path folder = reports.resolve(report);
    SortedMap<LocalDate, byte[]> frozen = new TreeMap<>();
    try {
      if (Files.isDirectory(folder.resolve(FOLDER))) {
        try (Stream<Path> files = Files.list(folder.resolve(FOLDER))) {
          for (Path file : files.sorted().toList()) {
            Matcher name = FROZEN.matcher(String.valueOf(file.getFileName()));
            if (name.matches()) {
              frozen.put(LocalDate.parse(name.group(1)), Files.readAllBytes(file));
            }
          }
        }
      }
      return new Revision(report, frozen, record(folder, report));
    } catch (IOException e) {
      throw new StoppedException("the folder " + folder + " cannot be read: " + e, e);
    }
  }

  private static Optional<InputFile> record(Path folder, String report) throws IOException {
    try {
      byte[] bytes = Files.readAllBytes(folder.resolve(CORRECTIONS));
      return Optional.of(new InputFile(pathOf(report), bytes));
    } catch (NoSuchFileException e) {
      return Optional.empty();
    }
  }

  static String pathOf(String report) {
    return "reports/" + report + "/" + CORRECTIONS;
  }

  /** Path of the version of a day in the report's folder. */
  static String frozenPath(LocalDate day) {
    return FOLDER + "report-" + day + ".pdf";
  }

  /** The frozen versions by their path in the report's folder. */
  Map<String, byte[]> files() {
    Map<String, byte[]> files = new TreeMap<>();
    frozen.forEach((day, pdf) -> files.put(frozenPath(day), pdf));
    return files;
  }

  /** The version of a day, if it was published. */
  Optional<Checked<CarriedReport>> of(LocalDate day) {
    return Optional.ofNullable(frozen.get(day)).map(pdf -> read(day, pdf));
  }

  /** The newest version that is older than a day, if there is one. */
  Optional<Checked<CarriedReport>> before(LocalDate day) {
    return dayBefore(day).flatMap(this::of);
  }

  /** Day of the newest version that is older than a day. */
  Optional<LocalDate> dayBefore(LocalDate day) {
    SortedMap<LocalDate, byte[]> older = frozen.headMap(day);
    return older.isEmpty() ? Optional.empty() : Optional.of(older.lastKey());
  }

  private Checked<CarriedReport> read(LocalDate day, byte[] pdf) {
    return ReportPdfReader.read("reports/" + report + "/" + frozenPath(day), pdf);
  }

  /** The corrections that were recorded before a day. */
  Checked<List<Correction>> recordedBefore(LocalDate day) {
    if (record.isEmpty()) {
      return Checked.good(List.of());
    }
    return CsvTableReader.read(record.get())
        .then(CorrectionsCheck::check)
        .then(all -> Checked.good(all.stream().filter(c -> c.day().isBefore(day)).toList()));
  }

  /** The numbers that moved since a version, and why. */
  static List<MovedNumber> moved(
      CarriedReport before, byte[] numbersJson, List<InputFile> inputs, String program) {
    Map<String, InputFile> byPath = new TreeMap<>();
    inputs.forEach(i -> byPath.put(i.path(), i));
    return NumbersFile.read(CarriedReport.NUMBERS, numbersJson)
        .value()
        .map(now -> Moves.between(before, now, byPath, program))
        .orElse(List.of());
  }

  /** Corrections with one more at the end. */
  static List<Correction> with(List<Correction> recorded, Correction last) {
    List<Correction> all = new ArrayList<>(recorded);
    all.add(last);
    return all;
  }
}
