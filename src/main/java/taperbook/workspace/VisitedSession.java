package taperbook.workspace;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import taperbook.diagnostics.Checked;
import taperbook.session.InputFile;
import taperbook.session.InputHash;

/**
 * A folder of {@code sessions/} that was read but is not cached: its value, and the files it was
 * read from.
 *
 * @param <T> type of the value
 * @param meaning parses the files that were read, or returns all their problems
 * @param files its files that could be read
 * @param hashes path and hash of all its files; the hash is empty if a file could not be read
 */
public record VisitedSession<T>(
    Supplier<Checked<T>> meaning, List<InputFile> files, List<InputHash> hashes) {
  public VisitedSession {
    files = List.copyOf(files);
    hashes = List.copyOf(hashes);
  }

  /** Parses the files on each call; returns the value or all problems of the files. */
  public Checked<T> value() {
    return meaning.get();
  }

  /** Returns path and hash of a file; the hash is empty if it was not read. */
  static InputHash hash(String path, Optional<InputFile> file) {
    return file.map(InputFile::withoutContent).orElse(new InputHash(path, "", 0));
  }
}
