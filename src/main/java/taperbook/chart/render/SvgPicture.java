package taperbook.chart.render;

import static taperbook.chart.render.SvgGraphics.attribute;
import static taperbook.chart.render.SvgGraphics.number;

import java.util.List;
import taperbook.chart.model.ChartStyle;
import taperbook.chart.model.Palette;
import taperbook.chart.model.TextRun;

/**
 * Writes a picture as SVG: shapes, then texts as text. Usable standalone and embedded in a page
 * with others: no declaration, no script, ids begin with the picture's id.
 */
final class SvgPicture {
  private SvgPicture() {}

  /**
   * Writes the picture; the same painting gives the same text.
   *
   * @param description description of the picture for those who cannot see it
   */
  static String write(
      String id, String title, String description, Painting painting, ChartStyle style) {
    SvgGraphics g = new SvgGraphics(id);
    List<TextRun> texts = painting.paint(g, style);
    StringBuilder out = new StringBuilder("<svg xmlns=\"http://www.w3.org/2000/svg\"");
    out.append(attribute("viewBox", "0 0 " + style.width() + ' ' + style.height()));
    out.append(attribute("role", "img"));
    out.append(attribute("aria-labelledby", id + "-title " + id + "-desc"));
    out.append(attribute("font-family", "'Noto Sans', sans-serif"));
    out.append(attribute("fill", "none")).append(attribute("stroke-linejoin", "round"));
    out.append(">\n<title").append(attribute("id", id + "-title")).append('>');
    out.append(escaped(title)).append("</title>\n<desc").append(attribute("id", id + "-desc"));
    out.append('>').append(escaped(description)).append("</desc>\n").append(g.svg());
    texts.forEach(text -> out.append(text(text)));
    return out.append("</svg>\n").toString();
  }

  private static String text(TextRun run) {
    return "<text"
        + attribute("x", number(run.x()))
        + attribute("y", number(run.baseline()))
        + attribute("font-size", number(run.font().size()))
        + attribute("fill", Palette.hex(run.font().color()))
        + (run.font().bold() ? attribute("font-weight", "bold") : "")
        + (run.anchor() == TextRun.Anchor.START ? "" : attribute("text-anchor", run.anchor().svg()))
        + '>'
        + escaped(run.text())
        + "</text>\n";
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
