package taperbook.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import taperbook.model.Caveat;
import taperbook.model.Estimate;
import taperbook.model.Numbers;
import taperbook.model.ReportNumber;
import taperbook.model.Review.Misread;
import taperbook.model.Session;
import taperbook.words.MisreadWords;
import taperbook.words.Wording;

/**
 * How far readings that do not fit the others move each number: the numbers are measured once more
 * as if such a reading had not been written down.
 */
final class MisreadEffects {
  /** Measuring again takes time: so many of the worst readings are tried. */
  private static final int MOST = 3;

  /** A number moves if its value changes by more than this share of half its interval. */
  private static final double LEAST_MOVE = 0.25;

  private final Wording wording;

  MisreadEffects(Wording wording) {
    this.wording = wording;
  }

  /**
   * The numbers of a session, with a caveat on each that a misread moves.
   *
   * @param numbers the numbers with every reading
   * @param session their session
   * @param measure measures another session in the same way
   */
  Numbers told(Numbers numbers, Session session, Function<Session, Numbers> measure) {
    Numbers told = numbers;
    for (Misread misread : session.review().misreads().stream().limit(MOST).toList()) {
      Session without = session.without(misread);
      if (without.traces().isEmpty()) {
        continue;
      }
      Numbers others = measure.apply(without);
      List<ReportNumber> all = new ArrayList<>();
      told.all().forEach(n -> all.add(with(n, misread, others)));
      told = new Numbers(all);
    }
    return told;
  }

  private ReportNumber with(ReportNumber number, Misread misread, Numbers others) {
    Optional<Estimate> other = others.estimate(number.id());
    Optional<Estimate> own = number.estimate();
    if (own.isEmpty()) {
      return number;
    }
    String reading = MisreadWords.reading(misread, wording);
    if (other.isEmpty()) {
      return number.with(
          caveat("It rests on " + reading + ", which does not fit the other readings."));
    }
    double move = Math.abs(own.get().value() - other.get().value());
    if (move <= LEAST_MOVE * own.get().bounds().width() / 2) {
      return number;
    }
    String without = wording.value(other.get(), number.unit());
    return number.with(
        caveat("Without " + reading + ", which does not fit, it would be " + without + "."));
  }

  private static Caveat caveat(String sentence) {
    return new Caveat(Caveat.Kind.DOUBTFUL_READING, sentence);
  }
}
