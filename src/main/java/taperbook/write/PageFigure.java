package taperbook.write;

import taperbook.draw.Figure;

/**
 * A chart as pages show it.
 *
 * <p>A final class and not a record because it keeps bytes, which it copies.
 */
public final class PageFigure {
  private final String id;
  private final String title;
  private final String caption;
  private final String textAlternative;
  private final String svg;
  private final byte[] png;

  /**
   * Copies the bytes.
   *
   * @param id name of the chart, such as {@code power-over-soc}
   * @param title its heading
   * @param caption what it shows, in full sentences
   * @param textAlternative what it shows, in numbers, for those who cannot see it
   * @param svg the chart as an {@code svg} element without XML declaration
   * @param png the chart as a PNG
   */
  public PageFigure(
      String id, String title, String caption, String textAlternative, String svg, byte[] png) {
    this.id = id;
    this.title = title;
    this.caption = caption;
    this.textAlternative = textAlternative;
    this.svg = svg;
    this.png = png.clone();
  }

  /** The chart as it was drawn. */
  public static PageFigure of(Figure figure) {
    return new PageFigure(
        figure.id(),
        figure.title(),
        figure.caption(),
        figure.textAlternative(),
        figure.svg(),
        figure.png());
  }

  String id() {
    return id;
  }

  String title() {
    return title;
  }

  String caption() {
    return caption;
  }

  String textAlternative() {
    return textAlternative;
  }

  String svg() {
    return svg;
  }

  byte[] png() {
    return png.clone();
  }
}
