package taperbook.result;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import taperbook.quantity.Estimate;

/** The numbers of one session by id, in the order they were measured. */
public final class Numbers {
  private static final int HEADLINE_DISTANCES = 3;

  private final Map<String, ReportNumber> byId;

  /**
   * Keeps the numbers in order.
   *
   * @throws IllegalArgumentException if two have the same id
   */
  public Numbers(List<ReportNumber> numbers) {
    Map<String, ReportNumber> map = new LinkedHashMap<>();
    for (ReportNumber number : numbers) {
      if (map.put(number.id(), number) != null) {
        throw new IllegalArgumentException("two numbers are called " + number.id());
      }
    }
    this.byId = map;
  }

  /** All numbers, in order. */
  public List<ReportNumber> all() {
    return new ArrayList<>(byId.values());
  }

  /** These numbers and then more. */
  public Numbers and(Numbers more) {
    List<ReportNumber> all = all();
    all.addAll(more.all());
    return new Numbers(all);
  }

  /** All ids, in order. */
  public Set<String> ids() {
    return Set.copyOf(byId.keySet());
  }

  /** Returns the numbers that are shown in a place, in order. */
  public List<ReportNumber> with(Role role) {
    return byId.values().stream().filter(n -> n.metric().roles().contains(role)).toList();
  }

  /** Returns the numbers that are shown in one of some places, place by place. */
  public List<ReportNumber> with(List<Role> roles) {
    return roles.stream().flatMap(role -> with(role).stream()).toList();
  }

  /**
   * Returns the numbers at the top of a report: what minutes buy for at most three distances, then
   * the rest.
   */
  public List<ReportNumber> headline() {
    List<ReportNumber> headline = new ArrayList<>(with(Role.MINUTES));
    headline.subList(Math.min(HEADLINE_DISTANCES, headline.size()), headline.size()).clear();
    headline.addAll(with(Role.HEADLINE));
    return headline;
  }

  /** The number with this id, if there is one. */
  public Optional<ReportNumber> find(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  /**
   * The number with this id.
   *
   * @throws IllegalArgumentException if there is none
   */
  public ReportNumber get(String id) {
    return find(id).orElseThrow(() -> new IllegalArgumentException("no number is called " + id));
  }

  /** The value with its interval, if the number exists and was not withheld. */
  public Optional<Estimate> estimate(String id) {
    return find(id).flatMap(ReportNumber::estimate);
  }
}
