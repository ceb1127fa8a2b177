package taperbook.chart.plots;

import java.util.List;
import java.util.Optional;
import taperbook.chart.model.Chart;
import taperbook.chart.model.FigureText;
import taperbook.chart.plots.Lineup.Entry;
import taperbook.format.Labels;
import taperbook.quantity.SocWindow;

/** The states of charge that all sessions cover, for the marks and texts of charts. */
final class CommonSoc {
  private CommonSoc() {}

  static Chart.Marks marks(Lineup lineup) {
    Optional<SocWindow> shared = lineup.result().common().shared();
    return Chart.Marks.common(shared.map(CommonSoc::window));
  }

  /** Returns a sentence if the lines have no state of charge in common. */
  static Optional<String> missing(List<Entry> entries) {
    double from = entries.stream().mapToDouble(e -> e.line().x(0)).max().orElse(0);
    double to = entries.stream().mapToDouble(e -> e.line().lastX()).min().orElse(0);
    return to > from
        ? Optional.empty()
        : Optional.of("There is no state of charge that all of them went through.");
  }

  /** Describes the marks. */
  static String sentence(Chart.Window shared) {
    return "Dotted lines bound what all sessions have in common: "
        + FigureText.plain(shared.from())
        + " % to "
        + FigureText.plain(shared.to())
        + " %.";
  }

  private static Chart.Window window(SocWindow shared) {
    String label = Labels.of("mark.in_common", shared.from(), shared.to());
    return new Chart.Window(shared.from(), shared.to(), List.of(label));
  }
}
