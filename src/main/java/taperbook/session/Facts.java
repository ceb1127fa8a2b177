package taperbook.session;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import taperbook.quantity.Estimate;

/**
 * The facts of one file, in the order of the items.
 *
 * @param <I> the items that the file can contain
 */
public final class Facts<I extends Enum<I> & Item> {
  private final String file;
  private final Map<I, Fact> facts;

  /**
   * Copies the facts.
   *
   * @param file path of the file
   * @param items the class of the items
   * @param facts the facts in the file, known or not
   */
  public Facts(String file, Class<I> items, Map<I, Fact> facts) {
    this.file = file;
    Map<I, Fact> sorted = new EnumMap<>(items);
    sorted.putAll(facts);
    this.facts = Collections.unmodifiableMap(sorted);
  }

  public String file() {
    return file;
  }

  /** Returns all facts, in the order of the items. */
  public Map<I, Fact> all() {
    return facts;
  }

  /** Returns the fact if it is present and known. */
  public Optional<Fact> known(I item) {
    return Optional.ofNullable(facts.get(item)).filter(Fact::isKnown);
  }

  /** Returns the amount in the base unit if it is present and known. */
  public Optional<Estimate> amount(I item) {
    return known(item).flatMap(Fact::amount);
  }

  /** Returns the text or word as entered if it is present and known. */
  public Optional<String> text(I item) {
    return known(item).map(Fact::written);
  }

  /** Returns a list with the row of the fact, or an empty list. */
  public List<RowRef> rows(I item) {
    return known(item).map(Fact::row).map(List::of).orElse(List.of());
  }
}
