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

/** Which numbers moved from one version of a report to the next. */
public final class NumberMoves {
  /** Ends of an interval that moved by less than this share of its width are stated as before. */
  private static final double STATED = 0.05;

  /** The least move of a value that draws alone do not give, in halves of its interval. */
  private static final double VALUE = 0.1;

  /** The same of an end of the interval, which draws know less well. */
  private static final double END = 0.3;

  /** Without other draws to tell by: what they gave at the most for the demo's numbers. */
  private static final double VALUE_BY_ITSELF = 0.2;

  private static final double END_BY_ITSELF = 0.4;

  private NumberMoves() {}

  /**
   * The numbers that moved by more than drawing again moves them, in the order of the new version,
   * without causes.
   *
   * @param sameQuestions whether both versions were asked for the same numbers on the same windows:
   *     only then is a number that only one of them has a finding that came or went
   */
  public static List<MovedNumber> between(
      Resampling before, Resampling after, boolean sameQuestions) {
    boolean alone = before.files().size() == 1 && after.files().size() == 1;
    List<MovedNumber> moved = new ArrayList<>();
    for (String key : keys(before.printed(), after.printed())) {
      boolean inBoth =
          before.printed().find(key).isPresent() && after.printed().find(key).isPresent();
      boolean asked = inBoth || (sameQuestions && !alone);
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

  /** As {@link #between(Redraws, Redraws, boolean)}, of versions that were not drawn again. */
  public static List<MovedNumber> between(NumbersFile before, NumbersFile after) {
    return between(Resampling.none(before), Resampling.none(after), false);
  }

  /** The numbers that are not as they were stated, however little they moved. */
  public static List<MovedNumber> stated(NumbersFile before, NumbersFile after) {
    List<MovedNumber> differing = new ArrayList<>();
    for (String key : keys(before, after)) {
      MovedNumber number = moved(before, after, key);
      if (isStatedOtherwise(number.before(), number.after())) {
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

  private static boolean isStatedOtherwise(Optional<Estimate> was, Optional<Estimate> is) {
    if (was.isEmpty() || is.isEmpty()) {
      return was.isPresent() != is.isPresent();
    }
    double scale = Math.max(1e-12, Math.abs(was.get().value()));
    Interval old = was.get().bounds();
    Interval now = is.get().bounds();
    double still = STATED * Math.max(old.width(), now.width()) + 1e-9 * scale;
    return Math.abs(is.get().value() - was.get().value()) > 1e-9 * scale
        || Math.abs(now.low() - old.low()) > still
        || Math.abs(now.high() - old.high()) > still;
  }
}
