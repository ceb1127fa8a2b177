package taperbook.draw.library;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import taperbook.model.Estimate;
import taperbook.model.LibraryResult;

/**
 * The dots of a scatter plot, thinned where there are so many that they hide each other: of dots
 * that fall into one place only the first is kept, the corners of the cloud always, and whiskers
 * are left out.
 */
final class Cloud {
  /** Places beside each other over the width of the cloud, and above each other. */
  private static final int PLACES = 150;

  private Cloud() {}

  /** All dots, or of thousands those that can be told apart, without bounds. */
  static List<Dot> of(List<Dot> dots) {
    if (dots.size() <= LibraryResult.MOST_SHOWN) {
      return dots;
    }
    Set<Dot> corners = new HashSet<>(Outermost.of(dots));
    double left = dots.stream().mapToDouble(d -> d.x().value()).min().orElseThrow();
    double right = dots.stream().mapToDouble(d -> d.x().value()).max().orElseThrow();
    double low = dots.stream().mapToDouble(d -> d.y().value()).min().orElseThrow();
    double high = dots.stream().mapToDouble(d -> d.y().value()).max().orElseThrow();
    Set<Integer> taken = new HashSet<>();
    List<Dot> kept = new ArrayList<>();
    for (Dot dot : dots) {
      int place = PLACES * place(dot.x().value(), left, right) + place(dot.y().value(), low, high);
      if (taken.add(place) || corners.contains(dot)) {
        kept.add(
            new Dot(
                dot.name(), Estimate.exactly(dot.x().value()), Estimate.exactly(dot.y().value())));
      }
    }
    return kept;
  }

  private static int place(double value, double from, double to) {
    return to > from ? (int) Math.min(PLACES - 1, PLACES * (value - from) / (to - from)) : 0;
  }

  /** What a caption says of it, if anything is left out. */
  static String words(int dots) {
    return dots <= LibraryResult.MOST_SHOWN
        ? ""
        : " Dots that fall together are drawn once, and bounds are left out.";
  }
}
