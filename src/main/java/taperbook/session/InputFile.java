package taperbook.session;

import java.nio.charset.Charset;
import java.util.HexFormat;

/**
 * An input file with its content. The report lists its hash and embeds its bytes.
 *
 * <p>A final class and not a record because it contains an array, which it copies.
 */
public final class InputFile {
  private final String path;
  private final byte[] bytes;
  private final String sha256;

  /**
   * Copies the bytes.
   *
   * @param path path relative to the project folder, with {@code /}
   * @param bytes the content
   */
  public InputFile(String path, byte[] bytes) {
    this(bytes.clone(), path);
  }

  private InputFile(byte[] own, String path) {
    this(path, HexFormat.of().formatHex(InputHash.newDigest().digest(own)), own);
  }

  private InputFile(String path, String sha256, byte[] own) {
    this.path = path;
    this.sha256 = sha256;
    this.bytes = own;
  }

  /**
   * Creates an input file without copying the bytes.
   *
   * @param path path relative to the project folder, with {@code /}
   * @param bytes the content; the caller must not change it afterwards
   */
  public static InputFile wrap(String path, byte[] bytes) {
    return new InputFile(bytes, path);
  }

  /** Path relative to the project folder, with {@code /}. */
  public String path() {
    return path;
  }

  /** Returns the same content under another path, without copying it. */
  public InputFile at(String other) {
    return new InputFile(other, sha256, bytes);
  }

  /** Returns the content itself, which the caller must not change; it may be large. */
  public byte[] content() {
    return bytes;
  }

  /** Returns a copy of the content. */
  public byte[] bytes() {
    return bytes.clone();
  }

  /** Decodes the content; malformed sequences become U+FFFD. */
  public String decoded(Charset charset) {
    return new String(bytes, charset);
  }

  /** SHA-256 of the content, 64 lower-case hexadecimal digits (FIPS 180-4). */
  public String sha256() {
    return sha256;
  }

  /** Returns the path, hash and length without the content. */
  public InputHash withoutContent() {
    return new InputHash(path, sha256, bytes.length);
  }
}
