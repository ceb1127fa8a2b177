package taperbook.workspace;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import taperbook.i18n.Texts;
import taperbook.input.folder.FileName;
import taperbook.input.folder.RegularFile;

/** Writes start files to the project folder and never overwrites an existing file. */
public final class StartFolder {
  private final Path root;

  public StartFolder(Path root) {
    this.root = root;
  }

  /** Writes all texts, or none if one of the files exists. */
  public void write(SortedMap<String, String> texts) {
    SortedMap<String, byte[]> files = new TreeMap<>();
    texts.forEach((path, text) -> files.put(path, text.getBytes(StandardCharsets.UTF_8)));
    writeBytes(files);
  }

  /** Writes all files, or none if one of them exists. */
  public void writeBytes(SortedMap<String, byte[]> files) {
    List<String> there =
        files.keySet().stream().filter(p -> RegularFile.exists(root.resolve(p))).toList();
    if (!there.isEmpty()) {
      throw new StoppedException(
          Texts.of(
              "project.start_folder.there_already_and_nothing_is",
              String.join(", ", there),
              there.size() == 1
                  ? Texts.of("project.start_folder.is")
                  : Texts.of("project.start_folder.are"),
              there.size() == 1
                  ? Texts.of("project.start_folder.it")
                  : Texts.of("project.start_folder.them")));
    }
    files.forEach(this::writeFresh);
  }

  private void writeFresh(String path, byte[] bytes) {
    Path file = root.resolve(path);
    for (String parent : FileName.parents(path)) {
      Path folder = root.resolve(parent);
      if (RegularFile.isOutside(root, folder)) {
        throw StoppedException.outsideProject(folder);
      }
    }
    try {
      Files.createDirectories(file.toAbsolutePath().resolveSibling(""));
      try (OutputStream out = RegularFile.create(file)) {
        out.write(bytes);
      }
    } catch (FileAlreadyExistsException e) {
      throw new StoppedException(
          Texts.of("project.start_folder.is_in_way", path, e.getMessage()), e);
    } catch (IOException e) {
      throw new StoppedException(
          Texts.of("project.start_folder.cannot_be_written_make_room", path, e), e);
    }
  }
}
