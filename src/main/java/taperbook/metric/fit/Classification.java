package taperbook.metric.fit;

import java.util.ArrayList;
import java.util.List;

/**
 * Classifies segments by rules of this report: a plateau changes by less than 0.3 % of the peak per
 * per cent, or by less than one step of the display from end to end; a step falls by at least 3 %
 * of the peak per per cent over at most 5 %; a rise is a warm-up climb if it begins with the
 * session or follows another warm-up climb.
 */
final class Classification {
  private static final double PLATEAU_SHARE = 0.003;
  private static final double STEP_SHARE = 0.03;
  private static final double STEP_WIDTH = 5;

  private Classification() {}

  static List<SegmentKind> of(PiecewiseLine line, TaperPoints points, double peakKilowatts) {
    List<SegmentKind> kinds = new ArrayList<>();
    boolean warmingUp = true;
    for (int k = 0; k < line.segments(); k++) {
      double from = k == 0 ? points.firstSoc() : line.at(k - 1);
      double to = k == line.segments() - 1 ? points.lastSoc() : line.at(k);
      SegmentKind kind =
          of(line.slope(k), to - from, 2 * points.halfPower(), peakKilowatts, warmingUp);
      warmingUp = kind == SegmentKind.WARM_UP;
      kinds.add(kind);
    }
    return kinds;
  }

  private static SegmentKind of(
      double slope, double width, double step, double peak, boolean warmingUp) {
    boolean unseen = Math.abs(slope) * width < step;
    if (Math.abs(slope) < PLATEAU_SHARE * peak || unseen) {
      return SegmentKind.PLATEAU;
    }
    if (slope > 0) {
      return warmingUp ? SegmentKind.WARM_UP : SegmentKind.RISE;
    }
    return slope <= -STEP_SHARE * peak && width <= STEP_WIDTH
        ? SegmentKind.STEP
        : SegmentKind.TAPER;
  }
}
