package taperbook.output.article;

/**
 * A part of an article: some text, or the place of a chart.
 *
 * @param html text as safe HTML, empty for a chart
 * @param figure name of the chart, empty for text
 */
public record ArticlePart(String html, String figure) {
  /** Validates that exactly one is present. */
  public ArticlePart {
    if (html.isEmpty() == figure.isEmpty()) {
      throw new IllegalArgumentException("a part is either text or a chart");
    }
  }
}
