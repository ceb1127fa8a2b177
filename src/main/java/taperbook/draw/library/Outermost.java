package taperbook.draw.library;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/**
 * Finds the dots at the edges of a cloud: the corners of its convex hull.
 *
 * @see <a href="https://doi.org/10.1016/0020-0190(79)90072-3">Andrew, Information Processing
 *     Letters 9 (1979) 216-219: the monotone chain</a>
 */
final class Outermost {
  private Outermost() {}

  /** The corners, from the left one on around; all dots if there are no more than two places. */
  static List<Dot> of(List<Dot> dots) {
    List<Dot> sorted =
        dots.stream()
            .sorted(
                Comparator.comparingDouble((Dot d) -> d.x().value())
                    .thenComparingDouble(d -> d.y().value())
                    .thenComparing(Dot::name))
            .toList();
    if (sorted.size() < 3) {
      return sorted;
    }
    List<Dot> corners = new ArrayList<>(chain(sorted));
    List<Dot> back = new ArrayList<>(sorted);
    Collections.reverse(back);
    chain(back).stream().filter(d -> !corners.contains(d)).forEach(corners::add);
    return corners;
  }

  private static List<Dot> chain(List<Dot> sorted) {
    List<Dot> chain = new ArrayList<>();
    for (Dot dot : sorted) {
      while (chain.size() > 1 && !turnsLeft(chain, dot)) {
        chain.remove(chain.size() - 1);
      }
      chain.add(dot);
    }
    return chain;
  }

  private static boolean turnsLeft(List<Dot> chain, Dot next) {
    Dot a = chain.get(chain.size() - 2);
    Dot b = chain.get(chain.size() - 1);
    double ux = b.x().value() - a.x().value();
    double uy = b.y().value() - a.y().value();
    double vx = next.x().value() - a.x().value();
    double vy = next.y().value() - a.y().value();
    return ux * vy - uy * vx > 0;
  }
}
