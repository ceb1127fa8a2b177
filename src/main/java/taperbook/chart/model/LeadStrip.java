package taperbook.chart.model;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The stretches in which either of two sessions is ahead, shown as a strip below the axis of a
 * difference chart.
 *
 * @param parts stretches of the horizontal axis, in order
 * @param crossings where the order changes
 */
public record LeadStrip(List<Part> parts, List<Crossing> crossings) {
  public LeadStrip {
    parts = List.copyOf(parts);
    crossings = List.copyOf(crossings);
  }

  /** Returns the stretches, widest first. */
  public List<Part> widestFirst() {
    return parts.stream().sorted(Comparator.comparingDouble(p -> p.from() - p.to())).toList();
  }

  /** Returns the height of the strip including the names below it. */
  static double strip(ChartStyle style) {
    return 0.9 * style.type().tick() + style.leading();
  }

  /**
   * A stretch over which the order stays the same.
   *
   * @param from abscissa of its start
   * @param to abscissa of its end
   * @param names possible names below the strip, of which the first that fits is used
   * @param fill appearance of its part of the bar
   * @param pen the pen of the session that is ahead, if one is
   */
  public record Part(double from, double to, List<String> names, Fill fill, Optional<Pen> pen) {
    public Part {
      names = List.copyOf(names);
    }
  }

  /** The appearance of a part of the bar; distinguishable without colour. */
  public enum Fill {
    /** Filled: the reported session is ahead. */
    FULL,
    /** Hatched: the other session is ahead. */
    HATCHED,
    /** Outlined: undecided. */
    OPEN
  }

  /**
   * A change of the order.
   *
   * @param x abscissa
   * @param low least abscissa that the readings allow
   * @param high greatest abscissa that the readings allow
   * @param label the label's lines, the first one bold
   */
  public record Crossing(double x, double low, double high, List<String> label) {
    public Crossing {
      label = List.copyOf(label);
    }
  }
}
