package taperbook.output;

import java.io.IOException;
import java.io.OutputStream;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import taperbook.session.InputHash;

/** A file too large for memory. It can be written repeatedly, always with the same content. */
public interface StreamedFile {
  /** Writes the whole file and closes the stream. */
  void writeTo(OutputStream out) throws IOException;

  /** Returns its hash and length under a path, by writing it to a discarding stream. */
  static InputHash hash(String path, StreamedFile file) throws IOException {
    try {
      MessageDigest sha256 = MessageDigest.getInstance("SHA-256");
      Counter counter = new Counter();
      file.writeTo(new DigestOutputStream(counter, sha256));
      return new InputHash(path, HexFormat.of().formatHex(sha256.digest()), counter.bytes);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java runtime has SHA-256", e);
    }
  }

  /** Counts the written bytes and discards them. */
  final class Counter extends OutputStream {
    private long bytes;

    private Counter() {}

    @Override
    public void write(int each) {
      bytes++;
    }

    @Override
    public void write(byte[] some, int offset, int length) {
      bytes += length;
    }
  }
}
