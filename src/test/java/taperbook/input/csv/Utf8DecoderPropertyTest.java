package taperbook.input.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import taperbook.diagnostics.Checked;
import taperbook.session.InputFile;

/** Compares valid and invalid bytes with the strict decoder of the JDK. */
final class Utf8DecoderPropertyTest {
  private static final String[] PIECES = {
    "a", "12.5,", "\n", "\u00e4", "\u20ac", "\ufffd", "\ufeff", "\ud83d\ude97", "\0"
  };

  static IntStream seeds() {
    return IntStream.rangeClosed(1, 400);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void the_text_is_that_of_the_strict_jdk_decoder(int seed) {
    byte[] bytes = bytes(new Random(seed));
    Checked<String> decoded = Utf8Decoder.decode(new InputFile("r.csv", bytes));
    String expected;
    try {
      // A new decoder reports malformed input, as documented.
      expected = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      expected = "\0";
    }
    if (expected.indexOf('\0') >= 0) {
      assertThat(decoded.isUsable()).isFalse();
    } else {
      assertThat(decoded.value())
          .contains(expected.startsWith("\ufeff") ? expected.substring(1) : expected);
    }
  }

  /** Text fragments, in every second case with one or two bytes that may corrupt them. */
  private static byte[] bytes(Random random) {
    StringBuilder text = new StringBuilder();
    int usual = random.nextInt(4) == 0 ? PIECES.length : PIECES.length - 1;
    for (int i = random.nextInt(30); i >= 0; i--) {
      text.append(PIECES[random.nextInt(usual)]);
    }
    byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
    for (int i = random.nextInt(4) - 1; i > 0; i--) {
      bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
    }
    return bytes;
  }
}
