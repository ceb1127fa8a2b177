package taperbook.output.pdf;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TimeZone;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PageMode;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;
import org.apache.pdfbox.pdmodel.interactive.action.PDAction;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionGoTo;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionURI;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageDestination;
import taperbook.i18n.Texts;

/** Finishes a laid-out PDF: metadata, attachments, and the stable identifier. */
final class PdfFinish {
  private final PDDocument document;
  private final PdfMetadata heading;

  PdfFinish(PDDocument document, PdfMetadata heading) {
    this.document = document;
    this.heading = heading;
  }

  /**
   * Returns the finished document.
   *
   * @param contentHash hash of all inputs; determines the identifier in its trailer
   */
  byte[] bytes(List<PdfAttachment> attachments, byte[] contentHash) throws IOException {
    setInformation();
    PDDocumentCatalog catalog = document.getDocumentCatalog();
    PDMetadata metadata = new PDMetadata(document);
    metadata.importXMPMetadata(XmpPacket.bytes(heading));
    catalog.setMetadata(metadata);
    catalog.setLanguage(Texts.of("page.language"));
    setColorProfile(catalog);
    if (catalog.getDocumentOutline() != null) {
      catalog.setPageMode(PageMode.USE_OUTLINES);
    }
    new LinkDescriptions(document).write();
    if (!attachments.isEmpty()) {
      attach(attachments);
    }
    document.setDocumentId(ByteBuffer.wrap(contentHash).getLong());
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    document.save(out);
    return out.toByteArray();
  }

  /**
   * Writes the colour profile as it is: Java 17 rewrites parts of its header when it reads one, and
   * later versions do not.
   */
  private static void setColorProfile(PDDocumentCatalog catalog) throws IOException {
    for (PDOutputIntent intent : catalog.getOutputIntents()) {
      try (OutputStream out =
          intent.getDestOutputIntent().createOutputStream(COSName.FLATE_DECODE)) {
        out.write(SrgbProfile.bytes());
      }
    }
  }

  private void setInformation() {
    PDDocumentInformation information = new PDDocumentInformation();
    information.setTitle(heading.title());
    if (!heading.author().isEmpty()) {
      information.setAuthor(heading.author());
    }
    if (!heading.subject().isEmpty()) {
      information.setSubject(heading.subject());
    }
    information.setCreator(heading.program());
    information.setProducer(heading.program());
    information.setCreationDate(date());
    information.setModificationDate(date());
    document.setDocumentInformation(information);
  }

  private Calendar date() {
    Calendar calendar = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
    calendar.setTimeInMillis(
        heading.date().atStartOfDay(ZoneOffset.UTC).toInstant().toEpochMilli());
    return calendar;
  }

  private void attach(List<PdfAttachment> attachments) throws IOException {
    Map<String, PDComplexFileSpecification> byName = new TreeMap<>();
    COSArray associated = new COSArray();
    for (PdfAttachment attachment : attachments) {
      PDComplexFileSpecification specification = specification(attachment);
      byName.put(attachment.path(), specification);
      associated.add(specification);
    }
    PDEmbeddedFilesNameTreeNode tree = new PDEmbeddedFilesNameTreeNode();
    tree.setNames(byName);
    PDDocumentCatalog catalog = document.getDocumentCatalog();
    PDDocumentNameDictionary names =
        catalog.getNames() == null ? new PDDocumentNameDictionary(catalog) : catalog.getNames();
    names.setEmbeddedFiles(tree);
    catalog.setNames(names);
    catalog.getCOSObject().setItem(COSName.AF, associated);
  }

  private PDComplexFileSpecification specification(PdfAttachment attachment) throws IOException {
    byte[] bytes = attachment.bytes();
    PDEmbeddedFile file =
        new PDEmbeddedFile(document, new ByteArrayInputStream(bytes), COSName.FLATE_DECODE);
    file.setSubtype(attachment.mediaType());
    file.setSize(bytes.length);
    file.setCreationDate(date());
    file.setModDate(date());
    PDComplexFileSpecification specification = new PDComplexFileSpecification();
    specification.setFile(attachment.path());
    specification.setFileUnicode(attachment.path());
    specification.setFileDescription(attachment.path());
    specification.setEmbeddedFile(file);
    specification.setEmbeddedFileUnicode(file);
    specification
        .getCOSObject()
        .setItem(COSName.AF_RELATIONSHIP, COSName.getPDFName(attachment.relationship()));
    return specification;
  }

  /**
   * Adds an accessible description of its target to each link.
   *
   * @see <a href="https://www.iso.org/standard/64599.html">ISO 14289-1:2014, 7.18.5</a>
   */
  private static final class LinkDescriptions {
    private final PDDocument document;

    LinkDescriptions(PDDocument document) {
      this.document = document;
    }

    void write() throws IOException {
      for (PDPage page : document.getPages()) {
        for (PDAnnotation annotation : page.getAnnotations()) {
          if (annotation instanceof PDAnnotationLink link && link.getContents() == null) {
            link.setContents(
                target(link.getAction())
                    .orElse(Texts.of("pdf.link_descriptions.link_within_this_document")));
          }
        }
      }
    }

    private Optional<String> target(PDAction action) throws IOException {
      if (action instanceof PDActionURI uri) {
        return Optional.of(Texts.of("pdf.link_descriptions.opens", uri.getURI()));
      }
      if (action instanceof PDActionGoTo go
          && go.getDestination() instanceof PDPageDestination there
          && there.getPage() != null) {
        return Optional.of(
            Texts.of(
                "pdf.link_descriptions.goes_to_page",
                document.getPages().indexOf(there.getPage()) + 1));
      }
      return Optional.empty();
    }
  }
}
