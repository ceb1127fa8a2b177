package taperbook.prosecheck;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import taperbook.quantity.Quantity;

/**
 * A sentence of a passage with its amounts; indices count from its first character.
 *
 * @param passage the passage that contains it
 * @param offset index of its first character in the passage
 * @param text the sentence
 * @param amounts its amounts, in order
 */
record Sentence(Passage passage, int offset, String text, List<Amount> amounts) {
  // No sentence end after "ca." or after a single letter, as in "e.g." and "A. Tester".
  private static final Pattern END =
      Pattern.compile(
          "(?<!\\bca)(?<!\\b[A-Za-z])[.!?][\"\u201d\u2019')]*\\s+(?=[\"\u201c\u2018'(]*[A-Z0-9\ufffc])");
  private static final Pattern STRONG =
      Pattern.compile("; | (?:and|but|while|whereas|(?<![Bb]y )then) |\u2014| \u2013 ");
  private static final Pattern ANY =
      Pattern.compile("[;,] | (?:and|but|while|whereas|(?<![Bb]y )then) |\u2014| \u2013 ");
  private static final Pattern QUOTED = Pattern.compile("\"[^\"]*\"|\u201c[^\u201d]*\u201d");

  Sentence {
    amounts = List.copyOf(amounts);
  }

  /** Returns the sentences of a passage. */
  static List<Sentence> of(Passage passage) {
    List<Sentence> sentences = new ArrayList<>();
    Matcher end = END.matcher(passage.text());
    int from = 0;
    while (end.find()) {
      sentences.add(of(passage, from, end.end()));
      from = end.end();
    }
    sentences.add(of(passage, from, passage.text().length()));
    return sentences;
  }

  private static Sentence of(Passage passage, int from, int to) {
    String text = passage.text().substring(from, to);
    return new Sentence(passage, from, text, AmountFinder.in(text));
  }

  String left(Amount amount) {
    return text.substring(0, amount.start());
  }

  String right(Amount amount) {
    return text.substring(amount.end());
  }

  String written(Amount amount) {
    return text.substring(amount.start(), amount.end());
  }

  boolean isQuoted(Amount amount) {
    return QUOTED
        .matcher(text)
        .results()
        .anyMatch(m -> m.start() <= amount.start() && amount.end() <= m.end());
  }

  /**
   * Returns the part of the sentence about an amount: the clause around it, also split at commas if
   * that clause contains other amounts of the quantity.
   */
  Clause clause(Amount amount) {
    Clause wide = clause(amount, STRONG);
    long alike = wide.amounts().stream().filter(a -> rivals(a, amount)).count();
    return alike < 2 ? wide : narrowClause(amount);
  }

  /** Returns the clause around an amount, also split at commas. */
  Clause narrowClause(Amount amount) {
    return clause(amount, ANY);
  }

  private Clause clause(Amount amount, Pattern boundaries) {
    int from = 0;
    int to = text.length();
    Matcher boundary = boundaries.matcher(text);
    while (boundary.find()) {
      int start = boundary.start();
      int end = boundary.end();
      if (amounts.stream().noneMatch(a -> a.overlaps(start, end))) {
        from = end <= amount.start() ? end : from;
        to = start >= amount.end() ? Math.min(to, start) : to;
      }
    }
    int first = from;
    int last = to;
    List<Amount> within =
        amounts.stream().filter(a -> a.start() >= first && a.end() <= last).toList();
    return new Clause(text.substring(from, to), from, within);
  }

  private static boolean rivals(Amount one, Amount amount) {
    Quantity quantity = amount.unit().quantity();
    boolean ranges = quantity == Quantity.SHARE && one.isRange() != amount.isRange();
    return one.is(quantity) && !ranges;
  }

  /**
   * A part of a sentence.
   *
   * @param text the part
   * @param from index of its first character in the sentence
   * @param amounts the sentence's amounts within it
   */
  record Clause(String text, int from, List<Amount> amounts) {
    Clause {
      amounts = List.copyOf(amounts);
    }
  }
}
