package taperbook.result;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import taperbook.quantity.Estimate;

/** The numbers of one session by id, in measurement order. */
public final class Numbers {
  private static final int HEADLINE_DISTANCES = 3;

  private final Map<String, ReportNumber> byId;

  /**
   * Creates the list of numbers.
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

  /** Returns these numbers followed by more. */
  public Numbers plus(Numbers more) {
    List<ReportNumber> all = all();
    all.addAll(more.all());
    return new Numbers(all);
  }

  /** All ids, in order. */
  public Set<String> ids() {
    return Set.copyOf(byId.keySet());
  }

  /** Returns the numbers with a role, in order. */
  public List<ReportNumber> with(Role role) {
    return byId.values().stream().filter(n -> n.metric().roles().contains(role)).toList();
  }

  /** Returns the numbers with one of several roles, grouped by role. */
  public List<ReportNumber> with(List<Role> roles) {
    return roles.stream().flatMap(role -> with(role).stream()).toList();
  }

  /**
   * Returns the numbers at the top of a report: distance per charging time for at most three
   * distances, then the rest.
   */
  public List<ReportNumber> headline() {
    List<ReportNumber> headline = new ArrayList<>(with(Role.MINUTES));
    headline.subList(Math.min(HEADLINE_DISTANCES, headline.size()), headline.size()).clear();
    headline.addAll(with(Role.HEADLINE));
    return headline;
  }

  /** Returns the number with this id, if present. */
  public Optional<ReportNumber> find(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  /**
   * Returns the number with this id.
   *
   * @throws IllegalArgumentException if there is none
   */
  public ReportNumber get(String id) {
    return find(id).orElseThrow(() -> new IllegalArgumentException("no number is called " + id));
  }

  /** Returns the number with this id, if present and not withheld. */
  public Optional<ReportNumber> measured(String id) {
    return find(id).filter(n -> n.estimate().isPresent());
  }

  /** Returns the value with its interval, if the number exists and was not withheld. */
  public Optional<Estimate> estimate(String id) {
    return find(id).flatMap(ReportNumber::estimate);
  }
}
