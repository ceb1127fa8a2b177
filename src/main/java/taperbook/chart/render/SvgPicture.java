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
 * A chart as SVG at print size: Batik writes the shapes, texts stay texts. Fit to stand alone and
 * to be put into a page with others: no declaration, no script, ids begin with the figure's id.
 */
final class SvgPicture {
  private static final String SVG = "http://www.w3.org/2000/svg";

  private SvgPicture() {}

  /**
   * The picture; the same chart gives the same text.
   *
   * @param description what the picture shows, for those who cannot see it
   */
  static String write(Chart chart, String description) {
    return write(chart.id(), chart.title().finding(), description, painting(chart));
  }

  /** As {@link #write(Chart, String)}, of any picture. */
  static String write(String id, String title, String description, Painting painting) {
    return write(id, title, description, painting, ChartStyle.print());
  }

  /** The picture for a narrow screen; it can stand in one page with the other one. */
  static String narrow(String id, String title, String description, Painting painting) {
    return write(id + "-narrow", title, description, painting, ChartStyle.narrow());
  }

  /** How a chart is painted. */
  static Painting painting(Chart chart) {
    return (g, style) -> ChartPainter.paint(g, chart, style);
  }

  private static String write(
      String id, String title, String description, Painting painting, ChartStyle style) {
    Document document =
        GenericDOMImplementation.getDOMImplementation().createDocument(SVG, "svg", null);
    SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
    context.setPrecision(1);
    // Else Batik would ask for the size of a font of the system, in every picture.
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
