package taperbook.output.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import taperbook.output.data.RowRuns;
import taperbook.session.InputFile;
import taperbook.session.RowRef;

/** Short keys for the files of a report, so that thousands of rows of input fit into a table. */
final class FileKeys {
  private final Map<String, String> keys = new LinkedHashMap<>();

  /** Assigns keys F1, F2 and so on, in the order of the files. */
  FileKeys(List<InputFile> inputs) {
    inputs.forEach(input -> keys.computeIfAbsent(input.path(), path -> "F" + (keys.size() + 1)));
  }

  /** Returns the listed files: {@code key}, {@code file}, {@code sha256}. */
  static List<Map<String, Object>> list(List<InputFile> inputs) {
    FileKeys keys = new FileKeys(inputs);
    return inputs.stream().map(keys::input).toList();
  }

  /** Returns the rows, file by file: {@code key} and {@code lines}. */
  List<Map<String, Object>> places(List<RowRef> rows) {
    List<Map<String, Object>> places = new ArrayList<>();
    RowRuns.lines(rows)
        .forEach(
            (file, lines) ->
                places.add(Map.of("key", keys.getOrDefault(file, file), "lines", lines)));
    return places;
  }

  private Map<String, Object> input(InputFile input) {
    return Map.of(
        "key", keys.getOrDefault(input.path(), ""),
        "file", input.path(),
        "sha256", input.sha256());
  }
}
