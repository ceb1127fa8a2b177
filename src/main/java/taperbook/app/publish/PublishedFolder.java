package taperbook.app.publish;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import taperbook.app.looks.Standing;
import taperbook.app.project.StoppedException;
import taperbook.write.ReportFiles;
import taperbook.write.StreamedFile;

/**
 * The folder {@code reports/NAME/} that a report is published in. A new version is written whole
 * beside it and then takes its place; until then the old one stays as it is. If the process ends
 * between the two renames that this takes, the next run puts the old version back.
 *
 * <p>Files in the folder that are not of our making, such as a tester's own pictures, are kept.
 */
public final class PublishedFolder {
  private static final String STAMP = Standing.STAMP;

  private final Path reports;
  private final String name;
  private final Path folder;
  private final Path fresh;
  private final Path old;

  public PublishedFolder(Path reports, String name) {
    this.reports = reports;
    this.name = name;
    this.folder = reports.resolve(name);
    this.fresh = Standing.fresh(reports, name);
    this.old = Standing.old(reports, name);
  }

  /** True if what is published was made from this fingerprint and is all there. */
  public boolean isMadeFrom(String fingerprint) {
    return Standing.isWhole(reports, name, fingerprint);
  }

  /** True if something was published: whether it is up to date is worth asking then. */
  public boolean isThere() {
    return Files.isRegularFile(folder.resolve(STAMP));
  }

  /** The bytes of one of the published files, if there is one that can be read. */
  public Optional<byte[]> bytes(String file) {
    try {
      return Optional.of(Files.readAllBytes(folder.resolve(file)));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** Puts a new version in the place of the old one. */
  public void replace(ReportFiles files, String fingerprint) {
    replace(files.all(), files.streamed(), fingerprint);
  }

  /** Puts files that are all in memory in the place of the old version. */
  public void replace(Map<String, byte[]> files, String fingerprint) {
    replace(files, Map.of(), fingerprint);
  }

  private void replace(
      Map<String, byte[]> files, Map<String, StreamedFile> streamed, String fingerprint) {
    recover();
    try {
      Set<String> ours = new TreeSet<>(files.keySet());
      ours.addAll(streamed.keySet());
      for (Map.Entry<String, StreamedFile> file : streamed.entrySet()) {
        Path path = fresh.resolve(file.getKey());
        Files.createDirectories(parentOf(path));
        file.getValue().writeTo(new BufferedOutputStream(Files.newOutputStream(path)));
      }
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        Path path = fresh.resolve(file.getKey());
        Files.createDirectories(parentOf(path));
        Files.write(path, file.getValue());
      }
      keepForeignFiles(ours);
      Files.writeString(
          fresh.resolve(STAMP),
          Standing.stampHead(fingerprint) + "\n" + String.join("\n", ours) + "\n",
          StandardCharsets.UTF_8);
      swap();
    } catch (IOException e) {
      takeFreshAway();
      throw new StoppedException(
          "the report cannot be written to "
              + folder
              + " ("
              + reason(e)
              + "). What was published there before is unchanged. Make room or make the folder"
              + " writable, then run again.",
          e);
    }
  }

  private void swap() throws IOException {
    if (Files.exists(folder)) {
      move(folder, old);
    }
    try {
      move(fresh, folder);
    } catch (IOException e) {
      if (Files.exists(old)) {
        move(old, folder);
      }
      throw e;
    }
    delete(old);
  }

  /** A full disk should not stay full of half a report. */
  private void takeFreshAway() {
    try {
      delete(fresh);
    } catch (IOException e) {
      // The next run tries again; what matters now is why nothing could be written.
    }
  }

  private static String reason(IOException e) {
    if (e instanceof AccessDeniedException) {
      return "it may not be written";
    }
    String reason = e instanceof FileSystemException f ? f.getReason() : e.getMessage();
    return reason == null ? e.toString() : reason;
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to);
    }
  }

  /** True if a run was cut off here, or another one is at work. */
  public boolean isCutOff() {
    return Files.exists(old) || Files.exists(fresh);
  }

  /** Where the published version lies, also after a run that was cut off. */
  public static Path current(Path reports, String name) {
    Path folder = reports.resolve(name);
    Path old = Standing.old(reports, name);
    return Files.exists(folder) || !Files.exists(old) ? folder : old;
  }

  /** Mends what a run that was cut off left behind. Only under the {@link ReportLock}. */
  public void recover() {
    try {
      delete(fresh);
      if (Files.exists(old)) {
        if (Files.exists(folder)) {
          delete(old);
        } else {
          move(old, folder);
        }
      }
    } catch (IOException e) {
      throw new StoppedException(
          "what a run that was cut off left behind cannot be cleared from the folder "
              + folder.resolveSibling("")
              + " ("
              + reason(e)
              + "). What was published is whole: in "
              + (Files.exists(folder) ? folder : old)
              + ". Make the folder writable, then run again.",
          e);
    }
  }

  private List<String> stamp() {
    try {
      return Files.readAllLines(folder.resolve(STAMP), StandardCharsets.UTF_8);
    } catch (IOException e) {
      return List.of();
    }
  }

  private void keepForeignFiles(Set<String> ours) throws IOException {
    if (!Files.isDirectory(folder)) {
      return;
    }
    Set<String> made = new TreeSet<>(stamp());
    List<Path> foreign = new ArrayList<>();
    try (Stream<Path> all = Files.walk(folder)) {
      all.filter(Files::isRegularFile)
          .filter(p -> !ours.contains(relative(p)) && !made.contains(relative(p)))
          .filter(p -> !relative(p).equals(STAMP))
          .forEach(foreign::add);
    }
    for (Path path : foreign) {
      Path kept = fresh.resolve(relative(path));
      Files.createDirectories(parentOf(kept));
      Files.copy(path, kept, StandardCopyOption.COPY_ATTRIBUTES);
    }
  }

  private String relative(Path path) {
    return folder.relativize(path).toString().replace('\\', '/');
  }

  private static Path parentOf(Path path) {
    Path parent = path.getParent();
    if (parent == null) {
      throw new IllegalArgumentException("no folder holds " + path);
    }
    return parent;
  }

  private static void delete(Path folder) throws IOException {
    try {
      Files.walkFileTree(
          folder,
          new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
                throws IOException {
              Files.delete(file);
              return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult postVisitDirectory(Path each, @Nullable IOException failure)
                throws IOException {
              if (failure != null) {
                throw failure;
              }
              Files.delete(each);
              return FileVisitResult.CONTINUE;
            }
          });
    } catch (NoSuchFileException e) {
      // Nothing was there: nothing to do.
    }
  }
}
