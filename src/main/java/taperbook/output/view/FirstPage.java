package taperbook.output.view;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import taperbook.format.NumberFormatter;
import taperbook.format.SessionNames;
import taperbook.i18n.Joined;
import taperbook.i18n.Texts;
import taperbook.result.ReportNumber;
import taperbook.result.ReportResult;
import taperbook.result.Role;
import taperbook.result.SessionResult;
import taperbook.session.Caveat;
import taperbook.session.Caveat.Kind;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;

/** The contents of a report's first page other than the answer and the chart. */
final class FirstPage {
  /** Maximum number of numbers side by side at the top. */
  private static final int MOST_NUMBERS = 3;

  /** Caveats that may change the answer of any session, most severe first. */
  private static final List<Kind> GRAVEST =
      List.of(
          Kind.DOUBTFUL_READING,
          Kind.INTERRUPTION,
          Kind.PRECONDITIONING,
          Kind.BATTERY_TEMPERATURE,
          Kind.STATION_LIMIT);

  /** Caveats of the reported session to use if none of these is present. */
  private static final List<Kind> LESS =
      List.of(Kind.STATION_SHARED, Kind.STARTING_SOC, Kind.RANGE_TEST, Kind.READINGS);

  private final ReportResult result;
  private final NumberViews views;
  private final NumberFormatter formatter;

  FirstPage(ReportResult result, NumberViews views, NumberFormatter formatter) {
    this.result = result;
    this.views = views;
    this.formatter = formatter;
  }

  /** Returns the model, as described at the top of {@code report.ftlh}. */
  Map<String, Object> map() {
    Map<String, Object> map = new LinkedHashMap<>();
    List<ReportNumber> first = numbers();
    map.put("numbers", first.stream().map(n -> HeadlineFormat.cell(views, n)).toList());
    map.put(
        "rest",
        result.main().numbers().headline().stream()
            .filter(n -> !first.contains(n))
            .map(n -> HeadlineFormat.cell(views, n))
            .toList());
    map.put("range", views.view(result.main(), "driven_range_full"));
    map.put("rangeAt", result.main().rangeTest().map(this::conditions).orElse(""));
    List<Mind> mainCaveats = mainCaveats();
    map.put(
        "mind",
        mainCaveats.stream().findFirst().map(m -> m.of() + m.caveat().sentence()).orElse(""));
    map.put("facts", mainCaveats.stream().map(m -> m.of() + m.caveat().fact()).toList());
    return map;
  }

  /** Returns two distances and the window; without distances other headline numbers. */
  private List<ReportNumber> numbers() {
    List<ReportNumber> minutes = result.main().numbers().with(Role.MINUTES);
    List<ReportNumber> rest = result.main().numbers().with(Role.HEADLINE);
    Stream<ReportNumber> first =
        minutes.size() < MOST_NUMBERS
            ? minutes.stream()
            : Stream.of(minutes.get(0), minutes.get(minutes.size() - 1));
    Stream<ReportNumber> window = rest.stream().filter(n -> n.id().startsWith("time_soc_"));
    return Stream.of(first, window, rest.stream())
        .flatMap(s -> s)
        .distinct()
        .limit(MOST_NUMBERS)
        .toList();
  }

  /** Describes speed and temperature of the drive, as stated. */
  private String conditions(RangeTest test) {
    Optional<String> speed =
        test.facts()
            .known(RangeItem.TARGET_SPEED)
            .or(() -> test.facts().known(RangeItem.AVERAGE_SPEED))
            .map(f -> FactTexts.value(f, formatter));
    Optional<String> air =
        test.facts().known(RangeItem.AMBIENT_TEMPERATURE).map(f -> FactTexts.value(f, formatter));
    return Joined.and(Stream.of(speed, air).flatMap(Optional::stream).toList());
  }

  /**
   * Returns the most severe caveats of the reported session, then those of compared sessions with
   * their names, then other caveats of the reported session.
   */
  private List<Mind> mainCaveats() {
    List<SessionResult> sessions = result.sessions();
    SessionNames names = SessionNames.of(sessions.stream().map(SessionResult::session).toList());
    Stream<Mind> severe =
        IntStream.range(0, sessions.size())
            .boxed()
            .flatMap(
                i ->
                    of(GRAVEST, sessions.get(i).caveats())
                        .map(
                            c ->
                                new Mind(
                                    i == 0
                                        ? ""
                                        : Texts.of("page.first_page.of", names.inSentence(i)),
                                    c)));
    Stream<Mind> less = of(LESS, result.main().caveats()).map(c -> new Mind("", c));
    return Stream.concat(severe, less).toList();
  }

  /** A caveat with the name of its session, which is empty for the reported one. */
  private record Mind(String of, Caveat caveat) {}

  private static Stream<Caveat> of(List<Kind> kinds, List<Caveat> caveats) {
    return kinds.stream().flatMap(kind -> caveats.stream().filter(c -> c.kind() == kind));
  }
}
