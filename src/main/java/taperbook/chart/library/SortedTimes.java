package taperbook.chart.library;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import taperbook.chart.render.Figure;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Texts;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.result.LibraryResult;
import taperbook.result.LibraryRow;

/** Creates the figure of one time of all sessions, fastest first. */
final class SortedTimes {
  private static final double MINUTES_PER_SECOND = 1.0 / 60;

  private final LibraryFigureText texts;
  private final String id;

  /**
   * Creates the figure of one number.
   *
   * @param id the number, a time
   */
  SortedTimes(LibraryFigureText texts, String id) {
    this.texts = texts;
    this.id = id;
  }

  /**
   * Returns the figure, if two or more sessions have the number.
   *
   * @param figure name of the figure
   * @param finding key of the title's pattern
   * @param of description of the time
   * @param quantity description of the quantity
   */
  Optional<Figure> figure(String figure, String finding, String of, String quantity) {
    List<LibraryRow> all = LibraryFigureText.rising(texts.rows(), id);
    if (all.size() < 2) {
      return Optional.empty();
    }
    List<LibraryRow> shown =
        LibraryFigureText.rising(LibraryResult.quickest(all, id, DotPlot.MOST), id);
    LibraryRow least = all.get(0);
    String title = Texts.of(finding, of, texts.value(least, id).orElseThrow(), texts.name(least));
    DotPlot sheet =
        new DotPlot(
            shown.stream().map(this::row).toList(),
            NumberFormatter.name(Unit.MINUTE),
            texts.heading(title, quantity, all.size()));
    String caption = caption(all, shown);
    return Optional.of(
        Figure.of(figure, title, caption, description(shown, quantity, caption), sheet));
  }

  private Estimate estimate(LibraryRow row) {
    return row.numbers().estimate(id).orElseThrow();
  }

  private DotPlot.Row row(LibraryRow row) {
    Estimate minutes = estimate(row).times(MINUTES_PER_SECOND);
    return new DotPlot.Row(
        row.about().vehicle(),
        texts.detail(row),
        minutes.value(),
        minutes.bounds(),
        texts.value(row, id).orElseThrow());
  }

  private String caption(List<LibraryRow> all, List<LibraryRow> shown) {
    LibraryRow least = all.get(0);
    LibraryRow next = all.get(1);
    List<String> sentences = new ArrayList<>();
    sentences.add(Texts.of("figure.sorted_times.shortest", texts.named(least, ", ", id)));
    Interval first = estimate(least).bounds();
    if (first.high() >= estimate(next).bounds().low()) {
      sentences.add(Texts.of("figure.sorted_times.interval_of_overlaps_with_it", texts.name(next)));
    }
    LibraryRow most = all.get(all.size() - 1);
    sentences.add(Texts.of("figure.sorted_times.longest", texts.named(most, ", ", id)));
    if (shown.size() < all.size()) {
      sentences.add(
          Texts.of(
              "figure.sorted_times.shown_are_of_quickest_of",
              shown.size(),
              LibraryFigureText.sessions(all.size()),
              all.size() - shown.size(),
              texts.isLarge()
                  ? Texts.of("figure.sorted_times.numbers_csv")
                  : Texts.of("figure.sorted_times.table")));
    }
    texts.missing(id).ifPresent(sentences::add);
    return String.join(" ", sentences);
  }

  private String description(List<LibraryRow> shown, String quantity, String caption) {
    return Texts.of(
        "figure.sorted_times.list_of_shortest_time_first",
        LibraryFigureText.sessions(shown.size()),
        quantity,
        shown.stream().map(r -> texts.named(r, " ", id)).collect(Collectors.joining("; ")),
        caption);
  }
}
