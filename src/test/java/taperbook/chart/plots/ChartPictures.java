package taperbook.chart.plots;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import taperbook.chart.render.Figure;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.result.ReportResult;

/**
 * Writes the figures of all invented sessions and comparisons to a folder for review: {@code
 * ChartPictures FOLDER}.
 */
public final class ChartPictures {
  private ChartPictures() {}

  /** Sessions that cover the edge cases of charts. */
  static Map<String, ReportResult> sessions() {
    Map<String, ReportResult> all = new LinkedHashMap<>();
    all.put("hand-read", InventedSession.handRead().result());
    all.put("logger", InventedSession.logger().result());
    all.put("soc-and-time", InventedSession.socAndTime().result());
    all.put("many-marks", InventedSession.handRead().socMarks(20, 30, 40, 50, 60, 70, 80).result());
    all.put(
        "close-distances",
        InventedSession.handRead()
            .distances(
                new WantedDistance(100, Unit.MILE),
                new WantedDistance(105, Unit.MILE),
                new WantedDistance(110, Unit.MILE))
            .result());
    all.put(
        "late-start",
        InventedSession.plain(
                new double[] {0, 60, 120, 240, 360, 600, 900, 1500, 2400, 3600},
                new double[] {63, 65, 67, 70, 73, 78, 83, 90, 96, 100},
                new double[] {61, 97, 92, 88, 80, 68, 52, 36, 22, 8})
            .socMarks(70, 80, 90, 100)
            .window(70, 100)
            .kilometres()
            .distances(
                new WantedDistance(50, Unit.KILOMETRE), new WantedDistance(150, Unit.KILOMETRE))
            .result());
    all.put(
        "three-readings",
        InventedSession.plain(
                new double[] {0, 600, 1500}, new double[] {10, 45, 80}, new double[] {150, 120, 60})
            .result());
    return all;
  }

  /** The unrendered figures of all sessions and comparisons. */
  public static Map<String, List<Figure>> figures() {
    Map<String, List<Figure>> all = new LinkedHashMap<>();
    sessions().forEach((name, result) -> all.put(name, FigureSet.ofSession(result)));
    Comparisons.all().forEach((name, result) -> all.put(name, FigureSet.ofComparison(result)));
    return all;
  }

  /**
   * Writes the figures.
   *
   * @param args the folder
   */
  public static void main(String[] args) throws IOException {
    for (Map.Entry<String, List<Figure>> figures : figures().entrySet()) {
      write(args[0], figures.getKey(), figures.getValue());
    }
  }

  private static void write(String folder, String name, List<Figure> figures) throws IOException {
    for (Figure figure : figures) {
      Path stem = Path.of(folder, name + "--" + figure.id());
      Files.createDirectories(stem.getParent());
      Files.write(Path.of(stem + ".png"), figure.png());
      Files.writeString(Path.of(stem + ".svg"), figure.svg(), StandardCharsets.UTF_8);
      Files.writeString(
          Path.of(stem + ".txt"),
          figure.caption() + "\n\n" + figure.textAlternative() + "\n",
          StandardCharsets.UTF_8);
    }
  }
}
