package taperbook.workspace;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import taperbook.diagnostics.Checked;
import taperbook.session.InputFile;
import taperbook.session.InputHash;

/**
 * A folder of {@code sessions/} that was read and is not kept: what it means, and the files it was
 * read from.
 *
 * @param <T> what it means
 * @param meaning finds the meaning, or every problem of its files, from what was read
 * @param files its files that could be read
 * @param hashes all its files by name and hash; one that could not be read has an empty hash
 */
public record VisitedSession<T>(
    Supplier<Checked<T>> meaning, List<InputFile> files, List<InputHash> hashes) {
  public VisitedSession {
    files = List.copyOf(files);
    hashes = List.copyOf(hashes);
  }

  /** What it means, found anew each time, or every problem of its files. */
  public Checked<T> value() {
    return meaning.get();
  }

  /** Name and hash of a file, read or not. */
  static InputHash hash(String path, Optional<InputFile> file) {
    return file.map(InputFile::withoutContent).orElse(new InputHash(path, "", 0));
  }
}
