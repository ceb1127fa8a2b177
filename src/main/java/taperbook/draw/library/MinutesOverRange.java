package taperbook.draw.library;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import taperbook.draw.picture.Figure;
import taperbook.model.LibraryRow;
import taperbook.model.Unit;
import taperbook.words.Labels;
import taperbook.words.Wording;

/** The figure of minutes to add a distance against driven range: what a stop costs a long drive. */
final class MinutesOverRange {
  private static final String RANGE = "driven_range_full";
  private static final double MINUTES_PER_SECOND = 1.0 / 60;

  private final LibraryWords words;
  private final String time;

  MinutesOverRange(LibraryWords words) {
    this.words = words;
    this.time = words.plan().firstTimeToAddId();
  }

  /** The figure, if a session has both numbers. */
  Optional<Figure> figure() {
    List<LibraryRow> rows =
        words.rows().stream()
            .filter(r -> Dot.of(r, words.name(r), RANGE, time).isPresent())
            .toList();
    if (rows.isEmpty()) {
      return Optional.empty();
    }
    double perKilometre = words.wording().shownAmount(1, Unit.KILOMETRE);
    String unit = Wording.name(words.wording().shown(Unit.KILOMETRE));
    LibraryRow least = LibraryWords.rising(rows, time).get(0);
    String title =
        Labels.of(
            "finding.least_time",
            words.distance(),
            words.value(least, time).orElseThrow(),
            words.name(least));
    ScatterSheet sheet =
        new ScatterSheet(
            Cloud.of(
                rows.stream()
                    .flatMap(r -> Dot.of(r, words.name(r), RANGE, time).stream())
                    .map(d -> d.times(perKilometre, MINUTES_PER_SECOND))
                    .toList()),
            unit,
            Wording.name(Unit.MINUTE),
            false,
            "",
            words.heading(
                title,
                Labels.of("chart.minutes_over_range", words.distance(), basis(), unit),
                rows.size()));
    String caption = caption(rows) + Cloud.words(rows.size());
    String told =
        ScatterWords.told(
            "driven range of a full battery in " + unit,
            "time to add " + words.distance() + " in min, from 0",
            rows,
            row ->
                words.name(row)
                    + " "
                    + words.value(row, RANGE).orElseThrow()
                    + " and "
                    + words.value(row, time).orElseThrow(),
            caption);
    return Optional.of(Figure.of("library-minutes-over-range", title, caption, told, sheet));
  }

  private String basis() {
    return words.plan().style().basis().words();
  }

  private String caption(List<LibraryRow> rows) {
    List<LibraryRow> rising = LibraryWords.rising(rows, time);
    LibraryRow least = rising.get(0);
    LibraryRow most = AverageOverPeak.last(rising);
    String finding =
        "The shortest stop for " + words.distance() + " is of " + words.named(least, ", ", time);
    finding += " at a driven range of " + words.value(least, RANGE).orElseThrow();
    if (rising.size() > 1) {
      finding +=
          "; the longest is of "
              + words.named(most, ", ", time)
              + " at "
              + words.value(most, RANGE).orElseThrow();
    }
    return Stream.of(Optional.of(finding + "."), words.missing(RANGE, time))
        .flatMap(Optional::stream)
        .reduce((a, b) -> a + " " + b)
        .orElseThrow();
  }
}
