package taperbook.write;

import freemarker.core.HTMLOutputFormat;
import freemarker.template.TemplateModelException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import taperbook.draw.picture.Figure;
import taperbook.write.library.LibraryPage;
import taperbook.write.text.ArticlePart;

/** All that the template of a library may print. */
final class LibraryModel {
  private static final String SCRIPT = "library.js";

  /** With more charts the page would be too heavy for the very screens that they are narrow for. */
  private static final int MOST_DRAWN_TWICE = 6;

  private final LibraryJob job;
  private final List<ArticlePart> article;

  LibraryModel(LibraryJob job, List<ArticlePart> article) {
    this.job = job;
    this.article = article;
  }

  /** For the page in a browser. */
  Map<String, Object> screen() {
    return model("html", text("screen.css"));
  }

  /** For paper. */
  Map<String, Object> print() {
    return model("pdf", job.templates().print(job.result().plan().style().paper()));
  }

  private Map<String, Object> model(String medium, String css) {
    Map<String, Object> model =
        new LibraryPage(job.result())
            .map(medium.equals("pdf"), job.inputs(), job.made(), job.program());
    model.put("medium", medium);
    model.put("css", markup(css));
    model.put("script", markup(text(SCRIPT)));
    model.put("scriptHash", sha256(text(SCRIPT)));
    model.put("attached", !job.attached().isEmpty());
    model.put("mostAttached", LibraryJob.MOST_ATTACHED_BYTES / 1_000_000 + "\u00a0MB");
    Map<String, Object> figures = new LinkedHashMap<>();
    boolean narrow = medium.equals("html") && job.figures().size() <= MOST_DRAWN_TWICE;
    job.figures().forEach(f -> figures.put(f.id(), figure(f, narrow)));
    List<String> shown = article.stream().map(ArticlePart::figure).toList();
    model.put("article", parts(figures));
    model.put(
        "figures",
        job.figures().stream()
            .filter(f -> !shown.contains(f.id()))
            .map(f -> figures.getOrDefault(f.id(), Map.of()))
            .toList());
    return model;
  }

  private List<Object> parts(Map<String, Object> figures) {
    List<Object> parts = new ArrayList<>();
    for (ArticlePart part : article) {
      parts.add(
          part.figure().isEmpty()
              ? Map.of("html", markup(part.html()))
              : Map.of("figure", figures.getOrDefault(part.figure(), Map.of())));
    }
    return parts;
  }

  private String text(String name) {
    return job.templates().texts().getOrDefault(name, "").replace("\r\n", "\n");
  }

  private static Map<String, Object> figure(Figure figure, boolean narrow) {
    return Map.of(
        "id", figure.id(),
        "title", figure.title(),
        "caption", figure.caption(),
        "alt", figure.textAlternative(),
        "svg", markup(figure.svg()),
        "narrow", markup(narrow ? figure.narrowSvg() : ""));
  }

  private static Object markup(String html) {
    try {
      return HTMLOutputFormat.INSTANCE.fromMarkup(html);
    } catch (TemplateModelException e) {
      throw new IllegalStateException("markup is taken as it is", e);
    }
  }

  /**
   * The hash by which the page's policy lets its one script run.
   *
   * @see <a href="https://www.w3.org/TR/CSP3/#grammardef-hash-source">CSP Level 3, hash-source</a>
   */
  private static String sha256(String script) {
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256").digest(script.getBytes(StandardCharsets.UTF_8));
      return "sha256-" + Base64.getEncoder().encodeToString(hash);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java runtime has SHA-256", e);
    }
  }
}
