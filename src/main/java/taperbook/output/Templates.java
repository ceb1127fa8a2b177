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
import taperbook.diagnostics.Problem;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.SourceLocation;
import taperbook.i18n.Texts;
import taperbook.output.article.RestrictedTemplates;
import taperbook.plan.Paper;
import taperbook.plan.Plan;

/** The texts of templates and style sheets by file name, such as {@code report.ftlh}. */
public final class Templates {
  /** The built-in files, which a user's folder can replace. */
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

  /** The files of a recording sheet, which reports do not use. */
  public static final List<String> SHEET = List.of("sheet.css", "sheet.ftlh");

  /** The template of the methods appendix. */
  static final String METHODS = "methods.ftlh";

  private static final String ENDING = ".ftlh";

  /**
   * Files that other templates use, or that every report has: not usable as a template on their
   * own.
   */
  private static final Set<String> PARTS = Set.of("parts.ftlh", "pages.ftlh", "road.ftlh", METHODS);

  private final SortedMap<String, String> texts;
  private final SortedMap<String, String> shipped;
  private @Nullable RestrictedTemplates pages;

  private Templates(SortedMap<String, String> texts, SortedMap<String, String> shipped) {
    this.texts = texts;
    this.shipped = shipped;
  }

  /** Returns the built-in report templates. */
  public static Templates builtIn() {
    return of(BUILT_IN);
  }

  /** Returns the built-in template of a recording sheet. */
  public static Templates ofSheet() {
    return of(SHEET);
  }

  private static Templates of(List<String> names) {
    SortedMap<String, String> texts = new TreeMap<>();
    names.forEach(name -> texts.put(name, resource(name)));
    return new Templates(texts, texts);
  }

  /**
   * Returns the built-in templates, with the user's added or replacing those of the same name.
   *
   * @param own text by file name, {@code .ftlh} and {@code .css}
   */
  public Templates with(Map<String, String> own) {
    SortedMap<String, String> joined = new TreeMap<>(texts);
    joined.putAll(own);
    return new Templates(joined, shipped);
  }

  /** Returns true if no template or style sheet is the user's. */
  boolean isBuiltIn() {
    return texts.equals(shipped);
  }

  /**
   * Returns the style sheet of a PDF on a paper; for sizes other than A4, theirs follows the common
   * one.
   */
  String print(Paper paper) {
    String common = texts.getOrDefault("print.css", "");
    return paper == Paper.A4 ? common : common + texts.getOrDefault(paper.word() + ".css", "");
  }

  /**
   * Renders a template with non-breaking units, or returns every problem in it.
   *
   * @param name file name of the template
   * @param model the template model
   */
  Checked<String> page(String name, Map<String, Object> model) {
    return pages().page(name, model).then(text -> Checked.good(NonBreakingUnits.kept(text)));
  }

  /** Returns the templates, parsed once for all reports of a run. */
  private synchronized RestrictedTemplates pages() {
    RestrictedTemplates made = pages;
    if (made == null) {
      made = new RestrictedTemplates(texts);
      pages = made;
    }
    return made;
  }

  /** Returns the names that a report can specify as its template. */
  public SortedSet<String> reportNames() {
    SortedSet<String> names = new TreeSet<>();
    for (String file : texts.keySet()) {
      if (file.endsWith(ENDING) && !PARTS.contains(file)) {
        names.add(stem(file));
      }
    }
    return names;
  }

  /** Returns the file name of the template that a plan names, or the problem that there is none. */
  Checked<String> chosen(Plan plan) {
    String asked = plan.style().template();
    String name = fileName(asked);
    if (reportNames().contains(stem(asked))) {
      return Checked.good(name);
    }
    return Checked.refused(
        List.of(
            new Problem(
                ProblemCode.NAME_UNKNOWN,
                SourceLocation.file(plan.article().file()),
                Texts.of("page.template_choice.template", asked),
                Texts.of("page.template_choice.name_of_template"),
                Texts.of(
                    "page.template_choice.name_one_of_or_write",
                    String.join(", ", reportNames()),
                    name))));
  }

  /** Returns the name without extension of a template given with or without it. */
  static String stem(String template) {
    String name = fileName(template);
    return name.substring(0, name.length() - ENDING.length());
  }

  /** Returns the file name of a template given with or without its extension. */
  static String fileName(String template) {
    return template.endsWith(ENDING) ? template : template + ENDING;
  }

  /** Returns a text with the normalised line ends that a browser uses for its hash. */
  String script(String name) {
    return texts.getOrDefault(name, "").replace("\r\n", "\n");
  }

  /** Returns all texts by file name. */
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
