package taperbook.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.result.PairResult;
import taperbook.result.ReportNumber;
import taperbook.result.Stretch;
import taperbook.result.Stretch.Order;

/** Describes the comparison of two power curves in sentences. */
public final class PairText {
  private final PairResult pair;
  private final String one;
  private final String other;
  private final NumberFormatter wording;

  /**
   * Creates the sentences for one pair.
   *
   * @param one name of the reported session, such as {@code A}
   * @param other name of the session that it is compared with
   */
  public PairText(PairResult pair, String one, String other, NumberFormatter wording) {
    this.pair = pair;
    this.one = one;
    this.other = other;
    this.wording = wording;
  }

  /** Returns the summary, followed by each stretch in order of state of charge. */
  public List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    overall().ifPresent(sentences::add);
    List<Stretch> stretches = pair.stretches();
    if (stretches.size() == 1 && stretches.get(0).order() == Order.UNDECIDED) {
      sentences.add(
          "Nowhere in between can the readings tell the power of "
              + one
              + " and of "
              + other
              + " apart.");
      return sentences;
    }
    int crossing = 0;
    boolean open = false;
    for (int i = 0; i < stretches.size(); i++) {
      boolean crosses = isCrossing(i) && crossing < pair.crossings().size();
      if (stretches.get(i).order() != Order.UNDECIDED) {
        led(stretches.get(i)).ifPresent(sentences::add);
        if (meetsOpposite(i) && crossing < pair.crossings().size()) {
          crossing(crossing++).ifPresent(sentences::add);
        }
      } else if (crosses) {
        crossing(crossing++).ifPresent(sentences::add);
      } else {
        open = true;
      }
    }
    if (open) {
      sentences.add("Elsewhere the readings cannot tell the two apart.");
    }
    return sentences;
  }

  /** Returns the mean lead over the shared range, or why there is none. */
  public Optional<String> overall() {
    Optional<ReportNumber> lead = pair.numbers().find("mean_lead_shared");
    Optional<String> withheld = lead.flatMap(ReportNumber::withheld);
    if (withheld.isPresent()) {
      return Optional.of(
          one
              + " and "
              + other
              + " are not held against each other curve by curve: "
              + withheld.get()
              + ".");
    }
    return pair.shared()
        .flatMap(
            shared ->
                lead.flatMap(ReportNumber::estimate)
                    .map(
                        kilowatts ->
                            "Over the "
                                + edges(shared.low(), shared.high())
                                + " that both went through, "
                                + power(kilowatts)
                                + "."));
  }

  private String power(Estimate lead) {
    if (lead.bounds().contains(0)) {
      return "the readings cannot tell which of the two took more power on average";
    }
    boolean ahead = lead.value() > 0;
    return (ahead ? one : other)
        + " took "
        + amount(lead, Unit.KILOWATT)
        + " more than "
        + (ahead ? other : one)
        + " on average over state of charge";
  }

  private String time(Estimate gain) {
    if (gain.bounds().contains(0)) {
      return "which of the two was quicker the readings cannot tell";
    }
    return (gain.value() > 0 ? one : other) + " was quicker by " + amount(gain, Unit.SECOND);
  }

  private Optional<String> led(Stretch stretch) {
    boolean ahead = stretch.order() == Order.AHEAD;
    return stretch
        .ids()
        .flatMap(
            ids ->
                pair.numbers()
                    .estimate(ids.lead())
                    .map(
                        lead ->
                            "From "
                                + edges(stretch)
                                + " "
                                + (ahead ? one : other)
                                + " took more power than "
                                + (ahead ? other : one)
                                + ", by "
                                + amount(lead, Unit.KILOWATT)
                                + " on average"
                                + pair.numbers()
                                    .estimate(ids.gain())
                                    .map(gain -> ", and " + timeInStretch(gain, ahead))
                                    .orElse("")
                                + "."));
  }

  private String timeInStretch(Estimate gain, boolean ahead) {
    boolean sameWinner = !gain.bounds().contains(0) && gain.value() > 0 == ahead;
    return sameWinner ? "was quicker there by " + amount(gain, Unit.SECOND) : time(gain);
  }

  /** Returns the absolute value of a difference with its uncertainty. */
  private String amount(Estimate signed, Unit unit) {
    Estimate size = signed.value() < 0 ? signed.times(-1) : signed;
    return wording.value(size, unit) + " (" + wording.spread(size, unit) + ")";
  }

  private Optional<String> crossing(int index) {
    return pair.numbers()
        .estimate(pair.crossings().get(index))
        .map(
            soc -> {
              Interval bounds = soc.bounds();
              return bounds.width() < 0.05
                  ? "The curves cross at " + percent(soc.value()) + "."
                  : "Between "
                      + down(bounds.low())
                      + " and "
                      + up(bounds.high())
                      + " the curves cross, by the readings at "
                      + percent(soc.value())
                      + ".";
            });
  }

  /** Returns true if an undecided stretch lies between leads of opposite order. */
  private boolean isCrossing(int index) {
    List<Stretch> all = pair.stretches();
    return index > 0
        && index + 1 < all.size()
        && all.get(index).order() == Order.UNDECIDED
        && areOpposite(all.get(index - 1).order(), all.get(index + 1).order());
  }

  private boolean meetsOpposite(int index) {
    List<Stretch> all = pair.stretches();
    return index + 1 < all.size()
        && areOpposite(all.get(index).order(), all.get(index + 1).order());
  }

  private static boolean areOpposite(Order a, Order b) {
    return a != b && a != Order.UNDECIDED && b != Order.UNDECIDED;
  }

  /**
   * Rounds the edges so that a lead is not printed longer, and an undecided stretch not shorter,
   * than it is.
   */
  public static String edges(Stretch stretch) {
    boolean led = stretch.order() != Order.UNDECIDED;
    String from = led ? up(stretch.from()) : down(stretch.from());
    String to = led ? down(stretch.to()) : up(stretch.to());
    return from + " to " + to;
  }

  private static String down(double soc) {
    return isWhole(soc) ? percent(soc) : Rounding.down(soc, 1) + "\u00a0%";
  }

  private static String up(double soc) {
    return isWhole(soc) ? percent(soc) : Rounding.up(soc, 1) + "\u00a0%";
  }

  private static String edges(double from, double to) {
    return percent(from) + " to " + percent(to);
  }

  private static String percent(double soc) {
    return Rounding.nearest(soc, isWhole(soc) ? 0 : 1) + "\u00a0%";
  }

  private static boolean isWhole(double soc) {
    return Math.abs(soc - Math.rint(soc)) < 1e-9;
  }
}
