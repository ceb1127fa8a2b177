package taperbook.verify;

import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.util.zip.InflaterInputStream;
import java.util.zip.ZipException;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import taperbook.i18n.Texts;

/**
 * Decodes the streams of a PDF with a limit on the decoded size, so that a small file cannot fill
 * the memory.
 */
final class BoundedDecoder {
  /** Maximum decoded size of one stream: that of the largest input file. */
  static final int LARGEST_STREAM_BYTES = 64 * 1024 * 1024;

  /** Maximum decoded size of all streams of a document. */
  static final long LARGEST_DOCUMENT_BYTES = 512L * 1024 * 1024;

  private long unpacked;

  /** Thrown when a limit is exceeded. */
  static final class TooMuch extends IOException {
    private static final long serialVersionUID = 1;

    TooMuch() {
      super(Texts.of("verify.bounded_decoder.it_unpacks_to_more_than"));
    }
  }

  /**
   * Returns the decoded content of a stream; a stream with a filter that this program does not use
   * is left encoded.
   */
  byte[] bytes(COSStream stream) throws IOException {
    boolean flate =
        COSName.FLATE_DECODE.equals(stream.getFilters())
            && stream.getDictionaryObject(COSName.DECODE_PARMS) == null;
    try (InputStream raw = stream.createRawInputStream();
        InputStream in = flate ? new InflaterInputStream(raw) : raw) {
      return read(in);
    } catch (ZipException | EOFException e) {
      throw new IOException(Texts.of("verify.bounded_decoder.stream_cannot_be_unpacked"), e);
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
