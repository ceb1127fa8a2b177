package taperbook.model;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

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
    String name, Heading heading, Subject subject, Wishes wishes, Style style, Article article) {
  /**
   * What stands at the top.
   *
   * @param title title of the report
   * @param author who answers for it; may be empty
   * @param published day of publication, if stated
   */
  public record Heading(String title, String author, Optional<LocalDate> published) {}

  /**
   * What is reported.
   *
   * @param session name of the session
   * @param compare names of the sessions it is held against, in order
   * @param rangeTests names of range tests; each session uses the first of its own vehicle
   */
  public record Subject(String session, List<String> compare, List<String> rangeTests) {
    /** Copies the lists. */
    public Subject {
      compare = List.copyOf(compare);
      rangeTests = List.copyOf(rangeTests);
    }
  }

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
   */
  public record Style(Unit units, Basis basis, String template) {}

  /**
   * The tester's own text.
   *
   * @param markdown the text in Markdown, perhaps empty
   * @param file the file it stands in
   * @param firstLine the line of the file that the text begins on
   */
  public record Article(String markdown, String file, int firstLine) {}

  /** Id of the number that tells the time to add a distance on the basis that was chosen. */
  public String timeToAddId(WantedDistance distance) {
    String id = "time_to_add_" + distance.idPart();
    return style.basis() == Basis.RATED ? id + "_rated" : id;
  }
}
