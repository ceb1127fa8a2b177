package taperbook.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import taperbook.quantity.SocWindow;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;

/**
 * What a report should show: the front matter and the article of {@code reports/NAME.md}.
 *
 * @param name name of the report, that of its file without the ending
 * @param heading what stands at the top
 * @param subject what is reported
 * @param wishes which numbers are wanted
 * @param style how they are shown
 * @param article the tester's own text
 */
public record ReportPlan(
    String name, Heading heading, Subject subject, Wishes wishes, Style style, Article article)
    implements Plan {
  /** The plan with the time that a stop takes beside charging, for a trip that states none. */
  public ReportPlan withMeasuredStop(double seconds) {
    RoadWishes road = wishes.road();
    return new ReportPlan(
        name,
        heading,
        subject,
        new Wishes(
            wishes.distances(),
            wishes.socMarks(),
            wishes.windows(),
            new RoadWishes(road.topics(), road.trip().map(t -> t.withMeasured(seconds)))),
        style,
        article);
  }

  /** The plan with temperatures in a unit. */
  public ReportPlan withTemperature(Unit temperature) {
    Style own =
        new Style(
            style.units(),
            style.basis(),
            style.template(),
            style.film(),
            style.paper(),
            temperature);
    return new ReportPlan(name, heading, subject, wishes, own, article);
  }

  /**
   * What stands at the top.
   *
   * @param title title of the report
   * @param author who answers for it; may be empty
   * @param published day of publication, if stated
   * @param history whether this version is published, and what was put right before
   * @param answer the answer in the tester's words, if it is not to be composed
   */
  public record Heading(
      String title,
      String author,
      Optional<LocalDate> published,
      History history,
      Optional<Article> answer) {
    /** A heading of a draft whose answer is composed. */
    public Heading(String title, String author, Optional<LocalDate> published) {
      this(title, author, published, History.DRAFT);
    }

    /** A heading whose answer is composed. */
    public Heading(String title, String author, Optional<LocalDate> published, History history) {
      this(title, author, published, history, Optional.empty());
    }

    /** Day of this version: that of the last correction, or else of publication. */
    public Optional<LocalDate> versionDay() {
      List<Reason> all = history.corrections();
      return all.isEmpty() ? published : Optional.of(all.get(all.size() - 1).day());
    }
  }

  /**
   * Where a report stands between draft and publication.
   *
   * @param published true if this version is published and so must not change unsaid
   * @param corrections what was put right since it was first published, in order
   */
  public record History(boolean published, List<Reason> corrections) {
    /** A draft without corrections. */
    public static final History DRAFT = new History(false, List.of());

    /** Copies the list. */
    public History {
      corrections = List.copyOf(corrections);
    }
  }

  /**
   * Why a published report was changed.
   *
   * @param day when
   * @param words why, in the tester's words
   */
  public record Reason(LocalDate day, String words) {}

  /**
   * What is reported.
   *
   * @param session name of the session
   * @param compare names of the sessions it is held against, in order
   * @param rangeTests names of range tests; each session uses those of its own vehicle
   * @param repeats names of the sessions that repeat the reported one, in order
   * @param runSpread how far runs differ, if the tester states it
   * @param stops names of the sessions of one day in their order, the reported one among them;
   *     perhaps none
   * @param season names of warm and cold runs of the reported car; perhaps none
   */
  public record Subject(
      String session,
      List<String> compare,
      List<String> rangeTests,
      List<String> repeats,
      Optional<RunSpread> runSpread,
      List<String> stops,
      Season<String, String> season) {
    /** Copies the lists. */
    public Subject {
      compare = List.copyOf(compare);
      rangeTests = List.copyOf(rangeTests);
      repeats = List.copyOf(repeats);
      stops = List.copyOf(stops);
    }

    /** A session without repeats and further stops. */
    public Subject(String session, List<String> compare, List<String> rangeTests) {
      this(session, compare, rangeTests, List.of(), Optional.empty(), List.of(), Season.none());
    }
  }

  /**
   * Runs of one car in pairs, by turns warm and cold.
   *
   * @param sessions sessions, or their names
   * @param drives range tests, or their names
   */
  public record Season<S, D>(List<S> sessions, List<D> drives) {
    /** Copies the lists. */
    public Season {
      sessions = List.copyOf(sessions);
      drives = List.copyOf(drives);
    }

    /** No pair. */
    public static <S, D> Season<S, D> none() {
      return new Season<>(List.of(), List.of());
    }
  }

  /**
   * A run-to-run spread from elsewhere.
   *
   * @param share standard deviation of power and charging times between runs, as a share
   * @param source where it comes from, in the tester's words
   */
  public record RunSpread(double share, String source) {}

  /**
   * Which numbers are wanted.
   *
   * @param distances distances to know the time for, in order
   * @param socMarks states of charge to know the time to, whole %, rising
   * @param windows windows of state of charge; the first is the one for the headline; not empty
   * @param road what is wanted of the road; perhaps nothing
   */
  public record Wishes(
      List<WantedDistance> distances,
      List<Integer> socMarks,
      List<SocWindow> windows,
      RoadWishes road) {
    /** Copies the lists. */
    public Wishes {
      distances = List.copyOf(distances);
      socMarks = List.copyOf(socMarks);
      windows = List.copyOf(windows);
      if (windows.isEmpty()) {
        throw new IllegalArgumentException("a report needs a window");
      }
    }

    /** Wishes that ask nothing of the road. */
    public Wishes(List<WantedDistance> distances, List<Integer> socMarks, List<SocWindow> windows) {
      this(distances, socMarks, windows, RoadWishes.NONE);
    }
  }

  /**
   * How numbers are shown.
   *
   * @param units {@link Unit#MILE} or {@link Unit#KILOMETRE}: the unit for every distance
   * @param basis {@link Basis#DRIVEN} or {@link Basis#RATED}: what headline distances rest on
   * @param template name of the template
   * @param film what is made for a film
   * @param paper what the PDF is laid out for
   * @param temperature {@link Unit#CELSIUS} or {@link Unit#FAHRENHEIT}
   */
  public record Style(
      Unit units, Basis basis, String template, Film film, Paper paper, Unit temperature) {
    /** A style with degrees Celsius. */
    public Style(Unit units, Basis basis, String template, Film film, Paper paper) {
      this(units, basis, template, film, paper, Unit.CELSIUS);
    }

    /** The style of a report on A4 without pictures for a film. */
    public Style(Unit units, Basis basis, String template) {
      this(units, basis, template, Film.NONE, Paper.A4);
    }
  }

  /**
   * What is made for a film of the session.
   *
   * @param charts whether charts are also painted for it: dark, clear and small
   * @param offsetSeconds time of the film at which elapsed time is 0, s, not negative; empty if it
   *     is not stated
   */
  public record Film(boolean charts, OptionalInt offsetSeconds) {
    /** No charts for a film, whose time is not known. */
    public static final Film NONE = new Film(false, OptionalInt.empty());

    /** Checks the offset. */
    public Film {
      if (offsetSeconds.orElse(0) < 0) {
        throw new IllegalArgumentException("offset of a film: " + offsetSeconds + " s");
      }
    }
  }

  /**
   * The tester's own text.
   *
   * @param markdown the text in Markdown, perhaps empty
   * @param file the file it stands in
   * @param firstLine the line of the file that the text begins on
   */
  public record Article(String markdown, String file, int firstLine) {}
}
