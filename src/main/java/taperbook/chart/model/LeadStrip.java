package taperbook.chart.model;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Which of two sessions is ahead where, as a chart of their difference shows it in a strip below
 * its axis.
 *
 * @param parts stretches of the horizontal axis, in order
 * @param crossings where the order changes
 */
public record LeadStrip(List<Part> parts, List<Crossing> crossings) {
  /** Copies the lists. */
  public LeadStrip {
    parts = List.copyOf(parts);
    crossings = List.copyOf(crossings);
  }

  /** The stretches, the widest first. */
  public List<Part> widestFirst() {
    return parts.stream().sorted(Comparator.comparingDouble(p -> p.from() - p.to())).toList();
  }

  /** Height of the strip with the names below it. */
  static double strip(ChartStyle style) {
    return 0.9 * style.type().tick() + style.leading();
  }

  /**
   * A stretch over which the order stays the same.
   *
   * @param from abscissa of its start
   * @param to abscissa of its end
   * @param names what it may be called below the strip, the first one that fits
   * @param fill how its piece of the bar looks
   * @param pen the pen of the session that is ahead, if one is
   */
  public record Part(double from, double to, List<String> names, Fill fill, Optional<Pen> pen) {
    /** Copies the names. */
    public Part {
      names = List.copyOf(names);
    }
  }

  /** How a piece of the bar looks; each differs from the others without colour. */
  public enum Fill {
    /** Full: the reported session is ahead. */
    FULL,
    /** Hatched: the other session is ahead. */
    HATCHED,
    /** Open: nobody can tell. */
    OPEN
  }

  /**
   * Where the order changes.
   *
   * @param x abscissa
   * @param low least abscissa that the readings allow
   * @param high greatest abscissa that the readings allow
   * @param label the label's lines, the first one bold
   */
  public record Crossing(double x, double low, double high, List<String> label) {
    /** Copies the label. */
    public Crossing {
      label = List.copyOf(label);
    }
  }
}
