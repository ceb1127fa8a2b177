package taperbook.output;

import freemarker.core.HTMLOutputFormat;
import freemarker.template.TemplateModelException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import taperbook.output.article.ArticlePart;
import taperbook.session.InputHash;

/** Markup of this program, which a template prints unescaped. */
final class TrustedMarkup {
  private TrustedMarkup() {}

  static Object of(String html) {
    try {
      return HTMLOutputFormat.INSTANCE.fromMarkup(html);
    } catch (TemplateModelException e) {
      throw new IllegalStateException("markup is taken as it is", e);
    }
  }

  /**
   * Returns the hash that allows a page's script in its content security policy.
   *
   * @see <a href="https://www.w3.org/TR/CSP3/#grammardef-hash-source">CSP Level 3, hash-source</a>
   */
  static String scriptHash(String script) {
    byte[] hash = InputHash.newDigest().digest(script.getBytes(StandardCharsets.UTF_8));
    return "sha256-" + Base64.getEncoder().encodeToString(hash);
  }

  /**
   * Returns the parts of an article: text, or the chart at that place.
   *
   * @param figures the charts by name
   */
  static List<Object> of(List<ArticlePart> article, Map<String, Object> figures) {
    List<Object> parts = new ArrayList<>();
    for (ArticlePart part : article) {
      parts.add(
          part.figure().isEmpty()
              ? Map.of("html", of(part.html()))
              : Map.of("figure", figures.getOrDefault(part.figure(), Map.of())));
    }
    return parts;
  }
}
