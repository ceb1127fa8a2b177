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
import taperbook.plan.Basis;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.result.Curve;

/** The chart of distance added over time, with the requested distances marked. */
final class DistanceOverTime {
  private final Curve curve;
  private final FigureText texts;
  private final PlotLine line;

  private DistanceOverTime(Curve curve, FigureText texts) {
    this.curve = curve;
    this.texts = texts;
    this.line = new PlotLine(curve, seconds -> seconds / 60, this::shown);
  }

  public static Figure draw(Curve curve, FigureText texts) {
    return new DistanceOverTime(curve, texts).draw();
  }

  private Figure draw() {
    List<Chart.Point> points = points();
    double top = points.stream().mapToDouble(Chart.Point::y).reduce(line.top(), Math::max);
    Chart chart =
        new Chart(
            "distance-over-time",
            texts.heading(finding(), Texts.of("chart.distance_over_time", unit(), basis())),
            Axis.time(line.lastX()),
            Axis.upTo(Texts.of("head.distance_added"), unit(), top * 1.08, 6),
            line,
            new Chart.Marks(Optional.empty(), Optional.empty(), points));
    return draw(chart);
  }

  /**
   * Returns the marks. Time counts from the first state-of-charge reading, where the curve starts.
   */
  private List<Chart.Point> points() {
    List<Chart.Point> points = new ArrayList<>();
    for (WantedDistance distance : texts.wishes().distances()) {
      Optional<Estimate> time = texts.estimate(id(distance));
      if (time.isPresent()) {
        String label =
            Texts.of(
                "mark.distance_in_time", distance.words(), texts.value(id(distance)).orElseThrow());
        double minute = (curve.x(0) + time.get().value()) / 60;
        points.add(
            new Chart.Point(
                minute, shown(distance.kilometres()), Chart.Guide.ACROSS, List.of(label)));
      }
    }
    return points;
  }

  private Figure draw(Chart chart) {
    int last = line.size() - 1;
    String adds =
        Texts.of(
            "figure.distance_over_time.on_basis_session_adds_in",
            basis(),
            distance(last),
            texts.time(curve.x(last) - curve.x(0)));
    String taken = String.join(", ", timesTaken());
    List<Optional<String>> parts = new ArrayList<>();
    parts.add(Optional.of(taken.isEmpty() ? adds + "." : adds + ": " + taken + "."));
    for (WantedDistance distance : texts.wishes().distances()) {
      parts.add(
          texts.withheld(
              Texts.of("figure.distance_over_time.time_for", distance.words()), id(distance)));
    }
    String caption = FigureText.sentences(parts);
    String axis =
        Texts.of(
            "figure.distance_over_time.distance_added_in_from_0",
            unit(),
            FigureText.plain(Math.floor(chart.y().max())));
    String description =
        new TextAlternative(PowerOverTime.timeInWords(chart, curve, texts), axis)
            .curve(chart, i -> texts.time(curve.x(i)) + ": " + distance(i))
            .add(caption)
            .text();
    return Figure.of(chart, caption, description);
  }

  /** Describes the first and the last distance reached, or else the total distance added. */
  private String finding() {
    List<String> reached = new ArrayList<>();
    for (WantedDistance distance : texts.wishes().distances()) {
      texts
          .about(id(distance))
          .ifPresent(
              time ->
                  reached.add(
                      Texts.of("answer.bought", distance.words().replace(' ', '\u00a0'), time)));
    }
    int last = line.size() - 1;
    return switch (reached.size()) {
      case 0 ->
          Texts.of("finding.distance", distance(last), texts.minutes(curve.x(last) - curve.x(0)));
      case 1 -> reached.get(0);
      default -> reached.get(0) + ", " + reached.get(reached.size() - 1);
    };
  }

  private List<String> timesTaken() {
    List<String> taken = new ArrayList<>();
    for (WantedDistance distance : texts.wishes().distances()) {
      texts
          .full(id(distance))
          .ifPresent(time -> taken.add(Texts.of("figure.common.in", distance.words(), time)));
    }
    return taken;
  }

  private String id(WantedDistance distance) {
    return texts.result().plan().timeToAddId(distance);
  }

  private boolean isRated() {
    return texts.result().plan().style().basis() == Basis.RATED;
  }

  private String basis() {
    return isRated() ? Basis.RATED.words() : Basis.DRIVEN.words();
  }

  private String unit() {
    return NumberFormatter.name(texts.formatter().shown(Unit.KILOMETRE));
  }

  private double shown(double kilometres) {
    return texts.formatter().shownAmount(kilometres, Unit.KILOMETRE);
  }

  private String distance(int i) {
    return FigureText.plain(line.y(i)) + "\u00a0" + unit();
  }
}
