package taperbook.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import taperbook.quantity.SocWindow;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;

/**
 * The plan of a report: the front matter and the article of {@code reports/NAME.md}.
 *
 * @param name name of the report: that of its file without the extension
 * @param heading title, author and publication
 * @param subject the sessions and range tests
 * @param wishes the requested numbers
 * @param style how they are shown
 * @param article the tester's own text
 */
public record ReportPlan(
    String name, Heading heading, Subject subject, Wishes wishes, Style style, Article article)
    implements Plan {
  /** Returns the plan with a measured stop overhead, for a trip that states none. */
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

  /** Returns the plan without the tester's text, which no result depends on. */
  public ReportPlan withoutText() {
    Heading plain =
        new Heading(heading.title(), heading.author(), heading.published(), heading.history());
    return new ReportPlan(name, plain, subject, wishes, style, new Article("", article.file(), 1));
  }

  /** Returns the plan with the heading and text of another one of the same report. */
  public ReportPlan withTextOf(ReportPlan other) {
    return new ReportPlan(name, other.heading, subject, wishes, style, other.article);
  }

  /** Returns the plan with a temperature unit. */
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
   * The heading of a report.
   *
   * @param title title of the report
   * @param author responsible author; may be empty
   * @param published day of publication, if stated
   * @param history whether this version is published, and its earlier corrections
   * @param answer the answer in the tester's words, if it is not to be generated
   */
  public record Heading(
      String title,
      String author,
      Optional<LocalDate> published,
      History history,
      Optional<Article> answer) {
    /** Creates the heading of a draft with a generated answer. */
    public Heading(String title, String author, Optional<LocalDate> published) {
      this(title, author, published, History.DRAFT);
    }

    /** Creates a heading with a generated answer. */
    public Heading(String title, String author, Optional<LocalDate> published, History history) {
      this(title, author, published, history, Optional.empty());
    }

    /**
     * Returns the day of this version: that of the last correction, otherwise that of publication.
     */
    public Optional<LocalDate> versionDay() {
      List<Reason> all = history.corrections();
      return all.isEmpty() ? published : Optional.of(all.get(all.size() - 1).day());
    }
  }

  /**
   * Publication status of a report.
   *
   * @param published true if this version is published and therefore must not change without a
   *     correction
   * @param corrections corrections since it was first published, in order
   */
  public record History(boolean published, List<Reason> corrections) {
    /** A draft without corrections. */
    public static final History DRAFT = new History(false, List.of());

    public History {
      corrections = List.copyOf(corrections);
    }
  }

  /**
   * Reason for the correction of a published report.
   *
   * @param day day of the correction
   * @param words the tester's reason
   */
  public record Reason(LocalDate day, String words) {}

  /**
   * The sessions and range tests of a report.
   *
   * @param session name of the reported session
   * @param compare names of the sessions it is compared with, in order
   * @param rangeTests names of range tests; each session uses those of its own vehicle
   * @param repeats names of the sessions that repeat the reported one, in order
   * @param runSpread the spread between runs, if the tester states it
   * @param stops names of the sessions of one day in order, including the reported one; may be
   *     empty
   * @param season names of warm and cold runs of the reported car; may be empty
   */
  public record Subject(
      String session,
      List<String> compare,
      List<String> rangeTests,
      List<String> repeats,
      Optional<RunSpread> runSpread,
      List<String> stops,
      Season<String, String> season) {
    public Subject {
      compare = List.copyOf(compare);
      rangeTests = List.copyOf(rangeTests);
      repeats = List.copyOf(repeats);
      stops = List.copyOf(stops);
    }

    /** Creates a subject without repeats and further stops. */
    public Subject(String session, List<String> compare, List<String> rangeTests) {
      this(session, compare, rangeTests, List.of(), Optional.empty(), List.of(), Season.none());
    }
  }

  /**
   * Runs of one car in pairs, alternately warm and cold.
   *
   * @param sessions sessions, or their names
   * @param drives range tests, or their names
   */
  public record Season<S, D>(List<S> sessions, List<D> drives) {
    public Season {
      sessions = List.copyOf(sessions);
      drives = List.copyOf(drives);
    }

    /** Returns a season without pairs. */
    public static <S, D> Season<S, D> none() {
      return new Season<>(List.of(), List.of());
    }
  }

  /**
   * A stated run-to-run spread.
   *
   * @param share standard deviation of power and charging times between runs, as a share
   * @param source the tester's source
   */
  public record RunSpread(double share, String source) {}

  /**
   * The requested numbers.
   *
   * @param distances distances to compute the time for, in order
   * @param socMarks states of charge to compute the time to, whole %, ascending
   * @param windows windows of state of charge; the first is the one for the headline; not empty
   * @param road requested topics of road travel; may be empty
   */
  public record Wishes(
      List<WantedDistance> distances,
      List<Integer> socMarks,
      List<SocWindow> windows,
      RoadWishes road) {
    public Wishes {
      distances = List.copyOf(distances);
      socMarks = List.copyOf(socMarks);
      windows = List.copyOf(windows);
      if (windows.isEmpty()) {
        throw new IllegalArgumentException("a report needs a window");
      }
    }

    /** Creates wishes without topics of road travel. */
    public Wishes(List<WantedDistance> distances, List<Integer> socMarks, List<SocWindow> windows) {
      this(distances, socMarks, windows, RoadWishes.NONE);
    }
  }

  /**
   * How numbers are shown.
   *
   * @param units {@link Unit#MILE} or {@link Unit#KILOMETRE}: the unit for every distance
   * @param basis {@link Basis#DRIVEN} or {@link Basis#RATED}: the basis of headline distances
   * @param template name of the template
   * @param film output for a film
   * @param paper paper size of the PDF
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
   * Output for a film of the session.
   *
   * @param charts whether charts are also drawn for the film: dark, transparent and small
   * @param offsetSeconds film time at which elapsed time is 0, s, not negative; empty if not stated
   */
  public record Film(boolean charts, OptionalInt offsetSeconds) {
    /** No charts for a film, and no film time. */
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
   * @param markdown the text in Markdown, may be empty
   * @param file path of the file that contains it
   * @param firstLine the line of the file that the text begins on
   */
  public record Article(String markdown, String file, int firstLine) {}
}
