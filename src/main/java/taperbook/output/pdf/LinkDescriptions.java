package taperbook.output.pdf;

import java.io.IOException;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.action.PDAction;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionGoTo;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionURI;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageDestination;

/**
 * Adds an accessible description of its target to each link.
 *
 * @see <a href="https://www.iso.org/standard/64599.html">ISO 14289-1:2014, 7.18.5</a>
 */
final class LinkDescriptions {
  private final PDDocument document;

  LinkDescriptions(PDDocument document) {
    this.document = document;
  }

  void write() throws IOException {
    for (PDPage page : document.getPages()) {
      for (PDAnnotation annotation : page.getAnnotations()) {
        if (annotation instanceof PDAnnotationLink link && link.getContents() == null) {
          link.setContents(target(link.getAction()).orElse("Link within this document"));
        }
      }
    }
  }

  private Optional<String> target(PDAction action) throws IOException {
    if (action instanceof PDActionURI uri) {
      return Optional.of("Opens " + uri.getURI());
    }
    if (action instanceof PDActionGoTo go
        && go.getDestination() instanceof PDPageDestination there
        && there.getPage() != null) {
      return Optional.of("Goes to page " + (document.getPages().indexOf(there.getPage()) + 1));
    }
    return Optional.empty();
  }
}
