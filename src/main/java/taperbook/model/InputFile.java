package taperbook.model;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * An input file as it was read: the report names it with its hash and carries its bytes.
 *
 * <p>A final class and not a record because it keeps bytes, which it copies.
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
    this.path = path;
    this.bytes = bytes.clone();
    this.sha256 = hash(this.bytes);
  }

  /** Path relative to the project folder, with {@code /}. */
  public String path() {
    return path;
  }

  /** A copy of the content. */
  public byte[] bytes() {
    return bytes.clone();
  }

  /** SHA-256 of the content, 64 lower-case hexadecimal digits (FIPS 180-4). */
  public String sha256() {
    return sha256;
  }

  /** The file's name, hash and length, without its content. */
  public InputHash withoutContent() {
    return new InputHash(path, sha256, bytes.length);
  }

  private static String hash(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java runtime has SHA-256", e);
    }
  }
}
