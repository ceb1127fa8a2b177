package taperbook.metric;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import taperbook.format.MisreadText;
import taperbook.format.NumberFormatter;
import taperbook.plan.ReportPlan;
import taperbook.quantity.Estimate;
import taperbook.result.Numbers;
import taperbook.result.ReportNumber;
import taperbook.session.Caveat;
import taperbook.session.Review.Misread;
import taperbook.session.Session;

/**
 * The effect of readings that do not fit the others on the numbers of a session, found by measuring
 * again without each such reading.
 *
 * @param numbers the numbers, each with a caveat for every such reading that changes it
 * @param caveats one for every such reading, with the numbers that it changes most
 */
record MisreadEffects(Numbers numbers, List<Caveat> caveats) {
  /** Number of worst readings to try; each costs one measurement. */
  private static final int MOST_TRIED = 3;

  /** Maximum number of numbers that a caveat names. */
  private static final int MOST_NAMED = 6;

  /** A number is affected if its value changes by more than this share of half its interval. */
  private static final double LEAST_MOVE = 0.25;

  /** A number with and without a reading, and its change in halves of its interval. */
  private record Move(ReportNumber number, Optional<Estimate> without, double halves) {}

  /**
   * Measures the effects of all such readings of a session.
   *
   * @param numbers the numbers with every reading
   * @param session their session
   * @param plan the report plan
   * @param measure measures another session in the same way
   */
  static MisreadEffects of(
      Numbers numbers, Session session, ReportPlan plan, Function<Session, Numbers> measure) {
    NumberFormatter formatter = new NumberFormatter(plan.style());
    List<Caveat> caveats = new ArrayList<>();
    Numbers marked = numbers;
    int tried = 0;
    for (Misread misread : session.review().misreads()) {
      Session without = session.without(misread);
      List<Move> moves =
          tried++ < MOST_TRIED && !without.traces().isEmpty()
              ? moves(numbers, measure.apply(without), plan)
              : List.of();
      Caveat caveat =
          new Caveat(
              Caveat.Kind.DOUBTFUL_READING, misfit(misread, formatter) + effect(moves, formatter));
      caveats.add(caveat);
      Set<String> moved = moves.stream().map(m -> m.number().id()).collect(Collectors.toSet());
      marked =
          new Numbers(
              marked.all().stream().map(n -> moved.contains(n.id()) ? n.with(caveat) : n).toList());
    }
    return new MisreadEffects(marked, caveats);
  }

  private static List<Move> moves(Numbers numbers, Numbers others, ReportPlan plan) {
    NumberFormatter formatter = new NumberFormatter(plan.style());
    List<String> headline = numbers.headline().stream().map(ReportNumber::id).toList();
    List<Move> moves = new ArrayList<>();
    for (ReportNumber number : numbers.all()) {
      Optional<Estimate> own = number.estimate();
      Optional<Estimate> other = others.estimate(number.id());
      if (own.isPresent()) {
        double half = own.get().bounds().width() / 2;
        double off =
            other.map(o -> Math.abs(o.value() - own.get().value())).orElse(Double.MAX_VALUE);
        boolean seen =
            other
                .map(o -> !formatter.value(o, number.unit()).equals(formatter.value(number)))
                .orElse(true);
        if (off > LEAST_MOVE * half && seen) {
          moves.add(new Move(number, other, half > 0 ? off / half : 1));
        }
      }
    }
    moves.sort(
        Comparator.comparingInt((Move m) -> place(m, headline))
            .thenComparing(Comparator.comparingDouble(Move::halves).reversed()));
    return moves;
  }

  /** Sort key: headline numbers come first. */
  private static int place(Move move, List<String> headline) {
    int place = headline.indexOf(move.number().id());
    return place < 0 ? headline.size() : place;
  }

  private static String misfit(Misread misread, NumberFormatter formatter) {
    String reading = MisreadText.reading(misread, formatter);
    return Character.toUpperCase(reading.charAt(0))
        + reading.substring(1)
        + " does not fit the other readings: "
        + MisreadText.fitting(misread, formatter)
        + " would. It was kept as it was read.";
  }

  private static String effect(List<Move> moves, NumberFormatter formatter) {
    if (moves.isEmpty()) {
      return "";
    }
    String named =
        moves.stream()
            .limit(MOST_NAMED)
            .map(m -> "\u201c" + m.number().label() + "\u201d " + without(m, formatter))
            .collect(Collectors.joining(", "));
    int rest = moves.size() - MOST_NAMED;
    return " Without it "
        + named
        + (rest > 0 ? ", and " + rest + " more numbers would move" : "")
        + ".";
  }

  private static String without(Move move, NumberFormatter formatter) {
    return move.without()
        .map(
            e ->
                "would be "
                    + formatter.value(e, move.number().unit())
                    + " instead of "
                    + formatter.value(move.number()))
        .orElse("could not be measured");
  }
}
