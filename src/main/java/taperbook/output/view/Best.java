package taperbook.output.view;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import taperbook.quantity.Unit;
import taperbook.result.ReportNumber;
import taperbook.result.Runs.Spread;

/** Determines which of several sessions' numbers is certainly the best. */
final class Best {
  private Best() {}

  /**
   * Returns the index of the best number, if it certainly differs from each other one.
   *
   * @param numbers the number of each session, empty if it has none
   * @param runs spread between runs
   */
  static OptionalInt of(List<Optional<ReportNumber>> numbers, Spread runs) {
    List<Integer> measured =
        IntStream.range(0, numbers.size())
            .filter(i -> numbers.get(i).flatMap(ReportNumber::estimate).isPresent())
            .boxed()
            .toList();
    if (measured.size() < 2 || measured.size() < numbers.size()) {
      return OptionalInt.empty();
    }
    int sign = sign(numbers.get(measured.get(0)).orElseThrow());
    if (sign == 0) {
      return OptionalInt.empty();
    }
    int best = measured.get(0);
    for (int i : measured) {
      best = sign * value(numbers, i) > sign * value(numbers, best) ? i : best;
    }
    for (int i : measured) {
      if (i != best && !differ(numbers.get(best).orElseThrow(), numbers.get(i).get(), runs)) {
        return OptionalInt.empty();
      }
    }
    return OptionalInt.of(best);
  }

  private static boolean differ(ReportNumber one, ReportNumber other, Spread runs) {
    return one.differsSignificantly(other, Math.hypot(runs.halfWidth(one), runs.halfWidth(other)));
  }

  private static double value(List<Optional<ReportNumber>> numbers, int i) {
    return numbers.get(i).flatMap(ReportNumber::estimate).orElseThrow().value();
  }

  /** Returns 1 if more is better, -1 if less is, 0 if undefined. */
  private static int sign(ReportNumber number) {
    if (number.unit() == Unit.SECOND) {
      return number.id().equals("peak_hold_time") ? 1 : -1;
    }
    return switch (number.unit()) {
      case WATT_HOUR_PER_KILOMETRE -> -1;
      case KILOWATT, KILOMETRE, PER_HOUR -> 1;
      default -> 0;
    };
  }
}
