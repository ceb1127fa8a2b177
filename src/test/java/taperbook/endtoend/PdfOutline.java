package taperbook.endtoend;

import java.io.IOException;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.text.PDFTextStripper;

/**
 * A PDF as lines of text: the size and text of each page, then the tree of its structure.
 *
 * <p>Without what depends on the Java runtime: how streams are deflated, the colour profile, whose
 * header Java 17 changes and Java 25 does not, and hashes of files that contain either.
 */
final class PdfOutline {
  private static final Pattern HASH = Pattern.compile("[0-9a-f]{64}");

  private PdfOutline() {}

  static PDDocument open(byte[] bytes) throws IOException {
    return Loader.loadPDF(bytes);
  }

  static String of(byte[] bytes) throws IOException {
    try (PDDocument pdf = open(bytes)) {
      StringBuilder lines = new StringBuilder();
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setLineSeparator("\n");
      for (int i = 1; i <= pdf.getNumberOfPages(); i++) {
        PDPage page = pdf.getPage(i - 1);
        stripper.setStartPage(i);
        stripper.setEndPage(i);
        lines
            .append("page " + i + ": " + page.getMediaBox() + "\n")
            .append(stripper.getText(pdf))
            .append('\n');
      }
      lines.append("structure:\n");
      tree(pdf.getDocumentCatalog().getStructureTreeRoot(), "", lines);
      return HASH.matcher(lines).replaceAll("SHA-256");
    }
  }

  private static void tree(PDStructureNode node, String indent, StringBuilder lines) {
    List<Object> kids = node.getKids();
    for (Object kid : kids) {
      if (kid instanceof PDStructureElement element) {
        String alternative = element.getAlternateDescription();
        lines
            .append(indent)
            .append(element.getStructureType())
            .append(alternative == null ? "" : " \"" + alternative + "\"")
            .append('\n');
        tree(element, indent + " ", lines);
      }
    }
  }
}
