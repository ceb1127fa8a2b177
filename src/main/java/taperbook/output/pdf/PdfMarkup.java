package taperbook.output.pdf;

import org.jsoup.Jsoup;
import org.jsoup.helper.W3CDom;
import org.jsoup.nodes.DataNode;
import org.jsoup.nodes.Element;

/** Prepares the output of a template for layout: well-formed, with bookmarks. */
final class PdfMarkup {
  private PdfMarkup() {}

  /** Maximum nesting depth of elements. */
  static final int MOST_LEVELS = 400;

  /**
   * Returns the page as a tree.
   *
   * @throws LayoutException if it is nested too deeply to be laid out
   */
  static org.w3c.dom.Document document(String html) {
    org.jsoup.nodes.Document page = Jsoup.parse(html);
    page.traverse(
        (node, depth) -> {
          if (depth > MOST_LEVELS) {
            throw new LayoutException("elements within each other on more than 400 levels");
          }
        });
    fonts(page);
    bookmarks(page);
    page.select("a[href]:not([title])").forEach(a -> a.attr("title", a.text()));
    return new W3CDom().fromJsoup(page);
  }

  private static void fonts(org.jsoup.nodes.Document page) {
    page.head().prependElement("style").appendChild(new DataNode(PdfFonts.rules()));
  }

  /** Adds the outline of the PDF: sections and subsections. */
  private static void bookmarks(org.jsoup.nodes.Document page) {
    Element root = page.head().appendElement("bookmarks");
    Element section = root;
    int count = 0;
    for (Element heading : page.select("h2, h3")) {
      count++;
      if (heading.id().isEmpty()) {
        heading.attr("id", "heading-" + count);
      }
      boolean top = heading.normalName().equals("h2");
      Element parent = top ? root : section;
      Element bookmark = parent.appendElement("bookmark");
      bookmark.attr("name", heading.text()).attr("href", "#" + heading.id());
      if (top) {
        section = bookmark;
      }
    }
  }
}
