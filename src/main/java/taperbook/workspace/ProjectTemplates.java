package taperbook.workspace;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.i18n.Texts;
import taperbook.input.csv.Utf8Decoder;
import taperbook.input.folder.DiskFolder;
import taperbook.input.folder.RegularFile;
import taperbook.output.Templates;
import taperbook.session.InputFile;

/** The templates in the project folder, which take precedence over the built-in ones. */
public final class ProjectTemplates {
  public static final String FOLDER = "templates";
  private static final String TEMPLATE = ".ftlh";
  private static final String STYLE = ".css";
  private static final String SCRIPT = ".js";

  private final List<InputFile> files;
  private final List<Problem> problems;
  private final Templates withBuiltIn;

  private ProjectTemplates(List<InputFile> files, List<Problem> problems, Templates builtIn) {
    this.files = List.copyOf(files);
    this.problems = List.copyOf(problems);
    this.withBuiltIn = builtIn.with(texts(files));
  }

  /**
   * Returns the templates that a PDF embeds.
   *
   * @param inputs the files that the report lists as its inputs
   * @param others templates that were built into the program that created it
   */
  public static ProjectTemplates carried(
      Collection<InputFile> inputs, Collection<InputFile> others) {
    List<InputFile> own = inputs.stream().filter(f -> isTemplate(f.path())).toList();
    return new ProjectTemplates(own, List.of(), Templates.builtIn().with(texts(others)));
  }

  /**
   * Returns the paths of embedded templates that this program does not have, or has with different
   * text: they belong to the author or to another program version.
   */
  public static List<String> foreign(Collection<InputFile> carried) {
    Map<String, String> builtIn = Templates.builtIn().texts();
    return carried.stream()
        .filter(f -> isTemplate(f.path()))
        .filter(f -> !text(f).equals(builtIn.get(nameOf(f))))
        .map(InputFile::path)
        .toList();
  }

  /** Reads the templates of a project folder, if any. */
  public static ProjectTemplates of(Path root) {
    return read(root, Templates.builtIn(), ProjectTemplates::isTemplate);
  }

  /** Reads the templates of a recording sheet. */
  public static ProjectTemplates ofSheet(Path root) {
    return read(root, Templates.ofSheet(), p -> isOfSheet(p) && Files.isRegularFile(p));
  }

  private static ProjectTemplates read(Path root, Templates builtIn, Predicate<Path> wanted) {
    Path folder = root.resolve(FOLDER);
    if (RegularFile.isOutside(root, folder)) {
      throw StoppedException.outsideProject(folder);
    }
    if (!Files.isDirectory(folder)) {
      return new ProjectTemplates(List.of(), List.of(), builtIn);
    }
    try (Stream<Path> found = Files.list(folder)) {
      List<Path> sorted = found.filter(wanted).sorted().toList();
      DiskFolder project = new DiskFolder(root);
      List<InputFile> files = new ArrayList<>();
      List<Problem> problems = new ArrayList<>();
      for (Path path : sorted) {
        Checked<InputFile> read = project.read(FOLDER + "/" + path.getFileName());
        problems.addAll(read.problems());
        if (read.value().isPresent()) {
          problems.addAll(Utf8Decoder.decode(read.value().get()).problems());
          files.add(read.value().get());
        }
      }
      return new ProjectTemplates(files, problems, builtIn);
    } catch (IOException e) {
      throw new StoppedException(
          Texts.of("project.common.folder_cannot_be_read", folder, e.getMessage()), e);
    }
  }

  private static boolean isTemplate(Path path) {
    return isTemplate(FOLDER + "/" + path.getFileName())
        && !isOfSheet(path)
        && Files.isRegularFile(path);
  }

  private static boolean isOfSheet(Path path) {
    return Templates.SHEET.contains(String.valueOf(path.getFileName()));
  }

  private static boolean isTemplate(String path) {
    return path.startsWith(FOLDER + "/")
        && (path.endsWith(TEMPLATE) || path.endsWith(STYLE) || path.endsWith(SCRIPT));
  }

  /** Returns the problems of the files themselves; no report can be built until they are fixed. */
  public List<Problem> problems() {
    return problems;
  }

  public List<InputFile> files() {
    return files;
  }

  public Templates withBuiltIn() {
    return withBuiltIn;
  }

  private static Map<String, String> texts(Collection<InputFile> files) {
    Map<String, String> texts = new TreeMap<>();
    files.forEach(f -> texts.put(nameOf(f), text(f)));
    return texts;
  }

  /** Returns the text without what an editor or a version control system of Windows adds. */
  private static String text(InputFile file) {
    return new String(file.bytes(), StandardCharsets.UTF_8)
        .replaceFirst("^\ufeff", "")
        .replace("\r\n", "\n");
  }

  /** Returns the names that a report may use as its template. */
  public Set<String> names() {
    return withBuiltIn.reportNames();
  }

  private static String nameOf(InputFile file) {
    return file.path().substring(FOLDER.length() + 1);
  }
}
