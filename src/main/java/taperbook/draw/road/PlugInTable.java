package taperbook.draw.road;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.draw.chart.Said;
import taperbook.draw.picture.Figure;
import taperbook.draw.picture.Painting;
import taperbook.draw.style.Box;
import taperbook.draw.style.ChartStyle;
import taperbook.draw.style.Hatch;
import taperbook.draw.style.Palette;
import taperbook.draw.style.TextRun;
import taperbook.draw.style.TextRun.Anchor;
import taperbook.draw.style.TextRun.Face;
import taperbook.model.Estimate;
import taperbook.model.ReportResult;
import taperbook.model.RoadTopic;
import taperbook.model.RoadWishes;
import taperbook.model.Unit;
import taperbook.model.WantedDistance;
import taperbook.words.Labels;
import taperbook.words.Wording;

/**
 * The grid of minutes by where one plugs in and how far one wants to go. Each cell says its minutes
 * and their interval; a tint that deepens with the minutes only repeats it.
 */
final class PlugInTable implements Painting {
  private static final int OPAQUE = 255;
  private static final String TITLE = Labels.of("chart.plug_in_table");
  private static final String FOOT = Labels.of("note.plug_in_table");
  private static final int SECONDS_PER_MINUTE = 60;
  private static final double HEAD_COLUMN = 0.15;

  private final Said said;
  private final List<WantedDistance> distances;
  private final double longest;

  private PlugInTable(ReportResult result) {
    this.said = new Said(result);
    this.distances = RoadWishes.plugInDistances(result.plan().style().units());
    double most = 0;
    for (int from : RoadWishes.PLUG_IN_SOC) {
      for (WantedDistance distance : distances) {
        most = Math.max(most, seconds(from, distance).map(Estimate::value).orElse(0.0));
      }
    }
    this.longest = most;
  }

  /** The figure; empty if it is not asked for or no cell has a number. */
  static Optional<Figure> figure(ReportResult result) {
    PlugInTable table = new PlugInTable(result);
    boolean wanted = result.plan().wishes().road().wants(RoadTopic.PLUG_IN);
    return wanted && table.longest > 0
        ? Optional.of(
            Figure.of(RoadFigures.PLUG_IN, TITLE, table.caption(), table.inWords(), table))
        : Optional.empty();
  }

  private Optional<Estimate> seconds(int from, WantedDistance distance) {
    return said.estimate(RoadWishes.plugInId(from, distance));
  }

  private String caption() {
    return "Charging time from a state of charge on until a distance is bought, on the driven"
        + " range, as the session of the "
        + said.vehicle()
        + " was recorded.";
  }

  private String inWords() {
    StringBuilder words = new StringBuilder("Table of charging times. ");
    for (int from : RoadWishes.PLUG_IN_SOC) {
      List<String> cells = new ArrayList<>();
      for (WantedDistance distance : distances) {
        String id = RoadWishes.plugInId(from, distance);
        cells.add(distance.words() + " " + said.full(id).orElse("withheld"));
      }
      words.append("From ").append(from).append(" %: ");
      words.append(String.join(", ", cells)).append(". ");
    }
    return words.toString().strip();
  }

  @Override
  public List<TextRun> paint(Graphics2D g, ChartStyle style) {
    List<TextRun> texts = new ArrayList<>(SheetHead.texts(TITLE, said.vehicle(), FOOT, style));
    Box room = SheetHead.room(FOOT, style);
    double left = room.width() * HEAD_COLUMN;
    double top = style.type().tick() * 1.9;
    double width = (room.width() - left) / distances.size();
    double height = (room.height() - top) / RoadWishes.PLUG_IN_SOC.size();
    Face head = new Face(style.type().tick(), true, Palette.INK);
    String corner = style.isSmall() ? "" : Labels.of("mark.plug_in_at");
    texts.add(text(corner, room.left(), room.top() + top * 0.45, Anchor.START, head));
    for (int c = 0; c < distances.size(); c++) {
      double middle = room.left() + left + (c + 0.5) * width;
      texts.add(
          text(distances.get(c).words(), middle, room.top() + top * 0.45, Anchor.MIDDLE, head));
    }
    for (int r = 0; r < RoadWishes.PLUG_IN_SOC.size(); r++) {
      int from = RoadWishes.PLUG_IN_SOC.get(r);
      double y = room.top() + top + r * height;
      texts.add(text(from + "\u00a0%", room.left(), y + height / 2, Anchor.START, head));
      for (int c = 0; c < distances.size(); c++) {
        Box cell = new Box(room.left() + left + c * width, y, width, height).grown(-1);
        cell(g, style, cell, seconds(from, distances.get(c)), texts);
      }
    }
    return texts;
  }

  private static TextRun text(String words, double x, double middle, Anchor anchor, Face face) {
    return new TextRun(words, x, SheetHead.baseline(middle, face.size()), anchor, face);
  }

  private void cell(
      Graphics2D g, ChartStyle style, Box box, Optional<Estimate> time, List<TextRun> texts) {
    double x = box.left() + box.width() / 2;
    g.setStroke(style.solid(style.weights().thin()));
    if (time.isEmpty()) {
      g.setColor(style.ground().of(Palette.GRID));
      Hatch.fill(g, box, style.type().tick());
      g.draw(rectangle(box));
      return;
    }
    g.setColor(style.ground().of(tint(time.get().value() / longest)));
    g.fill(rectangle(box));
    Face value = new Face(style.type().label(), true, Palette.INK);
    Face small = new Face(style.type().tick(), false, Palette.INK);
    double middle = box.top() + box.height() / 2;
    if (style.isSmall()) {
      String whole =
          Math.round(time.get().value() / SECONDS_PER_MINUTE)
              + "\u00a0"
              + Wording.name(Unit.MINUTE);
      texts.add(text(whole, x, middle, Anchor.MIDDLE, value));
      return;
    }
    double line = style.type().label() * 0.62;
    texts.add(
        text(
            minutes(time.get().value(), RoundingMode.HALF_EVEN)
                + "\u00a0"
                + Wording.name(Unit.MINUTE),
            x,
            middle - line,
            Anchor.MIDDLE,
            value));
    texts.add(text(between(time.get()), x, middle + line, Anchor.MIDDLE, small));
  }

  private static String between(Estimate time) {
    return Labels.of(
        "wording.range",
        minutes(time.bounds().low(), RoundingMode.FLOOR),
        minutes(time.bounds().high(), RoundingMode.CEILING));
  }

  private static String minutes(double seconds, RoundingMode rounding) {
    return new BigDecimal(seconds / SECONDS_PER_MINUTE).setScale(1, rounding).toPlainString();
  }

  private static Rectangle2D rectangle(Box box) {
    return new Rectangle2D.Double(box.left(), box.top(), box.width(), box.height());
  }

  /** From none at no time to the deepest tint at the longest; the ground shows through. */
  private static Color tint(double share) {
    int opacity = (int) Math.round(OPAQUE * share);
    return new Color(
        Palette.DEEP.getRed(), Palette.DEEP.getGreen(), Palette.DEEP.getBlue(), opacity);
  }
}
