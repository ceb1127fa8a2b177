package taperbook.chart.plots;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.chart.model.Axis;
import taperbook.chart.model.Chart;
import taperbook.chart.model.FigureText;
import taperbook.chart.model.PlotLine;
import taperbook.chart.model.TextAlternative;
import taperbook.chart.render.Figure;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Texts;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.result.Curve;
import taperbook.result.ReportResult;

/** The chart of distance added per minute of charging, over state of charge. */
final class RoadPerMinute {
  private static final double HEADROOM = 1.42;

  private final FigureText texts;
  private final PlotLine line;

  private RoadPerMinute(Curve curve, FigureText texts) {
    this.texts = texts;
    this.line =
        PlotLine.computed(
            curve,
            percent -> percent,
            rate -> texts.formatter().shownAmount(rate, Unit.KILOMETRE_PER_MINUTE));
  }

  /** Returns the figure; empty if it is not requested or the session cannot provide it. */
  static Optional<Figure> figure(ReportResult result) {
    FigureText texts = new FigureText(result);
    return result
        .main()
        .curves()
        .distancePerMinute()
        .map(curve -> new RoadPerMinute(curve, texts).draw());
  }

  private Figure draw() {
    Chart chart =
        new Chart(
            "road-per-minute",
            texts.heading(finding(), Texts.of("chart.road_per_minute", unit())),
            Axis.stateOfCharge(10),
            Axis.upTo(Texts.of("axis.road_per_minute"), unit(), line.top() * HEADROOM, 6),
            line,
            new Chart.Marks(best(), Optional.empty(), half()));
    String caption =
        FigureText.sentences(
            List.of(
                stretch(),
                texts.sentence(
                    Texts.of("figure.road_per_minute.minute_buys_half_of_that"),
                    Texts.of("figure.road_per_minute.where_minute_buys_half_of"),
                    "road_per_minute_half_soc")));
    String description =
        new TextAlternative(
                Texts.of("figure.road_per_minute.state_of_charge_in_middle"),
                Texts.of(
                    "figure.road_per_minute.distance_for_each_minute_in",
                    unit(),
                    FigureText.plain(Math.floor(chart.y().max()))))
            .add(points())
            .add(caption)
            .text();
    return Figure.of(chart, caption, description);
  }

  private String unit() {
    return NumberFormatter.name(texts.formatter().shown(Unit.KILOMETRE_PER_MINUTE));
  }

  private Optional<Chart.Hold> best() {
    Optional<Estimate> from = texts.estimate("road_per_minute_best_soc_from");
    Optional<Estimate> to = texts.estimate("road_per_minute_best_soc_to");
    Optional<Estimate> rate = texts.estimate("road_per_minute_best");
    if (from.isEmpty() || to.isEmpty() || rate.isEmpty()) {
      return Optional.empty();
    }
    double y = texts.formatter().shownAmount(rate.get().value(), Unit.KILOMETRE_PER_MINUTE);
    return Optional.of(
        new Chart.Hold(
            from.get().value(),
            to.get().value(),
            y,
            List.of(
                texts.value("road_per_minute_best").orElseThrow(),
                Texts.of(
                    "mark.soc_span",
                    FigureText.plain(from.get().value()),
                    FigureText.plain(to.get().value())))));
  }

  private List<Chart.Point> half() {
    Optional<Estimate> at = texts.estimate("road_per_minute_half_soc");
    if (at.isEmpty()) {
      return List.of();
    }
    double x = at.get().value();
    double y = line.yAt(x).orElse(0);
    return List.of(
        new Chart.Point(
            x,
            y,
            Chart.Guide.DROP,
            List.of(
                Texts.of(
                    "mark.half_from", texts.value("road_per_minute_half_soc").orElseThrow()))));
  }

  private String finding() {
    Optional<String> from = texts.value("road_per_minute_best_soc_from");
    Optional<String> to = texts.value("road_per_minute_best_soc_to");
    return texts
        .about("road_per_minute_best")
        .filter(best -> from.isPresent() && to.isPresent())
        .map(best -> Texts.of("finding.minute_buys", best, from.orElseThrow(), to.orElseThrow()))
        .orElseGet(() -> Texts.of("axis.road_per_minute"));
  }

  private Optional<String> stretch() {
    return texts
        .full("road_per_minute_best")
        .map(
            most ->
                Texts.of(
                    "figure.road_per_minute.minute_buys_most_from_to",
                    most,
                    texts.value("road_per_minute_best_soc_from").orElseThrow(),
                    texts.value("road_per_minute_best_soc_to").orElseThrow()))
        .or(
            () ->
                texts.withheld(
                    Texts.of("figure.road_per_minute.where_minute_buys_most_of"),
                    "road_per_minute_best"));
  }

  private String points() {
    List<String> points = new ArrayList<>();
    int step = Math.max(1, line.size() / 8);
    for (int i = 0; i < line.size(); i += step) {
      points.add(FigureText.plain(line.x(i)) + " %: " + FigureText.plain(line.y(i)) + " " + unit());
    }
    return Texts.of("figure.common.line_passes", String.join("; ", points));
  }
}
