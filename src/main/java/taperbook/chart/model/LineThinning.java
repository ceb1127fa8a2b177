package taperbook.chart.model;

import java.awt.geom.Line2D;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;

/**
 * Removes invisible points of a long line: no removed point is farther from the drawn line than a
 * share of its width.
 *
 * @see <a href="https://doi.org/10.3138/FM57-6770-U75U-7727">Douglas and Peucker 1973</a>
 */
public final class LineThinning {
  private LineThinning() {}

  /**
   * Returns the indices of the points to draw, in order, including both ends of the stretch.
   *
   * @param tolerance maximum distance of a removed point from the line, in pixels
   */
  public static List<Integer> keep(
      PlotLine line, PlotLine.Run run, PlotArea area, double tolerance) {
    BitSet kept = new BitSet();
    kept.set(run.first());
    kept.set(run.last());
    Deque<PlotLine.Run> open = new ArrayDeque<>();
    open.push(run);
    while (!open.isEmpty()) {
      PlotLine.Run part = open.pop();
      int farthest = farthest(line, part, area, tolerance);
      if (farthest > part.first()) {
        kept.set(farthest);
        open.push(new PlotLine.Run(part.first(), farthest));
        open.push(new PlotLine.Run(farthest, part.last()));
      }
    }
    List<Integer> indices = new ArrayList<>();
    kept.stream().forEach(indices::add);
    return indices;
  }

  /**
   * Returns the point farthest from the straight line, or the first one if none exceeds the
   * tolerance.
   */
  private static int farthest(PlotLine line, PlotLine.Run part, PlotArea area, double tolerance) {
    double fromX = area.px(line.x(part.first()));
    double fromY = area.py(line.y(part.first()));
    double toX = area.px(line.x(part.last()));
    double toY = area.py(line.y(part.last()));
    int best = part.first();
    double most = tolerance;
    for (int i = part.first() + 1; i < part.last(); i++) {
      double distance =
          Line2D.ptSegDist(fromX, fromY, toX, toY, area.px(line.x(i)), area.py(line.y(i)));
      if (distance > most) {
        most = distance;
        best = i;
      }
    }
    return best;
  }
}
