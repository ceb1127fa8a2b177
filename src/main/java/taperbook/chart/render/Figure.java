package taperbook.chart.render;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import taperbook.chart.model.Chart;
import taperbook.chart.model.Readout;

/**
 * One figure of a report: a chart as SVG for pages and as PNG for film, with its words.
 *
 * <p>Both are painted when they are asked for, the PNG each time: a check of a report needs pages
 * only, and paper neither.
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

  /** The figure of a draft. */
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
   * A figure of any picture.
   *
   * @param id stem of its files
   * @param title title in words
   * @param caption what the picture finds
   * @param textAlternative what it shows, for those who cannot see it
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

  /** Names of figures, in their order. */
  public static Set<String> ids(List<Figure> figures) {
    return figures.stream().map(Figure::id).collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /** Name of the figure: the stem of its files, such as {@code power-over-soc}. */
  public String id() {
    return id;
  }

  /** True if the figure holds sessions against each other. */
  public boolean comparing() {
    return COMPARING.stream().anyMatch(id::startsWith);
  }

  /** What the figure shows, as the title inside its picture. */
  public String title() {
    return title;
  }

  /** The finding in one to three sentences, with its numbers. */
  public String caption() {
    return caption;
  }

  /** All that the chart shows, in words and numbers, for those who cannot see it. */
  public String textAlternative() {
    return textAlternative;
  }

  /**
   * The chart as SVG, 720 x 405 units, to stand alone or inside a page: no XML declaration, no
   * script, every id begins with {@link #id()}; title and description inside.
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
   * The chart as SVG, 360 x 440 units, for a narrow screen; its ids begin with {@link #id()} and
   * {@code -narrow}.
   */
  public String narrowSvg() {
    return SvgPicture.narrow(id, title, textAlternative, painting);
  }

  /** What a reading line on the figure can read; empty if it is no chart of lines. */
  public Optional<Readout> readout() {
    return chart.map(Readout::of);
  }

  /** What the figure is painted by, for other grounds than SVG and PNG. */
  public Painting painting() {
    return painting;
  }

  /** The chart as PNG, 1920 x 1080 pixels; a new array each time. */
  public byte[] png() {
    return png(Rendition.FILM);
  }

  /** The chart as PNG in one of its renditions; a new array each time. */
  public byte[] png(Rendition rendition) {
    return png.apply(rendition);
  }
}
