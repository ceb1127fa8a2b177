package taperbook.verify;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/**
 * Reads the text of a PDF's pages with a bound on the operators that are carried out: forms that
 * draw each other take as many as there are paths through them.
 */
final class PageText extends PDFTextStripper {
  /** Most operators that are carried out for one document: a page of ours has a few thousand. */
  static final long MOST_OPERATORS = 5_000_000;

  private final PDDocument source;
  private long operators;

  PageText(PDDocument source) {
    this.source = source;
    setLineSeparator("\n");
  }

  /**
   * The lines of a page that are not empty, with every space as a plain one.
   *
   * @param page number of the page, from 1
   * @throws BoundedDecoder.TooMuch if it draws more than is read
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
    if (operators > MOST_OPERATORS || Thread.currentThread().isInterrupted()) {
      throw new BoundedDecoder.TooMuch();
    }
    super.processOperator(operator, operands);
  }
}
