package taperbook.chart.render;

import java.awt.BasicStroke;
import java.awt.Graphics;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.PathIterator;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;
import org.apache.batik.ext.awt.g2d.DefaultGraphics2D;
import org.apache.batik.ext.awt.g2d.GraphicContext;
import org.jspecify.annotations.Nullable;
import taperbook.chart.model.Palette;

/**
 * Writes opaque shapes as compact SVG elements, for a parent with {@code fill="none"
 * stroke-linejoin="round"}. Consecutive strokes of one appearance are one path. Corners have one
 * decimal and are relative to the previous ones; every ellipse is written as a circle. Draws no
 * text.
 */
final class SvgGraphics extends DefaultGraphics2D {
  private final Elements elements;

  /**
   * Creates an empty picture.
   *
   * @param id prefix of all ids
   */
  SvgGraphics(String id) {
    super(false);
    gc = new GraphicContext();
    this.elements = new Elements(id);
  }

  private SvgGraphics(SvgGraphics other) {
    super(other);
    this.elements = other.elements;
  }

  @Override
  public Graphics create() {
    return new SvgGraphics(this);
  }

  /** Does nothing; the inherited method prints. */
  @Override
  public void dispose() {}

  @Override
  public void fill(Shape shape) {
    if (getColor().getAlpha() > 0) {
      elements.write();
      add(shape, attribute("fill", Palette.hex(getColor())));
      elements.filled = shape;
    }
  }

  @Override
  public void draw(Shape shape) {
    BasicStroke stroke = (BasicStroke) getStroke();
    StringBuilder look = new StringBuilder(attribute("stroke", Palette.hex(getColor())));
    look.append(attribute("stroke-width", number(stroke.getLineWidth())));
    if (stroke.getEndCap() == BasicStroke.CAP_ROUND) {
      look.append(attribute("stroke-linecap", "round"));
    }
    if (stroke.getDashArray() != null) {
      StringJoiner dashes = new StringJoiner(",");
      for (float dash : stroke.getDashArray()) {
        dashes.add(number(dash));
      }
      look.append(attribute("stroke-dasharray", dashes.toString()));
    }
    if (shape.equals(elements.filled)) {
      elements.look += look;
      elements.write();
    } else {
      add(shape, look.toString());
    }
  }

  private void add(Shape shape, String look) {
    String appearance = clip() + look;
    if (shape instanceof Ellipse2D circle) {
      elements.write();
      elements.circle =
          "<circle"
              + attribute("cx", number(circle.getCenterX()))
              + attribute("cy", number(circle.getCenterY()))
              + attribute("r", number(circle.getWidth() / 2));
    } else {
      if (!appearance.equals(elements.look)) {
        elements.write();
      }
      elements.path.add(getTransform().createTransformedShape(shape));
    }
    elements.look = appearance;
    elements.filled = null;
  }

  /** Returns the attribute for the clip, if there is one. */
  private String clip() {
    if (getClip() == null) {
      return "";
    }
    PathData path = new PathData();
    path.add(getTransform().createTransformedShape(getClip()));
    return attribute("clip-path", "url(#" + elements.clip(path.toString()) + ")");
  }

  /** Returns the elements. */
  String svg() {
    elements.write();
    return elements.out.toString();
  }

  static String attribute(String name, String value) {
    return ' ' + name + "=\"" + value + '"';
  }

  /** Formats a length with at most one decimal. */
  static String number(double value) {
    return number(tenths(value));
  }

  private static String number(long tenths) {
    return BigDecimal.valueOf(tenths, 1).stripTrailingZeros().toPlainString();
  }

  private static long tenths(double value) {
    return Math.round(10 * value);
  }

  /** The elements of a picture, the last of which may grow. */
  private static final class Elements {
    private final String id;
    private final StringBuilder out = new StringBuilder();
    private final List<String> clips = new ArrayList<>();
    private PathData path = new PathData();

    /** Start of the last element if that is a circle. */
    private String circle = "";

    /** Attributes of the last element. */
    private String look = "";

    /** The shape of the last element if it is filled. */
    private @Nullable Shape filled;

    private Elements(String id) {
      this.id = id;
    }

    private String clip(String path) {
      int index = clips.indexOf(path);
      if (index < 0) {
        write();
        index = clips.size();
        clips.add(path);
        out.append("<clipPath").append(attribute("id", id + "-clip" + index)).append("><path");
        out.append(attribute("d", path)).append("/></clipPath>\n");
      }
      return id + "-clip" + index;
    }

    private void write() {
      if (!look.isEmpty()) {
        out.append(circle.isEmpty() ? "<path" + attribute("d", path.toString()) : circle);
        out.append(look).append("/>\n");
      }
      path = new PathData();
      circle = "";
      look = "";
      filled = null;
    }
  }

  /** The data of a path, whose corners are relative to the previous one, in tenths. */
  private static final class PathData {
    private static final int[] CORNERS = {1, 1, 2, 3, 0};
    private final StringBuilder data = new StringBuilder();
    private char last = ' ';
    private long x;
    private long y;
    private long startX;
    private long startY;

    /** Adds a shape; it continues the previous line if it starts at its end. */
    private void add(Shape shape) {
      double[] c = new double[6];
      for (PathIterator i = shape.getPathIterator(null); !i.isDone(); i.next()) {
        int type = i.currentSegment(c);
        if (type == PathIterator.SEG_CLOSE) {
          data.append('z');
          last = 'z';
          x = startX;
          y = startY;
        } else if (type != PathIterator.SEG_MOVETO
            || last != 'l'
            || x != tenths(c[0])
            || y != tenths(c[1])) {
          add("mlqc".charAt(type), c, CORNERS[type]);
        }
      }
    }

    private void add(char command, double[] corners, int count) {
      data.append(command == last && command != 'm' ? ' ' : command);
      long toX = x;
      long toY = y;
      for (int k = 0; k < 2 * count; k += 2) {
        toX = tenths(corners[k]);
        toY = tenths(corners[k + 1]);
        data.append(k == 0 ? "" : " ").append(number(toX - x)).append(' ').append(number(toY - y));
      }
      last = command;
      x = toX;
      y = toY;
      startX = command == 'm' ? x : startX;
      startY = command == 'm' ? y : startY;
    }

    @Override
    public String toString() {
      return data.toString();
    }
  }
}
