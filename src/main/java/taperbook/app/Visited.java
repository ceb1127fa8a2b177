package taperbook.app;

import java.util.List;
import java.util.Optional;
import taperbook.model.InputFile;
import taperbook.model.InputHash;
import taperbook.problem.Checked;

/**
 * A folder of {@code sessions/} that was read and is not kept: what it means, and the files it was
 * read from.
 *
 * @param <T> what it means
 * @param value the meaning, or every problem of its files
 * @param files its files that could be read
 * @param hashes all its files by name and hash; one that could not be read has an empty hash
 */
record Visited<T>(Checked<T> value, List<InputFile> files, List<InputHash> hashes) {
  Visited {
    files = List.copyOf(files);
    hashes = List.copyOf(hashes);
  }

  /** Name and hash of a file, read or not. */
  static InputHash hash(String path, Optional<InputFile> file) {
    return file.map(InputFile::withoutContent).orElse(new InputHash(path, "", 0));
  }
}
