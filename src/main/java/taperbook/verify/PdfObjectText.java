package taperbook.verify;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNull;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import taperbook.session.InputFile;

/** Describes objects of a PDF without their children. */
final class PdfObjectText {
  private static final int SHOWN_DIGITS = 16;

  private PdfObjectText() {}

  /** Describes the content of a stream. */
  static String of(byte[] content) {
    return "a stream of "
        + content.length
        + " bytes, SHA-256 "
        + new InputFile("stream", content).sha256().substring(0, SHOWN_DIGITS);
  }

  /** Describes an object; equal plain objects have equal descriptions. */
  static String of(COSBase object) {
    if (object instanceof COSString string) {
      return "string " + string.toHexString();
    }
    if (object instanceof COSName name) {
      return "name " + name.getName();
    }
    if (object instanceof COSInteger integer) {
      return "number " + integer.longValue();
    }
    if (object instanceof COSFloat real) {
      return "number " + real.floatValue();
    }
    if (object instanceof COSArray array) {
      return "an array of " + array.size();
    }
    if (object instanceof COSStream) {
      return "a stream";
    }
    if (object instanceof COSDictionary dictionary) {
      return "a dictionary of " + dictionary.size();
    }
    return object == COSNull.NULL ? "nothing" : String.valueOf(object);
  }
}
