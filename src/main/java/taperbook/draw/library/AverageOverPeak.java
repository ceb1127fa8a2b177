package taperbook.draw.library;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import taperbook.draw.picture.Figure;
import taperbook.model.LibraryRow;
import taperbook.model.Unit;
import taperbook.words.Labels;
import taperbook.words.Wording;

/** The figure of average power against peak power: how much of its peak a car keeps up. */
final class AverageOverPeak {
  private static final String PEAK = "peak_power";

  private final LibraryWords words;
  private final String average;

  AverageOverPeak(LibraryWords words) {
    this.words = words;
    this.average = words.plan().averagePowerId();
  }

  /** The figure, if a session has both numbers. */
  Optional<Figure> figure() {
    List<LibraryRow> rows =
        words.rows().stream()
            .filter(r -> Dot.of(r, words.name(r), PEAK, average).isPresent())
            .toList();
    if (rows.isEmpty()) {
      return Optional.empty();
    }
    String title = finding(rows);
    ScatterSheet sheet =
        new ScatterSheet(
            Cloud.of(
                rows.stream()
                    .flatMap(r -> Dot.of(r, words.name(r), PEAK, average).stream())
                    .toList()),
            Wording.name(Unit.KILOWATT),
            Wording.name(Unit.KILOWATT),
            true,
            Labels.of("mark.average_is_peak"),
            words.heading(
                title, Labels.of("chart.average_over_peak", words.window()), rows.size()));
    String caption = caption(rows) + Cloud.words(rows.size());
    return Optional.of(
        Figure.of("library-average-over-peak", title, caption, told(rows, caption), sheet));
  }

  /** The highest average, with the peak of the same session. */
  private String finding(List<LibraryRow> rows) {
    LibraryRow most = last(LibraryWords.rising(rows, average));
    return Labels.of(
        "finding.most_average",
        words.value(most, average).orElseThrow(),
        words.name(most),
        words.value(most, PEAK).orElseThrow());
  }

  private String caption(List<LibraryRow> rows) {
    LibraryRow byPeak = last(LibraryWords.rising(rows, PEAK));
    LibraryRow byAverage = last(LibraryWords.rising(rows, average));
    String over = " over " + words.window();
    String finding =
        rows.size() == 1
            ? words.named(byPeak, " peaks at ", PEAK)
                + " and takes "
                + words.full(byPeak, average).orElseThrow()
                + " on average"
                + over
                + "."
            : byPeak.equals(byAverage)
                ? "The highest peak and the highest average"
                    + over
                    + " are both of "
                    + words.name(byPeak)
                    + ": "
                    + words.full(byPeak, PEAK).orElseThrow()
                    + " and "
                    + words.full(byPeak, average).orElseThrow()
                    + "."
                : "The highest peak is of "
                    + words.named(byPeak, ", ", PEAK)
                    + ", but the highest average"
                    + over
                    + " is of "
                    + words.named(byAverage, ", ", average)
                    + ".";
    return Stream.of(Optional.of(finding), words.missing(PEAK, average))
        .flatMap(Optional::stream)
        .reduce((a, b) -> a + " " + b)
        .orElseThrow();
  }

  private String told(List<LibraryRow> rows, String caption) {
    return ScatterWords.told(
        "peak power in kW",
        "average power over time in kW, " + words.window() + ", in the same units",
        rows,
        row ->
            words.name(row)
                + " "
                + words.value(row, PEAK).orElseThrow()
                + " and "
                + words.value(row, average).orElseThrow(),
        caption);
  }

  static LibraryRow last(List<LibraryRow> rows) {
    return rows.get(rows.size() - 1);
  }
}
