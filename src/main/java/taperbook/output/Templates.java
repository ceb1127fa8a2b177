package taperbook.output;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import taperbook.diagnostics.Checked;
import taperbook.output.article.RestrictedTemplates;
import taperbook.plan.Paper;

/** The texts of templates and style sheets by file name, such as {@code report.ftlh}. */
public final class Templates {
  /** The files that are built in, and that a user's folder may replace. */
  public static final List<String> BUILT_IN =
      List.of(
          "full.ftlh",
          "letter.css",
          "library.ftlh",
          "library.js",
          "methods.ftlh",
          "pages.ftlh",
          "parts.ftlh",
          "print.css",
          "report.ftlh",
          "report.js",
          "road.ftlh",
          "screen.css");

  /** The files of a recording sheet, which no report uses. */
  public static final List<String> SHEET = List.of("sheet.css", "sheet.ftlh");

  /** The template of the methods appendix. */
  static final String METHODS = "methods.ftlh";

  private static final String ENDING = ".ftlh";

  /** What other templates use, or every report has: none can be made with them alone. */
  private static final Set<String> PARTS = Set.of("parts.ftlh", "pages.ftlh", "road.ftlh", METHODS);

  private final SortedMap<String, String> texts;
  private final SortedMap<String, String> shipped;
  private @Nullable RestrictedTemplates pages;

  private Templates(SortedMap<String, String> texts, SortedMap<String, String> shipped) {
    this.texts = texts;
    this.shipped = shipped;
  }

  /** The templates of reports that come with the program. */
  public static Templates builtIn() {
    return of(BUILT_IN);
  }

  /** The template of a recording sheet that comes with the program. */
  public static Templates ofSheet() {
    return of(SHEET);
  }

  private static Templates of(List<String> names) {
    SortedMap<String, String> texts = new TreeMap<>();
    names.forEach(name -> texts.put(name, resource(name)));
    return new Templates(texts, texts);
  }

  /**
   * The built-in templates, with those of the user's in place of the ones they are named like and
   * beside them.
   *
   * @param own text by file name, {@code .ftlh} and {@code .css}
   */
  public Templates with(Map<String, String> own) {
    SortedMap<String, String> joined = new TreeMap<>(texts);
    joined.putAll(own);
    return new Templates(joined, shipped);
  }

  /** True if no template or style sheet is the user's. */
  boolean isBuiltIn() {
    return texts.equals(shipped);
  }

  /** The style sheet of a PDF on a paper; sizes other than A4 have theirs behind the common one. */
  String print(Paper paper) {
    String common = texts.getOrDefault("print.css", "");
    return paper == Paper.A4 ? common : common + texts.getOrDefault(paper.word() + ".css", "");
  }

  /**
   * The text that a template gives, amounts and units kept together, or every problem met in it.
   *
   * @param name file name of the template
   * @param model what it may print
   */
  Checked<String> page(String name, Map<String, Object> model) {
    return pages().page(name, model).then(text -> Checked.good(NonBreakingUnits.kept(text)));
  }

  /** The templates as pages are made with them, parsed once for all reports of a run. */
  private synchronized RestrictedTemplates pages() {
    RestrictedTemplates made = pages;
    if (made == null) {
      made = new RestrictedTemplates(texts);
      pages = made;
    }
    return made;
  }

  /** Parses what a report is made with, so that its pages need not wait for it. */
  void prepare(String template) {
    pages().prepare(fileName(template));
    PARTS.forEach(pages()::prepare);
  }

  /** Names that a report may give as its template. */
  public SortedSet<String> reportNames() {
    SortedSet<String> names = new TreeSet<>();
    for (String file : texts.keySet()) {
      if (file.endsWith(ENDING) && !PARTS.contains(file)) {
        names.add(stem(file));
      }
    }
    return names;
  }

  /** Name without its ending of a template that is named with or without it. */
  static String stem(String template) {
    String name = fileName(template);
    return name.substring(0, name.length() - ENDING.length());
  }

  /** File name of a template that is named with or without its ending. */
  static String fileName(String template) {
    return template.endsWith(ENDING) ? template : template + ENDING;
  }

  /** A text that a browser gets as it is, with the line ends that a browser counts. */
  String script(String name) {
    return texts.getOrDefault(name, "").replace("\r\n", "\n");
  }

  /** All texts by file name. */
  public SortedMap<String, String> texts() {
    return new TreeMap<>(texts);
  }

  private static String resource(String name) {
    String path = "/taperbook/templates/" + name;
    try (InputStream in = Templates.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks its own " + path);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(path, e);
    }
  }
}
