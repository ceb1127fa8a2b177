package taperbook.chart.render;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import taperbook.chart.model.Background;
import taperbook.chart.model.Chart;
import taperbook.chart.model.ChartStyle;
import taperbook.chart.model.Readout;

/**
 * One figure of a report: a chart as SVG for pages and as PNG for film, with its texts.
 *
 * <p>Both are painted lazily, the PNG on each call: checking a report needs only pages, and paper
 * needs neither.
 */
public final class Figure {
  private static final List<String> COMPARING =
      List.of("runs-", "compare-", "difference-", "c-rate-");

  private final String id;
  private final String title;
  private final String caption;
  private final String textAlternative;
  private final Painting painting;
  private final Optional<Chart> chart;
  private @Nullable String svg;
  private final Function<Rendition, byte[]> png;

  private Figure(
      String id,
      String title,
      String caption,
      String textAlternative,
      Painting painting,
      Optional<Chart> chart,
      Function<Rendition, byte[]> png) {
    this.chart = chart;
    this.id = id;
    this.title = title;
    this.caption = caption;
    this.textAlternative = textAlternative;
    this.painting = painting;
    this.png = png;
  }

  /** Creates the figure of a draft. */
  public static Figure of(Draft draft) {
    Chart chart = draft.chart();
    return new Figure(
        chart.id(),
        chart.title().finding(),
        draft.caption(),
        draft.textAlternative(),
        SvgPicture.painting(chart),
        Optional.of(chart),
        rendition -> PngPicture.write(chart, rendition.style()));
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
    return new Figure(
        id,
        title,
        caption,
        textAlternative,
        painting,
        Optional.empty(),
        rendition -> PngPicture.write(painting, rendition.style()));
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
  public synchronized String svg() {
    String painted = svg;
    if (painted == null) {
      painted = SvgPicture.write(id, title, textAlternative, painting);
      svg = painted;
    }
    return painted;
  }

  /**
   * Returns the chart as SVG, 360 x 440 units, for a narrow screen; its ids begin with {@link
   * #id()} and {@code -narrow}.
   */
  public String narrowSvg() {
    return SvgPicture.narrow(id, title, textAlternative, painting);
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
    return png.apply(rendition);
  }

  /** Writes a chart as PNG. */
  private static final class PngPicture {
    private PngPicture() {}

    /** Returns the picture's bytes; the same chart gives the same bytes. */
    static byte[] write(Chart chart, ChartStyle style) {
      return write(SvgPicture.painting(chart), style);
    }

    /** Writes any picture, as {@link #write(Chart, ChartStyle)}. */
    static byte[] write(Painting painting, ChartStyle style) {
      boolean clear = style.background() == Background.CLEAR;
      int kind = clear ? BufferedImage.TYPE_INT_ARGB : BufferedImage.TYPE_INT_RGB;
      BufferedImage image = new BufferedImage(style.width(), style.height(), kind);
      Graphics2D g = image.createGraphics();
      if (!clear) {
        g.setColor(style.background().color());
        g.fillRect(0, 0, style.width(), style.height());
      }
      g.setRenderingHint(
          RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
      g.setRenderingHint(
          RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
      painting.whole(g, style);
      g.dispose();
      return PngEncoder.of(clear ? Halo.below(image) : image);
    }
  }
}
