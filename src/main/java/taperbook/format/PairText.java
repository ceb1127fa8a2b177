package taperbook.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.i18n.Texts;
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
      sentences.add(Texts.of("format.pair_text.nowhere_in_between_can_readings", one, other));
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
      sentences.add(Texts.of("format.pair_text.elsewhere_readings_cannot_tell_two"));
    }
    return sentences;
  }

  /** Returns the mean lead over the shared range, or why there is none. */
  public Optional<String> overall() {
    Optional<ReportNumber> lead = pair.numbers().find("mean_lead_shared");
    Optional<String> withheld = lead.flatMap(ReportNumber::withheld);
    if (withheld.isPresent()) {
      return Optional.of(
          Texts.of("format.pair_text.and_are_not_held_against", one, other, withheld.get()));
    }
    return pair.shared()
        .flatMap(
            shared ->
                lead.flatMap(ReportNumber::estimate).map(kilowatts -> overall(shared, kilowatts)));
  }

  private String overall(Interval shared, Estimate lead) {
    return Texts.of(
        "format.pair_text.over_that_both_went_through",
        edges(shared.low(), shared.high()),
        power(lead));
  }

  private String power(Estimate lead) {
    if (lead.bounds().contains(0)) {
      return Texts.of("format.pair_text.readings_cannot_tell_which_of");
    }
    boolean ahead = lead.value() > 0;
    return Texts.of(
        "format.pair_text.took_more_than_on_average",
        ahead ? one : other,
        amount(lead, Unit.KILOWATT),
        ahead ? other : one);
  }

  private String time(Estimate gain) {
    if (gain.bounds().contains(0)) {
      return Texts.of("format.pair_text.which_of_two_was_quicker");
    }
    return Texts.of(
        "format.pair_text.was_quicker_by",
        gain.value() > 0 ? one : other,
        amount(gain, Unit.SECOND));
  }

  private Optional<String> led(Stretch stretch) {
    boolean ahead = stretch.order() == Order.AHEAD;
    String gain =
        stretch
            .ids()
            .flatMap(ids -> pair.numbers().estimate(ids.gain()))
            .map(time -> Texts.of("format.pair_text.and", timeInStretch(time, ahead)))
            .orElse("");
    return stretch
        .ids()
        .flatMap(ids -> pair.numbers().estimate(ids.lead()))
        .map(
            lead ->
                Texts.of(
                    "format.pair_text.from_took_more_power_than",
                    edges(stretch),
                    ahead ? one : other,
                    ahead ? other : one,
                    amount(lead, Unit.KILOWATT),
                    gain));
  }

  private String timeInStretch(Estimate gain, boolean ahead) {
    boolean sameWinner = !gain.bounds().contains(0) && gain.value() > 0 == ahead;
    return sameWinner
        ? Texts.of("format.pair_text.was_quicker_there_by", amount(gain, Unit.SECOND))
        : time(gain);
  }

  /** Returns the absolute value of a difference with its uncertainty. */
  public String amount(Estimate signed, Unit unit) {
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
                  ? Texts.of("format.pair_text.curves_cross_at", percent(soc.value()))
                  : Texts.of(
                      "format.pair_text.between_and_curves_cross_by",
                      down(bounds.low()),
                      up(bounds.high()),
                      percent(soc.value()));
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
    return Texts.of("format.pair_text.to", from, to);
  }

  private static String down(double soc) {
    return isWhole(soc) ? percent(soc) : Rounding.down(soc, 1) + "\u00a0%";
  }

  private static String up(double soc) {
    return isWhole(soc) ? percent(soc) : Rounding.up(soc, 1) + "\u00a0%";
  }

  private static String edges(double from, double to) {
    return Texts.of("format.pair_text.to", percent(from), percent(to));
  }

  private static String percent(double soc) {
    return Rounding.nearest(soc, isWhole(soc) ? 0 : 1) + "\u00a0%";
  }

  private static boolean isWhole(double soc) {
    return Math.abs(soc - Math.rint(soc)) < 1e-9;
  }
}
