package taperbook.prosecheck;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import taperbook.quantity.Quantity;

/**
 * A typed amount in its clause, with the other amounts there that identify its subject: a window of
 * state of charge, a mark, a distance.
 */
final class Statement {
  private static final Pattern HEDGE_LAST =
      Pattern.compile(
          "(?i)(?:\\b(?:about|around|roughly|approximately|some|circa|nearly|almost|(?:just|a little|"
              + "well)? ?(?:over|under|above|below)|close to|more than|less than|at least|at most"
              + "|no more than|no less than|fewer than|up to|as (?:high|much|long|low) as|a full"
              + "|only|just|a mere|an?|the)\\s+)+$");
  private static final Pattern SHARE_NOT_MARK =
      Pattern.compile("(?i)\\b(?:first|last|next|final|each|every|another|extra|per|by)\\s*$");
  private static final Pattern SHARE_OF_SOMETHING = Pattern.compile("^ of (?!charge|battery)");
  private static final Pattern PAST_THE_PEAK =
      Pattern.compile(
          "(?i)\\b(?:after|past|beyond|from|below|behind|off) (?:the|its|that) peak\\b");

  private static final int FAR_ENOUGH = 160;

  private final Amount own;
  private final Sentence.Clause clause;
  private final Sentence sentence;
  private final Targets targets;

  Statement(Sentence sentence, Amount own, Targets targets) {
    this.sentence = sentence;
    this.own = own;
    this.clause = sentence.clause(own);
    this.targets = targets;
  }

  Amount own() {
    return own;
  }

  Targets targets() {
    return targets;
  }

  /** Searches the clause, on both sides of the amount. */
  boolean matches(Pattern cue) {
    return cue.matcher(withoutPast(clause.text())).find();
  }

  /** Searches the clause, also split at commas. */
  boolean matchesNearby(Pattern cue) {
    return cue.matcher(withoutPast(sentence.narrowClause(own).text())).find();
  }

  /** Searches the whole sentence. */
  boolean matchesInSentence(Pattern cue) {
    return cue.matcher(withoutPast(sentence.text())).find();
  }

  /** Returns true if it is the sentence's only amount of its quantity. */
  boolean isAlone() {
    return sentence.amounts().stream().filter(a -> a.is(own.unit().quantity())).count() == 1;
  }

  /** Returns the powers of the whole sentence. */
  java.util.stream.Stream<Amount> powers() {
    return sentence.amounts().stream().filter(a -> a.is(Quantity.POWER));
  }

  private static String withoutPast(String text) {
    return PAST_THE_PEAK.matcher(text).replaceAll(" ");
  }

  /**
   * Returns true if the words directly before the amount, without its hedge, match at their end.
   */
  boolean follows(Pattern ending) {
    return ending.matcher(left()).find();
  }

  /** Returns true if the words directly after the amount match at their start. */
  boolean precedes(Pattern beginning) {
    return beginning.matcher(sentence.right(own)).find();
  }

  private String left() {
    int from = Math.max(Math.min(clause.from(), own.start()), own.start() - FAR_ENOUGH);
    return HEDGE_LAST.matcher(sentence.text().substring(from, own.start())).replaceFirst("");
  }

  /** Returns the window of state of charge in the clause, if there is exactly one. */
  Optional<Amount> window() {
    return only(others(Quantity.SHARE).filter(a -> a.isRange() && a.low() < a.high()).toList());
  }

  /** Returns the mark of state of charge in the clause, whole per cent, if there is exactly one. */
  Optional<Amount> mark() {
    return only(
        others(Quantity.SHARE)
            .filter(a -> a.wholePercent().isPresent() && a.hedge() == Hedge.NONE)
            .filter(a -> !SHARE_NOT_MARK.matcher(sentence.left(a)).find())
            .filter(a -> !SHARE_OF_SOMETHING.matcher(sentence.right(a)).find())
            .toList());
  }

  /** Returns the requested distance in the clause, if there is exactly one. */
  Optional<Amount> distance() {
    return only(others(Quantity.DISTANCE).toList())
        .filter(a -> a.hedge() == Hedge.NONE)
        .filter(a -> targets.wanted(a).isPresent());
  }

  /**
   * Returns true if the position of a mark shows that it states the state of charge of the amount.
   */
  boolean markedByPosition() {
    return mark().filter(m -> Cues.AT_MARK.matcher(leftOf(m)).find()).isPresent();
  }

  /** Returns true if the sentence names the place of the session. */
  boolean namesPlace() {
    return targets.place().filter(p -> sentence.text().contains(p)).isPresent();
  }

  boolean has(Quantity quantity) {
    return others(quantity).findAny().isPresent();
  }

  /** Returns the other amounts of a quantity in the clause. */
  java.util.stream.Stream<Amount> others(Quantity quantity) {
    return clause.amounts().stream().filter(a -> a.start() != own.start() && a.is(quantity));
  }

  /** Returns the text of the clause between the two amounts, in either order. */
  String between(Amount other) {
    return other.end() <= own.start()
        ? sentence.text().substring(other.end(), own.start())
        : sentence.text().substring(own.end(), other.start());
  }

  /** Returns true for a time such as 6:27, which may be a time of day. */
  boolean writtenAsClock() {
    return sentence.written(own).indexOf(':') >= 0;
  }

  boolean comesBefore(Amount other) {
    return own.end() <= other.start();
  }

  String rightOf(Amount other) {
    return sentence.right(other);
  }

  String leftOf(Amount other) {
    return sentence.text().substring(Math.min(clause.from(), other.start()), other.start());
  }

  private static Optional<Amount> only(List<Amount> amounts) {
    return amounts.size() == 1 ? Optional.of(amounts.get(0)) : Optional.empty();
  }
}
