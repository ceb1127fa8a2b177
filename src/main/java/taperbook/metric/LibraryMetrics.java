package taperbook.metric;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Message;
import taperbook.i18n.Texts;
import taperbook.metric.course.Courses;
import taperbook.metric.quality.DriveCaveats;
import taperbook.metric.quality.SessionCaveats;
import taperbook.metric.recording.Finding;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.recording.RangeFigures;
import taperbook.metric.recording.Recording;
import taperbook.metric.road.DayMetrics;
import taperbook.metric.session.DistanceMetrics;
import taperbook.metric.session.PeakMetrics;
import taperbook.metric.session.SessionTotals;
import taperbook.metric.session.WindowMetrics;
import taperbook.plan.Basis;
import taperbook.plan.LibraryPlan;
import taperbook.plan.Trip;
import taperbook.quantity.Unit;
import taperbook.result.Curve;
import taperbook.result.Drives;
import taperbook.result.LibraryRow;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Numbers;
import taperbook.result.Outcome;
import taperbook.result.ReportNumber;
import taperbook.result.Role;
import taperbook.session.Caveat;
import taperbook.session.ConditionItem;
import taperbook.session.Facts;
import taperbook.session.Input;
import taperbook.session.RangeTest;
import taperbook.session.Session;

/**
 * Measures one session for a library: the numbers of its row and its thinned curve. Uses the same
 * functions and draws as a report, so that both print the same value and interval. The result does
 * not depend on other sessions, so a library is measured session by session.
 */
public final class LibraryMetrics {
  /** The roles of the numbers in a row, in order. */
  private static final List<Role> WANTED =
      List.of(Role.MINUTES, Role.HEADLINE, Role.LIBRARY, Role.DAY);

  private static final Message NO_TEST =
      Message.of("metric.library_metrics.there_is_no_range_test");

  private LibraryMetrics() {}

  /**
   * Measures the row of a session.
   *
   * @param plan the library's plan
   * @param session the session
   * @param rangeTests the available range tests, by name; only those of the session's vehicle are
   *     used
   */
  public static LibraryRow measure(LibraryPlan plan, Session session, List<RangeTest> rangeTests) {
    NumberFormatter formatter = new NumberFormatter(plan.style());
    Drives drives = Drives.of(session.vehicle(), rangeTests);
    List<RangeTest> agreeing = drives.agreeing();
    Recording recording =
        Recording.of(session, new Courses(session, agreeing, Courses.FOR_REPORT, 0), formatter);
    List<Caveat> caveats = new ArrayList<>(SessionCaveats.of(recording));
    caveats.addAll(DriveCaveats.of(drives, formatter));
    Numbers numbers = numbers(plan, recording, agreeing, caveats);
    return new LibraryRow(
        session.name(),
        about(recording),
        numbers,
        curve(recording, agreeing),
        kinds(caveats, numbers));
  }

  private static LibraryRow.About about(Recording recording) {
    Session session = recording.session();
    return new LibraryRow.About(
        session.vehicle(),
        session.conditions().text(ConditionItem.DATE),
        session.conditions().text(ConditionItem.PLACE),
        session.conditions().text(ConditionItem.PRECONDITIONED),
        conditions(recording));
  }

  /**
   * Returns the conditions that sessions must share to be ranked. Limits are common practice
   * without a source.
   */
  private static String conditions(Recording recording) {
    Facts<ConditionItem> facts = recording.session().conditions();
    String station =
        facts
            .amount(ConditionItem.STATION_RATED_POWER)
            .map(
                e ->
                    Texts.of(
                        "metric.library_metrics.station_of",
                        recording.formatter().exactly(e.value(), Unit.KILOWATT)))
            .orElse(Texts.of("metric.library_metrics.station_rating_not_known"));
    String battery =
        switch (facts.text(ConditionItem.PRECONDITIONED).orElse("")) {
          case "yes" -> "preconditioned";
          case "no" -> Texts.of("metric.library_metrics.not_preconditioned");
          default -> Texts.of("metric.library_metrics.preconditioning_not_known");
        };
    String temperature =
        facts
            .amount(ConditionItem.BATTERY_TEMPERATURE_AT_START)
            .map(e -> Texts.of("metric.library_metrics.battery_at", tens(recording, e.value())))
            .or(
                () ->
                    facts
                        .amount(ConditionItem.AMBIENT_TEMPERATURE)
                        .map(
                            e ->
                                Texts.of(
                                    "metric.library_metrics.air_at", tens(recording, e.value()))))
            .orElse(Texts.of("metric.library_metrics.temperature_not_known"));
    return station + ", " + battery + ", " + temperature;
  }

  /** Returns the ten-degree interval that contains a temperature. */
  private static String tens(Recording recording, double celsius) {
    double low = 10 * Math.floor(celsius / 10);
    return Texts.of(
        "metric.library_metrics.to",
        recording.formatter().exactly(low, Unit.CELSIUS),
        recording.formatter().exactly(low + 10, Unit.CELSIUS));
  }

  private static Numbers numbers(
      LibraryPlan plan, Recording recording, List<RangeTest> drives, List<Caveat> caveats) {
    MetricCollector collector =
        new MetricCollector(
            recording.session().name(),
            caveats,
            metric -> WANTED.stream().anyMatch(metric.roles()::contains));
    new PeakMetrics(recording, collector).measure();
    new SessionTotals(recording, collector).measure();
    new WindowMetrics(recording, collector).measure(List.of(plan.window()), plan.window());
    RangeFigures range =
        RangeFigures.of(drives, recording.session().displayRounding(), plan.style().basis());
    new DistanceMetrics(recording, range, collector).measure(plan.distances());
    batteryTemperature(recording, collector);
    if (!drives.isEmpty()) {
      DayMetrics.measure(Trip.day(plan.style().units()), recording, range, collector);
    }
    Numbers all = collector.numbers();
    return new Numbers(all.with(WANTED).stream().map(n -> adapted(n, drives)).toList());
  }

  /** Adapts a message: a library does not name range tests but uses those of its folder. */
  private static ReportNumber adapted(ReportNumber number, List<RangeTest> drives) {
    if (!drives.isEmpty() || !number.reason().equals(Optional.of(RangeFigures.NO_TEST))) {
      return number;
    }
    return new ReportNumber(
        number.metric(), new Outcome.Withheld(NO_TEST), number.origin(), number.caveats());
  }

  private static void batteryTemperature(Recording recording, MetricCollector collector) {
    Metric metric =
        Metric.of(
                LibraryPlan.BATTERY_TEMPERATURE,
                Unit.CELSIUS,
                Method.STATED_FACT,
                Basis.READINGS,
                Set.of(Input.READINGS))
            .in(Role.LIBRARY);
    var facts = recording.session().conditions();
    ConditionItem item = ConditionItem.BATTERY_TEMPERATURE_AT_START;
    collector.measured(
        metric,
        Finding.of(
                facts.amount(item),
                Message.of("metric.library_metrics.battery_s_temperature_at_plugging"))
            .from(t -> facts.rows(item)));
  }

  private static Curve curve(Recording recording, List<RangeTest> drives) {
    RangeFigures range =
        RangeFigures.of(drives, recording.session().displayRounding(), Basis.DRIVEN);
    return new CurveBuilder(recording, range)
        .powerOverSoc()
        .map(c -> CurveThinning.of(c, LibraryRow.MAX_POINTS))
        .orElse(Curve.EMPTY);
  }

  private static Set<Caveat.Kind> kinds(List<Caveat> caveats, Numbers numbers) {
    Set<Caveat.Kind> kinds = EnumSet.noneOf(Caveat.Kind.class);
    caveats.forEach(c -> kinds.add(c.kind()));
    numbers.all().forEach(n -> n.caveats().forEach(c -> kinds.add(c.kind())));
    return kinds;
  }
}
