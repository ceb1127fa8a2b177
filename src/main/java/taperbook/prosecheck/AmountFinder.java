package taperbook.prosecheck;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import taperbook.quantity.Unit;

/** Finds amounts with units in prose, and times in clock notation. */
final class AmountFinder {
  private static final String NUMBER =
      "(?:(?:(?<![\\w.)])[-\\u2212])?" + NumberWords.DIGITS + "|(?i:" + NumberWords.WORDS + "))";
  private static final String START = "(?<![\\w.,:/$\\u20ac\\u00a3])";
  private static final String SPACE = "[ -]?";

  private static final Pattern RANGE =
      Pattern.compile(
          "(?:(?i:(?<opening>from|between)) )?"
              + START
              + "(?<first>"
              + NUMBER
              + ")(?: ?(?<unit1>"
              + UnitWords.ANY
              + "))?(?: ?(?:-|\\u2013|\\u2212) ?| (?<joint>to|and|until) )(?<second>"
              + NUMBER
              + ")"
              + SPACE
              + "(?<unit>"
              + UnitWords.ANY
              + ")");
  private static final Pattern SINGLE =
      Pattern.compile(
          START + "(?<number>" + NUMBER + ")" + SPACE + "(?<unit>" + UnitWords.ANY + ")");
  private static final String COUNT = "(?:" + NUMBER + ")";
  private static final Pattern COMPOUND =
      Pattern.compile(
          START
              + "(?:(?<h>"
              + COUNT
              + ")[ -]?(?:h|hr|hrs|hours?)(?:,? and)? )?(?<m>"
              + COUNT
              + ")[ -]?(?:minutes?|mins?)(?:(?:,? and)? (?<s>"
              + COUNT
              + ")[ -]?(?:seconds?|secs?|s))?(?!\\w)");
  private static final Pattern CLOCK =
      Pattern.compile(START + "(?:(?<h>\\d{1,2}):)?(?<m>\\d{1,2}):(?<s>[0-5]\\d)(?![\\w:])");
  private static final Pattern PARTS =
      Pattern.compile(
          "(?i)(?<![\\w-])(?:(?<half>half an hour)|(?<three>three[- ]quarters of an hour)"
              + "|(?<quarter>(?:a )?quarter of an hour)|(?<more>an hour and a half)"
              + "|(?<hour>an hour)|(?<minute>(?:half )?a minute))(?!\\w)");

  private static final int FAR_ENOUGH = 40;

  private final String text;
  private final List<Amount> found = new ArrayList<>();
  private final BitSet taken = new BitSet();

  private AmountFinder(String text) {
    this.text = text;
  }

  /** Returns all amounts, in order and without overlaps. */
  static List<Amount> in(String text) {
    AmountFinder finder = new AmountFinder(text);
    finder.partsOfAnHour();
    finder.ranges();
    finder.compounds();
    finder.clocks();
    finder.singles();
    finder.found.sort(Comparator.comparingInt(Amount::start));
    return finder.found;
  }

  private void add(int start, int end, Unit unit, double low, double high, double step) {
    int next = taken.nextSetBit(start);
    if (next < 0 || next >= end) {
      taken.set(start, end);
      Hedge hedge =
          Hedge.beside(
              text.substring(0, start),
              text.substring(end, Math.min(text.length(), end + FAR_ENOUGH)));
      found.add(new Amount(start, end, unit, low, high, step, hedge));
    }
  }

  private void partsOfAnHour() {
    Matcher m = PARTS.matcher(text);
    while (m.find()) {
      boolean minute = m.group("minute") != null;
      double amount =
          m.group("half") != null
              ? 30
              : m.group("three") != null
                  ? 45
                  : m.group("quarter") != null ? 15 : m.group("more") != null ? 90 : 60;
      double minutes = minute ? (m.group().startsWith("half") ? 0.5 : 1) : amount;
      add(m.start(), m.end(), Unit.MINUTE, minutes, minutes, minute ? 0.5 : 1);
      int last = found.size() - 1;
      // Such words are never precise to the minute.
      if (last >= 0 && found.get(last).start() == m.start() && !minute) {
        Amount amountFound = found.get(last);
        if (amountFound.hedge() == Hedge.NONE) {
          found.set(
              last, new Amount(m.start(), m.end(), Unit.MINUTE, minutes, minutes, 1, Hedge.ABOUT));
        }
      }
    }
  }

  private void ranges() {
    Matcher m = RANGE.matcher(text);
    int from = 0;
    while (m.find(from)) {
      from = m.end();
      Unit unit = UnitWords.of(m.group("unit"));
      boolean sameUnit = m.group("unit1") == null || UnitWords.of(m.group("unit1")) == unit;
      // "31 minutes and 171 kW" is not a range, but "between 5 and 6 minutes" is one.
      boolean joined =
          !"and".equals(m.group("joint")) || "between".equalsIgnoreCase(m.group("opening"));
      // "twenty-five" is one number.
      boolean apart =
          m.group("joint") != null
              || !(NumberWords.isWords(m.group("first")) || NumberWords.isWords(m.group("second")));
      double first = NumberWords.value(m.group("first"));
      double second = NumberWords.value(m.group("second"));
      if (sameUnit && joined && apart && first != second) {
        double step =
            Math.max(NumberWords.step(m.group("first")), NumberWords.step(m.group("second")));
        add(m.start(), m.end(), unit, first, second, step);
      } else {
        from = Math.max(m.start() + 1, m.start("first") + 1);
      }
    }
  }

  private void compounds() {
    Matcher m = COMPOUND.matcher(text);
    while (m.find()) {
      if (m.group("h") != null || m.group("s") != null) {
        boolean toTheSecond = m.group("s") != null;
        double seconds = seconds(m);
        double minutes = seconds / 60;
        add(
            m.start(),
            m.end(),
            toTheSecond ? Unit.SECOND : Unit.MINUTE,
            toTheSecond ? seconds : minutes,
            toTheSecond ? seconds : minutes,
            1);
      }
    }
  }

  private void clocks() {
    Matcher m = CLOCK.matcher(text);
    while (m.find()) {
      double seconds = seconds(m);
      add(m.start(), m.end(), Unit.SECOND, seconds, seconds, 1);
    }
  }

  private static double seconds(Matcher m) {
    return count(m, "h") * 3600 + count(m, "m") * 60 + count(m, "s");
  }

  private static double count(Matcher m, String group) {
    return Optional.ofNullable(m.group(group)).map(NumberWords::value).orElse(0.0);
  }

  private void singles() {
    Matcher m = SINGLE.matcher(text);
    while (m.find()) {
      double value = NumberWords.value(m.group("number"));
      double step = NumberWords.step(m.group("number"));
      add(m.start(), m.end(), UnitWords.of(m.group("unit")), value, value, step);
    }
  }
}
