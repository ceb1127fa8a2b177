package taperbook.output.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import taperbook.chart.model.ChartStyle;
import taperbook.chart.model.TextRun;
import taperbook.chart.render.Figure;

/** Charts and SVG images in a PDF, parsed and rendered with PDFBox. */
final class ChartDrawerTest {
  private static final Color CHART = new Color(0x0000ff);
  private static final int RESOLUTION = 72;
  private static final double POINTS_OF_A_MILLIMETRE = 72 / 25.4;

  private static final Figure FIGURE =
      Figure.of("half", "Half", "", "Half of it is blue", ChartDrawerTest::paint);

  /** The left half of the picture, and texts on both sides of it, one of them bold. */
  private static List<TextRun> paint(Graphics2D g, ChartStyle style) {
    g.setColor(CHART);
    g.fill(new Rectangle2D.Double(0, 0, style.width() / 2.0, style.height()));
    TextRun.Face plain = new TextRun.Face(12, false, Color.BLACK);
    TextRun.Face bold = new TextRun.Face(12, true, Color.BLACK);
    return List.of(
        new TextRun("\u221212.5 kW after", 400, 40, TextRun.Anchor.START, plain),
        new TextRun("6 min 52 s", 400, 80, TextRun.Anchor.START, bold));
  }

  private static PDDocument page(String body) throws IOException {
    String html =
        "<html lang=\"en\"><head><title>x</title><style>@page{size:A4;margin:0}body{margin:0}"
            + "</style></head><body>"
            + body
            + "</body></html>";
    PdfMetadata heading = new PdfMetadata("x", "y", "z", "a test", LocalDate.EPOCH);
    return Loader.loadPDF(
        new PdfPage(List.of(FIGURE), "test.ftlh", true)
            .bytes(html, heading, List::of)
            .value()
            .orElseThrow());
  }

  private static long pixels(BufferedImage image, Color color) {
    long count = 0;
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        count += (image.getRGB(x, y) & 0xffffff) == (color.getRGB() & 0xffffff) ? 1 : 0;
      }
    }
    return count;
  }

  @Test
  void a_chart_fills_its_box_and_its_texts_are_text() throws IOException {
    String chart = "<img src=\"figure:half.svg\" alt=\"Half\" style=\"width:160mm;height:90mm\"/>";
    try (PDDocument pdf = page(chart)) {
      assertThat(new PDFTextStripper().getText(pdf))
          .contains("\u221212.5 kW after")
          .contains("6 min 52 s");
      BufferedImage painted = new PDFRenderer(pdf).renderImageWithDPI(0, RESOLUTION);
      double half = 80 * 90 * POINTS_OF_A_MILLIMETRE * POINTS_OF_A_MILLIMETRE;
      assertThat((double) pixels(painted, CHART)).isCloseTo(half, within(0.02 * half));
    }
  }

  @Test
  void a_missing_dimension_follows_from_the_aspect_ratio() throws IOException {
    try (PDDocument pdf =
        page("<img src=\"figure:half.svg\" alt=\"Half\" style=\"width:160mm\"/>")) {
      BufferedImage painted = new PDFRenderer(pdf).renderImageWithDPI(0, RESOLUTION);
      // 720 to 405 is 16 to 9.
      double half = 80 * 90 * POINTS_OF_A_MILLIMETRE * POINTS_OF_A_MILLIMETRE;
      assertThat((double) pixels(painted, CHART)).isCloseTo(half, within(0.02 * half));
    }
  }

  @Test
  void svg_of_a_template_is_drawn() throws IOException {
    String svg =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" id=\"half\" width=\"100\" height=\"100\""
            + " viewBox=\"0 0 100 100\"><rect width=\"100\" height=\"100\" fill=\"#ff0000\"/></svg>";
    try (PDDocument pdf = page("<p>" + svg + "</p>")) {
      BufferedImage painted = new PDFRenderer(pdf).renderImageWithDPI(0, RESOLUTION);
      assertThat(pixels(painted, CHART)).isZero();
      // A CSS pixel is 3/4 of a point.
      assertThat((double) pixels(painted, Color.RED)).isCloseTo(75 * 75, within(300.0));
    }
  }
}
