package taperbook.input.csv;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.SourceLocation;
import taperbook.session.InputFile;

/**
 * Decodes UTF-8 strictly: malformed bytes are a problem, never replaced. A byte order mark at the
 * start is dropped.
 */
public final class Utf8Decoder {
  private static final String REMEDY = "save the file again with the encoding UTF-8";

  private static final String SPREADSHEET = " (in a spreadsheet: CSV UTF-8)";

  /** Replaces malformed bytes in lenient decoding. */
  private static final char REPLACEMENT = '\ufffd';

  private Utf8Decoder() {}

  /** Returns the text, or the position of the first malformed byte. */
  public static Checked<String> decode(InputFile file) {
    String text = file.decoded(StandardCharsets.UTF_8);
    if (text.indexOf(REPLACEMENT) < 0 && text.indexOf('\0') < 0) {
      // Nothing was replaced, so there are no malformed bytes to locate.
      return Checked.good(withoutMark(text));
    }
    Optional<String> workbook = SpreadsheetWorkbook.kind(file);
    if (workbook.isPresent()) {
      ProblemLog log = new ProblemLog(file.path());
      SpreadsheetWorkbook.refuse(workbook.get(), log);
      return Checked.refused(log.list());
    }
    String remedy = file.path().endsWith(".csv") ? REMEDY + SPREADSHEET : REMEDY;
    ByteBuffer bytes = ByteBuffer.wrap(file.bytes());
    return decode(file, StandardCharsets.UTF_8, bytes, "text in UTF-8", remedy);
  }

  private static String withoutMark(String text) {
    return text.startsWith("\ufeff") ? text.substring(1) : text;
  }

  /** Returns the text in an encoding, or the position of the first malformed byte. */
  static Checked<String> decode(
      InputFile file, Charset charset, ByteBuffer bytes, String expected, String remedy) {
    CharBuffer text = CharBuffer.allocate(bytes.remaining());
    boolean malformed =
        charset
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT)
            .decode(bytes, text, true)
            .isError();
    String decoded = text.flip().toString();
    if (malformed) {
      int value = bytes.get(bytes.position()) & 0xff;
      return refused(file, decoded, decoded.length(), "the byte 0x" + hex(value), expected, remedy);
    }
    int nul = decoded.indexOf('\0');
    if (nul >= 0) {
      return refused(file, decoded, nul, "the byte 0x00", expected, remedy);
    }
    return Checked.good(withoutMark(decoded));
  }

  private static Checked<String> refused(
      InputFile file, String text, int place, String found, String expected, String remedy) {
    int line = 1;
    for (int i = 0; i < place; i++) {
      line += LineCounter.endsLine(text, i) ? 1 : 0;
    }
    return Checked.refused(
        List.of(
            new Problem(
                ProblemCode.TEXT_NOT_UTF8,
                SourceLocation.line(file.path(), line),
                found,
                expected,
                remedy)));
  }

  private static String hex(int value) {
    return Character.toString(Character.forDigit(value >> 4, 16))
        + Character.forDigit(value & 0xf, 16);
  }
}
