package taperbook.verify;

import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Calendar;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.i18n.Texts;
import taperbook.session.InputFile;

/** Reads a report's PDF and extracts its embedded files, to memory only. */
public final class ReportPdfReader {
  /** Maximum size of a PDF, bytes. */
  public static final long LARGEST_PDF_BYTES = 128L * 1024 * 1024;

  /** Maximum number of files that a PDF may embed. */
  public static final int MAX_FILES = 2000;

  /** Maximum number of pages of a PDF. */
  public static final int MAX_PAGES = 5000;

  private final ProblemLog log;
  private final BoundedDecoder decoded = new BoundedDecoder();

  private ReportPdfReader(String file) {
    this.log = new ProblemLog(file);
  }

  /**
   * Reads the content of a report's PDF, or returns why it is invalid.
   *
   * @param file the file as the user named it
   * @param pdf its bytes
   */
  public static Checked<CarriedReport> read(String file, byte[] pdf) {
    return read(file, pdf, ReportPdfReader::read);
  }

  /** Reads the {@code numbers.json} embedded in a report's PDF without reading its pages. */
  public static Checked<NumbersFile> numbers(String file, byte[] pdf) {
    return read(file, pdf, (reader, document) -> reader.numbers(reader.files(document)));
  }

  /**
   * Returns the text of all pages, line by line, with every kind of space replaced by a plain one.
   *
   * @throws IOException if it cannot be read, or exceeds a limit
   */
  public static List<String> text(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PageText text = new PageText(document);
      List<String> lines = new ArrayList<>();
      for (int page = 1; page <= Math.min(document.getNumberOfPages(), MAX_PAGES); page++) {
        lines.addAll(text.lines(page));
      }
      return lines;
    } catch (RuntimeException | StackOverflowError e) {
      throw new IOException(Texts.of("verify.common.damaged_pdf"), e);
    }
  }

  /** Normalizes a text like the text of pages: one plain space for each run of spaces. */
  public static String plain(String text) {
    return text.replaceAll("[\\s\\u00a0\\u2007\\u202f]+", " ").strip();
  }

  /** Reads one part of a document. */
  private interface Part<T> {
    Checked<T> of(ReportPdfReader reader, PDDocument document) throws IOException;
  }

  private static <T> Checked<T> read(String file, byte[] pdf, Part<T> part) {
    ReportPdfReader reader = new ReportPdfReader(file);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return part.of(reader, document);
    } catch (InvalidPasswordException e) {
      return reader.refused(Texts.of("verify.report_pdf_reader.pdf_that_is_locked_with"));
    } catch (BoundedDecoder.TooMuch e) {
      return reader.refused(Texts.of("verify.report_pdf_reader.pdf_that_unpacks_to_more"));
    } catch (IOException | RuntimeException e) {
      // The library can throw any exception for a damaged PDF.
      return reader.refused(Texts.of("verify.report_pdf_reader.no_pdf_or_damaged_one"));
    }
  }

  private Checked<CarriedReport> read(PDDocument document) throws IOException {
    if (document.getNumberOfPages() > MAX_PAGES) {
      return refused(
          Texts.of("verify.report_pdf_reader.pdf_of_pages", document.getNumberOfPages()));
    }
    Map<String, byte[]> files = files(document);
    return numbers(files).then(n -> Checked.good(whole(document, files, n)));
  }

  /** Removes the numbers from the files and parses them. */
  private Checked<NumbersFile> numbers(Map<String, byte[]> files) {
    byte[] json = files.remove(CarriedReport.NUMBERS);
    return json == null
        ? refused(Texts.of("verify.report_pdf_reader.pdf_that_carries_no", CarriedReport.NUMBERS))
        : NumbersFile.read(CarriedReport.NUMBERS, json);
  }

  private static CarriedReport whole(
      PDDocument document, Map<String, byte[]> files, NumbersFile numbers) {
    Map<String, InputFile> inputs = new TreeMap<>();
    files.forEach((path, bytes) -> inputs.put(path, new InputFile(path, bytes)));
    return new CarriedReport(inputs, numbers, program(document), made(document));
  }

  private Map<String, byte[]> files(PDDocument document) throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    PDDocumentNameDictionary names = document.getDocumentCatalog().getNames();
    if (names == null || names.getEmbeddedFiles() == null) {
      return files;
    }
    Map<String, PDComplexFileSpecification> all = names.getEmbeddedFiles().getNames();
    if (all == null) {
      return files;
    }
    for (Map.Entry<String, PDComplexFileSpecification> entry : all.entrySet()) {
      PDEmbeddedFile file = entry.getValue().getEmbeddedFile();
      if (file != null && files.size() < MAX_FILES) {
        files.put(entry.getKey(), decoded.bytes(file.getCOSObject()));
      }
    }
    return files;
  }

  private static String program(PDDocument document) {
    return Optional.ofNullable(document.getDocumentInformation().getProducer()).orElse("");
  }

  private static LocalDate made(PDDocument document) {
    Calendar created = document.getDocumentInformation().getCreationDate();
    return created == null
        ? LocalDate.EPOCH
        : LocalDate.ofInstant(created.toInstant(), ZoneOffset.UTC);
  }

  private <T> Checked<T> refused(String found) {
    log.add(
        ProblemCode.PUBLISHED_NOT_UNDERSTOOD,
        found,
        Texts.of("verify.report_pdf_reader.report_pdf_that_taperbook_made"),
        Texts.of("verify.report_pdf_reader.take_pdf_as_it_was"));
    return Checked.refused(log.list());
  }
}
