package taperbook.measure;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import taperbook.measure.caveat.DriveCaveats;
import taperbook.measure.caveat.SessionCaveats;
import taperbook.measure.charging.DistanceNumbers;
import taperbook.measure.charging.PeakNumbers;
import taperbook.measure.charging.SessionNumbers;
import taperbook.measure.charging.WindowNumbers;
import taperbook.measure.course.Courses;
import taperbook.measure.ledger.Ledger;
import taperbook.measure.recording.RangeFigures;
import taperbook.measure.recording.Recording;
import taperbook.measure.travel.DayNumbers;
import taperbook.model.Basis;
import taperbook.model.Caveat;
import taperbook.model.ConditionItem;
import taperbook.model.Curve;
import taperbook.model.Drives;
import taperbook.model.Estimate;
import taperbook.model.Facts;
import taperbook.model.Input;
import taperbook.model.LibraryPlan;
import taperbook.model.LibraryRow;
import taperbook.model.Method;
import taperbook.model.Metric;
import taperbook.model.Numbers;
import taperbook.model.Outcome;
import taperbook.model.RangeTest;
import taperbook.model.ReportNumber;
import taperbook.model.Role;
import taperbook.model.Session;
import taperbook.model.Trip;
import taperbook.model.Unit;
import taperbook.words.Labels;
import taperbook.words.Wording;

/**
 * Measures one session for a library: the few numbers of its row, by the functions and draws of a
 * report, so that both print one value and one interval, and its curve thinned down. What it takes
 * does not depend on the other sessions, so that a library is measured session by session.
 */
public final class LibraryMeasuring {
  /** What a row has numbers for, in order. */
  private static final List<Role> WANTED =
      List.of(Role.MINUTES, Role.HEADLINE, Role.LIBRARY, Role.DAY);

  private static final String NO_TEST = "there is no range test of this vehicle in the folder";

  private LibraryMeasuring() {}

  /**
   * The row of a session.
   *
   * @param plan what the library asks for
   * @param session the session
   * @param rangeTests the range tests there are, by name; those of the session's own vehicle are
   *     used
   */
  public static LibraryRow measure(LibraryPlan plan, Session session, List<RangeTest> rangeTests) {
    Wording wording = new Wording(plan.style());
    Drives drives = Drives.of(session.vehicle(), rangeTests);
    List<RangeTest> agreeing = drives.agreeing();
    Recording recording =
        Recording.of(session, new Courses(session, agreeing, Courses.FOR_REPORT, 0), wording);
    List<Caveat> caveats = new ArrayList<>(SessionCaveats.of(recording));
    caveats.addAll(DriveCaveats.of(drives, wording));
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

  /** What sessions must have alike to be ranked: the limits are common practice, no source. */
  private static String conditions(Recording recording) {
    Facts<ConditionItem> facts = recording.session().conditions();
    String station =
        facts
            .amount(ConditionItem.STATION_RATED_POWER)
            .map(e -> "station of " + recording.wording().exactly(e.value(), Unit.KILOWATT))
            .orElse("station rating not known");
    String battery =
        switch (facts.text(ConditionItem.PRECONDITIONED).orElse("")) {
          case "yes" -> "preconditioned";
          case "no" -> "not preconditioned";
          default -> "preconditioning not known";
        };
    String temperature =
        facts
            .amount(ConditionItem.BATTERY_TEMPERATURE_AT_START)
            .map(e -> "battery at " + tens(recording, e.value()))
            .or(
                () ->
                    facts
                        .amount(ConditionItem.AMBIENT_TEMPERATURE)
                        .map(e -> "air at " + tens(recording, e.value())))
            .orElse("temperature not known");
    return station + ", " + battery + ", " + temperature;
  }

  /** The ten degrees that a temperature lies in. */
  private static String tens(Recording recording, double celsius) {
    double low = 10 * Math.floor(celsius / 10);
    return recording.wording().exactly(low, Unit.CELSIUS)
        + " to "
        + recording.wording().exactly(low + 10, Unit.CELSIUS);
  }

  private static Numbers numbers(
      LibraryPlan plan, Recording recording, List<RangeTest> drives, List<Caveat> caveats) {
    Ledger ledger =
        new Ledger(
            recording.session().name(),
            caveats,
            metric -> WANTED.stream().anyMatch(metric.roles()::contains));
    new PeakNumbers(recording, ledger).measure();
    new SessionNumbers(recording, ledger).measure();
    new WindowNumbers(recording, ledger).measure(List.of(plan.window()), plan.window());
    RangeFigures range =
        RangeFigures.of(drives, recording.session().displayRounding(), plan.style().basis());
    new DistanceNumbers(recording, range, ledger).measure(plan.distances());
    batteryTemperature(recording, ledger);
    if (!drives.isEmpty()) {
      DayNumbers.measure(Trip.day(plan.style().units()), recording, range, ledger);
    }
    Numbers all = ledger.numbers();
    return new Numbers(all.with(WANTED).stream().map(n -> told(n, drives)).toList());
  }

  /** A library names no range tests, it takes those of the folder. */
  private static ReportNumber told(ReportNumber number, List<RangeTest> drives) {
    if (!drives.isEmpty() || !number.withheld().equals(Optional.of(RangeFigures.NO_TEST))) {
      return number;
    }
    return new ReportNumber(
        number.metric(), new Outcome.Withheld(NO_TEST), number.origin(), number.caveats());
  }

  private static void batteryTemperature(Recording recording, Ledger ledger) {
    Metric entry =
        new Metric(
            LibraryPlan.BATTERY_TEMPERATURE,
            Labels.of("number.battery_temperature_at_start"),
            Unit.CELSIUS,
            Method.STATED_FACT,
            Basis.READINGS,
            Set.of(Input.READINGS),
            Set.of(Role.LIBRARY));
    var facts = recording.session().conditions();
    Optional<Estimate> stated = facts.amount(ConditionItem.BATTERY_TEMPERATURE_AT_START);
    if (stated.isPresent()) {
      ledger.measured(entry, stated.get(), facts.rows(ConditionItem.BATTERY_TEMPERATURE_AT_START));
    } else {
      ledger.withheld(entry, "the battery's temperature at plugging in is not known");
    }
  }

  private static Curve curve(Recording recording, List<RangeTest> drives) {
    RangeFigures range =
        RangeFigures.of(drives, recording.session().displayRounding(), Basis.DRIVEN);
    return new CurveSet(recording, range)
        .powerOverSoc()
        .map(c -> ThinnedCurve.of(c, LibraryRow.MOST_POINTS))
        .orElse(Curve.EMPTY);
  }

  private static Set<Caveat.Kind> kinds(List<Caveat> caveats, Numbers numbers) {
    Set<Caveat.Kind> kinds = EnumSet.noneOf(Caveat.Kind.class);
    caveats.forEach(c -> kinds.add(c.kind()));
    numbers.all().forEach(n -> n.caveats().forEach(c -> kinds.add(c.kind())));
    return kinds;
  }
}
