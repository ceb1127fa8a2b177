package taperbook.input.folder;

import java.util.List;
import taperbook.diagnostics.Checked;
import taperbook.session.InputFile;

/**
 * A folder that contains {@code sessions/} and {@code reports/}; paths are relative, with {@code
 * /}.
 */
public interface InputFolder {
  /**
   * Returns the names of the sessions: folders in {@code sessions/} that contain {@code
   * readings.csv} or {@code columns.csv}.
   */
  Listing sessions();

  /**
   * Returns the names of the range tests: folders in {@code sessions/} that contain {@code
   * range-test.csv}.
   */
  Listing rangeTests();

  /** Returns the paths of the folder of all sessions and range tests, and of each folder in it. */
  List<String> sessionFolders();

  /**
   * Returns the names of the reports: files in {@code reports/} that end in {@code .md}, without
   * the extension.
   */
  Listing reports();

  /** Returns true if there is a file at a path. */
  boolean has(String path);

  /** Reads the file at a path, or returns why it cannot be read. */
  Checked<InputFile> read(String path);
}
