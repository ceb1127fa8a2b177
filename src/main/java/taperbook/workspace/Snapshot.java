package taperbook.workspace;

import java.io.IOException;
import java.nio.file.FileVisitOption;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import taperbook.input.folder.RegularFile;

/**
 * Size and time of every file that reports are made from, as they are at one moment. Nothing of
 * what is made is among them, nor hidden files, such as an editor keeps beside the one it saves.
 *
 * @param files what is seen of each file, by its path
 */
public record Snapshot(Map<Path, Seen> files) {
  private static final List<String> FOLDERS = List.of("sessions", "reports", "templates");
  private static final List<Integer> DEPTHS = List.of(2, 1, 1);

  /**
   * What is seen of a file without opening it.
   *
   * @param bytes its size
   * @param modified when it was last written, as the file system tells
   * @param key what tells it from another file that took its place; empty if nothing does
   */
  record Seen(long bytes, String modified, String key) {}

  public Snapshot {
    files = Map.copyOf(files);
  }

  /** The files of a project folder as they are now. */
  public static Snapshot of(Path root) {
    Map<Path, Seen> files = new TreeMap<>();
    for (int i = 0; i < FOLDERS.size(); i++) {
      Path folder = root.resolve(FOLDERS.get(i));
      try {
        Files.walkFileTree(
            folder, EnumSet.of(FileVisitOption.FOLLOW_LINKS), DEPTHS.get(i), new Into(root, files));
      } catch (NoSuchFileException | NotDirectoryException e) {
        // A folder that is not there has no files.
      } catch (IOException e) {
        throw new StoppedException("the folder " + folder + " cannot be read: " + e, e);
      }
    }
    return new Snapshot(files);
  }

  private static final class Into extends SimpleFileVisitor<Path> {
    private final Path root;
    private final Map<Path, Seen> files;

    Into(Path root, Map<Path, Seen> files) {
      this.root = root;
      this.files = files;
    }

    /** What a link leads to outside is no part of the project. */
    @Override
    public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
      return RegularFile.leadsOut(root, folder)
          ? FileVisitResult.SKIP_SUBTREE
          : FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
      String name = String.valueOf(file.getFileName());
      boolean input = name.endsWith(".csv") || name.endsWith(".md") || isTemplate(name);
      if (attributes.isRegularFile() && input && !name.startsWith(".")) {
        files.put(
            file,
            new Seen(
                attributes.size(),
                attributes.lastModifiedTime().toString(),
                String.valueOf(attributes.fileKey())));
      }
      return FileVisitResult.CONTINUE;
    }

    /** A file may go while the folder is walked: then it is not there. */
    @Override
    public FileVisitResult visitFileFailed(Path file, IOException failure) {
      return FileVisitResult.CONTINUE;
    }

    private static boolean isTemplate(String name) {
      return name.endsWith(".ftlh") || name.endsWith(".css") || name.endsWith(".js");
    }
  }
}
