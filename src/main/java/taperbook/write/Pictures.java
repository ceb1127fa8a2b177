package taperbook.write;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import taperbook.draw.picture.Figure;
import taperbook.draw.picture.Rendition;

/**
 * The pictures of a report, painted beside its pages: each by itself from its own data, so that
 * their order does not matter to any byte.
 */
final class Pictures {
  private final Map<String, CompletableFuture<byte[]>> painted = new LinkedHashMap<>();

  private Pictures() {}

  /**
   * Begins to paint.
   *
   * @param film whether the renditions for a film are wanted too
   */
  static Pictures begin(List<Figure> figures, boolean film) {
    Pictures pictures = new Pictures();
    for (Figure figure : figures) {
      String stem = "figures/" + figure.id();
      byte[] svg = (figure.svg() + "\n").getBytes(StandardCharsets.UTF_8);
      pictures.painted.put(stem + ".svg", CompletableFuture.completedFuture(svg));
      pictures.paint(stem + ".png", figure::png);
      if (film) {
        for (Rendition rendition : List.of(Rendition.DARK, Rendition.CLEAR, Rendition.SMALL)) {
          String path = "film/" + figure.id() + rendition.ending() + ".png";
          pictures.paint(path, () -> figure.png(rendition));
        }
      }
    }
    return pictures;
  }

  private void paint(String path, Supplier<byte[]> picture) {
    painted.put(path, CompletableFuture.supplyAsync(picture));
  }

  /** Waits for what is not painted yet, and puts all of it with the other files. */
  void addTo(ReportFiles files) {
    painted.forEach((path, picture) -> files.put(path, picture.join()));
  }
}
