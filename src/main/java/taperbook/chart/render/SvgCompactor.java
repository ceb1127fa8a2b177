package taperbook.chart.render;

import java.awt.Color;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import taperbook.chart.model.ChartStyle;
import taperbook.chart.model.HexColor;
import taperbook.chart.model.TextRun;

/**
 * Writes compact SVG: only the necessary parts of Batik's output, in a fixed order, with connected
 * lines merged, and texts as text.
 */
final class SvgCompactor {
  /** Attributes that shapes need; others have default values or concern text. */
  private static final List<String> NEEDED =
      List.of(
          "clip-path",
          "clipPathUnits",
          "cx",
          "cy",
          "d",
          "fill",
          "fill-opacity",
          "height",
          "id",
          "points",
          "r",
          "rx",
          "ry",
          "stroke",
          "stroke-dasharray",
          "stroke-linecap",
          "stroke-linejoin",
          "stroke-width",
          "transform",
          "width",
          "x",
          "x1",
          "x2",
          "y",
          "y1",
          "y2");

  private static final Set<String> ENDS = Set.of("x1", "y1", "x2", "y2");

  private static final int DECIMALS = 1;
  private static final Pattern CORNER = Pattern.compile("([MLZ])(?:(-?[0-9.]+) (-?[0-9.]+))? ?");
  private static final Pattern STRAIGHT = Pattern.compile("[MLZ0-9. -]*");

  /** Length below which a line is shorter than the dashes over a gap. */
  private static final double SHORT = 4;

  private static final Pattern RGB = Pattern.compile("rgb\\((\\d+),(\\d+),(\\d+)\\)");

  private final StringBuilder out = new StringBuilder();
  private final String id;

  /**
   * Creates the SVG of a picture.
   *
   * @param id the figure's id, the prefix of all ids
   */
  SvgCompactor(String id) {
    this.id = id;
  }

  void open(ChartStyle style, String title, String description) {
    out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 ");
    out.append(style.width()).append(' ').append(style.height());
    out.append("\" role=\"img\" aria-labelledby=\"").append(id).append("-title ");
    out.append(id).append("-desc\" font-family=\"'Noto Sans', sans-serif\">\n");
    out.append("<title id=\"").append(id).append("-title\">").append(escaped(title));
    out.append("</title>\n<desc id=\"").append(id).append("-desc\">");
    out.append(escaped(description)).append("</desc>\n");
  }

  /** Writes Batik's output below its root. */
  void shapes(Element root) {
    children(root);
  }

  void run(TextRun run) {
    out.append("<text x=\"").append(number(run.x())).append("\" y=\"");
    out.append(number(run.baseline())).append("\" font-size=\"");
    out.append(number(run.font().size())).append("\" fill=\"");
    out.append(HexColor.of(run.font().color())).append('"');
    if (run.font().bold()) {
      out.append(" font-weight=\"bold\"");
    }
    if (run.anchor() != TextRun.Anchor.START) {
      out.append(" text-anchor=\"").append(run.anchor().svg()).append('"');
    }
    out.append('>').append(escaped(run.text())).append("</text>\n");
  }

  String close() {
    return out.append("</svg>\n").toString();
  }

  private void children(Element parent) {
    List<Element> elements = elements(parent);
    int i = 0;
    while (i < elements.size()) {
      int chained = chain(elements, i);
      if (chained > 1) {
        joined(elements.subList(i, i + chained));
      } else if (i + 1 < elements.size() && isEdge(elements.get(i + 1), elements.get(i))) {
        i++;
        elements.get(i).setAttribute("fill", elements.get(i - 1).getAttribute("fill"));
        element(elements.get(i));
      } else {
        element(elements.get(i));
      }
      i += chained;
    }
  }

  /** Returns true if an element strokes the same shape that the previous one fills. */
  private static boolean isEdge(Element edge, Element area) {
    return area.getTagName().equals("path")
        && edge.getTagName().equals("path")
        && area.getAttribute("stroke").equals("none")
        && edge.getAttribute("fill").equals("none")
        && edge.getAttribute("d").equals(area.getAttribute("d"))
        && edge.getAttribute("clip-path").equals(area.getAttribute("clip-path"))
        && !area.hasAttribute("fill-opacity");
  }

  private void element(Element element) {
    if (isUnseen(element)) {
      return;
    }
    out.append('<').append(element.getTagName());
    Map<String, String> attributes = attributes(element);
    if ("none".equals(attributes.get("stroke"))) {
      attributes.remove("stroke-width");
    }
    attributes.forEach(this::attribute);
    if (elements(element).isEmpty()) {
      out.append("/>\n");
    } else {
      out.append(">\n");
      children(element);
      out.append("</").append(element.getTagName()).append(">\n");
    }
  }

  /** Returns true for groups without content and for fully transparent shapes. */
  private static boolean isUnseen(Element element) {
    boolean container = element.getTagName().equals("g") || element.getTagName().equals("defs");
    return element.getAttribute("fill-opacity").equals("0")
        || (container && elements(element).isEmpty());
  }

  /**
   * Returns the number of lines from {@code from} that each start at the end of the previous one;
   * at least 1. Dashed lines count only if they are shorter than a dash.
   */
  private static int chain(List<Element> elements, int from) {
    int to = from;
    while (to + 1 < elements.size() && follows(elements.get(to), elements.get(to + 1))) {
      to++;
    }
    return to - from + 1;
  }

  private static boolean follows(Element line, Element next) {
    return line.getTagName().equals("line")
        && next.getTagName().equals("line")
        && line.getAttribute("x2").equals(next.getAttribute("x1"))
        && line.getAttribute("y2").equals(next.getAttribute("y1"))
        && drawingAttributes(line).equals(drawingAttributes(next))
        && (!isDashed(line) || (isShort(line) && isShort(next)));
  }

  private static boolean isDashed(Element line) {
    return drawingAttributes(line).containsKey("stroke-dasharray")
        || ((Element) line.getParentNode()).hasAttribute("stroke-dasharray");
  }

  /** Returns true for a line that ends within its first dash, so that it looks solid. */
  private static boolean isShort(Element line) {
    double x = coordinate(line, "x2") - coordinate(line, "x1");
    double y = coordinate(line, "y2") - coordinate(line, "y1");
    return Math.hypot(x, y) < SHORT;
  }

  private static double coordinate(Element line, String name) {
    return Double.parseDouble(line.getAttribute(name));
  }

  /** Returns all drawing attributes of a line except its ends. */
  private static Map<String, String> drawingAttributes(Element line) {
    Map<String, String> drawing = attributes(line);
    drawing.keySet().removeAll(ENDS);
    return drawing;
  }

  private void joined(List<Element> lines) {
    Element first = lines.get(0);
    StringBuilder corners = new StringBuilder();
    corners
        .append('M')
        .append(first.getAttribute("x1"))
        .append(' ')
        .append(first.getAttribute("y1"));
    for (Element line : lines) {
      corners.append(" L").append(line.getAttribute("x2"));
      corners.append(' ').append(line.getAttribute("y2"));
    }
    out.append("<path");
    drawingAttributes(first).forEach(this::attribute);
    attribute("d", corners.toString());
    out.append("/>\n");
  }

  private void attribute(String name, String value) {
    String written = value;
    if (name.equals("id")) {
      written = id + "-" + value;
    } else if (name.equals("clip-path")) {
      written = value.replace("url(#", "url(#" + id + "-");
    } else if (name.equals("d")) {
      written = relative(value);
    }
    out.append(' ').append(name).append("=\"").append(escaped(hexColors(written))).append('"');
  }

  /**
   * Converts a path of straight lines to relative coordinates: shorter, and equal markers have
   * equal paths, which compress well. Distances are between rounded corners, so errors do not
   * accumulate.
   *
   * @param path data of a path; one with curves is returned unchanged
   */
  static String relative(String path) {
    if (!STRAIGHT.matcher(path).matches()) {
      return path;
    }
    StringBuilder out = new StringBuilder();
    BigDecimal x = BigDecimal.ZERO;
    BigDecimal y = BigDecimal.ZERO;
    BigDecimal startX = x;
    BigDecimal startY = y;
    char before = ' ';
    Matcher corner = CORNER.matcher(path);
    while (corner.find()) {
      char command = Character.toLowerCase(corner.group(1).charAt(0));
      if (command == 'z') {
        out.append('z');
        x = startX;
        y = startY;
      } else {
        BigDecimal toX = new BigDecimal(corner.group(2));
        BigDecimal toY = new BigDecimal(corner.group(3));
        out.append(command == before ? " " : String.valueOf(command));
        out.append(toX.subtract(x).stripTrailingZeros().toPlainString()).append(' ');
        out.append(toY.subtract(y).stripTrailingZeros().toPlainString());
        x = toX;
        y = toY;
        startX = command == 'm' ? x : startX;
        startY = command == 'm' ? y : startY;
      }
      before = command;
    }
    return out.toString();
  }

  private static List<Element> elements(Element parent) {
    List<Element> elements = new ArrayList<>();
    for (Node n = parent.getFirstChild(); n != null; n = n.getNextSibling()) {
      if (n instanceof Element element) {
        elements.add(element);
      }
    }
    return elements;
  }

  private static Map<String, String> attributes(Element element) {
    Map<String, String> needed = new TreeMap<>();
    NamedNodeMap all = element.getAttributes();
    for (int i = 0; i < all.getLength(); i++) {
      Node attribute = all.item(i);
      if (NEEDED.contains(attribute.getNodeName())) {
        needed.put(attribute.getNodeName(), attribute.getNodeValue());
      }
    }
    return needed;
  }

  private static String hexColors(String value) {
    Matcher rgb = RGB.matcher(value);
    return rgb.replaceAll(
        m ->
            HexColor.of(
                new Color(
                    Integer.parseInt(m.group(1)),
                    Integer.parseInt(m.group(2)),
                    Integer.parseInt(m.group(3)))));
  }

  private static String number(double value) {
    return BigDecimal.valueOf(value)
        .setScale(DECIMALS, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
