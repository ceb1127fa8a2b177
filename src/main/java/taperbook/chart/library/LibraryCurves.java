package taperbook.chart.library;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import taperbook.chart.model.Axis;
import taperbook.chart.model.PlotLine;
import taperbook.chart.render.Figure;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Texts;
import taperbook.quantity.Unit;
import taperbook.result.LibraryRow;

/** The figures of all curves, twelve sessions on each, all with the same axes. */
final class LibraryCurves {
  private static final String ID = "library-curves";
  private static final String PEAK = "peak_power";
  private static final int MOST_COLUMNS = 4;
  private static final int MOST_ROWS = 3;
  private static final int MOST_PANELS = MOST_COLUMNS * MOST_ROWS;

  /** Headroom above the highest peak for its label, as a factor on the scale. */
  private static final double HEADROOM = 1.36;

  private final LibraryFigureText texts;
  private final Axis power;

  LibraryCurves(LibraryFigureText texts) {
    this.texts = texts;
    double top = 0;
    for (LibraryRow row : texts.inDetail()) {
      for (int i = 0; i < row.curve().size(); i++) {
        top = Math.max(top, row.curve().y(i));
      }
    }
    this.power = Axis.upTo("", NumberFormatter.name(Unit.KILOWATT), top * HEADROOM, 4);
  }

  List<Figure> figures() {
    List<Figure> figures = new ArrayList<>();
    for (int from = 0; from < texts.inDetail().size(); from += MOST_PANELS) {
      int to = Math.min(texts.inDetail().size(), from + MOST_PANELS);
      figures.add(figure(from, to));
    }
    return figures;
  }

  private Figure figure(int from, int to) {
    int all = texts.inDetail().size();
    List<LibraryRow> rows = texts.inDetail().subList(from, to);
    String which =
        all <= MOST_PANELS
            ? LibraryFigureText.sessions(all)
            : Texts.of("label.sessions_of", from + 1, to, all);
    String title = finding(rows, which);
    int columns = Math.min(MOST_COLUMNS, all <= 3 ? all : all == 4 ? 2 : all <= 6 ? 3 : 4);
    int lines = Math.min(MOST_ROWS, (all + columns - 1) / columns);
    PanelSheet sheet =
        new PanelSheet(
            rows.stream().map(this::panel).toList(),
            columns,
            lines,
            power,
            texts.heading(title, Texts.of("chart.library_curves", which), rows.size()));
    String id = from == 0 ? ID : ID + "-" + (from / MOST_PANELS + 1);
    return Figure.of(id, title, caption(rows), description(rows, which), sheet);
  }

  /** Describes the range of the peaks. */
  private String finding(List<LibraryRow> rows, String which) {
    List<LibraryRow> rising = LibraryFigureText.rising(rows, PEAK);
    return rising.size() < 2
        ? Texts.of("chart.library_curves", which)
        : Texts.of(
            "finding.peaks_reach",
            texts.value(rising.get(0), PEAK).orElseThrow(),
            texts.value(rising.get(rising.size() - 1), PEAK).orElseThrow());
  }

  private PanelSheet.Panel panel(LibraryRow row) {
    return new PanelSheet.Panel(
        LibraryFigureText.model(row),
        LibraryFigureText.about(row),
        new PlotLine(row.curve(), x -> x, y -> y),
        texts.value(row, PEAK).orElse(""));
  }

  private String caption(List<LibraryRow> rows) {
    List<LibraryRow> rising = LibraryFigureText.rising(rows, PEAK);
    if (rising.isEmpty()) {
      return Texts.of("figure.library_curves.no_power_was_recorded_in");
    }
    LibraryRow most = rising.get(rising.size() - 1);
    if (rising.size() == 1) {
      return Texts.of("figure.library_curves.peak_is", texts.named(most, ": ", PEAK));
    }
    return Texts.of(
        "figure.library_curves.peaks_reach_from_in_to",
        texts.full(rising.get(0), PEAK).orElseThrow(),
        texts.name(rising.get(0)),
        texts.full(most, PEAK).orElseThrow(),
        texts.name(most),
        texts.more());
  }

  private String description(List<LibraryRow> rows, String which) {
    String axes =
        Texts.of(
            "figure.library_curves.small_line_charts_all_on", which, (int) Math.floor(power.max()));
    return axes + " " + rows.stream().map(this::description).collect(Collectors.joining(" "));
  }

  private String description(LibraryRow row) {
    String peak =
        texts
            .value(row, PEAK)
            .map(p -> Texts.of("figure.library_curves.peak", p))
            .orElse(Texts.of("figure.library_curves.no_power_recorded"));
    int last = row.curve().size() - 1;
    String span =
        last < 0
            ? ""
            : Texts.of(
                "figure.library_curves.from_to",
                Math.round(row.curve().x(0)),
                Math.round(row.curve().x(last)));
    return texts.name(row) + peak + span + ".";
  }
}
