package taperbook.verify;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/**
 * Extracts the text of a PDF's pages with a limit on the number of operators: nested forms that
 * draw each other execute as many as there are paths through them.
 */
final class PageText extends PDFTextStripper {
  /** Maximum number of operators for one document: a page of this program has a few thousand. */
  static final long MAX_OPERATORS = 5_000_000;

  private final PDDocument source;
  private long operators;

  PageText(PDDocument source) {
    this.source = source;
    setLineSeparator("\n");
  }

  /**
   * Returns the non-empty lines of a page, with every kind of space replaced by a plain one.
   *
   * @param page number of the page, from 1
   * @throws BoundedDecoder.TooMuch if the limit is exceeded
   */
  List<String> lines(int page) throws IOException {
    setStartPage(page);
    setEndPage(page);
    return getText(source)
        .lines()
        .map(ReportPdfReader::plain)
        .filter(line -> !line.isEmpty())
        .toList();
  }

  @Override
  protected void processOperator(Operator operator, List<COSBase> operands) throws IOException {
    operators++;
    if (operators > MAX_OPERATORS || Thread.currentThread().isInterrupted()) {
      throw new BoundedDecoder.TooMuch();
    }
    super.processOperator(operator, operands);
  }
}
