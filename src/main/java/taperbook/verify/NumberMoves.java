package taperbook.verify;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.result.MovedNumber;

/** Finds the numbers that moved between two versions of a report. */
public final class NumberMoves {
  /** Interval ends that moved by less than this share of the width count as unchanged. */
  private static final double STATED = 0.05;

  /** Minimum move of a value that draws alone do not cause, in half-widths of its interval. */
  private static final double VALUE = 0.1;

  /** The same for an end of the interval, which is less certain. */
  private static final double END = 0.3;

  /** Threshold without other draws: the maximum that draws caused for the demo's numbers. */
  private static final double VALUE_BY_ITSELF = 0.2;

  private static final double END_BY_ITSELF = 0.4;

  private NumberMoves() {}

  /**
   * Returns the numbers that moved by more than redrawing moves them, in the order of the new
   * version, without causes.
   *
   * @param sameRequests whether both versions requested the same numbers on the same windows: only
   *     then does a number that exists in only one of them count as added or removed
   */
  public static List<MovedNumber> between(
      Resampling before, Resampling after, boolean sameRequests) {
    boolean alone = before.files().size() == 1 && after.files().size() == 1;
    List<MovedNumber> moved = new ArrayList<>();
    for (String key : keys(before.printed(), after.printed())) {
      boolean inBoth =
          before.printed().find(key).isPresent() && after.printed().find(key).isPresent();
      boolean asked = inBoth || (sameRequests && !alone);
      if (asked
          && before
              .number(key)
              .isApart(
                  after.number(key),
                  alone ? VALUE_BY_ITSELF : VALUE,
                  alone ? END_BY_ITSELF : END)) {
        moved.add(moved(before.printed(), after.printed(), key));
      }
    }
    return moved;
  }

  /** As {@link #between(Redraws, Redraws, boolean)}, for versions without other draws. */
  public static List<MovedNumber> between(NumbersFile before, NumbersFile after) {
    return between(Resampling.none(before), Resampling.none(after), false);
  }

  /** Returns the numbers whose stated values changed, by any amount. */
  public static List<MovedNumber> stated(NumbersFile before, NumbersFile after) {
    List<MovedNumber> differing = new ArrayList<>();
    for (String key : keys(before, after)) {
      MovedNumber number = moved(before, after, key);
      if (isStatedDifferently(number.before(), number.after())) {
        differing.add(number);
      }
    }
    return differing;
  }

  private static Set<String> keys(NumbersFile before, NumbersFile after) {
    Set<String> keys = new LinkedHashSet<>(after.numbers().keySet());
    keys.addAll(before.numbers().keySet());
    return keys;
  }

  private static MovedNumber moved(NumbersFile before, NumbersFile after, String key) {
    Optional<PublishedNumber> old = before.find(key);
    Optional<PublishedNumber> now = after.find(key);
    PublishedNumber named = now.or(() -> old).orElseThrow();
    return new MovedNumber(
        named.id(),
        named.session(),
        named.against(),
        named.label(),
        Unit.ofSymbol(named.unit()).orElse(Unit.ONE),
        old.flatMap(PublishedNumber::estimate),
        now.flatMap(PublishedNumber::estimate),
        List.of());
  }

  private static boolean isStatedDifferently(Optional<Estimate> before, Optional<Estimate> after) {
    if (before.isEmpty() || after.isEmpty()) {
      return before.isPresent() != after.isPresent();
    }
    double scale = Math.max(1e-12, Math.abs(before.get().value()));
    Interval old = before.get().bounds();
    Interval now = after.get().bounds();
    double still = STATED * Math.max(old.width(), now.width()) + 1e-9 * scale;
    return Math.abs(after.get().value() - before.get().value()) > 1e-9 * scale
        || Math.abs(now.low() - old.low()) > still
        || Math.abs(now.high() - old.high()) > still;
  }
}
