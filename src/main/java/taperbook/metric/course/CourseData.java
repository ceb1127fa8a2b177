package taperbook.metric.course;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.metric.bounds.RowScatter;
import taperbook.quantity.DistinctNumbers;
import taperbook.session.Channel;
import taperbook.session.DisplayRounding;
import taperbook.session.RowsWritten;
import taperbook.session.Session;
import taperbook.session.Trace;

/**
 * The readings of a session as observations of one course, and the time nodes of the course.
 *
 * <p>Charge is in display terms: a display that shows {@code v} in steps of {@code a} has a charge
 * from {@code v} to {@code v + a}, whatever its rounding.
 */
final class CourseData {
  /** Number of cells of a session, in addition to those that its rows create. */
  private static final int CELLS = 160;

  /** Number of cells of a logged session, whose rows create none. */
  private static final int CELLS_OF_LOG = 240;

  /** Maximum number of readings of a log's counter; more have no further information. */
  private static final int COUNTER_READINGS = 480;

  /** Number of cells when readings are checked against each other. */
  private static final int CELLS_OF_CHECK = 80;

  /** Maximum cell width while a station ramps up its power, s. */
  private static final double CELL_AT_START = 6;

  private static final double START_UP = 100;

  /** A change enclosed by two rows within this share of a step is sharper than either row. */
  private static final double SHARP = 0.5;

  /** Delay with which a person notes a change, s: common practice, no source. */
  static final double EYE_DELAY = 0.1;

  /** Variance of the time at which a person notes a change, s²: common practice, no source. */
  static final double EYE_VARIANCE = 0.01;

  /** Error of a display without steps, kW or kWh. */
  private static final double EXACT = 1e-4;

  private final Session session;
  private final List<Observation> observations = new ArrayList<>();
  private final double[] nodes;
  private final boolean counterFromZero;
  private final boolean dense;

  /** Creates the readings from which courses are drawn. */
  CourseData(Session session) {
    this(session, rows(session), false);
  }

  private CourseData(Session session, DistinctNumbers rows, boolean plain) {
    this.session = session;
    Optional<Trace> counter = counter();
    this.counterFromZero =
        counter.filter(t -> t.firstSecond() > 0 || t.firstValue() == 0).isPresent();
    this.dense = !plain && rows.size() > Trace.MOST_BY_HAND;
    this.nodes = plain ? nodesBesideRows(rows) : dense ? nodesOfLog(rows) : nodesAtRows(rows);
    session.trace(Channel.SOC).ifPresent(plain ? this::plainCharge : this::charge);
    session.trace(Channel.POWER).ifPresent(this::power);
    counter.ifPresent(this::energy);
  }

  /** Creates individual readings, each anywhere in its step, to be checked against the others. */
  static CourseData ofSingleReadings(Session session) {
    return new CourseData(session, rows(session), true);
  }

  /** Returns true if the readings of a course are a second or more apart. */
  static boolean spansTime(Session session) {
    DistinctNumbers rows = rows(session);
    return rows.size() > 0 && rows.highest() - rows.lowest() >= 1;
  }

  private Optional<Trace> counter() {
    return counter(session);
  }

  private static Optional<Trace> counter(Session session) {
    return session.trace(Channel.ENERGY_ADDED).filter(t -> t.size() > 1);
  }

  /** Returns true for a logged session, by its number of rows. */
  boolean isDense() {
    return dense;
  }

  double[] nodes() {
    return nodes;
  }

  List<Observation> observations() {
    return observations;
  }

  boolean has(Channel channel) {
    return observations.stream().anyMatch(o -> o.channel() == channel);
  }

  double step(Channel channel) {
    return session.trace(channel).map(t -> 2 * t.halfStep()).orElse(1.0);
  }

  RowsWritten rowsWritten() {
    return session.rowsWritten();
  }

  /** Returns the times of all rows, and of plugging in if the counter was first read later. */
  private static DistinctNumbers rows(Session session) {
    DistinctNumbers rows = session.rowTimes();
    return counter(session).filter(t -> t.firstSecond() > 0).isPresent() ? rows.with(0) : rows;
  }

  private double[] nodesOfLog(DistinctNumbers rows) {
    return LogNodes.of(rows, session.trace(Channel.POWER), CELLS_OF_LOG);
  }

  private static double[] nodesAtRows(DistinctNumbers rows) {
    double first = rows.lowest();
    double last = rows.highest();
    double most = (last - first) / CELLS;
    List<Double> all = new ArrayList<>(List.of(first));
    rows.stream().forEach(row -> divide(all, row, most, 1));
    if (all.size() < 4) {
      all.clear();
      for (int i = 0; i < 4; i++) {
        all.add(first + (last - first) * i / 3);
      }
    }
    return all.stream().mapToDouble(x -> x).toArray();
  }

  /** Places at least two cells between rows, so that no two rows constrain the same cell. */
  private static double[] nodesBesideRows(DistinctNumbers rows) {
    double first = rows.lowest();
    double most = (rows.highest() - first) / CELLS_OF_CHECK;
    List<Double> all = new ArrayList<>(List.of(first));
    rows.stream()
        .forEach(
            row -> {
              boolean early = all.get(all.size() - 1) < first + START_UP;
              divide(all, row, early ? Math.min(CELL_AT_START, most) : most, 2);
            });
    return all.stream().mapToDouble(x -> x).toArray();
  }

  /** Adds nodes up to a time, with a maximum spacing and a minimum number of parts. */
  private static void divide(List<Double> nodes, double to, double most, int least) {
    double from = nodes.get(nodes.size() - 1);
    if (to - from < 0.5) {
      return;
    }
    int parts = Math.max(least, (int) Math.ceil((to - from) / most - 1e-9));
    for (int i = 1; i <= parts; i++) {
      nodes.add(from + (to - from) * i / parts);
    }
  }

  private static double clockVariance(Trace trace) {
    return trace.clockHalfStep() * trace.clockHalfStep() / 3;
  }

  private void charge(Trace soc) {
    double step = 2 * soc.halfStep();
    double within = step * step / 12;
    double clock = clockVariance(soc);
    int n = soc.size();
    boolean[] sharpAfter = new boolean[n];
    if (session.rowsWritten() != RowsWritten.AT_CHANGES) {
      for (int i = 0; i + 1 < n; i++) {
        sharpAfter[i] = isSharp(soc, i);
      }
    }
    for (int i = 0; i < n; i++) {
      boolean first = i == 0;
      boolean last = i == n - 1;
      boolean changed = !first && soc.value(i) > soc.value(i - 1);
      if (sharpAfter[i]) {
        double gap = soc.second(i + 1) - soc.second(i);
        observations.add(
            new Observation(
                Channel.SOC,
                i + 1,
                soc.second(i) + gap / 2,
                soc.value(i + 1),
                0,
                gap * gap / 12 + clock,
                Observation.Form.AT_CHANGE));
      }
      boolean nearChange = sharpAfter[i] || (!first && sharpAfter[i - 1]);
      boolean inside =
          !first && !last && soc.value(i - 1) == soc.value(i) && soc.value(i + 1) == soc.value(i);
      if (nearChange || (soc.isLog() && inside)) {
        continue;
      }
      // A display without steps shows the true value.
      Observation.Form form = step > 0 ? form(changed, last) : Observation.Form.AT_CHANGE;
      double value = form == Observation.Form.WITHIN_STEP ? soc.value(i) + step / 2 : soc.value(i);
      observations.add(new Observation(Channel.SOC, i, soc.second(i), value, within, clock, form));
    }
  }

  private void plainCharge(Trace soc) {
    double step = 2 * soc.halfStep();
    for (int i = 0; i < soc.size(); i++) {
      observations.add(
          new Observation(
              Channel.SOC,
              i,
              soc.second(i),
              soc.value(i) + step / 2,
              step * step / 12,
              clockVariance(soc),
              Observation.Form.WITHIN_STEP));
    }
  }

  private Observation.Form form(boolean changed, boolean last) {
    RowsWritten written = session.rowsWritten();
    if (!changed || written == RowsWritten.AT_SET_TIMES) {
      return Observation.Form.WITHIN_STEP;
    }
    // The last row ends a session, whether or not the display changed.
    return written == RowsWritten.AT_CHANGES && !last
        ? Observation.Form.AT_CHANGE
        : Observation.Form.EITHER;
  }

  /** Returns true if the display changed by one step between two rows that are close in time. */
  private static boolean isSharp(Trace soc, int i) {
    double step = 2 * soc.halfStep();
    double rise = soc.value(i + 1) - soc.value(i);
    if (rise <= 0 || rise > 1.5 * step) {
      return false;
    }
    double gap = soc.second(i + 1) - soc.second(i);
    int from = i;
    while (from > 0 && soc.value(i) - soc.value(from) < 2 * step) {
      from--;
    }
    int to = i + 1;
    while (to + 1 < soc.size() && soc.value(to) - soc.value(i + 1) < 2 * step) {
      to++;
    }
    double rate = (soc.value(to) - soc.value(from)) / (soc.second(to) - soc.second(from));
    return gap * rate <= SHARP * step;
  }

  private void power(Trace power) {
    if (power.isLog()) {
      powerOfLog(power);
      return;
    }
    double step = 2 * power.halfStep();
    for (int i = 0; i < power.size(); i++) {
      observations.add(
          new Observation(
              Channel.POWER,
              i,
              power.second(i),
              power.value(i),
              step * step / 12,
              clockVariance(power),
              Observation.Form.WITHIN_STEP));
    }
  }

  /** Adds the mean power of each cell; its uncertainty includes the noise of its readings. */
  private void powerOfLog(Trace power) {
    double step = 2 * power.halfStep();
    double noise = Math.pow(RowScatter.of(power), 2);
    int last = power.size() - 1;
    int from = 0;
    for (int cell = 1; cell < nodes.length; cell++) {
      int to = from;
      double sum = 0;
      double times = 0;
      while (to <= last && (power.second(to) < nodes[cell] || cell + 1 == nodes.length)) {
        sum += power.value(to);
        times += power.second(to);
        to++;
      }
      int count = to - from;
      if (count > 0) {
        observations.add(
            new Observation(
                Channel.POWER,
                to - 1,
                times / count,
                sum / count,
                step * step / 12 / Math.min(count, 4) + noise / count,
                clockVariance(power) / count,
                Observation.Form.WITHIN_STEP));
      }
      from = to;
    }
  }

  private void energy(Trace counter) {
    double step = 2 * counter.halfStep();
    double variance = step * step / 12;
    double clock = clockVariance(counter);
    double zero = counterFromZero ? 0 : counter.firstValue();
    double lastSecond = Double.NEGATIVE_INFINITY;
    double length = nodes[nodes.length - 1] - nodes[0];
    double spacing = counter.isLog() ? length / COUNTER_READINGS : 0;
    for (int i = 0; i < counter.size(); i++) {
      boolean skipped = counter.second(i) - lastSecond < spacing && i + 1 < counter.size();
      if (skipped) {
        continue;
      }
      lastSecond = counter.second(i);
      observations.add(
          new Observation(
              Channel.ENERGY_ADDED,
              i,
              counter.second(i),
              counter.value(i) - zero,
              variance,
              clock,
              Observation.Form.WITHIN_STEP));
    }
  }

  /** Returns the standard uncertainty of a common offset of all energy counter readings, kWh. */
  double counterOffset() {
    double step = step(Channel.ENERGY_ADDED);
    double offset = counterFromZero ? step / 4 : Math.hypot(step / 4, step / Math.sqrt(12));
    return Math.max(EXACT, offset);
  }

  /** Returns half the clock step, s. */
  double clockHalfStep() {
    return session.traces().values().stream().mapToDouble(Trace::clockHalfStep).max().orElse(0);
  }

  /** Returns the standard uncertainty of a common offset of all power readings, kW. */
  double powerOffset() {
    boolean nearest = session.displayRounding() == DisplayRounding.NEAREST;
    return Math.max(EXACT, step(Channel.POWER) * (nearest ? 0.1 : 0.2));
  }
}
