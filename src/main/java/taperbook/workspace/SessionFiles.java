package taperbook.workspace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.input.SessionParser;
import taperbook.input.csv.CsvParser;
import taperbook.input.csv.CsvTable;
import taperbook.input.mapping.ColumnMap;
import taperbook.input.mapping.ColumnMapParser;
import taperbook.session.InputFile;
import taperbook.session.Session;

/**
 * The files of one session: {@code readings.csv} and {@code conditions.csv}, or {@code
 * columns.csv}, the external file that it names, and {@code conditions.csv}.
 */
final class SessionFiles {
  private final String name;
  private final String folder;
  private final Optional<Checked<ColumnMap>> map;

  /** Creates the files of a session in a folder that checks for paths and reads them. */
  SessionFiles(String name, Predicate<String> has, Function<String, Checked<InputFile>> read) {
    this.name = name;
    this.folder = "sessions/" + name + "/";
    String path = folder + ColumnMap.FILE_NAME;
    this.map =
        has.test(path)
            ? Optional.of(read.apply(path).then(CsvParser::read).then(ColumnMapParser::check))
            : Optional.empty();
  }

  /** Returns the paths of all files that the session is read from. */
  List<String> paths() {
    List<String> paths = new ArrayList<>();
    if (map.isEmpty()) {
      paths.add(folder + ColumnMap.DEFAULT_READINGS);
    } else {
      paths.add(folder + ColumnMap.FILE_NAME);
      map.get().value().ifPresent(m -> paths.add(folder + m.readingsName()));
    }
    paths.add(conditionsPath());
    return paths;
  }

  private String conditionsPath() {
    return folder + "conditions.csv";
  }

  /**
   * Reads the session and checks its readings for consistency, or returns all problems of its
   * files.
   */
  Checked<Session> session(Function<String, Checked<InputFile>> read) {
    return ReadingReview.of(checked(read));
  }

  private Checked<Session> checked(Function<String, Checked<InputFile>> read) {
    Checked<CsvTable> conditions = read.apply(conditionsPath()).then(CsvParser::read);
    if (map.isEmpty()) {
      String path = folder + ColumnMap.DEFAULT_READINGS;
      return SessionParser.check(name, read.apply(path).then(CsvParser::read), conditions);
    }
    Checked<ColumnMap> stated = map.get();
    if (stated.value().isEmpty()) {
      List<Problem> all = new ArrayList<>(stated.problems());
      all.addAll(conditions.problems());
      return Checked.refused(all);
    }
    return stated.then(m -> mapped(m, read, conditions));
  }

  private Checked<Session> mapped(
      ColumnMap stated, Function<String, Checked<InputFile>> read, Checked<CsvTable> conditions) {
    Checked<CsvTable> foreign =
        read.apply(folder + stated.readingsName())
            .then(file -> CsvParser.read(file, stated.layout()));
    return SessionParser.check(name, stated, foreign, conditions);
  }
}
