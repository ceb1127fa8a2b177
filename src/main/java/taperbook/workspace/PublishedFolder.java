package taperbook.workspace;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import taperbook.i18n.Texts;
import taperbook.input.folder.DiskFolder;
import taperbook.input.folder.FileName;
import taperbook.input.folder.RegularFile;
import taperbook.output.ReportFiles;
import taperbook.output.data.StreamedFile;
import taperbook.uptodate.OutputStatus;

/**
 * The folder {@code reports/NAME/} that contains a published report. A new version is written
 * completely to a sibling folder and then replaces the old one, which remains unchanged until then.
 * If the process ends between the two renames that this takes, the next run restores the old
 * version.
 *
 * <p>Files in the folder that the program did not create, such as a tester's own pictures, are
 * kept: they are moved from the old version to the new one, and never opened. If a run is killed in
 * between, both versions remain, and the next run moves the rest. Links are not followed.
 */
public final class PublishedFolder {
  private static final String STAMP = OutputStatus.STAMP;
  private static final String PAGE = "report.html";

  /**
   * MAX_PATH without the character that ends a path.
   *
   * @see <a
   *     href="https://learn.microsoft.com/en-us/windows/win32/fileio/maximum-file-path-limitation">Microsoft,
   *     Maximum Path Length Limitation</a>
   */
  private static final int LONGEST_PATH_OF_WINDOWS = 259;

  private final Path reports;
  private final String name;
  private final Path folder;
  private final Path fresh;
  private final Path old;
  private final Path oldPage;
  private final RetryingFiles files;

  /**
   * Opens the folder of a report.
   *
   * @throws StoppedException if it, or the previous version, exists and is not a folder
   */
  public PublishedFolder(Path reports, String name) {
    this(reports, name, new RetryingFiles());
  }

  PublishedFolder(Path reports, String name, RetryingFiles files) {
    this.files = files;
    this.reports = reports;
    this.name = name;
    this.folder = reports.resolve(name);
    this.fresh = OutputStatus.fresh(reports, name);
    this.old = OutputStatus.old(reports, name);
    this.oldPage = OutputStatus.oldPage(reports, name);
    for (Path path : List.of(folder, old)) {
      if (RegularFile.exists(path) && !RegularFile.isFolder(path)) {
        throw StoppedException.reservedPath(path);
      }
    }
    if (RegularFile.exists(oldPage) && !Files.isRegularFile(oldPage, LinkOption.NOFOLLOW_LINKS)) {
      throw StoppedException.reservedPath(oldPage);
    }
  }

  /** Returns true if the published version has this fingerprint and is complete. */
  public boolean isMadeFrom(String fingerprint) {
    return OutputStatus.isWhole(reports, name, fingerprint);
  }

  /** Returns true if a version is published, so that an up-to-date check is useful. */
  public boolean exists() {
    return Files.isRegularFile(folder.resolve(STAMP), LinkOption.NOFOLLOW_LINKS);
  }

  /** Returns the bytes of a published file, if it exists and can be read. */
  public Optional<byte[]> bytes(String file) {
    try {
      return Optional.of(RegularFile.bytes(folder.resolve(file), DiskFolder.LARGEST_FILE_BYTES));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** Returns the links in the folder whose targets are outside the project. */
  public List<String> linksToOutside() {
    Path root = folder.toAbsolutePath().resolveSibling("").resolveSibling("");
    try {
      return entries(folder).stream()
          .filter(path -> Files.isSymbolicLink(folder.resolve(path)))
          .filter(path -> RegularFile.isOutside(root, folder.resolve(path)))
          .toList();
    } catch (IOException e) {
      return List.of();
    }
  }

  /**
   * Shows a new page in the published version, if there is one, until {@link #replace} or {@link
   * #recover}, which both start from the published page. Requires the {@link ReportLock}.
   *
   * @return false if the page cannot be shown; the published version is unchanged
   */
  public boolean showPage(byte[] page) {
    Path shown = folder.resolve(PAGE);
    if (!exists() || isCutOff() || !Files.isRegularFile(shown, LinkOption.NOFOLLOW_LINKS)) {
      return false;
    }
    try {
      write(PAGE, page);
      files.move(shown, oldPage);
      files.move(fresh.resolve(PAGE), shown);
      delete(fresh);
      return true;
    } catch (IOException e) {
      abandon();
      return false;
    }
  }

  /** Restores the published page. */
  private void restorePage() throws IOException {
    if (RegularFile.exists(oldPage)) {
      if (RegularFile.exists(folder)) {
        files.move(oldPage, folder.resolve(PAGE));
      } else {
        Files.delete(oldPage);
      }
    }
  }

  /**
   * Returns a path in the folder that is too long for most programs of Windows, if there is one.
   */
  public Optional<Path> tooLongForWindows() {
    if (folder.getFileSystem().getSeparator().equals("/")) {
      return Optional.empty();
    }
    try {
      return entries(folder).stream()
          .map(file -> folder.resolve(file).toAbsolutePath())
          .filter(path -> path.toString().length() > LONGEST_PATH_OF_WINDOWS)
          .findFirst();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** Replaces the old version with a new one. */
  public void replace(ReportFiles files, String fingerprint) {
    replace(files.all(), files.streamed(), fingerprint);
  }

  /** Replaces the old version with files that are all in memory. */
  public void replace(Map<String, byte[]> files, String fingerprint) {
    replace(files, Map.of(), fingerprint);
  }

  private void replace(
      Map<String, byte[]> files, Map<String, StreamedFile> streamed, String fingerprint) {
    recover(false);
    try {
      Set<String> programFiles = new TreeSet<>(files.keySet());
      programFiles.addAll(streamed.keySet());
      if (RegularFile.exists(folder)) {
        checkConflicts(otherFiles(folder, programFiles), programFiles);
      }
      for (Map.Entry<String, StreamedFile> file : streamed.entrySet()) {
        file.getValue().writeTo(new BufferedOutputStream(created(file.getKey())));
      }
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        write(file.getKey(), file.getValue());
      }
      String stamp =
          OutputStatus.stampHead(fingerprint) + "\n" + String.join("\n", programFiles) + "\n";
      write(STAMP, stamp.getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      abandon();
      throw new StoppedException(
          Texts.of("project.published_folder.report_cannot_be_written_to", folder, reason(e)), e);
    }
    swap();
    moveOtherFiles();
  }

  private OutputStream created(String file) throws IOException {
    Path path = fresh.resolve(file);
    Files.createDirectories(path.resolveSibling(""));
    return RegularFile.create(path);
  }

  private void write(String file, byte[] bytes) throws IOException {
    try (OutputStream out = created(file)) {
      out.write(bytes);
    }
  }

  private void swap() {
    try {
      restorePage();
      if (RegularFile.exists(folder)) {
        files.move(folder, old);
      }
      try {
        files.move(fresh, folder);
      } catch (IOException e) {
        if (RegularFile.exists(old)) {
          files.move(old, folder);
        }
        throw e;
      }
    } catch (IOException e) {
      abandon();
      throw new StoppedException(
          Texts.of(
              "project.published_folder.version_before_cannot_be_replaced",
              current(reports, name),
              reason(e)),
          e);
    }
  }

  /**
   * Moves files that the program did not create from the old version to the new one, and deletes
   * the rest of the old version, its stamp last: without the stamp, the next run would treat all
   * files as the tester's own.
   */
  private void moveOtherFiles() {
    if (!RegularFile.exists(old)) {
      return;
    }
    try {
      for (String otherFiles : otherFiles(old, stamp(folder))) {
        Path place = folder.resolve(otherFiles);
        makeFolders(otherFiles);
        if (RegularFile.exists(place)) {
          throw new FileSystemException(
              otherFiles, null, Texts.of("project.published_folder.is_in_both", otherFiles));
        }
        files.move(old.resolve(otherFiles), place);
      }
      Path stamp = old.resolve(STAMP);
      delete(old, each -> !each.equals(stamp) && !each.equals(old));
      delete(old);
    } catch (IOException e) {
      throw new StoppedException(
          Texts.of("project.published_folder.report_is_whole_in_but", folder, old, reason(e)), e);
    }
  }

  /** Creates the parent folders of a file in the report's folder, without following links. */
  private void makeFolders(String file) throws IOException {
    for (String parent : FileName.parents(file)) {
      Path each = folder.resolve(parent);
      if (!RegularFile.exists(each)) {
        Files.createDirectory(each);
      } else if (!RegularFile.isFolder(each)) {
        throw new FileSystemException(
            each.toString(), null, Texts.of("project.published_folder.is_not_folder", each));
      }
    }
  }

  /** Deletes the unfinished version, so that a full disk does not stay full. */
  private void abandon() {
    try {
      delete(fresh);
      restorePage();
    } catch (IOException e) {
      // The next run tries again; the reason why nothing could be written is more important now.
    }
  }

  private static String reason(IOException e) {
    if (e instanceof AccessDeniedException) {
      return Texts.of("project.published_folder.it_may_not_be_written");
    }
    String reason = e instanceof FileSystemException f ? f.getReason() : e.getMessage();
    return reason == null ? e.toString() : reason;
  }

  /** Returns true if a run was interrupted, or another one is active. */
  public boolean isCutOff() {
    return RegularFile.exists(old) || RegularFile.exists(fresh) || RegularFile.exists(oldPage);
  }

  /** Returns the location of the published version, also after an interrupted run. */
  public static Path current(Path reports, String name) {
    PublishedFolder published = new PublishedFolder(reports, name);
    return RegularFile.exists(published.folder) || !RegularFile.exists(published.old)
        ? published.folder
        : published.old;
  }

  /** Cleans up after an interrupted run. Requires the {@link ReportLock}. */
  public void recover() {
    recover(true);
  }

  private void recover(boolean withPage) {
    try {
      delete(fresh);
      if (RegularFile.exists(old) && !RegularFile.exists(folder)) {
        files.move(old, folder);
      }
      if (withPage) {
        restorePage();
      }
    } catch (IOException e) {
      throw new StoppedException(
          Texts.of(
              "project.published_folder.what_run_that_was_cut",
              folder.resolveSibling(""),
              reason(e),
              RegularFile.exists(folder) ? folder : old),
          e);
    }
    moveOtherFiles();
  }

  /**
   * Returns the files that the program created in a version; empty if its stamp does not list them.
   */
  private static Set<String> stamp(Path version) {
    try {
      return new TreeSet<>(
          RegularFile.lines(version.resolve(STAMP), OutputStatus.LARGEST_STAMP_BYTES));
    } catch (IOException e) {
      return Set.of();
    }
  }

  /**
   * Returns everything in a version that the program did not create and that the new version does
   * not replace.
   */
  private static Set<String> otherFiles(Path version, Set<String> programFiles) throws IOException {
    Set<String> otherFiles = entries(version);
    otherFiles.removeAll(stamp(version));
    otherFiles.removeAll(programFiles);
    otherFiles.remove(STAMP);
    return otherFiles;
  }

  /**
   * Checks that the path of a tester's own file is neither a folder nor below a file in the new
   * version.
   */
  private void checkConflicts(Set<String> otherFiles, Set<String> programFiles) throws IOException {
    Set<String> folders = new TreeSet<>();
    programFiles.forEach(file -> folders.addAll(FileName.parents(file)));
    for (String file : otherFiles) {
      boolean below = file.startsWith(STAMP + "/");
      for (String each : programFiles) {
        below |= file.startsWith(each + "/");
      }
      if (below || folders.contains(file)) {
        throw new FileSystemException(
            file, null, Texts.of("project.published_folder.is_in_its_way", folder.resolve(file)));
      }
    }
  }

  /** Returns the paths of all entries below a folder that are not folders, with {@code /}. */
  private static Set<String> entries(Path folder) throws IOException {
    Set<String> found = new TreeSet<>();
    Files.walkFileTree(
        folder,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult preVisitDirectory(Path each, BasicFileAttributes attributes) {
            return RegularFile.isFolder(attributes)
                ? FileVisitResult.CONTINUE
                : add(each, FileVisitResult.SKIP_SUBTREE);
          }

          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
            return add(file, FileVisitResult.CONTINUE);
          }

          private FileVisitResult add(Path each, FileVisitResult then) {
            String separator = each.getFileSystem().getSeparator();
            found.add(folder.relativize(each).toString().replace(separator, "/"));
            return then;
          }
        });
    return found;
  }

  private void delete(Path folder) throws IOException {
    delete(folder, each -> true);
  }

  /**
   * Deletes the selected entries of a folder, and links rather than their targets; a missing folder
   * is ignored.
   */
  private void delete(Path folder, Predicate<Path> wanted) throws IOException {
    try {
      Files.walkFileTree(
          folder,
          new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path each, BasicFileAttributes attributes)
                throws IOException {
              if (RegularFile.isFolder(attributes)) {
                return FileVisitResult.CONTINUE;
              }
              deleteOne(each);
              return FileVisitResult.SKIP_SUBTREE;
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
                throws IOException {
              return deleteOne(file);
            }

            @Override
            public FileVisitResult postVisitDirectory(Path each, @Nullable IOException failure)
                throws IOException {
              if (failure != null) {
                throw failure;
              }
              return deleteOne(each);
            }

            private FileVisitResult deleteOne(Path each) throws IOException {
              if (wanted.test(each)) {
                files.delete(each);
              }
              return FileVisitResult.CONTINUE;
            }
          });
    } catch (NoSuchFileException e) {
      // Nothing to delete.
    }
  }
}
