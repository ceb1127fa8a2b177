package taperbook.write;

import java.util.regex.Pattern;

/**
 * Keeps a value and its unit in one line where the unit has a stroke in it, at which browsers and
 * the PDF library would break: {@code 171 Wh/km} becomes {@code <span class="unit">…</span>}.
 */
final class WholeUnits {
  /** What is left as it is, and then what is looked for. */
  private static final Pattern PIECES =
      Pattern.compile(
          "<style.*?</style>|<script.*?</script>|<title.*?</title>|<svg.*?</svg>"
              + "|<(?:[^>\"']|\"[^\"]*\"|'[^']*')*>"
              + "|(?<unit>(?:[\u22120-9.,]+\u00a0)?\\b(?:k?Wh|km|mi|m)/(?:100\u00a0km|km|mi|h|s|kWh\\b|%))",
          Pattern.DOTALL);

  private WholeUnits() {}

  /** The page with such values marked. */
  static String kept(String page) {
    return PIECES
        .matcher(page)
        .replaceAll(
            found ->
                java.util.regex.Matcher.quoteReplacement(
                    found.group(1) == null
                        ? found.group()
                        : "<span class=\"unit\">" + found.group() + "</span>"));
  }
}
