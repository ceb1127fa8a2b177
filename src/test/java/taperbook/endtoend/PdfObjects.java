package taperbook.endtoend;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.DataFormatException;
import java.util.zip.Deflater;
import java.util.zip.Inflater;

/**
 * Objects of a PDF in the layout of the program, to be changed and written with correct lengths and
 * cross-references. Shares no code with the program, so that its output tests the program's parser
 * independently.
 */
final class PdfObjects {
  private static final Pattern OBJECT =
      Pattern.compile("(\\d+) 0 obj\n(?s:(.*?))\n(endobj|stream\r\n)");
  private static final Pattern LENGTH = Pattern.compile("/Length (\\d+)");
  private static final Pattern WIDTHS = Pattern.compile("/W \\[1 (\\d) (\\d)\\]");

  private final byte[] head;
  private final List<Body> bodies = new ArrayList<>();
  private final Map<Integer, Integer> pointing = new TreeMap<>();
  private int level = Deflater.DEFAULT_COMPRESSION;

  /** A top-level object: its text and the content of its stream. */
  private static final class Body {
    private final int number;
    private String text;
    private byte[] packed;
    private boolean isStream;

    Body(int number, String text) {
      this.number = number;
      this.text = text;
      this.packed = new byte[0];
    }

    boolean isFlate() {
      return isStream && text.contains("/Filter /FlateDecode");
    }

    boolean is(String type) {
      return isStream && text.contains("/Type /" + type);
    }
  }

  private PdfObjects(byte[] head) {
    this.head = head;
  }

  /** Parses a PDF that the program wrote. */
  static PdfObjects of(byte[] pdf) {
    String all = new String(pdf, StandardCharsets.ISO_8859_1);
    Matcher object = OBJECT.matcher(all);
    int at = all.indexOf("1 0 obj");
    PdfObjects objects = new PdfObjects(all.substring(0, at).getBytes(StandardCharsets.ISO_8859_1));
    while (object.find(at)) {
      Body body = new Body(Integer.parseInt(object.group(1)), object.group(2));
      at = object.end();
      if (object.group(3).startsWith("stream")) {
        Matcher length = LENGTH.matcher(body.text);
        if (!length.find()) {
          throw new IllegalArgumentException("a stream without a length: " + body.text);
        }
        int bytes = Integer.parseInt(length.group(1));
        body.isStream = true;
        body.packed = all.substring(at, at + bytes).getBytes(StandardCharsets.ISO_8859_1);
        at = all.indexOf("endobj", at + bytes) + 6;
      }
      objects.bodies.add(body);
    }
    return objects;
  }

  /** Sets the deflate level of streams written later, 1 to 9. */
  PdfObjects deflatedAt(int level) {
    this.level = level;
    for (Body body : bodies) {
      if (body.isFlate()) {
        body.packed = deflated(inflated(body.packed));
      }
    }
    return this;
  }

  /**
   * Changes the dictionary or other plain text of an object, whether in an object stream or not.
   */
  PdfObjects edit(long number, UnaryOperator<String> change) {
    for (Body body : bodies) {
      if (body.number == number) {
        body.text = change.apply(body.text);
        return this;
      }
      if (body.is("ObjStm") && editWithin(body, number, change)) {
        return this;
      }
    }
    throw new IllegalArgumentException("no object " + number);
  }

  private boolean editWithin(Body body, long number, UnaryOperator<String> change) {
    String content = new String(inflated(body.packed), StandardCharsets.ISO_8859_1);
    int first = number(body.text, "/First (\\d+)");
    String[] index = content.substring(0, first).trim().split("\\s+", -1);
    List<String> texts = new ArrayList<>();
    boolean found = false;
    for (int i = 0; i < index.length; i += 2) {
      int begin = first + Integer.parseInt(index[i + 1]);
      int end = i + 3 < index.length ? first + Integer.parseInt(index[i + 3]) : content.length();
      String text = content.substring(begin, end);
      boolean wanted = Long.parseLong(index[i]) == number;
      found |= wanted;
      texts.add(wanted ? change.apply(text) + "\n" : text);
    }
    if (!found) {
      return false;
    }
    StringBuilder numbers = new StringBuilder();
    StringBuilder joined = new StringBuilder();
    for (int i = 0; i < texts.size(); i++) {
      numbers.append(index[2 * i]).append(' ').append(joined.length()).append(' ');
      joined.append(texts.get(i));
    }
    body.text = body.text.replaceFirst("/First \\d+", "/First " + numbers.length());
    body.packed = deflated((numbers.toString() + joined).getBytes(StandardCharsets.ISO_8859_1));
    return true;
  }

  PdfObjects content(long number, UnaryOperator<byte[]> change) {
    Body body = stream(number);
    body.packed =
        body.isFlate() ? deflated(change.apply(inflated(body.packed))) : change.apply(body.packed);
    return this;
  }

  /** Changes the raw bytes of a stream, regardless of its filter. */
  PdfObjects packed(long number, UnaryOperator<byte[]> change) {
    Body body = stream(number);
    body.packed = change.apply(body.packed);
    return this;
  }

  /** Adds a stream and returns its unused object number. */
  int add(String entries, byte[] content) {
    int number = size();
    Body body = new Body(number, "<<\n/Length 0\n/Filter /FlateDecode\n" + entries + "\n>>");
    body.isStream = true;
    body.packed = deflated(content);
    bodies.add(bodies.size() - 1, body);
    Body xref = bodies.get(bodies.size() - 1);
    // The cross-reference stream is an object as well, and its number increases by one.
    Body moved = new Body(number + 1, xref.text);
    moved.isStream = true;
    moved.packed = xref.packed;
    bodies.set(bodies.size() - 1, moved);
    return number;
  }

  /** The number of the cross-reference stream, which is the highest. */
  private int size() {
    return bodies.get(bodies.size() - 1).number;
  }

  /** Makes the cross-reference of an object refer to the position of another one. */
  PdfObjects pointing(long number, long other) {
    pointing.put((int) number, (int) other);
    return this;
  }

  private Body stream(long number) {
    return bodies.stream()
        .filter(b -> b.number == number && b.isStream)
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no stream " + number));
  }

  byte[] contentOf(long number) {
    Body body = stream(number);
    return body.isFlate() ? inflated(body.packed) : body.packed;
  }

  /** The file in the layout of the program. */
  byte[] bytes() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(head);
    Map<Integer, Integer> offsets = new TreeMap<>();
    Body xref = bodies.get(bodies.size() - 1);
    for (Body body : bodies) {
      offsets.put(body.number, out.size());
      if (body != xref) {
        write(body, out);
      }
    }
    int start = out.size();
    pointing.forEach((number, other) -> offsets.put(number, offsets.get(other)));
    xref.packed = deflated(table(xref, offsets));
    write(xref, out);
    out.writeBytes(text("startxref\n" + start + "\n%%EOF\n"));
    return out.toByteArray();
  }

  private byte[] table(Body xref, Map<Integer, Integer> offsets) {
    Matcher widths = WIDTHS.matcher(xref.text);
    if (!widths.find()) {
      throw new IllegalArgumentException("a cross-reference stream of another kind: " + xref.text);
    }
    int middle = Integer.parseInt(widths.group(1));
    int row = 1 + middle + Integer.parseInt(widths.group(2));
    byte[] table = inflated(xref.packed);
    int rows = xref.number + 1;
    if (table.length != rows * row) {
      byte[] longer = new byte[rows * row];
      System.arraycopy(table, 0, longer, 0, table.length);
      table = longer;
      xref.text =
          xref.text
              .replaceFirst("/Size \\d+", "/Size " + rows)
              .replaceFirst("/Index \\[0 \\d+\\]", "/Index [0 " + rows + "]");
    }
    for (Map.Entry<Integer, Integer> entry : offsets.entrySet()) {
      int at = entry.getKey() * row;
      table[at] = 1;
      for (int i = 0; i < middle; i++) {
        table[at + 1 + i] = (byte) (entry.getValue() >>> (8 * (middle - 1 - i)));
      }
    }
    return table;
  }

  private static void write(Body body, ByteArrayOutputStream out) {
    String dictionary =
        body.isStream
            ? LENGTH.matcher(body.text).replaceFirst("/Length " + body.packed.length)
            : body.text;
    out.writeBytes(text(body.number + " 0 obj\n" + dictionary + "\n"));
    if (body.isStream) {
      out.writeBytes(text("stream\r\n"));
      out.writeBytes(body.packed);
      out.writeBytes(text("\r\nendstream\n"));
    }
    out.writeBytes(text("endobj\n"));
  }

  private static byte[] text(String text) {
    return text.getBytes(StandardCharsets.ISO_8859_1);
  }

  private static int number(String text, String pattern) {
    Matcher found = Pattern.compile(pattern).matcher(text);
    if (!found.find()) {
      throw new IllegalArgumentException("nothing like " + pattern + " in " + text);
    }
    return Integer.parseInt(found.group(1));
  }

  byte[] deflated(byte[] content) {
    Deflater deflater = new Deflater(level);
    deflater.setInput(content);
    deflater.finish();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    byte[] buffer = new byte[1 << 16];
    while (!deflater.finished()) {
      out.write(buffer, 0, deflater.deflate(buffer));
    }
    deflater.end();
    return out.toByteArray();
  }

  static byte[] inflated(byte[] packed) {
    Inflater inflater = new Inflater();
    inflater.setInput(packed);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    byte[] buffer = new byte[1 << 16];
    try {
      while (!inflater.finished()) {
        int n = inflater.inflate(buffer);
        if (n == 0 && (inflater.needsInput() || inflater.needsDictionary())) {
          throw new IllegalArgumentException("a stream that does not end");
        }
        out.write(buffer, 0, n);
      }
    } catch (DataFormatException e) {
      throw new IllegalArgumentException("a stream that is not deflated", e);
    } finally {
      inflater.end();
    }
    return out.toByteArray();
  }
}
