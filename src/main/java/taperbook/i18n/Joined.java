package taperbook.i18n;

import java.util.Collection;

/** Lists in a sentence; conjunctions and their places differ between languages. */
public final class Joined {
  private Joined() {}

  /** Returns the items with "and" between them; empty for no item. */
  public static String and(Collection<String> items) {
    return items.stream().reduce((a, b) -> Texts.of("format.joined.and", a, b)).orElse("");
  }

  /** Returns the items with "or" between them; empty for no item. */
  public static String or(Collection<String> items) {
    return items.stream().reduce((a, b) -> Texts.of("format.joined.or", a, b)).orElse("");
  }
}
