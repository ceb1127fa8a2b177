package taperbook.output.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Texts;
import taperbook.output.view.NumberTable.RowView;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.result.Drives;
import taperbook.result.ReportNumber;
import taperbook.result.SessionResult;
import taperbook.session.Caveat;
import taperbook.session.Leg;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;

/** The range test behind the distances: its record, results, legs, and scaling. */
final class RangeBasis {
  private final SessionResult session;
  private final NumberViews views;
  private final NumberFormatter formatter;

  RangeBasis(NumberViews views) {
    this.session = views.result().main();
    this.views = views;
    this.formatter = views.formatter();
  }

  /** What the distances rest on. */
  record Range(
      boolean present,
      List<NumberView> numbers,
      NumberTable<DriveRow> drives,
      NumberTable<RowView> speeds,
      @Unwrapped Optional<TestView> test) {}

  /** The record of a range test. */
  record TestView(
      String name,
      String vehicle,
      List<FactTexts.Stated> facts,
      List<LegView> legs,
      List<String> scaled) {}

  /** A leg of a range test. */
  record LegView(
      String name,
      String distance,
      String duration,
      String energy,
      String start,
      String end,
      String note) {}

  /** The numbers of a drive, its air temperature, and how it is used. */
  record DriveRow(@Unwrapped RowView row, String air, String use) {}

  Range view() {
    return new Range(
        session.rangeTest().isPresent(),
        numbers(
                "consumption",
                "consumption_drive_spread",
                "driven_range_full",
                "driven_range_full_drive_spread")
            .stream()
            .flatMap(Optional::stream)
            .map(views::view)
            .toList(),
        drives(),
        speeds(),
        session
            .rangeTest()
            .map(
                test ->
                    new TestView(
                        test.name(),
                        test.vehicle(),
                        FactTexts.table(test.facts()),
                        test.legs().stream().map(this::leg).toList(),
                        scaled(test))));
  }

  private NumberTable<DriveRow> drives() {
    List<RangeTest> named = session.drives().named();
    List<RangeTest> drives = named.size() > 1 ? named : List.of();
    NumberTable<RowView> numbers =
        views.byColumn(
            Texts.of("head.drive"),
            Texts.all("head.average_speed", "head.consumption", "head.full_range"),
            IntStream.range(0, drives.size()).mapToObj(i -> drive(i + 1, drives.get(i))).toList());
    return numbers.with(
        IntStream.range(0, drives.size())
            .mapToObj(
                i -> new DriveRow(numbers.rows().get(i), air(drives.get(i)), use(drives.get(i))))
            .toList());
  }

  private NumberTable.Row drive(int number, RangeTest test) {
    String id = "drive_" + number + "_";
    return new NumberTable.Row(
        number + ": " + test.name(), numbers(id + "speed", id + "consumption", id + "range"));
  }

  private String use(RangeTest test) {
    if (session.drives().agreeing().contains(test)) {
      return Texts.of("page.range_basis.averaged");
    }
    return session.drives().unused().stream().anyMatch(u -> u.test().equals(test))
        ? Texts.of("page.range_basis.not_used")
        : Texts.of("page.range_basis.over_speed");
  }

  private List<Optional<ReportNumber>> numbers(String... ids) {
    return Stream.of(ids).map(session.numbers()::find).toList();
  }

  private String air(RangeTest test) {
    return FactTexts.valueIfKnown(test.facts().known(RangeItem.AMBIENT_TEMPERATURE), formatter);
  }

  /** Returns range and consumption at each speed of the drives. */
  private NumberTable<RowView> speeds() {
    return views.byColumn(
        Texts.of("axis.speed"),
        Texts.all("head.full_range", "head.consumption"),
        Drives.speedIds(session.numbers()).stream()
            .map(
                at ->
                    new NumberTable.Row(
                        Drives.speedOf(at) + "\u00a0" + (at.endsWith("mph") ? "mph" : "km/h"),
                        numbers("range" + at, "consumption" + at)))
            .toList());
  }

  private List<String> scaled(RangeTest test) {
    List<String> sentences = new ArrayList<>();
    Optional<ReportNumber> range = session.numbers().find("driven_range_full");
    String drive = FactTexts.drive(test.facts(), formatter);
    if (range.flatMap(ReportNumber::estimate).isPresent() && !drive.isEmpty()) {
      sentences.add(Texts.of("page.range_basis.drive_covered", drive));
    }
    range.stream()
        .flatMap(n -> n.caveats().stream())
        .filter(c -> c.kind() == Caveat.Kind.RANGE_TEST)
        .forEach(c -> sentences.add(c.sentence()));
    return sentences;
  }

  private LegView leg(Leg leg) {
    return new LegView(
        leg.name(),
        text(Optional.of(leg.distance()), Unit.KILOMETRE),
        text(leg.duration(), Unit.SECOND),
        text(leg.energyUsed(), Unit.KILOWATT_HOUR),
        text(leg.soc().map(Leg.Span::start), Unit.PERCENT),
        text(leg.soc().map(Leg.Span::end), Unit.PERCENT),
        leg.note());
  }

  private String text(Optional<Estimate> estimate, Unit unit) {
    return estimate.map(e -> formatter.value(e, unit)).orElse("\u2013");
  }
}
