package taperbook.verify;

import static java.nio.charset.StandardCharsets.US_ASCII;

import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/**
 * Compares two PDFs by their canonical form, in which every deflated stream is replaced by its
 * content. Two files have the same canonical form if and only if one becomes the other, byte for
 * byte, by deflating the content of its streams differently and by adjusting the dependent values:
 * the {@code /Length} of those streams, the offsets of the one cross-reference stream, and the
 * number after the one {@code startxref}.
 *
 * <p>Nothing else may differ: no byte before the header, between the objects or after the end, not
 * the order of the objects, their filters or their text. The file therefore contains nothing that
 * one reader could find and another overlook. The comparison needs no PDF parser: it scans the
 * recomputed file, which the program has just written, and the other file must match.
 *
 * <p>Runtimes deflate the same content to different bytes; this is the only reason why the same
 * program and the same inputs may give a different file.
 */
final class CanonicalPdf {
  private static final byte[] STREAM = ascii("\nstream\r\n");
  private static final byte[] LENGTH = ascii("\n/Length ");
  private static final Pattern WIDTHS = Pattern.compile("\n/W \\[1 ([1-8]) ([0-8])\\]\n");
  private static final Pattern TAIL =
      Pattern.compile("\r\nendstream\nendobj\nstartxref\n(\\d{1,10})\n%%EOF\n");
  private static final int MAX_DIGITS = 10;

  private final byte[] carried;
  private final byte[] recomputed;

  /** Offset difference in the other file, by the start offset of a part in the recomputed file. */
  private final TreeMap<Integer, Integer> shifts = new TreeMap<>();

  private int inCarried;
  private int inRecomputed;

  private CanonicalPdf(byte[] carried, byte[] recomputed) {
    this.carried = carried;
    this.recomputed = recomputed;
  }

  /**
   * Returns true if both files have the same canonical form.
   *
   * @param carried a file of any origin
   * @param recomputed a file written by {@link org.apache.pdfbox.pdmodel.PDDocument#save}
   */
  static boolean isSame(byte[] carried, byte[] recomputed) {
    return Arrays.equals(carried, recomputed) || new CanonicalPdf(carried, recomputed).walk();
  }

  private boolean walk() {
    shifts.put(0, 0);
    int stream = indexOf(STREAM, inRecomputed);
    while (stream >= 0) {
      if (!stream(stream + STREAM.length)) {
        return false;
      }
      shifts.put(inRecomputed, inCarried - inRecomputed);
      stream = indexOf(STREAM, inRecomputed);
    }
    return tail();
  }

  /** Compares from the current positions to the end of the next stream's data. */
  private boolean stream(int data) {
    int key = lastIndexOf(LENGTH, data);
    if (key < inRecomputed) {
      return false;
    }
    int digits = key + LENGTH.length;
    int shift = inCarried - inRecomputed;
    Optional<Integer> own = number(recomputed, digits);
    Optional<Integer> other = number(carried, digits + shift);
    if (own.isEmpty() || other.isEmpty() || !follows(inRecomputed, digits, inCarried)) {
      return false;
    }
    int ownEnd = digits + width(own.get());
    int otherEnd = digits + shift + width(other.get());
    int otherData = otherEnd + data - ownEnd;
    if (!follows(ownEnd, data, otherEnd)
        || own.get() > recomputed.length - data
        || other.get() > carried.length - otherData) {
      return false;
    }
    String dictionary = new String(recomputed, key, data - key, US_ASCII);
    byte[] ownBytes = Arrays.copyOfRange(recomputed, data, data + own.get());
    byte[] otherBytes = Arrays.copyOfRange(carried, otherData, otherData + other.get());
    inRecomputed = data + own.get();
    inCarried = otherData + other.get();
    if (!dictionary.contains("\n/Filter /FlateDecode\n") || dictionary.contains("/DecodeParms")) {
      return Arrays.equals(ownBytes, otherBytes);
    }
    Optional<byte[]> content = inflated(ownBytes, Integer.MAX_VALUE - 8);
    if (content.isPresent() && dictionary.contains("\n/Type /XRef\n")) {
      content = content.flatMap(table -> shifted(table, dictionary));
    }
    return content
        .flatMap(c -> inflated(otherBytes, c.length).map(o -> Arrays.equals(c, o)))
        .orElse(false);
  }

  /** Returns the cross-reference table with the offsets that the other file must have. */
  private Optional<byte[]> shifted(byte[] table, String dictionary) {
    Matcher widths = WIDTHS.matcher(dictionary);
    if (!widths.find()) {
      return Optional.empty();
    }
    int offsetWidth = Integer.parseInt(widths.group(1));
    int row = 1 + offsetWidth + Integer.parseInt(widths.group(2));
    byte[] other = table.clone();
    for (int at = 0; at + row <= table.length; at += row) {
      if (table[at] != 1) {
        continue;
      }
      long offset = 0;
      for (int i = 1; i <= offsetWidth; i++) {
        offset = offset << 8 | (table[at + i] & 0xff);
      }
      if (offset < 0 || offset > recomputed.length) {
        return Optional.empty();
      }
      long moved = offset + shifts.floorEntry((int) offset).getValue();
      byte[] bytes = ByteBuffer.allocate(Long.BYTES).putLong(moved).array();
      if (moved < 0 || moved >>> (8 * offsetWidth) != 0) {
        return Optional.empty();
      }
      System.arraycopy(bytes, Long.BYTES - offsetWidth, other, at + 1, offsetWidth);
    }
    return Optional.of(other);
  }

  private boolean tail() {
    Matcher own = tail(recomputed, inRecomputed);
    Matcher other = tail(carried, inCarried);
    if (!own.matches() || !other.matches()) {
      return false;
    }
    long start = Long.parseLong(own.group(1));
    if (start > recomputed.length) {
      return false;
    }
    long moved = start + shifts.floorEntry((int) start).getValue();
    return other.group(1).equals(Long.toString(moved));
  }

  private static Matcher tail(byte[] file, int from) {
    int length = Math.min(file.length - from, 64);
    boolean tooLong = file.length - from > 64;
    return TAIL.matcher(tooLong ? "" : new String(file, from, length, US_ASCII));
  }

  /** Returns true if the other file continues with the same bytes. */
  private boolean follows(int from, int to, int otherFrom) {
    int otherTo = otherFrom + to - from;
    return otherTo <= carried.length
        && Arrays.equals(recomputed, from, to, carried, otherFrom, otherTo);
  }

  /** Parses a number as the program writes it: no sign and no leading zero. */
  private static Optional<Integer> number(byte[] file, int from) {
    int to = from;
    while (to < file.length && to - from < MAX_DIGITS && file[to] >= '0' && file[to] <= '9') {
      to++;
    }
    if (to == from || (to > from + 1 && file[from] == '0')) {
      return Optional.empty();
    }
    long number = Long.parseLong(new String(file, from, to - from, US_ASCII));
    return number > Integer.MAX_VALUE ? Optional.empty() : Optional.of((int) number);
  }

  private static int width(int number) {
    return Integer.toString(number).length();
  }

  /**
   * Returns the content if the bytes are exactly one deflated stream with a decoded size within the
   * limit.
   */
  private static Optional<byte[]> inflated(byte[] bytes, int max) {
    Inflater inflater = new Inflater();
    try {
      inflater.setInput(bytes);
      byte[] content = new byte[Math.min(max, 1 << 16) + 1];
      int size = 0;
      while (!inflater.finished()) {
        int n = inflater.inflate(content, size, content.length - size);
        size += n;
        if (size > max || (n == 0 && size < content.length && !inflater.finished())) {
          return Optional.empty();
        }
        if (size == content.length) {
          content = Arrays.copyOf(content, (int) Math.min(max + 1L, 2L * size));
        }
      }
      return inflater.getRemaining() == 0
          ? Optional.of(Arrays.copyOf(content, size))
          : Optional.empty();
    } catch (DataFormatException e) {
      return Optional.empty();
    } finally {
      inflater.end();
    }
  }

  private int indexOf(byte[] wanted, int from) {
    for (int i = from; i <= recomputed.length - wanted.length; i++) {
      if (isAt(wanted, i)) {
        return i;
      }
    }
    return -1;
  }

  private int lastIndexOf(byte[] wanted, int before) {
    for (int i = before - wanted.length; i >= inRecomputed; i--) {
      if (isAt(wanted, i)) {
        return i;
      }
    }
    return -1;
  }

  private boolean isAt(byte[] wanted, int at) {
    return Arrays.equals(recomputed, at, at + wanted.length, wanted, 0, wanted.length);
  }

  private static byte[] ascii(String text) {
    return text.getBytes(US_ASCII);
  }
}
