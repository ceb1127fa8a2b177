package taperbook.metric.session;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import taperbook.format.Labels;
import taperbook.format.NumberFormatter;
import taperbook.metric.course.Courses;
import taperbook.metric.fit.EnergyChange;
import taperbook.metric.fit.EnergyFit;
import taperbook.metric.fit.LinePoint;
import taperbook.metric.fit.Student;
import taperbook.metric.fit.YorkLine;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.recording.Recording;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Role;
import taperbook.session.Caveat;
import taperbook.session.ConditionItem;
import taperbook.session.RowRef;
import taperbook.session.Session;

/**
 * Computes the change of the implied full energy against other sessions of the same vehicle, and
 * with three or more sessions its slope over the odometer.
 */
public final class AgeingMetrics {
  private static final String OTHER_CAUSES =
      " The battery's temperature, a new calibration of the displayed state of charge, and other"
          + " states of charge read move it too.";

  /**
   * Largest comparable difference of battery temperature, or of air temperature if that is unknown,
   * °C. Common practice, no source.
   */
  private static final double SIMILAR_TEMPERATURE = 5;

  /** Two sessions determine a slope but not its fit. */
  private static final int LEAST_SESSIONS = 3;

  private static final double SLOPE_DISTANCE = 10_000;

  private final Recording recording;
  private final Optional<EnergyFit> line;
  private final MetricCollector collector;
  private final Set<String> ids = new HashSet<>();

  public AgeingMetrics(Recording recording, Optional<EnergyFit> line, MetricCollector collector) {
    this.recording = recording;
    this.line = line;
    this.collector = collector;
  }

  /** Measures the change against each other session of the vehicle and skips other vehicles. */
  public void measure(List<Session> others) {
    Optional<String> vehicle = vehicle(recording.session());
    List<Aged> aged = new ArrayList<>(List.of(new Aged(recording.session(), line)));
    for (Session other : others) {
      if (vehicle.isPresent() && vehicle.equals(vehicle(other))) {
        aged.add(new Aged(other, measure(other)));
      }
    }
    if (aged.size() >= LEAST_SESSIONS) {
      slope(aged);
    }
  }

  /** A session with its fitted energy per per cent. */
  private record Aged(Session session, Optional<EnergyFit> fit) {
    Optional<Estimate> amount(ConditionItem item) {
      return session.conditions().amount(item);
    }
  }

  /**
   * Fits the slope of full energies over the odometer, weighted by their intervals, per 10,000 km
   * or mi.
   */
  private void slope(List<Aged> aged) {
    Unit unit = recording.formatter().shown(Unit.KILOMETRE);
    Metric metric =
        Metric.charging(
                "full_energy_slope",
                Labels.of("number.full_energy_slope", NumberFormatter.name(unit)),
                Unit.KILOWATT_HOUR,
                Method.FULL_ENERGY_SLOPE)
            .in(Role.ENERGY);
    Optional<String> reason = whyNoSlope(aged);
    if (reason.isPresent()) {
      collector.withheld(metric, reason.get());
      return;
    }
    List<LinePoint> points = new ArrayList<>();
    List<RowRef> rows = new ArrayList<>();
    for (Aged one : aged) {
      EnergyFit fit = one.fit().orElseThrow();
      Estimate full = fit.perPercent().times(100);
      double odometer = one.amount(ConditionItem.ODOMETER).orElseThrow().value();
      double standard = full.bounds().width() / 2 / Student.NORMAL_95;
      points.add(
          new LinePoint(
              unit.fromBase(odometer) / SLOPE_DISTANCE, full.value(), 0, standard * standard));
      rows.addAll(fit.rows());
      rows.addAll(one.session().conditions().rows(ConditionItem.ODOMETER));
    }
    YorkLine slope = YorkLine.through(points);
    Estimate estimate = Estimate.around(slope.slope(), slope.slopeHalf95());
    String meaning =
        "A line through "
            + aged.size()
            + " sessions."
            + (estimate.bounds().contains(0)
                ? " Its slope cannot be told from none. That is not called ageing."
                : OTHER_CAUSES);
    collector.covered(
        metric,
        estimate,
        EnergyFit.COVERAGE,
        rows,
        List.of(new Caveat(Caveat.Kind.ODOMETER, meaning)));
  }

  private static Optional<String> whyNoSlope(List<Aged> aged) {
    for (Aged one : aged) {
      if (one.fit().isEmpty()) {
        return Optional.of("the full energy of " + one.session().name() + " is not known");
      }
      if (one.amount(ConditionItem.ODOMETER).isEmpty()) {
        return Optional.of("the odometer of " + one.session().name() + " is not known");
      }
    }
    long distances =
        aged.stream().flatMap(a -> a.amount(ConditionItem.ODOMETER).stream()).distinct().count();
    if (distances < LEAST_SESSIONS) {
      return Optional.of("fewer than three sessions differ in their odometer");
    }
    return Stream.of(ConditionItem.BATTERY_TEMPERATURE_AT_START, ConditionItem.AMBIENT_TEMPERATURE)
        .filter(item -> aged.stream().allMatch(a -> a.amount(item).isPresent()))
        .findFirst()
        .map(item -> unlike(aged, item))
        .orElse(Optional.of("neither battery nor air temperature is known of all sessions"));
  }

  private static Optional<String> unlike(List<Aged> aged, ConditionItem item) {
    DoubleSummaryStatistics all =
        aged.stream()
            .flatMap(a -> a.amount(item).stream())
            .mapToDouble(Estimate::value)
            .summaryStatistics();
    return all.getMax() - all.getMin() > SIMILAR_TEMPERATURE + 1e-9
        ? Optional.of("the sessions differ by more than 5 \u00b0C in " + item.words())
        : Optional.empty();
  }

  private static Optional<String> vehicle(Session session) {
    return session.conditions().text(ConditionItem.VEHICLE);
  }

  private Optional<EnergyFit> measure(Session session) {
    Recording other =
        Recording.of(
            session,
            new Courses(session, List.of(), Courses.FEW, recording.courses().redraw()),
            recording.formatter());
    Metric metric =
        Metric.charging(
                id(session.name()),
                Labels.of("number.full_energy_change", session.name()),
                Unit.PERCENT,
                Method.FULL_ENERGY_CHANGE)
            .in(Role.ENERGY);
    Optional<EnergyFit> before = CapacityMetrics.fit(other);
    if (line.isEmpty() || before.isEmpty()) {
      Recording without = line.isEmpty() ? recording : other;
      collector.withheld(
          metric, "of " + without.session().name() + ": " + CapacityMetrics.whyNoFit(without));
      return before;
    }
    Estimate change = EnergyChange.percent(line.get().perPercent(), before.get().perPercent());
    List<RowRef> rows = new ArrayList<>(line.get().rows());
    rows.addAll(before.get().rows());
    Caveat meaning = new Caveat(Caveat.Kind.ODOMETER, meaning(change, session));
    collector.covered(metric, change, EnergyFit.COVERAGE, rows, List.of(meaning));
    return before;
  }

  /** Returns the session's name as part of an id; marks the second of two equal ones. */
  private String id(String session) {
    String part = session.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", "_");
    String id = "full_energy_change_" + part;
    int count = 2;
    while (!ids.add(id)) {
      id = "full_energy_change_" + part + "_" + count++;
    }
    return id;
  }

  private String meaning(Estimate change, Session other) {
    String against = "The implied full energy against " + other.name();
    if (change.bounds().contains(0)) {
      return against
          + " cannot be told from no change: its interval holds zero. That is not called ageing.";
    }
    if (change.value() > 0) {
      return against
          + " went up, and its interval excludes zero. That is not ageing."
          + OTHER_CAUSES;
    }
    if (!isLaterThan(other)) {
      return against
          + " is lower, and its interval excludes zero, but this session is not known to be the"
          + " later one. That is not called ageing."
          + OTHER_CAUSES;
    }
    return against
        + " went down, and its interval excludes zero, so that it may be called ageing."
        + OTHER_CAUSES;
  }

  /** Returns true if both days are known and this session's is later; ISO dates sort as text. */
  private boolean isLaterThan(Session other) {
    Optional<String> here = recording.session().conditions().text(ConditionItem.DATE);
    Optional<String> there = other.conditions().text(ConditionItem.DATE);
    return here.isPresent() && there.isPresent() && here.get().compareTo(there.get()) > 0;
  }
}
