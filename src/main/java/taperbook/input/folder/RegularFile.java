package taperbook.input.folder;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import taperbook.i18n.Texts;

/**
 * The only access to the content of files in a project folder, which may be of any origin. Only
 * regular files are opened, because a pipe would block and a device never ends; links are not
 * followed; the number of bytes read is limited; and output files are always created, so that no
 * existing file is ever overwritten.
 */
public final class RegularFile {
  private RegularFile() {}

  /**
   * Returns the content of a file.
   *
   * @param max maximum number of bytes, below 2³¹ - 1
   * @throws IOException if it is not a regular file, cannot be read, or is larger
   */
  public static byte[] bytes(Path file, long max) throws IOException {
    try (InputStream in = open(file)) {
      byte[] bytes = in.readNBytes((int) max + 1);
      if (bytes.length > max) {
        throw new FileSystemException(
            file.toString(), null, Texts.of("input.regular_file.it_is_larger_than_bytes", max));
      }
      return bytes;
    }
  }

  /** Returns the lines of a file in UTF-8; malformed bytes become U+FFFD. */
  public static List<String> lines(Path file, long max) throws IOException {
    return new String(bytes(file, max), StandardCharsets.UTF_8).lines().toList();
  }

  /** Opens a regular file. */
  public static InputStream open(Path file) throws IOException {
    BasicFileAttributes seen =
        Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
    if (!seen.isRegularFile()) {
      throw new FileSystemException(
          file.toString(),
          null,
          seen.isSymbolicLink()
              ? Texts.of("input.regular_file.it_is_link")
              : Texts.of("input.regular_file.it_is_not_file"));
    }
    return Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS);
  }

  /** Creates a file; fails if anything has its name already, including a dangling link. */
  public static OutputStream create(Path file) throws IOException {
    return Files.newOutputStream(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
  }

  /** Returns true if anything of this name exists, including a dangling link. */
  public static boolean exists(Path path) {
    return Files.exists(path, LinkOption.NOFOLLOW_LINKS);
  }

  /** Returns true if this is a folder itself, and not a link to one. */
  public static boolean isFolder(Path path) {
    try {
      return isFolder(
          Files.readAttributes(path, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS));
    } catch (IOException e) {
      return false;
    }
  }

  /**
   * Returns true if these are the attributes of a folder itself. For a junction of Windows, which
   * leads to another folder, Java sets two kinds.
   *
   * @param attributes read without following links
   */
  public static boolean isFolder(BasicFileAttributes attributes) {
    return attributes.isDirectory() && !attributes.isOther();
  }

  /** Returns true if an existing path is outside a folder after resolving all links. */
  public static boolean isOutside(Path root, Path path) {
    try {
      return exists(path) && !path.toRealPath().startsWith(root.toRealPath());
    } catch (IOException e) {
      return isDanglingLinkOutside(root, path);
    }
  }

  /** Resolves a dangling or circular link. */
  private static boolean isDanglingLinkOutside(Path root, Path path) {
    try {
      Path real = root.toRealPath();
      Path parent = path.toAbsolutePath().resolveSibling("").toRealPath();
      return !parent.resolve(Files.readSymbolicLink(path)).normalize().startsWith(real);
    } catch (IOException | UnsupportedOperationException e) {
      return true;
    }
  }
}
