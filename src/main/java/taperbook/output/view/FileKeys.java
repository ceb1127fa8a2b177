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

  /** An input file. */
  record Input(String key, String file, String sha256) {}

  /** Lines of an input file. */
  record Place(String key, String lines) {}

  /** Assigns keys F1, F2 and so on, in the order of the files. */
  FileKeys(List<InputFile> inputs) {
    inputs.forEach(input -> keys.computeIfAbsent(input.path(), path -> "F" + (keys.size() + 1)));
  }

  /** Returns the listed files. */
  List<Input> list(List<InputFile> inputs) {
    return inputs.stream()
        .map(i -> new Input(keys.getOrDefault(i.path(), ""), i.path(), i.sha256()))
        .toList();
  }

  /** Returns the rows, file by file. */
  List<Place> places(List<RowRef> rows) {
    List<Place> places = new ArrayList<>();
    RowRuns.lines(rows)
        .forEach((file, lines) -> places.add(new Place(keys.getOrDefault(file, file), lines)));
    return places;
  }
}
