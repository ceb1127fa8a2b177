package taperbook.draw;

/**
 * One figure of a report: a chart as SVG for pages and as PNG for film, with its words.
 *
 * <p>A final class and not a record because it keeps bytes, which it copies.
 */
public final class Figure {
  private final String id;
  private final String title;
  private final String caption;
  private final String textAlternative;
  private final String svg;
  private final byte[] png;

  /** Paints a draft. */
  Figure(Draft draft) {
    this.id = draft.chart().id();
    this.title = draft.chart().title().text();
    this.caption = draft.caption();
    this.textAlternative = draft.textAlternative();
    this.svg = SvgPicture.write(draft.chart(), textAlternative);
    this.png = PngPicture.write(draft.chart());
  }

  /** Name of the figure: the stem of its files, such as {@code power-over-soc}. */
  public String id() {
    return id;
  }

  /** Title of the figure. */
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
  public String svg() {
    return svg;
  }

  /** A copy of the chart as PNG, 1920 x 1080 pixels. */
  public byte[] png() {
    return png.clone();
  }
}
