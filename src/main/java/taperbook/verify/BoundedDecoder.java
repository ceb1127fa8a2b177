package taperbook.verify;

import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.util.zip.InflaterInputStream;
import java.util.zip.ZipException;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;

/**
 * Unpacks the streams of a PDF with an eye on how much comes out, so that a small file cannot fill
 * the memory.
 */
final class BoundedDecoder {
  /** Most bytes that one stream may unpack to: the largest input file. */
  static final int LARGEST_STREAM_BYTES = 64 * 1024 * 1024;

  /** Most bytes that all streams of a document may unpack to. */
  static final long LARGEST_DOCUMENT_BYTES = 512L * 1024 * 1024;

  private long unpacked;

  /** Thrown when more comes out than is read. */
  static final class TooMuch extends IOException {
    private static final long serialVersionUID = 1;

    TooMuch() {
      super("it unpacks to more than is read");
    }
  }

  /** The content of a stream; what is packed in another way than ours is left packed. */
  byte[] bytes(COSStream stream) throws IOException {
    boolean flate =
        COSName.FLATE_DECODE.equals(stream.getFilters())
            && stream.getDictionaryObject(COSName.DECODE_PARMS) == null;
    try (InputStream raw = stream.createRawInputStream();
        InputStream in = flate ? new InflaterInputStream(raw) : raw) {
      return read(in);
    } catch (ZipException | EOFException e) {
      throw new IOException("a stream of it cannot be unpacked", e);
    }
  }

  private byte[] read(InputStream in) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    byte[] buffer = new byte[1 << 16];
    for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
      out.write(buffer, 0, n);
      unpacked += n;
      if (out.size() > LARGEST_STREAM_BYTES || unpacked > LARGEST_DOCUMENT_BYTES) {
        throw new TooMuch();
      }
    }
    return out.toByteArray();
  }
}
