package taperbook.output.pdf;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.PageMode;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;

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
    catalog.setLanguage("en");
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
}
