package taperbook.draw.library;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import taperbook.draw.picture.Figure;
import taperbook.model.LibraryRow;
import taperbook.words.Labels;

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
        words.rows().stream().filter(r -> Dot.of(r, PEAK, average).isPresent()).toList();
    if (rows.isEmpty()) {
      return Optional.empty();
    }
    String title = Labels.of("chart.average_over_peak");
    ScatterSheet sheet =
        new ScatterSheet(
            Cloud.of(rows.stream().flatMap(r -> Dot.of(r, PEAK, average).stream()).toList()),
            Labels.of("axis.peak"),
            Labels.of("axis.average", words.window()),
            true,
            Labels.of("mark.average_is_peak"),
            title,
            Labels.of("label.sessions_window", LibraryWords.sessions(rows.size()), words.window()));
    String caption = caption(rows) + Cloud.words(rows.size());
    return Optional.of(
        Figure.of("library-average-over-peak", title, caption, told(rows, caption), sheet));
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
                    + byPeak.session()
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
            row.session()
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
