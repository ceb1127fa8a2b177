package taperbook.output;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Supplier;
import taperbook.chart.render.Figure;
import taperbook.chart.render.Rendition;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.output.view.HtmlPage;

/**
 * Creates pictures and the browser page of a report while its PDFs are laid out. Each file depends
 * only on its own data, so the order of execution does not affect any byte. Limits the number of
 * threads to spare processors, as a picture uses eight megabytes while it is painted.
 */
final class ConcurrentFiles {
  /** The figure that is also painted for social feeds. */
  private static final String SHARED = "power-over-soc";

  private static final Map<String, Rendition> SHARES =
      Map.of("share/portrait.png", Rendition.PORTRAIT, "share/square.png", Rendition.SQUARE);

  private final Map<String, CompletableFuture<byte[]>> made = new LinkedHashMap<>();
  private final ExecutorService makers =
      Executors.newFixedThreadPool(
          Math.max(1, Runtime.getRuntime().availableProcessors() - 1), ConcurrentFiles::maker);

  private final CompletableFuture<Checked<byte[]>> page;

  private ConcurrentFiles(Supplier<Checked<String>> html) {
    this.page =
        CompletableFuture.supplyAsync(
            () -> html.get().then(text -> Checked.good(HtmlPage.bytes(text))), makers);
  }

  /**
   * Starts the tasks.
   *
   * @param figures the figures to paint
   * @param film whether to create the renditions for a film
   * @param html supplies the template's output for browsers
   */
  static ConcurrentFiles begin(List<Figure> figures, boolean film, Supplier<Checked<String>> html) {
    ConcurrentFiles concurrent = new ConcurrentFiles(html);
    for (Figure figure : figures) {
      String stem = "figures/" + figure.id();
      concurrent.make(stem + ".svg", () -> (figure.svg() + "\n").getBytes(StandardCharsets.UTF_8));
      concurrent.make(stem + ".png", figure::png);
      if (figure.id().equals(SHARED)) {
        SHARES.forEach((path, rendition) -> concurrent.make(path, () -> figure.png(rendition)));
      }
      if (film) {
        for (Rendition rendition : List.of(Rendition.DARK, Rendition.CLEAR, Rendition.SMALL)) {
          String path = "film/" + figure.id() + rendition.ending() + ".png";
          concurrent.make(path, () -> figure.png(rendition));
        }
      }
    }
    concurrent.makers.shutdown();
    return concurrent;
  }

  private static Thread maker(Runnable work) {
    Thread thread = new Thread(work, "beside");
    thread.setDaemon(true);
    return thread;
  }

  private void make(String path, Supplier<byte[]> file) {
    made.put(path, CompletableFuture.supplyAsync(file, makers));
  }

  /** Waits for the browser page and returns its problems. */
  List<Problem> problems() {
    return page.join().problems();
  }

  /** Starts no further tasks. */
  void stop() {
    makers.shutdownNow();
  }

  /** Waits for the remaining files and adds all of them. */
  void addTo(ReportFiles files) {
    page.join().value().ifPresent(bytes -> files.put("report.html", bytes));
    made.forEach((path, file) -> files.put(path, file.join()));
  }
}
