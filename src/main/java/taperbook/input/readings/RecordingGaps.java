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
    report(rhythm, column, "no row", log);
    for (ChannelColumn channel : channels) {
      // A display that is recorded when it changes has no regular interval. One that is recorded in
      // all rows has the gaps of the rows, which are already reported.
      int size = channel.readings().size();
      if (size >= 0.9 * times.size() && size < times.size()) {
        String what = "no reading of " + channel.channel().columnName();
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
        "a time " + amount(times.second(at) - times.second(at - 1)) + " s after the one above",
        "no jump; clocks go forth an hour where daylight saving begins",
        "state the time zone in columns.csv, or write times with their offset from UTC");
    caveats.add(
        new Caveat(
            Caveat.Kind.CLOCK,
            "The clock jumps by an hour at "
                + new RowRef(file, line)
                + ", as where daylight saving begins. If it does, all times across it are an hour"
                + " too long."));
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
            what + " for " + amount(rhythm.gap(index)) + " s before this one",
            "one each " + amount(rhythm.usualSeconds().orElseThrow()) + " s, as elsewhere",
            "leave it, if the recording stopped there");
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
            "The recording stops "
                + (dropouts == 1 ? "once" : dropouts + " times, at the longest")
                + " for "
                + amount(longestSeconds)
                + " s"
                + (rhythm.usualSeconds().isPresent()
                    ? ", where it usually has a row each "
                        + amount(rhythm.usualSeconds().getAsDouble())
                        + " s"
                    : "")
                + "; first at "
                + new RowRef(file, first)
                + "."));
  }

  private static String amount(double seconds) {
    return BigDecimal.valueOf(seconds)
        .setScale(3, RoundingMode.HALF_EVEN)
        .stripTrailingZeros()
        .toPlainString();
  }
}
