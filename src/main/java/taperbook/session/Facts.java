package taperbook.session;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import taperbook.quantity.Estimate;

/**
 * The facts of one file, by item, in the order of the items.
 *
 * @param <I> the items that the file can have
 */
public final class Facts<I extends Enum<I> & Item> {
  private final String file;
  private final Map<I, Fact> facts;

  /**
   * Copies the facts.
   *
   * @param file the file they stand in
   * @param items the class of the items
   * @param facts the facts that the file states, known or not
   */
  public Facts(String file, Class<I> items, Map<I, Fact> facts) {
    this.file = file;
    Map<I, Fact> sorted = new EnumMap<>(items);
    sorted.putAll(facts);
    this.facts = Collections.unmodifiableMap(sorted);
  }

  /** The file that the facts stand in. */
  public String file() {
    return file;
  }

  /** All stated facts, in the order of the items. */
  public Map<I, Fact> all() {
    return facts;
  }

  /** The fact, if it is stated and known. */
  public Optional<Fact> known(I item) {
    return Optional.ofNullable(facts.get(item)).filter(Fact::isKnown);
  }

  /** The amount in the base unit, if it is stated and known. */
  public Optional<Estimate> amount(I item) {
    return known(item).flatMap(Fact::amount);
  }

  /** The text or word as written, if it is stated and known. */
  public Optional<String> text(I item) {
    return known(item).map(Fact::written);
  }

  /** The row that states the fact, as a list of none or one. */
  public List<RowRef> rows(I item) {
    return known(item).map(Fact::row).map(List::of).orElse(List.of());
  }
}
