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
 * Files of a report that are made while its PDFs are laid out: pictures and the page for browsers.
 * Each is made by itself from its own data, so that their order does not matter to any byte. No
 * more at once than there are processors to spare, as a picture takes eight megabytes while it is
 * painted.
 */
final class ConcurrentFiles {
  /** The figure that is also painted for feeds. */
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
   * Begins.
   *
   * @param figures what is painted
   * @param film whether the renditions for a film are wanted too
   * @param html gives what the template makes for browsers
   */
  static ConcurrentFiles begin(List<Figure> figures, boolean film, Supplier<Checked<String>> html) {
    ConcurrentFiles beside = new ConcurrentFiles(html);
    for (Figure figure : figures) {
      String stem = "figures/" + figure.id();
      beside.make(stem + ".svg", () -> (figure.svg() + "\n").getBytes(StandardCharsets.UTF_8));
      beside.make(stem + ".png", figure::png);
      if (figure.id().equals(SHARED)) {
        SHARES.forEach((path, rendition) -> beside.make(path, () -> figure.png(rendition)));
      }
      if (film) {
        for (Rendition rendition : List.of(Rendition.DARK, Rendition.CLEAR, Rendition.SMALL)) {
          String path = "film/" + figure.id() + rendition.ending() + ".png";
          beside.make(path, () -> figure.png(rendition));
        }
      }
    }
    beside.makers.shutdown();
    return beside;
  }

  private static Thread maker(Runnable work) {
    Thread thread = new Thread(work, "beside");
    thread.setDaemon(true);
    return thread;
  }

  private void make(String path, Supplier<byte[]> file) {
    made.put(path, CompletableFuture.supplyAsync(file, makers));
  }

  /** Waits for the page for browsers; what is wrong with it. */
  List<Problem> problems() {
    return page.join().problems();
  }

  /** Begins nothing more. */
  void stop() {
    makers.shutdownNow();
  }

  /** Waits for what is not made yet, and puts all of it with the other files. */
  void addTo(ReportFiles files) {
    page.join().value().ifPresent(bytes -> files.put("report.html", bytes));
    made.forEach((path, file) -> files.put(path, file.join()));
  }
}
