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
import taperbook.result.Drives;
import taperbook.result.ReportResult;
import taperbook.session.RangeTest;

/** The chart of full-battery range over speed, with the underlying drives. */
final class RangeOverSpeed {
  private static final double HEADROOM = 1.15;

  private final FigureText texts;
  private final List<String> ids;
  private final PlotLine line;

  private RangeOverSpeed(List<String> ids, FigureText texts) {
    this.texts = texts;
    this.ids = ids;
    List<Estimate> ranges =
        ids.stream().flatMap(id -> texts.estimate("range" + id).stream()).toList();
    Curve curve =
        new Curve(
            ids.stream().mapToDouble(Drives::speedOf).toArray(),
            ranges.stream().mapToDouble(Estimate::value).toArray(),
            ranges.stream().mapToDouble(r -> r.bounds().low()).toArray(),
            ranges.stream().mapToDouble(r -> r.bounds().high()).toArray(),
            new boolean[ids.size()]);
    this.line = PlotLine.computed(curve, v -> v, this::shownRange);
  }

  /** Returns the figure; empty unless drives provide the range at two or more speeds. */
  static Optional<Figure> figure(ReportResult result) {
    List<String> ids = Drives.speedIds(result.main().numbers());
    return ids.size() < 2
        ? Optional.empty()
        : Optional.of(new RangeOverSpeed(ids, new FigureText(result)).draw());
  }

  private Figure draw() {
    List<Chart.Point> drives = drives();
    double fastest = drives.stream().mapToDouble(Chart.Point::x).max().orElse(line.lastX());
    Chart chart =
        new Chart(
            "range-over-speed",
            texts.headingOfCar(finding(), Texts.of("chart.range_over_speed", unit(Unit.KILOMETRE))),
            Axis.upTo(
                Texts.of("axis.speed"),
                unit(Unit.KILOMETRE_PER_HOUR),
                Math.max(fastest, line.lastX()) * 1.05,
                8),
            Axis.upTo(Texts.of("head.full_range"), unit(Unit.KILOMETRE), line.top() * HEADROOM, 6),
            line,
            new Chart.Marks(Optional.empty(), Optional.empty(), drives));
    String caption = Texts.of("figure.range_over_speed.by_road_load_through_all");
    List<String> points = new ArrayList<>();
    for (int i = 0; i < line.size(); i++) {
      points.add(
          FigureText.plain(line.x(i))
              + " "
              + unit(Unit.KILOMETRE_PER_HOUR)
              + ": "
              + texts.full("range" + ids.get(i)).orElse(""));
    }
    String description =
        new TextAlternative(
                Texts.of("figure.range_over_speed.speed_in", unit(Unit.KILOMETRE_PER_HOUR)),
                Texts.of("figure.range_over_speed.range_of_full_battery_in", unit(Unit.KILOMETRE)))
            .add(Texts.of("figure.common.line_passes", String.join("; ", points)))
            .add(caption)
            .text();
    return Figure.of(chart, caption, description);
  }

  /** Describes the range at the lowest and at the highest speed. */
  private String finding() {
    List<String> parts = new ArrayList<>();
    for (int i : new int[] {0, line.size() - 1}) {
      String speed = FigureText.plain(line.x(i)) + "\u00a0" + unit(Unit.KILOMETRE_PER_HOUR);
      texts
          .about("range" + ids.get(i))
          .ifPresent(range -> parts.add(Texts.of("finding.range_at", range, speed)));
    }
    return FigureText.capital(String.join(", ", parts));
  }

  private List<Chart.Point> drives() {
    List<Chart.Point> points = new ArrayList<>();
    Drives drives = texts.result().main().drives();
    List<RangeTest> used = drives.inLikeWeather();
    for (int k = 1; k <= drives.named().size(); k++) {
      Optional<Estimate> speed = texts.estimate("drive_" + k + "_speed");
      Optional<Estimate> range = texts.estimate("drive_" + k + "_range");
      if (used.contains(drives.named().get(k - 1)) && speed.isPresent() && range.isPresent()) {
        points.add(
            new Chart.Point(
                texts.formatter().shownAmount(speed.get().value(), Unit.KILOMETRE_PER_HOUR),
                shownRange(range.get().value()),
                Chart.Guide.DROP,
                List.of(String.valueOf(k))));
      }
    }
    return points;
  }

  private double shownRange(double kilometres) {
    return texts.formatter().shownAmount(kilometres, Unit.KILOMETRE);
  }

  private String unit(Unit base) {
    return NumberFormatter.name(texts.formatter().shown(base));
  }
}
