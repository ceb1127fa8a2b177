package taperbook.input.readings;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.i18n.Message;
import taperbook.i18n.Texts;
import taperbook.session.Caveat;
import taperbook.session.RowRef;
import taperbook.session.Samples;

/**
 * Reports where a recording pauses for much longer than its usual interval, and where its clock
 * jumps.
 */
final class RecordingGaps {
  private final Samples times;
  private final int column;
  private final boolean localClock;
  private final Set<Integer> reportedLines = new TreeSet<>();
  private final List<Caveat> caveats = new ArrayList<>();
  private int dropouts;
  private double longestSeconds;

  RecordingGaps(Samples times, int column, boolean localClock) {
    this.times = times;
    this.column = column;
    this.localClock = localClock;
  }

  /** Reports the gaps of all rows, followed by those in which only one channel has no readings. */
  List<Caveat> report(String file, List<ChannelColumn> channels, ProblemLog log) {
    jump(file, log);
    SamplingInterval rhythm = new SamplingInterval(times);
    report(rhythm, column, Texts.of("input.recording_gaps.no_row"), log);
    for (ChannelColumn channel : channels) {
      // A display that is recorded when it changes has no regular interval. One that is recorded in
      // all rows has the gaps of the rows, which are already reported.
      int size = channel.readings().size();
      if (size >= 0.9 * times.size() && size < times.size()) {
        String what =
            Texts.of("input.recording_gaps.no_reading_of", channel.channel().columnName());
        report(new SamplingInterval(channel.readings()), channel.columnNumber(), what, log);
      }
    }
    caveat(file, rhythm).ifPresent(caveats::add);
    return caveats;
  }

  private void jump(String file, ProblemLog log) {
    int at = localClock ? DaylightSavingJump.forwardJump(times.seconds()) : -1;
    if (at < 0) {
      return;
    }
    int line = times.line(at);
    reportedLines.add(line);
    log.add(
        ProblemCode.CLOCK_JUMPS,
        line,
        column,
        Texts.of(
            "input.recording_gaps.time_s_after_one_above",
            amount(times.second(at) - times.second(at - 1))),
        Texts.of("input.recording_gaps.no_jump_clocks_go_forth"),
        Texts.of("input.common.state_time_zone_in_columns"));
    caveats.add(
        new Caveat(
            Caveat.Kind.CLOCK,
            Message.of("input.recording_gaps.clock_jumps_by_hour_at", new RowRef(file, line))));
  }

  private void report(SamplingInterval rhythm, int number, String what, ProblemLog log) {
    for (int index : rhythm.dropouts()) {
      if (reportedLines.add(rhythm.line(index))) {
        dropouts++;
        longestSeconds = Math.max(longestSeconds, rhythm.gap(index));
        log.add(
            ProblemCode.DROPOUT,
            rhythm.line(index),
            number,
            Texts.of("input.recording_gaps.for_s_before_this_one", what, amount(rhythm.gap(index))),
            Texts.of(
                "input.recording_gaps.one_each_s_as_elsewhere",
                amount(rhythm.usualSeconds().orElseThrow())),
            Texts.of("input.recording_gaps.leave_it_if_recording_stopped"));
      }
    }
  }

  private Optional<Caveat> caveat(String file, SamplingInterval rhythm) {
    if (dropouts == 0) {
      return Optional.empty();
    }
    int first = reportedLines.iterator().next();
    return Optional.of(
        new Caveat(
            Caveat.Kind.GAPS,
            Message.of(
                "input.recording_gaps.recording_stops_for_s_first",
                dropouts == 1
                    ? Texts.of("input.common.once")
                    : Texts.of("input.recording_gaps.times_at_longest", dropouts),
                amount(longestSeconds),
                rhythm.usualSeconds().isPresent()
                    ? Texts.of(
                        "input.recording_gaps.where_it_usually_has_row",
                        amount(rhythm.usualSeconds().getAsDouble()))
                    : "",
                new RowRef(file, first))));
  }

  private static String amount(double seconds) {
    return BigDecimal.valueOf(seconds)
        .setScale(3, RoundingMode.HALF_EVEN)
        .stripTrailingZeros()
        .toPlainString();
  }
}
