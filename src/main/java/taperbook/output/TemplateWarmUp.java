package taperbook.output;

import java.awt.geom.Line2D;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicBoolean;
import taperbook.chart.model.Background;
import taperbook.chart.model.ChartStyle;
import taperbook.chart.model.TextRun;
import taperbook.chart.render.Figure;
import taperbook.output.article.RestrictedTemplates;
import taperbook.output.pdf.PdfMetadata;
import taperbook.output.pdf.PdfPage;

/**
 * Warms up on a second processor while a report is measured: parses its templates, and draws and
 * lays out a small page, so that Java loads and compiles the code that the report needs. The page
 * itself is discarded.
 */
public final class TemplateWarmUp {
  private static final AtomicBoolean HELD = new AtomicBoolean();
  private final CompletableFuture<Integer> result;

  private TemplateWarmUp(CompletableFuture<Integer> result) {
    this.result = result;
  }

  /**
   * Starts the warm-up; at most once per process, and only with a spare processor.
   *
   * @param templates the templates of the report
   * @param template the report's template
   */
  public static TemplateWarmUp begin(Templates templates, String template) {
    boolean useful = Runtime.getRuntime().availableProcessors() > 1 && !HELD.getAndSet(true);
    return new TemplateWarmUp(
        useful
            ? CompletableFuture.supplyAsync(() -> warmUp(templates, template))
            : CompletableFuture.completedFuture(0));
  }

  /** Waits for the end, so that no library is initialised from two threads. */
  public void end() {
    result.join();
  }

  private static int warmUp(Templates templates, String template) {
    int bytes = pageBytes();
    templates.prepare(template);
    return bytes;
  }

  private static int pageBytes() {
    Figure figure = Figure.of("rehearsal", "Rehearsal", "", "Rehearsal", TemplateWarmUp::paint);
    Map<String, String> texts = Templates.builtIn().texts();
    String html =
        new RestrictedTemplates(Map.of("rehearsal.ftlh", page(texts)))
            .page("rehearsal.ftlh", Map.of("rows", List.of("1", "2", "3")))
            .value()
            .map(NonBreakingUnits::kept)
            .orElseThrow();
    PdfMetadata heading = new PdfMetadata("Rehearsal", "", "", "", LocalDate.EPOCH);
    byte[] pdf =
        new PdfPage(List.of(figure), "rehearsal.ftlh", true)
            .bytes(html, heading, List.of())
            .value()
            .orElseThrow();
    return pdf.length + figure.png().length;
  }

  private static List<TextRun> paint(java.awt.Graphics2D g, ChartStyle style) {
    g.setColor(Background.DARK.color());
    g.draw(new Line2D.Double(10, 10, style.width() / 2.0, style.height() / 2.0));
    TextRun.Face face = new TextRun.Face(12, true, Background.DARK.color());
    return List.of(new TextRun("12.5 kW", 40, 40, TextRun.Anchor.START, face));
  }

  private static String page(Map<String, String> texts) {
    String css = Optional.ofNullable(texts.get("print.css")).orElse("");
    String row =
        "<tr><th scope=\"row\">Row <a href=\"#a\">a</a></th><#list rows as r><td>${r}</td></#list></tr>";
    String section =
        "<section><h2>Part</h2><p class=\"small\">Some <em>words</em> and <strong>more</strong> of"
            + " them, 12 Wh/km.</p><table><thead><tr><th>Row</th><th>1</th><th>2</th><th>3</th></tr>"
            + "</thead><tbody>"
            + row
            + "</tbody></table><ul><li>One</li></ul></section>";
    return "<!DOCTYPE html><html lang=\"en\"><head><title>Rehearsal</title><style><#noparse>"
        + css
        + "</#noparse></style></head><body><h1 id=\"a\">Rehearsal</h1>"
        + section
        + "<figure><img src=\"figure:rehearsal.svg\" alt=\"Rehearsal\"/></figure></body></html>";
  }
}
