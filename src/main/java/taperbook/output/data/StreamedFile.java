package taperbook.output.data;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.util.HexFormat;
import taperbook.session.InputHash;

/**
 * A file that may be too large for memory. It can be written repeatedly, always with the same
 * content.
 */
public interface StreamedFile {
  /** Writes the whole file and closes the stream. */
  void writeTo(OutputStream out) throws IOException;

  /** Returns the whole file. */
  default byte[] bytes() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    written(out);
    return out.toByteArray();
  }

  /** Returns its hash and length under a path, without keeping its content. */
  default InputHash hash(String path) {
    MessageDigest sha256 = InputHash.newDigest();
    Counter counter = new Counter();
    written(new DigestOutputStream(counter, sha256));
    return new InputHash(path, HexFormat.of().formatHex(sha256.digest()), counter.bytes);
  }

  private void written(OutputStream out) {
    try {
      writeTo(out);
    } catch (IOException e) {
      throw new UncheckedIOException(getClass().getSimpleName(), e);
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
