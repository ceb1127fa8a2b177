package taperbook.i18n;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A sentence by its key and arguments, so that a program can tell what it is without parsing it.
 *
 * @param key the key of a text in {@link Texts}
 * @param arguments the values of its braces, formatted
 */
public record Message(String key, List<String> arguments) {
  /** Copies the arguments. */
  public Message {
    arguments = List.copyOf(arguments);
  }

  /** Returns the message with a key; arguments may be messages themselves. */
  public static Message of(String key, @Nullable Object... arguments) {
    return new Message(key, Arrays.stream(arguments).map(String::valueOf).toList());
  }

  /** Returns a message that is a text as it is, such as a tester's own words. */
  public static Message verbatim(String text) {
    return of("metric.common.verbatim", text);
  }

  /** Returns several sentences as one message, in their order. */
  public static Message join(List<Message> sentences) {
    return sentences.stream()
        .reduce((before, next) -> of("metric.common.sentences", before, next))
        .orElseThrow();
  }

  /** Returns the sentence in the language of the program. */
  public String text() {
    return Texts.of(key, arguments.toArray());
  }

  @Override
  public String toString() {
    return text();
  }
}
