package taperbook.output.article;

import com.vladsch.flexmark.ast.Heading;
import com.vladsch.flexmark.ast.Image;
import com.vladsch.flexmark.ast.ImageRef;
import com.vladsch.flexmark.ast.Text;
import com.vladsch.flexmark.ext.tables.TablesExtension;
import com.vladsch.flexmark.html.HtmlRenderer;
import com.vladsch.flexmark.parser.Parser;
import com.vladsch.flexmark.util.ast.Document;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.data.MutableDataSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document.OutputSettings;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.TextNode;
import org.jsoup.safety.Safelist;
import taperbook.i18n.Texts;

/**
 * Converts Markdown to safe HTML. Escapes raw HTML but drops comments, replaces pictures with their
 * text, and starts headings below the page's own without skipping levels.
 */
final class ArticleMarkdown {
  /** Maximum nesting depth of quotations, lists and emphasis. */
  static final int MOST_LEVELS = 60;

  private static final Set<String> VERBATIM = Set.of("code", "pre");
  private static final Pattern BEFORE_UNIT =
      Pattern.compile(
          "(?<=[0-9]) (?=(?:%|kWh|kW|Wh|km|mi|min|h|s|V|A|\u00b0C|\u00b0F)(?![\\p{L}0-9]))");

  private static final int PAGE_LEVEL = 2;
  private static final int DEEPEST_LEVEL = 6;

  private ArticleMarkdown() {}

  private static MutableDataSet options() {
    return new MutableDataSet()
        .set(Parser.EXTENSIONS, List.of(TablesExtension.create()))
        .set(HtmlRenderer.ESCAPE_HTML, true)
        .set(HtmlRenderer.SUPPRESS_HTML_COMMENT_BLOCKS, true)
        .set(HtmlRenderer.SUPPRESS_INLINE_HTML_COMMENTS, true);
  }

  /** Thrown if the nesting exceeds the maximum depth. */
  static final class TooDeep extends RuntimeException {
    private static final long serialVersionUID = 1;

    TooDeep() {
      super(Texts.of("article.article_markdown.more_than_levels", MOST_LEVELS));
    }
  }

  /** Parses the text to a tree of limited depth, so that walking it cannot overflow the stack. */
  private static Document document(String markdown, MutableDataSet options) {
    Document document = Parser.builder(options).build().parse(markdown);
    int depth = 0;
    Node node = document;
    while (node != null) {
      if (node.getFirstChild() != null) {
        node = node.getFirstChild();
        depth++;
      } else {
        while (node != null && node != document && node.getNext() == null) {
          node = node.getParent();
          depth--;
        }
        node = node == null || node == document ? null : node.getNext();
      }
      if (depth > MOST_LEVELS) {
        throw new TooDeep();
      }
    }
    return document;
  }

  /** A picture in the source, with its zero-based line. */
  record Picture(String written, int line) {}

  /** The parts of a text, and the pictures that were replaced. */
  record Converted(List<ArticlePart> parts, List<Picture> pictures) {}

  static Converted converted(String markdown, Set<String> figures) {
    MutableDataSet options = options();
    Document document = document(markdown, options);
    lowerHeadings(document);
    List<Picture> pictures = dropPictures(document);
    Element body = safe(HtmlRenderer.builder(options).build().render(document));
    List<ArticlePart> parts = new ArrayList<>();
    StringBuilder html = new StringBuilder();
    for (org.jsoup.nodes.Node child : body.childNodes()) {
      String figure = figure(child, figures);
      if (figure.isEmpty()) {
        html.append(child.outerHtml());
      } else {
        text(parts, html, figures);
        parts.add(new ArticlePart("", figure));
      }
    }
    text(parts, html, figures);
    return new Converted(parts, pictures);
  }

  private static void text(List<ArticlePart> parts, StringBuilder html, Set<String> figures) {
    String text = html.toString().strip();
    for (String figure : figures) {
      // A chart inside a list or a quotation cannot be shown there, so it is named.
      text =
          text.replace(
              ArticleText.token(figure), Texts.of("article.article_markdown.see_chart", figure));
    }
    if (!text.isEmpty()) {
      parts.add(new ArticlePart(text, ""));
    }
    html.setLength(0);
  }

  private static String figure(org.jsoup.nodes.Node node, Set<String> figures) {
    if (!(node instanceof Element element) || !element.normalName().equals("p")) {
      return "";
    }
    String text = element.text().strip();
    return figures.stream().filter(f -> text.equals(ArticleText.token(f))).findFirst().orElse("");
  }

  private static void lowerHeadings(Document document) {
    List<Heading> headings = new ArrayList<>();
    TreeSet<Integer> levels = new TreeSet<>();
    for (Node node : document.getDescendants()) {
      if (node instanceof Heading heading) {
        headings.add(heading);
        levels.add(heading.getLevel());
      }
    }
    int above = PAGE_LEVEL;
    for (Heading heading : headings) {
      int wanted = PAGE_LEVEL + levels.headSet(heading.getLevel(), true).size();
      above = Math.min(Math.min(wanted, DEEPEST_LEVEL), above + 1);
      heading.setLevel(above);
    }
  }

  /** Replaces pictures with their text, and returns them. */
  private static List<Picture> dropPictures(Document document) {
    List<Node> images = new ArrayList<>();
    for (Node node : document.getDescendants()) {
      if (node instanceof Image || node instanceof ImageRef) {
        images.add(node);
      }
    }
    List<Picture> pictures = new ArrayList<>();
    for (Node image : images) {
      int line = document.getLineNumber(image.getStartOffset());
      pictures.add(new Picture(image.getChars().toString(), line));
      image.insertBefore(
          new Text(image instanceof Image i ? i.getText() : ((ImageRef) image).getText()));
      image.unlink();
    }
    return pictures;
  }

  /** A second safeguard behind the renderer's escaping: only text elements and web links. */
  private static Element safe(String html) {
    Safelist safelist =
        Safelist.relaxed()
            .removeTags("img")
            .addTags("hr", "del")
            .addAttributes("td", "align")
            .addAttributes("th", "align");
    String clean =
        Jsoup.clean(html, "", safelist, new OutputSettings().prettyPrint(false).charset("UTF-8"));
    org.jsoup.nodes.Document body = Jsoup.parseBodyFragment(clean);
    body.outputSettings().prettyPrint(false);
    for (Element cell : body.select("[align]")) {
      cell.addClass("align-" + cell.attr("align"));
      cell.removeAttr("align");
    }
    body.select("thead th").attr("scope", "col");
    body.body().getAllElements().forEach(ArticleMarkdown::holdUnits);
    return body.body();
  }

  /** Keeps a typed amount and its unit on one line. */
  private static void holdUnits(Element element) {
    if (!VERBATIM.contains(element.normalName())) {
      for (TextNode text : element.textNodes()) {
        text.text(BEFORE_UNIT.matcher(text.getWholeText()).replaceAll("\u00a0"));
      }
    }
  }
}
