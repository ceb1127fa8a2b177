package taperbook.chart.render;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Transparency;
import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.DataBufferByte;
import java.awt.image.DataBufferInt;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import taperbook.chart.model.Background;
import taperbook.chart.model.Chart;
import taperbook.chart.model.ChartStyle;
import taperbook.chart.model.Readout;

/**
 * One figure of a report: a chart as SVG for pages and as PNG for film, with its texts.
 *
 * <p>Both are painted lazily and only once: checking a report needs only pages, and paper needs
 * neither.
 */
public final class Figure {
  private static final List<String> COMPARING =
      List.of("runs-", "compare-", "difference-", "c-rate-");

  /** Level 6 of 9 of deflate: 7 % smaller than the default, and as fast. */
  private static final float PNG_QUALITY = 1 / 3f;

  private final String id;
  private final String title;
  private final String caption;
  private final String textAlternative;
  private final Painting painting;
  private final Optional<Chart> chart;
  private final Map<String, String> svgs = new ConcurrentHashMap<>();
  private final Map<Rendition, byte[]> pngs = new ConcurrentHashMap<>();

  private Figure(
      String id,
      String title,
      String caption,
      String textAlternative,
      Painting painting,
      Optional<Chart> chart) {
    this.chart = chart;
    this.id = id;
    this.title = title;
    this.caption = caption;
    this.textAlternative = textAlternative;
    this.painting = painting;
  }

  /**
   * Creates the figure of a chart.
   *
   * @param caption its finding
   * @param textAlternative its description for those who cannot see it
   */
  public static Figure of(Chart chart, String caption, String textAlternative) {
    return new Figure(
        chart.id(),
        chart.title().finding(),
        caption,
        textAlternative,
        (g, style) -> ChartPainter.paint(g, chart, style),
        Optional.of(chart));
  }

  /**
   * Creates a figure of any picture.
   *
   * @param id stem of its files
   * @param title its title
   * @param caption the finding of the picture
   * @param textAlternative its description for those who cannot see it
   * @param painting the picture
   */
  public static Figure of(
      String id, String title, String caption, String textAlternative, Painting painting) {
    return new Figure(id, title, caption, textAlternative, painting, Optional.empty());
  }

  /** Returns the names of figures, in their order. */
  public static Set<String> ids(List<Figure> figures) {
    return figures.stream().map(Figure::id).collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /** Returns the name of the figure: the stem of its files, such as {@code power-over-soc}. */
  public String id() {
    return id;
  }

  /** Returns true if the figure compares sessions. */
  public boolean comparing() {
    return COMPARING.stream().anyMatch(id::startsWith);
  }

  /** Returns the title inside its picture. */
  public String title() {
    return title;
  }

  /** Returns the finding in one to three sentences, with its numbers. */
  public String caption() {
    return caption;
  }

  /** Returns the full description of the chart for those who cannot see it. */
  public String textAlternative() {
    return textAlternative;
  }

  /**
   * Returns the chart as SVG, 720 x 405 units, standalone or for embedding in a page: no XML
   * declaration, no script, every id begins with {@link #id()}; includes title and description.
   */
  public String svg() {
    return svg(id, ChartStyle.print());
  }

  /**
   * Returns the chart as SVG, 360 x 440 units, for a narrow screen; its ids begin with {@link
   * #id()} and {@code -narrow}.
   */
  public String narrowSvg() {
    return svg(id + "-narrow", ChartStyle.narrow());
  }

  private String svg(String name, ChartStyle style) {
    return svgs.computeIfAbsent(
        name, n -> SvgPicture.write(n, title, textAlternative, painting, style));
  }

  /** Returns the chart; empty if the figure is not one. */
  Optional<Chart> chart() {
    return chart;
  }

  /** Returns the data of the reading line; empty if the figure is not a line chart. */
  public Optional<Readout> readout() {
    return chart.map(Readout::of);
  }

  /** Returns the painting of the figure, for targets other than SVG and PNG. */
  public Painting painting() {
    return painting;
  }

  /** Returns the chart as PNG, 1920 x 1080 pixels; a new array on each call. */
  public byte[] png() {
    return png(Rendition.FILM);
  }

  /** Returns the chart as PNG in one of its renditions; a new array on each call. */
  public byte[] png(Rendition rendition) {
    return pngs.computeIfAbsent(rendition, r -> painted(r.style())).clone();
  }

  private byte[] painted(ChartStyle style) {
    boolean clear = style.background() == Background.CLEAR;
    int kind = clear ? BufferedImage.TYPE_INT_ARGB : BufferedImage.TYPE_INT_RGB;
    BufferedImage image = new BufferedImage(style.width(), style.height(), kind);
    Graphics2D g = image.createGraphics();
    if (!clear) {
      g.setColor(style.background().color());
      g.fillRect(0, 0, style.width(), style.height());
    }
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    painting.whole(g, style);
    g.dispose();
    return encoded(clear ? Halo.below(image) : image);
  }

  private byte[] encoded(BufferedImage image) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
    ImageWriteParam param = writer.getDefaultWriteParam();
    param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
    param.setCompressionQuality(PNG_QUALITY);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    // Not a cached stream, which would need a folder for temporary files.
    try (ImageOutputStream stream = new MemoryCacheImageOutputStream(out)) {
      writer.setOutput(stream);
      writer.write(null, new IIOImage(interleaved(image), null, null), param);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write the picture " + id, e);
    } finally {
      writer.dispose();
    }
    return out.toByteArray();
  }

  /** Returns an opaque picture with a byte for each channel, which the encoder reads faster. */
  private static BufferedImage interleaved(BufferedImage image) {
    if (image.getType() != BufferedImage.TYPE_INT_RGB) {
      return image;
    }
    int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    byte[] channels = new byte[3 * pixels.length];
    for (int i = 0; i < pixels.length; i++) {
      channels[3 * i] = (byte) (pixels[i] >> 16);
      channels[3 * i + 1] = (byte) (pixels[i] >> 8);
      channels[3 * i + 2] = (byte) pixels[i];
    }
    int width = image.getWidth();
    WritableRaster raster =
        Raster.createInterleavedRaster(
            new DataBufferByte(channels, channels.length),
            width,
            image.getHeight(),
            3 * width,
            3,
            new int[] {0, 1, 2},
            null);
    ColorModel rgb =
        new ComponentColorModel(
            ColorSpace.getInstance(ColorSpace.CS_sRGB),
            false,
            false,
            Transparency.OPAQUE,
            DataBuffer.TYPE_BYTE);
    return new BufferedImage(rgb, raster, false, null);
  }
}
