package taperbook.build;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.DigestInputStream;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import taperbook.input.folder.RegularFile;
import taperbook.result.LibraryRow;
import taperbook.session.InputHash;

/**
 * Cached rows of a library from an earlier run, each under a key that identifies the input bytes.
 * All rows of a cache file were measured in one context: by the same program, for the same plan,
 * with the same range tests. Rows from another context are ignored, as is a file whose hash does
 * not match.
 */
final class RowCache {
  private static final String HEAD = "taperbook rows 3";
  private static final int HASH_BYTES = 32;

  private final Optional<Path> file;
  private final String context;
  private final Map<String, LibraryRow> known;
  private final Map<String, LibraryRow> kept = new LinkedHashMap<>();

  private RowCache(Optional<Path> file, String context, Map<String, LibraryRow> known) {
    this.file = file;
    this.context = context;
    this.known = known;
  }

  /** Returns a cache that stores nothing. */
  public static RowCache none() {
    return new RowCache(Optional.empty(), "", Map.of());
  }

  /**
   * Returns the cache for a context.
   *
   * @param reports the folder of reports
   * @param library name of the library
   * @param context everything that rows depend on besides the files of their session
   */
  public static RowCache of(Path reports, String library, String context) {
    Path file = reports.resolve("." + library + ".rows");
    return new RowCache(Optional.of(file), context, read(file, context));
  }

  /** Returns the row that was measured from the files that the key identifies; thread-safe. */
  public Optional<LibraryRow> find(String key) {
    return Optional.ofNullable(known.get(key));
  }

  /** Stores a row for the next run. */
  public void keep(String key, LibraryRow row) {
    if (file.isPresent()) {
      kept.put(key, row);
    }
  }

  /** Writes the rows unless the file already contains them; a failure only costs time. */
  public void write() {
    if (file.isEmpty() || kept.keySet().equals(known.keySet())) {
      return;
    }
    Path fresh = file.get().resolveSibling(file.get().getFileName() + ".new-rows");
    try {
      Files.deleteIfExists(fresh);
      write(fresh);
      Files.move(fresh, file.get(), StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException e) {
      try {
        Files.deleteIfExists(fresh);
      } catch (IOException again) {
        // The next run overwrites the file.
      }
    }
  }

  private void write(Path fresh) throws IOException {
    MessageDigest hash = InputHash.newDigest();
    try (BufferedOutputStream end = new BufferedOutputStream(RegularFile.create(fresh))) {
      DataOutputStream out = new DataOutputStream(new DigestOutputStream(end, hash));
      RowWriter rows = new RowWriter(out);
      rows.text(HEAD);
      rows.text(context);
      out.writeInt(kept.size());
      for (Map.Entry<String, LibraryRow> entry : kept.entrySet()) {
        rows.text(entry.getKey());
        rows.row(entry.getValue());
      }
      out.flush();
      end.write(hash.digest());
    }
  }

  private static Map<String, LibraryRow> read(Path file, String context) {
    try {
      return RegularFile.exists(file) && isWhole(file) ? rows(file, context) : Map.of();
    } catch (IOException | RuntimeException | OutOfMemoryError e) {
      // A file that cannot be read or that is larger than memory was not written by this program.
      return Map.of();
    }
  }

  /** Returns true if the file ends with the hash of its preceding content. */
  private static boolean isWhole(Path file) throws IOException {
    long content = Files.size(file) - HASH_BYTES;
    MessageDigest hash = InputHash.newDigest();
    try (InputStream in = new BufferedInputStream(RegularFile.open(file))) {
      DigestInputStream hashed = new DigestInputStream(in, hash);
      byte[] part = new byte[1 << 16];
      long left = content;
      while (left > 0) {
        int read = hashed.read(part, 0, (int) Math.min(part.length, left));
        if (read < 0) {
          return false;
        }
        left -= read;
      }
      return content > 0 && Arrays.equals(hash.digest(), in.readNBytes(HASH_BYTES));
    }
  }

  private static Map<String, LibraryRow> rows(Path file, String context) throws IOException {
    Map<String, LibraryRow> rows = new HashMap<>();
    try (DataInputStream in =
        new DataInputStream(new BufferedInputStream(RegularFile.open(file)))) {
      RowParser reader = new RowParser(in);
      if (!reader.text().equals(HEAD) || !reader.text().equals(context)) {
        return Map.of();
      }
      int count = in.readInt();
      for (int i = 0; i < count; i++) {
        rows.put(reader.text(), reader.row());
      }
    }
    return rows;
  }
}
