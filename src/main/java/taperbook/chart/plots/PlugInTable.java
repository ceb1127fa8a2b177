package taperbook.chart.plots;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.chart.model.Box;
import taperbook.chart.model.Brush;
import taperbook.chart.model.ChartStyle;
import taperbook.chart.model.FigureText;
import taperbook.chart.model.Heading;
import taperbook.chart.model.Palette;
import taperbook.chart.model.TextRun;
import taperbook.chart.model.TextRun.Anchor;
import taperbook.chart.model.TextRun.Face;
import taperbook.chart.render.Figure;
import taperbook.chart.render.Painting;
import taperbook.i18n.Texts;
import taperbook.plan.RoadTopic;
import taperbook.plan.RoadWishes;
import taperbook.quantity.Estimate;
import taperbook.quantity.WantedDistance;
import taperbook.result.ReportResult;

/**
 * The charging minutes by starting charge and distance: each with its interval, above a thin bar of
 * proportional length.
 */
final class PlugInTable implements Painting {
  private static final int SECONDS_PER_MINUTE = 60;

  /** Share of a column that bars and texts may fill. */
  private static final double FILLED = 0.93;

  private final FigureText figureText;
  private final List<WantedDistance> distances;
  private final double longest;

  private PlugInTable(ReportResult result) {
    this.figureText = new FigureText(result);
    this.distances = RoadWishes.plugInDistances(result.plan().style().units());
    double most = 0;
    for (int from : RoadWishes.PLUG_IN_SOC) {
      for (WantedDistance distance : distances) {
        most = Math.max(most, seconds(from, distance).map(Estimate::value).orElse(0.0));
      }
    }
    this.longest = most;
  }

  /** Returns the figure; empty if it is not requested or no cell has a number. */
  static Optional<Figure> figure(ReportResult result) {
    PlugInTable table = new PlugInTable(result);
    boolean wanted = result.plan().wishes().road().wants(RoadTopic.PLUG_IN);
    return wanted && table.longest > 0
        ? Optional.of(
            Figure.of("plug-in-table", table.finding(), table.caption(), table.inWords(), table))
        : Optional.empty();
  }

  private Optional<Estimate> seconds(int from, WantedDistance distance) {
    return figureText.estimate(RoadWishes.plugInId(from, distance));
  }

  private String caption() {
    return Texts.of("figure.plug_in_table.charging_time_from_state_of");
  }

  private String inWords() {
    StringBuilder words =
        new StringBuilder(Texts.of("figure.plug_in_table.table_of_charging_times"));
    for (int from : RoadWishes.PLUG_IN_SOC) {
      List<String> cells = new ArrayList<>();
      for (WantedDistance distance : distances) {
        String id = RoadWishes.plugInId(from, distance);
        cells.add(
            distance.words()
                + " "
                + figureText.full(id).orElse(Texts.of("figure.plug_in_table.withheld")));
      }
      words.append(Texts.of("figure.plug_in_table.from", from, String.join(", ", cells)));
      words.append(' ');
    }
    return words.toString().strip();
  }

  /**
   * Describes the second-shortest distance, from the lowest and the highest charge that provide it.
   */
  private String finding() {
    for (WantedDistance distance : List.of(distances.get(1), distances.get(0))) {
      List<Integer> known =
          RoadWishes.PLUG_IN_SOC.stream().filter(s -> seconds(s, distance).isPresent()).toList();
      if (known.size() > 1) {
        int low = known.get(0);
        int high = known.get(known.size() - 1);
        String from = figureText.about(RoadWishes.plugInId(low, distance)).orElseThrow();
        String to = figureText.about(RoadWishes.plugInId(high, distance)).orElseThrow();
        return Texts.of("finding.plug_in", distance.words(), from, low, to, high);
      }
    }
    return Texts.of("chart.plug_in_table");
  }

  @Override
  public List<TextRun> paint(Graphics2D g, ChartStyle style) {
    Heading heading =
        figureText
            .heading(finding(), Texts.of("chart.plug_in_table"))
            .with(Texts.of("note.plug_in_table"), style);
    List<TextRun> texts = new ArrayList<>(heading.texts(style));
    Box room = heading.room(style);
    Face head = new Face(style.type().tick(), true, Palette.INK);
    String corner = style.isSmall() ? "" : Texts.of("mark.plug_in_at");
    double left = (head.width(corner) + head.size()) * style.type().slack();
    left = Math.max(left, 4.5 * head.size());
    double top = style.type().tick() * 1.9;
    double width = (room.width() - left) / distances.size();
    double height = (room.height() - top) / RoadWishes.PLUG_IN_SOC.size();
    double line = room.top() + top * 0.6;
    texts.add(new TextRun(corner, room.left(), line, Anchor.START, head));
    for (int c = 0; c < distances.size(); c++) {
      double x = room.left() + left + c * width;
      texts.add(new TextRun(distances.get(c).words(), x, line, Anchor.START, head));
    }
    for (int r = 0; r < RoadWishes.PLUG_IN_SOC.size(); r++) {
      int from = RoadWishes.PLUG_IN_SOC.get(r);
      double y = room.top() + top + r * height;
      double baseline = y + 0.72 * height;
      texts.add(new TextRun(from + "\u00a0%", room.left(), baseline, Anchor.START, head));
      for (int c = 0; c < distances.size(); c++) {
        Box cell = new Box(room.left() + left + c * width, y, FILLED * width, height);
        cell(new Brush(g, style), cell, seconds(from, distances.get(c)), texts);
      }
    }
    return texts;
  }

  private void cell(Brush brush, Box box, Optional<Estimate> time, List<TextRun> texts) {
    ChartStyle style = brush.style();
    double y = box.top() + 0.94 * box.height();
    BasicStroke thin = style.solid(style.weights().thin());
    brush.line(box.left(), y, box.right(), y, thin, Palette.GRID);
    double baseline = box.top() + 0.72 * box.height();
    Face small = new Face(style.type().tick(), false, Palette.INK);
    if (time.isEmpty()) {
      texts.add(new TextRun("\u2013", box.left(), baseline, Anchor.START, small));
      return;
    }
    double end = box.left() + box.width() * time.get().value() / longest;
    BasicStroke thick = style.solid(style.weights().curve());
    brush.line(box.left(), y, end, y, thick, Palette.CURVE);
    Face bold = new Face(style.type().tick(), true, Palette.INK);
    String value = minutes(time.get().value(), RoundingMode.HALF_EVEN);
    TextRun spread = new TextRun(between(time.get()), box.right(), baseline, Anchor.END, small);
    double wide = bold.width(value) * style.type().slack();
    boolean fits = spread.left() > box.left() + wide + 0.3 * bold.size();
    texts.add(new TextRun(value, box.left(), baseline, Anchor.START, bold));
    if (fits && !style.isSmall()) {
      texts.add(spread);
    }
  }

  private static String between(Estimate time) {
    return Texts.of(
        "wording.range",
        minutes(time.bounds().low(), RoundingMode.FLOOR),
        minutes(time.bounds().high(), RoundingMode.CEILING));
  }

  private static String minutes(double seconds, RoundingMode rounding) {
    return new BigDecimal(seconds / SECONDS_PER_MINUTE).setScale(1, rounding).toPlainString();
  }
}
