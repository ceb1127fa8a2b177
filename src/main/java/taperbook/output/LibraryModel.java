package taperbook.output;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import taperbook.chart.render.Figure;
import taperbook.output.article.ArticlePart;
import taperbook.output.library.LibraryPage;

/** The template model of a library. */
final class LibraryModel {
  private static final String SCRIPT = "library.js";

  /** Name prefix of the charts of curves, of which there may be dozens. */
  private static final String CURVES = "library-curves";

  /**
   * Maximum number of curve charts with narrow versions; more would make the page too large for
   * small screens.
   */
  private static final int MOST_DRAWN_TWICE = 6;

  private final LibraryJob job;
  private final List<ArticlePart> article;

  LibraryModel(LibraryJob job, List<ArticlePart> article) {
    this.job = job;
    this.article = article;
  }

  /** Returns the model of the browser page. */
  Map<String, Object> screen() {
    return model("html", job.templates().script("screen.css"));
  }

  /** Returns the model of the PDF. */
  Map<String, Object> print() {
    return model("pdf", job.templates().print(job.result().plan().style().paper()));
  }

  private Map<String, Object> model(String medium, String css) {
    Map<String, Object> model =
        new LibraryPage(job.result())
            .map(medium.equals("pdf"), job.inputs(), job.date(), job.program());
    model.put("medium", medium);
    model.put("css", TrustedMarkup.of(css));
    model.put("script", TrustedMarkup.of(job.templates().script(SCRIPT)));
    model.put("scriptHash", TrustedMarkup.scriptHash(job.templates().script(SCRIPT)));
    model.put("attached", !job.attached().isEmpty());
    model.put("mostAttached", LibraryJob.MOST_ATTACHED_BYTES / 1_000_000 + "\u00a0MB");
    Map<String, Object> figures = new LinkedHashMap<>();
    boolean few = job.figures().size() <= MOST_DRAWN_TWICE;
    for (Figure figure : job.figures()) {
      boolean narrow = medium.equals("html") && (few || !figure.id().startsWith(CURVES));
      figures.putAll(FigureView.all(List.of(figure), narrow));
    }
    List<String> shown = article.stream().map(ArticlePart::figure).toList();
    model.put("article", TrustedMarkup.of(article, figures));
    model.put(
        "figures",
        job.figures().stream()
            .filter(f -> !shown.contains(f.id()))
            .map(f -> figures.getOrDefault(f.id(), Map.of()))
            .toList());
    return model;
  }
}
