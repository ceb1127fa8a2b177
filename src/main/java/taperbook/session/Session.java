package taperbook.session;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import taperbook.i18n.Texts;
import taperbook.quantity.DistinctNumbers;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;

/**
 * One recorded charging session. Time counts from the zero of the elapsed column, or from the first
 * row of a clock column; the zero is the time of plugging in if {@link #countsFromPluggingIn()}.
 *
 * @param name name of its folder
 * @param conditions the recorded conditions
 * @param traces the readings by channel; never empty
 * @param notes the tester's notes beside readings, in order
 * @param recorded first and last time in the file, s since plugging in
 * @param caveats caveats about the recording itself, such as a counter reset
 * @param review the result of checking the readings for consistency
 */
public record Session(
    String name,
    Facts<ConditionItem> conditions,
    Map<Channel, Trace> traces,
    List<Note> notes,
    Interval recorded,
    List<Caveat> caveats,
    Review review) {
  /** Maximum power of a car at rest on the cable; common practice, no source. */
  public static final double MAX_AT_REST_KILOWATTS = 2;

  /**
   * A note that the tester recorded with a reading.
   *
   * @param second time since plugging in, s
   * @param text the note, not blank
   * @param row the row of the input file
   */
  public record Note(double second, String text, RowRef row) {
    private static final Pattern PAUSE = Pattern.compile("(?i)pause\\b.*", Pattern.DOTALL);

    /**
     * Returns true if the note begins with the word {@code pause}: no energy was charged in its
     * row.
     */
    public boolean isPause() {
      return PAUSE.matcher(text.strip()).matches();
    }
  }

  public Session {
    if (traces.isEmpty()) {
      throw new IllegalArgumentException("a session needs at least one channel");
    }
    traces = Collections.unmodifiableMap(new EnumMap<>(traces));
    notes = List.copyOf(notes);
    caveats = List.copyOf(caveats);
  }

  /** Creates a session whose recording has no caveats. */
  public Session(
      String name,
      Facts<ConditionItem> conditions,
      Map<Channel, Trace> traces,
      List<Note> notes,
      Interval recorded) {
    this(name, conditions, traces, notes, recorded, List.of(), Review.NONE);
  }

  /** Returns the same session with another review. */
  public Session with(Review other) {
    return new Session(name, conditions, traces, notes, recorded, caveats, other);
  }

  /** Returns the session without a reading; if the misread is a time, without its whole row. */
  public Session without(Review.Misread misread) {
    Map<Channel, Trace> others = new EnumMap<>(traces);
    traces.forEach(
        (channel, trace) -> {
          if (misread.channel().isEmpty() || misread.channel().get() == channel) {
            trace
                .withoutRow(misread.row())
                .ifPresentOrElse(t -> others.put(channel, t), () -> others.remove(channel));
          }
        });
    return new Session(name, conditions, others, notes, recorded, caveats, Review.NONE);
  }

  /** Returns the readings of a channel if it was recorded. */
  public Optional<Trace> trace(Channel channel) {
    return Optional.ofNullable(traces.get(channel));
  }

  /** Returns the times at which state of charge, power or energy was read, s since plugging in. */
  public DistinctNumbers rowTimes() {
    return DistinctNumbers.of(
        Stream.of(Channel.SOC, Channel.POWER, Channel.ENERGY_ADDED)
            .flatMap(c -> trace(c).stream())
            .flatMapToDouble(t -> Arrays.stream(t.seconds())));
  }

  /** Returns how the display of the state of charge rounds, if declared. */
  public DisplayRounding displayRounding() {
    return conditions
        .text(ConditionItem.DISPLAY_ROUNDS)
        .map(DisplayRounding::ofWords)
        .orElse(DisplayRounding.NOT_KNOWN);
  }

  /** Returns when the rows were recorded; the rows of a log are recorded at set times. */
  public RowsWritten rowsWritten() {
    boolean log = conditions.text(ConditionItem.READ_FROM).filter("log"::equals).isPresent();
    return conditions
        .text(ConditionItem.ROWS_WRITTEN)
        .map(RowsWritten::ofWords)
        .orElse(log ? RowsWritten.AT_SET_TIMES : RowsWritten.NOT_KNOWN);
  }

  /**
   * Returns true if time counts from plugging in: false if the conditions state otherwise or if
   * power flows at time zero.
   */
  public boolean countsFromPluggingIn() {
    Optional<Estimate> plugged = conditions.amount(ConditionItem.PLUGGED_IN);
    return plugged.isPresent()
        ? plugged.get().bounds().contains(0)
        : trace(Channel.POWER)
            .filter(
                p -> p.firstSecond() <= recorded.low() && p.firstValue() > MAX_AT_REST_KILOWATTS)
            .isEmpty();
  }

  /** Returns the car's name in the conditions. */
  public String vehicle() {
    return conditions
        .text(ConditionItem.VEHICLE)
        .orElse(Texts.of("condition.common.unnamed_vehicle"));
  }
}
