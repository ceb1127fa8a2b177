package taperbook.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import taperbook.model.InputFile;
import taperbook.write.Templates;

/** The templates in the project folder, which come before the built-in ones. */
final class OwnTemplates {
  private static final String FOLDER = "templates";
  private static final String TEMPLATE = ".ftlh";
  private static final String STYLE = ".css";

  /** Parts that other templates use; not templates of a report. */
  private static final Set<String> NOT_REPORTS = Set.of("parts.ftlh", "road.ftlh", "methods.ftlh");

  private final List<InputFile> files;

  private OwnTemplates(List<InputFile> files) {
    this.files = List.copyOf(files);
  }

  /** Reads the templates of a project folder; there need not be any. */
  static OwnTemplates of(Path root) {
    Path folder = root.resolve(FOLDER);
    if (!Files.isDirectory(folder)) {
      return new OwnTemplates(List.of());
    }
    try (Stream<Path> found = Files.list(folder)) {
      List<Path> sorted = found.filter(OwnTemplates::isTemplate).sorted().toList();
      List<InputFile> files = new ArrayList<>();
      for (Path path : sorted) {
        files.add(new InputFile(FOLDER + "/" + path.getFileName(), Files.readAllBytes(path)));
      }
      return new OwnTemplates(files);
    } catch (IOException e) {
      throw new StoppedException("the folder " + folder + " cannot be read: " + e.getMessage(), e);
    }
  }

  private static boolean isTemplate(Path path) {
    String name = String.valueOf(path.getFileName());
    return (name.endsWith(TEMPLATE) || name.endsWith(STYLE)) && Files.isRegularFile(path);
  }

  List<InputFile> files() {
    return files;
  }

  Templates withBuiltIn() {
    Map<String, String> own = new TreeMap<>();
    files.forEach(f -> own.put(nameOf(f), new String(f.bytes(), StandardCharsets.UTF_8)));
    return Templates.builtIn().with(own);
  }

  /** Names that a report may give as its template. */
  Set<String> names() {
    Set<String> names = new TreeSet<>();
    for (String file : withBuiltIn().texts().keySet()) {
      if (file.endsWith(TEMPLATE) && !NOT_REPORTS.contains(file)) {
        names.add(file.substring(0, file.length() - TEMPLATE.length()));
      }
    }
    return names;
  }

  private static String nameOf(InputFile file) {
    return file.path().substring(FOLDER.length() + 1);
  }
}
