package taperbook.metric.recording;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import taperbook.i18n.Message;
import taperbook.quantity.Estimate;
import taperbook.result.ReportNumber;
import taperbook.session.RowRef;
import taperbook.session.RowRun;

/**
 * A value with the rows that it is computed from, or the reason why there is none. A combination of
 * findings has the rows of all of them, or the first reason.
 *
 * @param <T> type of the value
 */
public sealed interface Finding<T> {
  /** A value that was found. */
  record Found<T>(T known, List<RowRef> rows) implements Finding<T> {
    public Found {
      rows = RowRun.packed(rows);
    }
  }

  /** The reason why there is no value, as a sentence without a full stop. */
  record Missing<T>(Message why) implements Finding<T> {}

  static <T> Finding<T> of(T value, List<RowRef> rows) {
    return new Found<>(value, rows);
  }

  static <T> Finding<T> missing(Message reason) {
    return new Missing<>(reason);
  }

  /** Returns a value, without rows, or the reason if it is empty. */
  static <T> Finding<T> of(Optional<? extends T> value, Message reason) {
    return of(value, () -> reason);
  }

  /** Returns a value, without rows, or the reason if it is empty. */
  static <T> Finding<T> of(Optional<? extends T> value, Supplier<Message> reason) {
    return value.<Finding<T>>map(v -> of(v, List.of())).orElseGet(() -> missing(reason.get()));
  }

  /** Returns a number of the same report. */
  static Finding<Estimate> of(ReportNumber number) {
    return number
        .estimate()
        .map(e -> of(e, number.origin().rows()))
        .orElseGet(() -> missing(number.reason().orElseThrow()));
  }

  /** Returns a function of the value, with the rows of both. */
  default <R> Finding<R> flatMap(Function<? super T, Finding<R>> function) {
    if (!(this instanceof Found<T> found)) {
      return missing(reason().orElseThrow());
    }
    Finding<R> result = function.apply(found.known());
    return result instanceof Found<R> next
        ? of(next.known(), RowRun.union(found.rows(), next.rows()))
        : result;
  }

  /** Returns a function of the value, with the same rows. */
  default <R> Finding<R> map(Function<? super T, ? extends R> function) {
    return flatMap(value -> of(function.apply(value), List.of()));
  }

  /** Returns this value with the rows of both, or the first reason. */
  default Finding<T> and(Finding<?> other) {
    return flatMap(value -> other.map(o -> value));
  }

  /** Returns this finding if it has a value, and otherwise another. */
  default Finding<T> or(Supplier<Finding<T>> other) {
    return this instanceof Found ? this : other.get();
  }

  /** Adds the rows that a value is computed from. */
  default Finding<T> from(Function<? super T, List<RowRef>> rows) {
    return flatMap(value -> of(value, rows.apply(value)));
  }

  /** Returns a value only if it meets a condition. */
  default Finding<T> filter(Predicate<? super T> condition, Message otherwise) {
    return flatMap(value -> condition.test(value) ? of(value, List.of()) : missing(otherwise));
  }

  /** Returns the value, if there is one. */
  default Optional<T> value() {
    return this instanceof Found<T> found ? Optional.of(found.known()) : Optional.empty();
  }

  /** Returns the reason, if there is no value. */
  default Optional<Message> reason() {
    return this instanceof Missing<T> missing ? Optional.of(missing.why()) : Optional.empty();
  }

  /** Returns the rows of the value; none if there is no value. */
  default List<RowRef> rows() {
    return this instanceof Found<T> found ? found.rows() : List.of();
  }
}
