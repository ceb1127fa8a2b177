package taperbook.output.pdf;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The colour space sRGB as an ICC profile of version 4.2, which defines the colours of a PDF/A.
 * Java's own profile differs between Java versions, and a report must be byte-identical on all of
 * them.
 *
 * @see "IEC 61966-2-1:1999, clauses 4 and 5 (primaries, white D65, transfer function), adapted to
 *     D50 by the Bradford matrix of ICC.1:2004-10, annex E; tag layout as in its clauses 7 to 10"
 */
final class SrgbProfile {
  private static final int HEADER_BYTES = 128;
  private static final int TAG_BYTES = 12;

  private static final double[] WHITE_D50 = {0.9642, 1.0, 0.8249};
  private static final double[] RED = {0.43607, 0.22249, 0.01392};
  private static final double[] GREEN = {0.38515, 0.71687, 0.09708};
  private static final double[] BLUE = {0.14307, 0.06061, 0.71410};

  /** Bradford adaptation from D65 to D50, row by row. */
  private static final double[] ADAPTATION = {
    1.04788, 0.02292, -0.05022, 0.02959, 0.99048, -0.01707, -0.00925, 0.01508, 0.75168
  };

  /** g, a, b, c, d of Y = (a X + b)^g from X = d, and Y = c X below. */
  private static final double[] TRANSFER = {2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045};

  private SrgbProfile() {}

  /** Returns the profile, always the same bytes. */
  static byte[] bytes() {
    Map<String, byte[]> tags = new LinkedHashMap<>();
    tags.put("desc", text("sRGB (IEC 61966-2-1)"));
    tags.put("cprt", text("No copyright, use freely"));
    tags.put("wtpt", numbers("XYZ ", WHITE_D50));
    tags.put("chad", numbers("sf32", ADAPTATION));
    tags.put("rXYZ", numbers("XYZ ", RED));
    tags.put("gXYZ", numbers("XYZ ", GREEN));
    tags.put("bXYZ", numbers("XYZ ", BLUE));
    tags.put("rTRC", curve());
    tags.put("gTRC", curve());
    tags.put("bTRC", curve());
    int at = HEADER_BYTES + Integer.BYTES + tags.size() * TAG_BYTES;
    int size = at + tags.values().stream().mapToInt(SrgbProfile::padded).sum();
    ByteBuffer profile = ByteBuffer.allocate(size);
    header(profile, size);
    profile.putInt(tags.size());
    for (Map.Entry<String, byte[]> tag : tags.entrySet()) {
      profile.put(ascii(tag.getKey())).putInt(at).putInt(tag.getValue().length);
      at += padded(tag.getValue());
    }
    for (byte[] tag : tags.values()) {
      profile.put(tag).put(new byte[padded(tag) - tag.length]);
    }
    return profile.array();
  }

  private static void header(ByteBuffer profile, int size) {
    profile.putInt(size).putInt(0).putInt(0x04200000);
    profile.put(ascii("mntr")).put(ascii("RGB ")).put(ascii("XYZ "));
    // A date is required: uses that of the standard.
    for (int part : new int[] {1999, 10, 18, 0, 0, 0}) {
      profile.putShort((short) part);
    }
    profile.put(ascii("acsp"));
    profile.position(68);
    for (double part : WHITE_D50) {
      profile.putInt(fixed(part));
    }
    profile.position(HEADER_BYTES);
  }

  private static byte[] text(String text) {
    byte[] letters = text.getBytes(StandardCharsets.UTF_16BE);
    return ByteBuffer.allocate(28 + letters.length)
        .put(ascii("mluc"))
        .putInt(0)
        .putInt(1)
        .putInt(12)
        .put(ascii("enUS"))
        .putInt(letters.length)
        .putInt(28)
        .put(letters)
        .array();
  }

  private static byte[] numbers(String type, double[] values) {
    ByteBuffer tag = ByteBuffer.allocate(8 + values.length * Integer.BYTES);
    tag.put(ascii(type)).putInt(0);
    for (double value : values) {
      tag.putInt(fixed(value));
    }
    return tag.array();
  }

  private static byte[] curve() {
    ByteBuffer tag = ByteBuffer.allocate(12 + TRANSFER.length * Integer.BYTES);
    tag.put(ascii("para")).putInt(0).putShort((short) 3).putShort((short) 0);
    for (double value : TRANSFER) {
      tag.putInt(fixed(value));
    }
    return tag.array();
  }

  /** Converts to a signed fixed-point number with 16 fractional bits. */
  private static int fixed(double value) {
    return (int) Math.round(value * 65536);
  }

  private static int padded(byte[] tag) {
    return (tag.length + 3) / 4 * 4;
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }
}
