package taperbook.output;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jsoup.Jsoup;
import taperbook.chart.plots.FigureSet;
import taperbook.chart.render.Figure;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.output.article.ArticlePart;
import taperbook.output.article.ArticleText;
import taperbook.output.data.LinkedData;
import taperbook.output.data.StopTimesJson;
import taperbook.output.library.LibraryPage;
import taperbook.output.share.ShareTable;
import taperbook.output.share.SummaryText;
import taperbook.output.view.FactTexts;
import taperbook.output.view.PageModel;
import taperbook.result.LibraryResult;
import taperbook.result.ReportResult;
import taperbook.result.StopTimes;

/**
 * The outputs of the templates of a report or library, each rendered on request from the numbers,
 * article, charts and styles.
 */
final class ReportPages {
  /** Initial charge and distance of the reader's stop, if they were recorded. */
  private static final int FIRST_SOC = 30;

  private static final int FIRST_STEPS = 12;

  /** Up to this many sessions, a page has less than a tenth of the maximum length. */
  private static final int FEW_SESSIONS = 6;

  /** Up to this length, answer and article take less than a tenth of the maximum, characters. */
  private static final int SHORT = 1_000_000;

  /** Name prefix of the charts of a library's curves, of which there may be dozens. */
  private static final String CURVES = "library-curves";

  /**
   * Maximum number of charts up to which charts of curves have narrow versions; more would make the
   * page too large for small screens.
   */
  private static final int MOST_DRAWN_TWICE = 6;

  private final ReportJob job;
  private final Content content;

  /** The parts of a session's report that do not depend on the medium; empty for a library. */
  private final Optional<PageModel> page;

  /** The same for templates, which all pages share. */
  private final Map<String, Object> common;

  /** The texts that the pages of a report have in common. */
  private record Content(String template, String answer, List<ArticlePart> article) {
    /** Returns the length of what the author can lengthen. */
    long characters() {
      return answer.length() + article.stream().mapToLong(part -> part.html().length()).sum();
    }
  }

  private ReportPages(ReportJob job, Content content) {
    this.job = job;
    this.content = content;
    this.page =
        job.results()
            .fold(
                report ->
                    Optional.of(
                        new PageModel(
                            report, job.attached(), job.corrections(), job.date(), job.program())),
                library -> Optional.empty());
    this.common = page.map(PageModel::map).orElse(Map.of());
  }

  /** Returns the pages, or every problem in the article and in the choice of template. */
  static Checked<ReportPages> of(ReportJob job) {
    return content(job).then(content -> Checked.good(new ReportPages(job, content)));
  }

  /** Returns every problem that the pages have; draws none that cannot have any. */
  static List<Problem> problems(ReportJob job) {
    Checked<Content> content = content(job);
    List<Problem> problems = new ArrayList<>(content.problems());
    content
        .value()
        .filter(c -> !isSound(job, c))
        .ifPresent(c -> problems.addAll(new ReportPages(job, c).problems()));
    return problems.stream().distinct().toList();
  }

  /**
   * Returns true if rendering cannot fail: the built-in templates fail only by their limits of
   * length and steps, which few sessions and a short article do not reach.
   */
  private static boolean isSound(ReportJob job, Content content) {
    return job.templates().isBuiltIn()
        && job.results() instanceof ReportResult report
        && report.sessions().size() <= FEW_SESSIONS
        && content.characters() <= SHORT;
  }

  private static Checked<Content> content(ReportJob job) {
    Set<String> charts = Figure.ids(job.figures());
    Checked<String> template = job.templates().chosen(job.results().plan());
    ArticleText text = new ArticleText(job.results(), charts);
    Checked<String> answer = job.results().fold(text::answer, library -> Checked.good(""));
    Checked<List<ArticlePart>> article = text.parts();
    List<Problem> problems = new ArrayList<>(template.problems());
    problems.addAll(answer.problems());
    problems.addAll(article.problems());
    if (template.value().isEmpty() || answer.value().isEmpty() || article.value().isEmpty()) {
      return Checked.refused(problems);
    }
    return Checked.of(
        new Content(template.value().get(), answer.value().get(), article.value().get()), problems);
  }

  /** Returns every problem that rendering finds. */
  List<Problem> problems() {
    List<Problem> problems = new ArrayList<>(screen().problems());
    problems.addAll(print().problems());
    if (job.results() instanceof ReportResult) {
      problems.addAll(methods("").problems());
    }
    return problems;
  }

  /** Returns the file name of the template. */
  String template() {
    return content.template();
  }

  /** Renders the browser page. */
  Checked<String> screen() {
    return job.templates().page(content.template(), model(false));
  }

  /** Renders the page of the PDF. */
  Checked<String> print() {
    return job.templates().page(content.template(), model(true));
  }

  /**
   * Renders the methods appendix.
   *
   * @param sha256 hash of the PDF that the appendix belongs to; empty if not yet known
   */
  Checked<String> methods(String sha256) {
    Map<String, Object> model = model(true);
    model.put("belongs", Map.of("file", "report.pdf", "sha256", sha256));
    return job.templates().page(Templates.METHODS, model);
  }

  /** Returns the content of {@code share/summary.md}. */
  byte[] summary() {
    return new SummaryText(page.orElseThrow(), answerText()).bytes();
  }

  /** Returns the table to embed elsewhere. */
  ShareTable shareTable() {
    return new ShareTable(page.orElseThrow());
  }

  /** Returns the answer at the top as plain text, which may be empty. */
  private String answerText() {
    return Jsoup.parse(content.answer()).text();
  }

  private Map<String, Object> model(boolean paper) {
    Map<String, Object> model =
        job.results().fold(report -> ofSession(report, paper), library -> ofAll(library, paper));
    model.put("medium", paper ? "pdf" : "html");
    model.put(
        "css",
        TrustedMarkup.of(
            paper
                ? job.templates().print(job.results().plan().style().paper())
                : job.templates().script("screen.css")));
    Map<String, Object> figures = new LinkedHashMap<>();
    boolean few = job.figures().size() <= MOST_DRAWN_TWICE;
    for (Figure figure : job.figures()) {
      boolean narrow = !paper && (few || !figure.id().startsWith(CURVES));
      figures.put(figure.id(), new FigureView(figure, narrow));
    }
    List<String> shown = content.article().stream().map(ArticlePart::figure).toList();
    model.put("article", TrustedMarkup.of(content.article(), figures));
    figures.keySet().removeAll(shown);
    Map<String, Object> road = new LinkedHashMap<>(figures);
    road.keySet().removeIf(id -> !FigureSet.isOfRoad(id));
    model.put("roadFigures", road);
    figures.keySet().removeAll(road.keySet());
    model.put("figures", List.copyOf(figures.values()));
    return model;
  }

  private Map<String, Object> ofSession(ReportResult report, boolean paper) {
    Map<String, Object> model = new LinkedHashMap<>(common);
    putScript(model, "report.js");
    model.put("answer", TrustedMarkup.of(content.answer()));
    model.put("summary", answerText());
    model.put("stopTimes", stopTimes(report));
    if (!paper) {
      String description =
          answerText().isEmpty() ? FactTexts.subject(report.main().session()) : answerText();
      model.put("linked", TrustedMarkup.of(new LinkedData(report, job.date(), description).text()));
    }
    return model;
  }

  private Map<String, Object> ofAll(LibraryResult library, boolean paper) {
    Map<String, Object> model =
        new LibraryPage(library).map(paper, job.inputs(), job.date(), job.program());
    putScript(model, "library.js");
    model.put("attached", !job.attached().isEmpty());
    model.put("mostAttached", ReportJob.MOST_ATTACHED_BYTES / 1_000_000 + "\u00a0MB");
    return model;
  }

  private void putScript(Map<String, Object> model, String name) {
    String script = job.templates().script(name);
    model.put("script", TrustedMarkup.of(script));
    model.put("scriptHash", TrustedMarkup.scriptHash(script));
  }

  private static Map<String, Object> stopTimes(ReportResult report) {
    Optional<StopTimes> times = report.main().curves().stopTimes().get();
    if (times.isEmpty()) {
      return Map.of("present", false);
    }
    StopTimes known = times.get();
    int last = known.firstSoc() + known.rows().size() - 1;
    int soc = Math.max(known.firstSoc(), Math.min(last, FIRST_SOC));
    int most = known.rows().get(soc - known.firstSoc()).size();
    return Map.of(
        "present",
        true,
        "first",
        known.firstSoc(),
        "last",
        last,
        "soc",
        soc,
        "distance",
        Math.min(most, FIRST_STEPS) * known.step().amount(),
        "unit",
        known.step().unit().symbol(),
        "json",
        TrustedMarkup.of(StopTimesJson.of(known)));
  }
}
