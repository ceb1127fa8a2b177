package taperbook.output.pdf;

import com.openhtmltopdf.css.constants.IdentValue;
import com.openhtmltopdf.css.value.FontSpecification;
import com.openhtmltopdf.pdfboxout.PdfBoxFSFont;
import com.openhtmltopdf.render.RenderingContext;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import java.awt.Font;
import org.apache.pdfbox.pdmodel.font.PDFont;
import taperbook.chart.model.Typeface;

/** Sets the texts of a chart in the fonts of the page. */
final class ChartTexts extends PdfBoxGraphics2DFontTextDrawer {
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
