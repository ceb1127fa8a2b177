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
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import taperbook.input.folder.RegularFile;
import taperbook.result.LibraryRow;

/**
 * Rows of a library that were measured in an earlier run, each under a key that says from which
 * bytes. All rows of a file were measured in one context: by the same program, for the same plan,
 * with the same range tests; in another context none of them is known. A file whose hash does not
 * fit is taken for none.
 */
public final class RowCache {
  private static final String HEAD = "taperbook rows 2";
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

  /** Knows nothing and keeps nothing. */
  public static RowCache none() {
    return new RowCache(Optional.empty(), "", Map.of());
  }

  /**
   * What is known in a context.
   *
   * @param reports the folder of reports
   * @param library name of the library
   * @param context all that rows depend on beside the files of their session
   */
  public static RowCache of(Path reports, String library, String context) {
    Path file = reports.resolve("." + library + ".rows");
    return new RowCache(Optional.of(file), context, read(file, context));
  }

  /** The row that was measured from what the key names; may be asked on several threads at once. */
  public Optional<LibraryRow> find(String key) {
    return Optional.ofNullable(known.get(key));
  }

  /** Keeps a row for the next run. */
  public void keep(String key, LibraryRow row) {
    if (file.isPresent()) {
      kept.put(key, row);
    }
  }

  /** Writes what was kept, if it is not what is there already; a failure costs time, no more. */
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
        // The next run writes over it.
      }
    }
  }

  private void write(Path fresh) throws IOException {
    MessageDigest hash = sha256();
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
      return RegularFile.isThere(file) && isWhole(file) ? rows(file, context) : Map.of();
    } catch (IOException | RuntimeException | OutOfMemoryError e) {
      // What cannot be read, or claims to be larger than memory, was not written by this program.
      return Map.of();
    }
  }

  /** True if the file ends with the hash of all before. */
  private static boolean isWhole(Path file) throws IOException {
    long content = Files.size(file) - HASH_BYTES;
    MessageDigest hash = sha256();
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

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java runtime has SHA-256", e);
    }
  }
}
