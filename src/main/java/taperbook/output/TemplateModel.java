package taperbook.output;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jsoup.Jsoup;
import taperbook.chart.plots.FigureSet;
import taperbook.output.article.ArticlePart;
import taperbook.output.data.LinkedData;
import taperbook.output.data.StopTimesJson;
import taperbook.output.view.FactTexts;
import taperbook.output.view.PageModel;
import taperbook.result.StopTimes;

/** The template model of a report: the numbers, article, charts and styles. */
final class TemplateModel {
  private static final String SCRIPT = "report.js";

  /** Initial charge and distance of the reader's stop, if they were recorded. */
  private static final int FIRST_SOC = 30;

  private static final int FIRST_STEPS = 12;

  private final ReportJob job;
  private final String answer;
  private final List<ArticlePart> article;

  private final PageModel page;

  /** The parts of the model that all pages share. */
  private final Map<String, Object> common;

  /**
   * Creates the model of the pages of a report.
   *
   * @param answer the answer at the top, in HTML
   * @param article the tester's article
   */
  TemplateModel(ReportJob job, String answer, List<ArticlePart> article) {
    this.job = job;
    this.answer = answer;
    this.article = article;
    this.page =
        new PageModel(job.result(), job.inputs(), job.corrections(), job.date(), job.program());
    this.common = page.map();
  }

  /** Returns the parts of the page that do not depend on its medium. */
  PageModel page() {
    return page;
  }

  /** Returns the answer at the top as plain text, which may be empty. */
  String summary() {
    return Jsoup.parse(answer).text();
  }

  /** Returns the model of the browser page. */
  Map<String, Object> screen() {
    Map<String, Object> model =
        model("html", job.templates().texts().getOrDefault("screen.css", ""));
    String subject = FactTexts.subject(job.result().main().session());
    String description = summary().isEmpty() ? subject : summary();
    model.put(
        "linked", TrustedMarkup.of(new LinkedData(job.result(), job.date(), description).text()));
    return model;
  }

  /** Returns the model of the PDF. */
  Map<String, Object> print() {
    return model("pdf", job.templates().print(job.result().plan().style().paper()));
  }

  /**
   * Returns the model of the methods appendix.
   *
   * @param sha256 hash of the PDF that the appendix belongs to; empty if not yet known
   */
  Map<String, Object> methods(String sha256) {
    Map<String, Object> model = print();
    model.put("belongs", Map.of("file", "report.pdf", "sha256", sha256));
    return model;
  }

  private Map<String, Object> model(String medium, String css) {
    Map<String, Object> model = new LinkedHashMap<>(common);
    model.put("medium", medium);
    model.put("css", TrustedMarkup.of(css));
    model.put("answer", TrustedMarkup.of(answer));
    model.put("summary", summary());
    model.put("script", TrustedMarkup.of(job.templates().script(SCRIPT)));
    model.put("scriptHash", TrustedMarkup.scriptHash(job.templates().script(SCRIPT)));
    model.put("stopTimes", stopTimes());
    Map<String, Object> figures = FigureView.all(job.figures(), medium.equals("html"));
    List<String> shown = article.stream().map(ArticlePart::figure).toList();
    model.put("article", TrustedMarkup.of(article, figures));
    model.put(
        "figures",
        job.figures().stream()
            .filter(f -> !shown.contains(f.id()) && !FigureSet.isOfRoad(f.id()))
            .map(f -> figures.getOrDefault(f.id(), Map.of()))
            .toList());
    figures.keySet().removeIf(id -> shown.contains(id) || !FigureSet.isOfRoad(id));
    model.put("roadFigures", figures);
    return model;
  }

  private Map<String, Object> stopTimes() {
    Optional<StopTimes> times = job.result().main().curves().stopTimes();
    if (times.isEmpty()) {
      return Map.of("present", false);
    }
    StopTimes known = times.get();
    int last = known.firstSoc() + known.rows().size() - 1;
    int soc = Math.max(known.firstSoc(), Math.min(last, FIRST_SOC));
    int most = known.rows().get(soc - known.firstSoc()).size();
    Map<String, Object> map = new LinkedHashMap<>();
    map.put("present", true);
    map.put("first", known.firstSoc());
    map.put("last", last);
    map.put("soc", soc);
    map.put("distance", Math.min(most, FIRST_STEPS) * known.step().amount());
    map.put("unit", known.step().unit().symbol());
    map.put("json", TrustedMarkup.of(StopTimesJson.of(known)));
    return map;
  }
}
