package taperbook.input.csv;

import java.nio.ByteBuffer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.stream.Stream;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.session.InputFile;

/** Encodings of a file of readings that {@code columns.csv} can state. */
public enum TextEncoding {
  UTF_8("UTF-8", StandardCharsets.UTF_8),
  UTF_16("UTF-16", StandardCharsets.UTF_16),
  LATIN_1("ISO-8859-1", StandardCharsets.ISO_8859_1),
  WINDOWS_1252("windows-1252", Charset.forName("windows-1252"));

  private static final String REMEDY =
      "state in columns.csv the encoding that the file has, or save it again with UTF-8";

  private final String words;
  private final Charset charset;

  TextEncoding(String words, Charset charset) {
    this.words = words;
    this.charset = charset;
  }

  /** Returns the name in the IANA register of character sets, as used in {@code columns.csv}. */
  public String words() {
    return words;
  }

  /** Returns the text, or the position of the first malformed byte. */
  Checked<String> decode(InputFile file) {
    return switch (this) {
      case UTF_8 -> Utf8Decoder.decode(file);
      case UTF_16 -> utf16(file);
      default -> strict(file, charset);
    };
  }

  private Checked<String> utf16(InputFile file) {
    byte[] bytes = file.bytes();
    Optional<Charset> order = byteOrder(bytes);
    if (order.isPresent()) {
      return strict(file, order.get());
    }
    ProblemLog log = new ProblemLog(file.path());
    log.add(
        ProblemCode.TEXT_NOT_UTF8,
        "no byte order mark and no byte 0x00",
        "text in UTF-16, as columns.csv states",
        REMEDY);
    return Checked.refused(log.list());
  }

  /**
   * Detects the encoding by the byte order mark, or by the positions of the zero bytes of ASCII
   * characters.
   */
  private static Optional<Charset> byteOrder(byte[] bytes) {
    int[] zeros = new int[2];
    for (int i = 0; i < bytes.length; i++) {
      zeros[i % 2] += bytes[i] == 0 ? 1 : 0;
    }
    if (bytes.length >= 2 && (bytes[0] & 0xff) == 0xfe && (bytes[1] & 0xff) == 0xff) {
      return Optional.of(StandardCharsets.UTF_16BE);
    }
    if (bytes.length >= 2 && (bytes[0] & 0xff) == 0xff && (bytes[1] & 0xff) == 0xfe) {
      return Optional.of(StandardCharsets.UTF_16LE);
    }
    if (zeros[0] + zeros[1] < bytes.length / 4) {
      return Optional.empty();
    }
    return Optional.of(zeros[1] > zeros[0] ? StandardCharsets.UTF_16LE : StandardCharsets.UTF_16BE);
  }

  private Checked<String> strict(InputFile file, Charset exact) {
    Optional<String> workbook = SpreadsheetWorkbook.kind(file);
    if (workbook.isPresent()) {
      ProblemLog log = new ProblemLog(file.path());
      SpreadsheetWorkbook.refuse(workbook.get(), log);
      return Checked.refused(log.list());
    }
    return Utf8Decoder.decode(
        file, exact, ByteBuffer.wrap(file.bytes()), "text in " + words, REMEDY);
  }

  /**
   * Returns the encoding of a file that is not UTF-8, if its bytes are plain text in one of the
   * others.
   */
  static Optional<TextEncoding> guess(InputFile file) {
    return Stream.of(UTF_16, LATIN_1, WINDOWS_1252)
        .filter(encoding -> encoding.decode(file).value().filter(TextEncoding::isPlain).isPresent())
        .findFirst();
  }

  /** Returns true if there are no control characters except tabs and line ends. */
  private static boolean isPlain(String text) {
    return text.chars().noneMatch(c -> Character.isISOControl(c) && "\t\r\n".indexOf(c) < 0);
  }
}
