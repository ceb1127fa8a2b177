package taperbook.session;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/**
 * Path, hash and length of an input file, without its content.
 *
 * @param path path relative to the project folder, with {@code /}
 * @param sha256 SHA-256 of the content, 64 lower-case hexadecimal digits (FIPS 180-4)
 * @param bytes length of the content
 */
public record InputHash(String path, String sha256, long bytes) {
  /** Returns a new digest for SHA-256. */
  public static MessageDigest newDigest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java runtime has SHA-256", e);
    }
  }
}
