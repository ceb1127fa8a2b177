package taperbook.metric.session;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Message;
import taperbook.i18n.Texts;
import taperbook.metric.course.Courses;
import taperbook.metric.fit.EnergyChange;
import taperbook.metric.fit.EnergyFit;
import taperbook.metric.fit.LinePoint;
import taperbook.metric.fit.Quantiles;
import taperbook.metric.fit.YorkLine;
import taperbook.metric.recording.Finding;
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
  private static final Message OTHER_CAUSES =
      Message.of("metric.ageing_metrics.battery_s_temperature_new_calibration");

  /**
   * Largest comparable difference of battery temperature, or of air temperature if that is unknown,
   * °C. Common practice, no source.
   */
  private static final double SIMILAR_TEMPERATURE = 5;

  /** Two sessions determine a slope but not its fit. */
  private static final int LEAST_SESSIONS = 3;

  private static final double SLOPE_DISTANCE = 10_000;

  private final Recording recording;
  private final Finding<EnergyFit> line;
  private final MetricCollector collector;
  private final Set<String> ids = new HashSet<>();

  public AgeingMetrics(Recording recording, Finding<EnergyFit> line, MetricCollector collector) {
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
  private record Aged(Session session, Finding<EnergyFit> fit) {
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
                Texts.of("number.full_energy_slope", NumberFormatter.name(unit)),
                Unit.KILOWATT_HOUR,
                Method.FULL_ENERGY_SLOPE)
            .in(Role.ENERGY);
    Optional<Message> reason = whyNoSlope(aged);
    if (reason.isPresent()) {
      collector.withheld(metric, reason.get());
      return;
    }
    List<LinePoint> points = new ArrayList<>();
    List<RowRef> rows = new ArrayList<>();
    for (Aged one : aged) {
      EnergyFit fit = one.fit().value().orElseThrow();
      Estimate full = fit.perPercent().times(100);
      double odometer = one.amount(ConditionItem.ODOMETER).orElseThrow().value();
      double standard = full.bounds().width() / 2 / Quantiles.NORMAL_95;
      points.add(
          new LinePoint(
              unit.fromBase(odometer) / SLOPE_DISTANCE, full.value(), 0, standard * standard));
      rows.addAll(fit.rows());
      rows.addAll(one.session().conditions().rows(ConditionItem.ODOMETER));
    }
    YorkLine slope = YorkLine.through(points);
    Estimate estimate = Estimate.around(slope.slope(), slope.slopeHalf95());
    Message meaning =
        Message.of(
            "metric.ageing_metrics.line_through_sessions",
            aged.size(),
            estimate.bounds().contains(0)
                ? Texts.of("metric.ageing_metrics.its_slope_cannot_be_told")
                : OTHER_CAUSES);
    collector.covered(
        metric,
        Finding.of(estimate, rows),
        EnergyFit.COVERAGE,
        List.of(new Caveat(Caveat.Kind.ODOMETER, meaning)));
  }

  private static Optional<Message> whyNoSlope(List<Aged> aged) {
    for (Aged one : aged) {
      if (one.fit().value().isEmpty()) {
        return Optional.of(
            Message.of("metric.ageing_metrics.full_energy_of_is_not", one.session().name()));
      }
      if (one.amount(ConditionItem.ODOMETER).isEmpty()) {
        return Optional.of(
            Message.of("metric.ageing_metrics.odometer_of_is_not_known", one.session().name()));
      }
    }
    long distances =
        aged.stream().flatMap(a -> a.amount(ConditionItem.ODOMETER).stream()).distinct().count();
    if (distances < LEAST_SESSIONS) {
      return Optional.of(Message.of("metric.ageing_metrics.fewer_than_three_sessions_differ"));
    }
    return Stream.of(ConditionItem.BATTERY_TEMPERATURE_AT_START, ConditionItem.AMBIENT_TEMPERATURE)
        .filter(item -> aged.stream().allMatch(a -> a.amount(item).isPresent()))
        .findFirst()
        .map(item -> unlike(aged, item))
        .orElse(
            Optional.of(Message.of("metric.ageing_metrics.neither_battery_nor_air_temperature")));
  }

  private static Optional<Message> unlike(List<Aged> aged, ConditionItem item) {
    DoubleSummaryStatistics all =
        aged.stream()
            .flatMap(a -> a.amount(item).stream())
            .mapToDouble(Estimate::value)
            .summaryStatistics();
    return all.getMax() - all.getMin() > SIMILAR_TEMPERATURE + 1e-9
        ? Optional.of(
            Message.of("metric.ageing_metrics.sessions_differ_by_more_than", item.words()))
        : Optional.empty();
  }

  private static Optional<String> vehicle(Session session) {
    return session.conditions().text(ConditionItem.VEHICLE);
  }

  private Finding<EnergyFit> measure(Session session) {
    Recording other =
        Recording.of(
            session,
            new Courses(session, List.of(), Courses.FEW, recording.courses().redraw()),
            recording.formatter());
    Metric metric =
        Metric.charging(
                id(session.name()),
                Texts.of("number.full_energy_change", session.name()),
                Unit.PERCENT,
                Method.FULL_ENERGY_CHANGE)
            .in(Role.ENERGY);
    Finding<EnergyFit> before = CapacityMetrics.fit(other);
    Finding<EnergyFit> then = named(before, session);
    Finding<Estimate> change =
        named(line, recording.session())
            .flatMap(a -> then.map(b -> EnergyChange.percent(a.perPercent(), b.perPercent())));
    List<Caveat> meaning =
        change.value().stream()
            .map(e -> new Caveat(Caveat.Kind.ODOMETER, meaning(e, session)))
            .toList();
    collector.covered(metric, change, EnergyFit.COVERAGE, meaning);
    return before;
  }

  /** Returns a fit, or a reason that names its session. */
  private static Finding<EnergyFit> named(Finding<EnergyFit> fit, Session session) {
    return fit.reason()
        .map(why -> Message.of("metric.ageing_metrics.of_session", session.name(), why))
        .map(Finding::<EnergyFit>missing)
        .orElse(fit);
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

  private Message meaning(Estimate change, Session other) {
    String against = Texts.of("metric.ageing_metrics.implied_full_energy_against", other.name());
    if (change.bounds().contains(0)) {
      return Message.of("metric.ageing_metrics.cannot_be_told_from_no", against);
    }
    if (change.value() > 0) {
      return Message.of("metric.ageing_metrics.went_up_and_its_interval", against, OTHER_CAUSES);
    }
    if (!isLaterThan(other)) {
      return Message.of("metric.ageing_metrics.is_lower_and_its_interval", against, OTHER_CAUSES);
    }
    return Message.of("metric.ageing_metrics.went_down_and_its_interval", against, OTHER_CAUSES);
  }

  /** Returns true if both days are known and this session's is later; ISO dates sort as text. */
  private boolean isLaterThan(Session other) {
    Optional<String> here = recording.session().conditions().text(ConditionItem.DATE);
    Optional<String> there = other.conditions().text(ConditionItem.DATE);
    return here.isPresent() && there.isPresent() && here.get().compareTo(there.get()) > 0;
  }
}
