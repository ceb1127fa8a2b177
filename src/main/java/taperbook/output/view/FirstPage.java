package taperbook.output.view;

import java.util.List;
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
import taperbook.session.Session;

/** The contents of a report's first page other than the answer and the chart. */
public final class FirstPage {
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

  FirstPage(NumberViews views) {
    this.result = views.result();
    this.views = views;
    this.formatter = views.formatter();
  }

  /**
   * The numbers at the top, the driven range, and the caveats that matter most.
   *
   * @param rest all other headline numbers
   * @param caveat the most severe caveat, or empty
   * @param facts the facts of that one and of the next most severe ones
   */
  public record First(
      List<NumberView> numbers,
      List<NumberView> rest,
      NumberView range,
      String rangeAt,
      String caveat,
      List<String> facts) {}

  First view() {
    List<ReportNumber> first = numbers();
    List<NamedCaveat> mainCaveats = mainCaveats();
    return new First(
        first.stream().map(views::headline).toList(),
        result.main().numbers().headline().stream()
            .filter(n -> !first.contains(n))
            .map(views::headline)
            .toList(),
        views.view(result.main(), "driven_range_full"),
        result.main().rangeTest().map(this::conditions).orElse(""),
        mainCaveats.stream().findFirst().map(m -> m.of() + m.caveat().sentence()).orElse(""),
        mainCaveats.stream().map(m -> m.of() + m.caveat().fact()).toList());
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
  private List<NamedCaveat> mainCaveats() {
    Stream<NamedCaveat> severe =
        IntStream.range(0, result.sessions().size())
            .boxed()
            .flatMap(i -> of(GRAVEST, result.sessions().get(i), nameOf(i)));
    return Stream.concat(severe, of(LESS, result.main(), "")).toList();
  }

  private String nameOf(int session) {
    List<Session> sessions = result.sessions().stream().map(SessionResult::session).toList();
    return session == 0
        ? ""
        : Texts.of("page.first_page.of", SessionNames.of(sessions).inSentence(session));
  }

  /** A caveat with the name of its session, which is empty for the reported one. */
  private record NamedCaveat(String of, Caveat caveat) {}

  private static Stream<NamedCaveat> of(List<Kind> kinds, SessionResult session, String name) {
    return kinds.stream()
        .flatMap(kind -> session.caveats().stream().filter(c -> c.kind() == kind))
        .map(caveat -> new NamedCaveat(name, caveat));
  }
}
