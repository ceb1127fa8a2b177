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
 * Size and time of every source file of the reports at one moment. Excludes output files and hidden
 * files, such as those that an editor creates while saving.
 *
 * @param files status of each file, by its path
 */
public record Snapshot(Map<Path, Seen> files) {
  private static final List<String> FOLDERS = List.of("sessions", "reports", "templates");
  private static final List<Integer> DEPTHS = List.of(2, 1, 1);

  /**
   * Status of a file, obtained without opening it.
   *
   * @param bytes its size
   * @param modified time of the last write according to the file system
   * @param key distinguishes the file from a replacement; empty if not available
   */
  record Seen(long bytes, String modified, String key) {}

  public Snapshot {
    files = Map.copyOf(files);
  }

  /** Returns the current files of a project folder. */
  public static Snapshot of(Path root) {
    Map<Path, Seen> files = new TreeMap<>();
    for (int i = 0; i < FOLDERS.size(); i++) {
      Path folder = root.resolve(FOLDERS.get(i));
      try {
        Files.walkFileTree(
            folder, EnumSet.of(FileVisitOption.FOLLOW_LINKS), DEPTHS.get(i), new Into(root, files));
      } catch (NoSuchFileException | NotDirectoryException e) {
        // A missing folder has no files.
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

    /** The target of a link outside the folder is not part of the project. */
    @Override
    public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
      return RegularFile.isOutside(root, folder)
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

    /** A file may be deleted during the walk; it is then treated as missing. */
    @Override
    public FileVisitResult visitFileFailed(Path file, IOException failure) {
      return FileVisitResult.CONTINUE;
    }

    private static boolean isTemplate(String name) {
      return name.endsWith(".ftlh") || name.endsWith(".css") || name.endsWith(".js");
    }
  }
}
