package taperbook.draw;

/**
 * A chart, ready to be put on a page.
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
  public Figure(
      String id, String title, String caption, String textAlternative, String svg, byte[] png) {
    this.id = id;
    this.title = title;
    this.caption = caption;
    this.textAlternative = textAlternative;
    this.svg = svg;
    this.png = png.clone();
  }

  /** Name of the chart. */
  public String id() {
    return id;
  }

  /** Its heading. */
  public String title() {
    return title;
  }

  /** What it shows, in full sentences. */
  public String caption() {
    return caption;
  }

  /** What it shows, in numbers. */
  public String textAlternative() {
    return textAlternative;
  }

  /** The chart as an {@code svg} element. */
  public String svg() {
    return svg;
  }

  /** A copy of the PNG. */
  public byte[] png() {
    return png.clone();
  }
}
