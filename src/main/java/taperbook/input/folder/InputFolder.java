package taperbook.input.folder;

import java.util.List;
import taperbook.diagnostics.Checked;
import taperbook.session.InputFile;

/**
 * A folder that holds {@code sessions/} and {@code reports/}; paths are relative, with {@code /}.
 */
public interface InputFolder {
  /**
   * Names of the sessions: folders in {@code sessions/} that hold {@code readings.csv} or {@code
   * columns.csv}.
   */
  Listing sessions();

  /** Names of the range tests: folders in {@code sessions/} that hold {@code range-test.csv}. */
  Listing rangeTests();

  /** Paths of the folder of all sessions and range tests, and of each folder in it. */
  List<String> sessionFolders();

  /**
   * Names of the reports: files in {@code reports/} that end in {@code .md}, without the ending.
   */
  Listing reports();

  /** True if there is a file at a path. */
  boolean has(String path);

  /** The file at a path, or why it cannot be read. */
  Checked<InputFile> read(String path);
}
