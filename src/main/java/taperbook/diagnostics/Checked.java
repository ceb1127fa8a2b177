package taperbook.diagnostics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The outcome of reading or checking input: a usable value with notices, or no value and all errors
 * that were found.
 *
 * @param <T> type of the value
 * @param value the value; present exactly when no problem is an error
 * @param problems all problems, in the order of the input
 */
public record Checked<T>(Optional<T> value, List<Problem> problems) {
  /** Checks that a value and an error exclude each other. */
  public Checked {
    problems = List.copyOf(problems);
    boolean refused = problems.stream().anyMatch(p -> p.severity() == Severity.ERROR);
    if (refused == value.isPresent()) {
      throw new IllegalArgumentException(
          refused ? "a refused input has no value" : "an input without errors has a value");
    }
  }

  /** Creates a usable value without problems. */
  public static <T> Checked<T> good(T value) {
    return new Checked<>(Optional.of(value), List.of());
  }

  /** Creates a refused input; at least one of the problems must be an error. */
  public static <T> Checked<T> refused(List<Problem> problems) {
    return new Checked<>(Optional.empty(), problems);
  }

  /** Keeps the value if no problem is an error, and drops it otherwise. */
  public static <T> Checked<T> of(T value, List<Problem> problems) {
    boolean refused = problems.stream().anyMatch(p -> p.severity() == Severity.ERROR);
    return new Checked<>(refused ? Optional.empty() : Optional.of(value), problems);
  }

  /** Returns true if there is a value. */
  public boolean isUsable() {
    return value.isPresent();
  }

  /** Applies the next step to the value, if present, and joins the problems of both steps. */
  public <R> Checked<R> then(Function<? super T, Checked<R>> next) {
    if (value.isEmpty()) {
      return refused(problems);
    }
    Checked<R> after = next.apply(value.get());
    List<Problem> all = new ArrayList<>(problems);
    all.addAll(after.problems());
    return new Checked<>(after.value(), all);
  }
}
