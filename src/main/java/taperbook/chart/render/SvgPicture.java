package taperbook.chart.render;

import java.awt.Dimension;
import java.util.List;
import org.apache.batik.dom.GenericDOMImplementation;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import taperbook.chart.model.Chart;
import taperbook.chart.model.ChartStyle;
import taperbook.chart.model.TextRun;
import taperbook.chart.model.Typeface;

/**
 * Writes a chart as SVG at print size: shapes by Batik, texts as text. Usable standalone and
 * embedded in a page with others: no declaration, no script, ids begin with the figure's id.
 */
final class SvgPicture {
  private static final String SVG = "http://www.w3.org/2000/svg";

  private SvgPicture() {}

  /**
   * Writes the picture; the same chart gives the same text.
   *
   * @param description description of the picture for those who cannot see it
   */
  static String write(Chart chart, String description) {
    return write(chart.id(), chart.title().finding(), description, painting(chart));
  }

  /** Writes any picture, as {@link #write(Chart, String)}. */
  static String write(String id, String title, String description, Painting painting) {
    return write(id, title, description, painting, ChartStyle.print());
  }

  /** Writes the picture for a narrow screen; it can be in the same page as the other one. */
  static String narrow(String id, String title, String description, Painting painting) {
    return write(id + "-narrow", title, description, painting, ChartStyle.narrow());
  }

  /** Returns the painting of a chart. */
  static Painting painting(Chart chart) {
    return (g, style) -> ChartPainter.paint(g, chart, style);
  }

  private static String write(
      String id, String title, String description, Painting painting, ChartStyle style) {
    Document document =
        GenericDOMImplementation.getDOMImplementation().createDocument(SVG, "svg", null);
    SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
    context.setPrecision(1);
    // Otherwise Batik queries the size of a system font for every picture.
    SVGGeneratorContext.GraphicContextDefaults defaults =
        new SVGGeneratorContext.GraphicContextDefaults();
    defaults.setFont(Typeface.font(false, style.type().label()));
    context.setGraphicContextDefaults(defaults);
    SVGGraphics2D g = new SVGGraphics2D(context, false);
    g.setSVGCanvasSize(new Dimension(style.width(), style.height()));
    List<TextRun> texts = painting.paint(g, style);
    Element root = g.getRoot();
    g.dispose();
    SvgCompactor text = new SvgCompactor(id);
    text.open(style, title, description);
    text.shapes(root);
    texts.forEach(text::run);
    return text.close();
  }
}
