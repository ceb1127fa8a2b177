package taperbook.output.article;

import java.io.IOException;
import java.io.Writer;

/** Collects the output of a template up to a length that no report reaches. */
final class BoundedText extends Writer {
  private static final int MOST_CHARACTERS = 20_000_000;
  private final StringBuilder text = new StringBuilder();

  /** Thrown if a template prints without end. */
  static final class TooLong extends IOException {
    private static final long serialVersionUID = 1;

    String words() {
      return "it prints more than " + MOST_CHARACTERS + " characters";
    }
  }

  @Override
  public void write(char[] characters, int offset, int length) throws IOException {
    if (text.length() + length > MOST_CHARACTERS) {
      throw new TooLong();
    }
    text.append(characters, offset, length);
  }

  @Override
  public void flush() {}

  @Override
  public void close() {}

  @Override
  public String toString() {
    return text.toString();
  }
}
