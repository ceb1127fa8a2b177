package taperbook.i18n;

import java.util.Collection;
import java.util.List;

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

  /** Returns all items as a list, such as {@code a, b and c}. */
  public static String all(List<String> items) {
    return and(lastApart(items));
  }

  /** Returns alternatives as a list, such as {@code a, b or c}. */
  public static String any(List<String> items) {
    return or(lastApart(items));
  }

  /** Joins all items but the last with commas. */
  private static List<String> lastApart(List<String> items) {
    int last = items.size() - 1;
    return last < 1 ? items : List.of(String.join(", ", items.subList(0, last)), items.get(last));
  }
}
