package taperbook.output.pdf;

import com.openhtmltopdf.css.constants.IdentValue;
import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.css.value.FontSpecification;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.extend.UserAgentCallback;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxFSFont;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.RenderingContext;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import java.awt.Font;
import java.awt.Rectangle;
import java.io.File;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;
import taperbook.chart.model.ChartStyle;
import taperbook.chart.model.Typeface;
import taperbook.chart.render.Painting;

/**
 * Draws charts into a PDF directly rather than through SVG, with text as text. Other SVG, which
 * only a user template can contain, is drawn by Batik.
 */
final class ChartDrawer implements SVGDrawer {
  private static final String CHART = "data-chart";

  private final Map<String, Painting> charts;
  private final List<FontFaceRule> fontRules = new ArrayList<>();
  private @Nullable SharedContext shared;
  private @Nullable UserAgentCallback agent;
  private @Nullable BatikSVGDrawer others;

  /**
   * Creates a drawer.
   *
   * @param charts charts by name
   */
  ChartDrawer(Map<String, Painting> charts) {
    this.charts = Map.copyOf(charts);
  }

  /** Returns the placeholder document of a chart. */
  static String placeholder(String name) {
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" " + CHART + "=\"" + name + "\"/>";
  }

  @Override
  public SVGImage buildSVGImage(
      Element svg, Box box, CssContext css, double width, double height, double dotsPerPixel) {
    Painting painting = charts.get(svg.getAttribute(CHART));
    return painting == null
        ? others().buildSVGImage(svg, box, css, width, height, dotsPerPixel)
        : new Chart(painting, box, width, height, dotsPerPixel);
  }

  @Override
  public void importFontFaceRules(List<FontFaceRule> rules, SharedContext context) {
    fontRules.addAll(rules);
    shared = context;
  }

  @Override
  public void withUserAgent(UserAgentCallback callback) {
    agent = callback;
  }

  @Override
  public void addFontFile(File file, String family, Integer weight, FontStyle style) {
    throw new UnsupportedOperationException("fonts come by style rules");
  }

  @Override
  public void close() {
    if (others != null) {
      others.close();
    }
  }

  /** Returns the Batik drawer, loaded only if needed. */
  private BatikSVGDrawer others() {
    BatikSVGDrawer drawer = others;
    if (drawer == null) {
      drawer = new BatikSVGDrawer();
      drawer.importFontFaceRules(fontRules, shared);
      drawer.withUserAgent(agent);
      others = drawer;
    }
    return drawer;
  }

  /**
   * One chart in its box.
   *
   * @param width width that the style rules specify, dots; negative if unspecified
   * @param height as {@code width}
   */
  private record Chart(Painting painting, Box box, double width, double height, double dotsPerPixel)
      implements SVGImage {
    private static final ChartStyle STYLE = ChartStyle.print();

    /** Charts narrower than 132 mm are painted for a column, in CSS px. */
    private static final double NARROWEST = 132 / 25.4 * 96;

    @Override
    public int getIntrinsicWidth() {
      if (width >= 0) {
        return (int) width;
      }
      double own = STYLE.width() * dotsPerPixel;
      return (int) (height >= 0 ? height * STYLE.width() / STYLE.height() : own);
    }

    @Override
    public int getIntrinsicHeight() {
      if (height >= 0) {
        return (int) height;
      }
      double own = STYLE.height() * dotsPerPixel;
      return (int) (width >= 0 ? width * STYLE.height() / STYLE.width() : own);
    }

    @Override
    public void drawSVG(OutputDevice device, RenderingContext context, double x, double y) {
      Rectangle area = box.getContentAreaEdge(box.getAbsX(), box.getAbsY(), context);
      double wide = area.width / dotsPerPixel;
      double high = area.height / dotsPerPixel;
      device.drawWithGraphics(
          (float) x,
          (float) y,
          (float) wide,
          (float) high,
          g -> {
            // The device provides this object, the only one on which texts can be set in fonts of
            // the PDF.
            ((PdfBoxGraphics2D) g).setFontTextDrawer(new ChartTexts(context));
            ChartStyle style = wide < NARROWEST ? ChartStyle.column() : STYLE;
            g.scale(wide / style.width(), high / style.height());
            painting.whole(g, style);
          });
    }
  }

  /** Sets the texts of a chart in the fonts of the page. */
  private static final class ChartTexts extends PdfBoxGraphics2DFontTextDrawer {
    private final RenderingContext context;

    ChartTexts(RenderingContext context) {
      this.context = context;
    }

    @Override
    protected PDFont mapFont(Font font, IFontTextDrawerEnv environment) {
      FontSpecification wanted = new FontSpecification();
      wanted.families = new String[] {PdfFonts.SANS};
      wanted.fontWeight = Typeface.isBold(font) ? IdentValue.BOLD : IdentValue.NORMAL;
      wanted.fontStyle = IdentValue.NORMAL;
      wanted.variant = IdentValue.NORMAL;
      wanted.size = font.getSize2D();
      return ((PdfBoxFSFont) context.getFont(wanted)).getFontDescriptions().get(0).getFont();
    }
  }
}
