package taperbook.chart.plots;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
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
import taperbook.format.NumberFormatter;
import taperbook.format.SessionNames;
import taperbook.i18n.Texts;
import taperbook.plan.Trip;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.result.ReportResult;
import taperbook.result.SessionResult;

/** The charge of each car over the time of the trip: falling while driving, rising at stops. */
final class TripTimeline implements Painting {
  private static final int MOST_LANES = 4;
  private static final int SECONDS_PER_HOUR = 3600;
  private static final int SECONDS_PER_MINUTE = 60;

  private final Trip trip;
  private final FigureText figureText;
  private final List<TripLane> lanes;

  private TripTimeline(ReportResult result, Trip trip, List<TripLane> lanes) {
    this.trip = trip;
    this.figureText = new FigureText(result);
    this.lanes = List.copyOf(lanes);
  }

  /** Returns the figure; empty if no trip is requested or none can be planned. */
  static Optional<Figure> figure(ReportResult result) {
    Optional<Trip> trip = result.plan().wishes().road().trip();
    if (trip.isEmpty()) {
      return Optional.empty();
    }
    List<TripLane> lanes = new ArrayList<>();
    List<String> names =
        SessionNames.heads(result.sessions().stream().map(SessionResult::session).toList());
    for (int i = 0; i < names.size(); i++) {
      TripLane.of(result.sessions().get(i), names.get(i), trip.get())
          .filter(l -> lanes.size() < MOST_LANES)
          .ifPresent(lanes::add);
    }
    if (lanes.isEmpty()) {
      return Optional.empty();
    }
    TripTimeline sheet = new TripTimeline(result, trip.get(), lanes);
    return Optional.of(
        Figure.of("trip-timeline", sheet.finding(), sheet.caption(), sheet.inWords(), sheet));
  }

  private String quantity() {
    return Texts.of("chart.trip", trip.distance().words(), trip.spacing().words());
  }

  /** Describes the time and number of stops of each car. */
  private String finding() {
    List<String> parts = new ArrayList<>();
    for (TripLane lane : lanes) {
      String time = Texts.of("finding.trip", time(lane), stops(lane));
      parts.add(lanes.size() == 1 ? time : lane.name().substring(0, 1) + " " + time);
    }
    return String.join("; ", parts);
  }

  private String time(TripLane lane) {
    return lane.numbers()
        .find("trip_time")
        .map(figureText.formatter()::value)
        .orElseGet(() -> figureText.minutes(lane.end()));
  }

  private static String stops(TripLane lane) {
    int count = lane.stops().size();
    return count == 0
        ? Texts.of("mark.no_stop")
        : count == 1 ? Texts.of("mark.one_stop") : Texts.of("mark.stops", count);
  }

  private String caption() {
    List<String> parts = new ArrayList<>();
    lanes.forEach(lane -> parts.add(lane.name() + ": " + time(lane) + ", " + stops(lane)));
    return Texts.of("figure.trip_timeline.plan_of_least_time_for", String.join("; ", parts));
  }

  private String inWords() {
    StringBuilder words = new StringBuilder(quantity() + ". ");
    for (TripLane lane : lanes) {
      words.append(lane.name()).append(": ").append(time(lane)).append(", ").append(stops(lane));
      for (TripLane.Stop stop : lane.stops()) {
        words.append(
            Texts.of(
                "figure.trip_timeline.after_from_to_in",
                figureText.minutes(stop.from()),
                percent(stop.arrivalSoc()),
                percent(stop.unplugSoc()),
                figureText.minutes(stop.to() - stop.plugged())));
      }
      words.append(". ");
    }
    return words.toString().strip();
  }

  private static String percent(double soc) {
    return Math.round(soc) + "\u00a0%";
  }

  @Override
  public List<TextRun> paint(Graphics2D g, ChartStyle style) {
    Heading heading = figureText.heading(finding(), quantity()).with(Texts.of("note.trip"), style);
    List<TextRun> texts = new ArrayList<>(heading.texts(style));
    Box room = heading.room(style);
    double axis = style.type().tick() * 2;
    double longest = lanes.stream().mapToDouble(TripLane::end).max().orElse(1);
    double height = (room.height() - axis) / lanes.size();
    Brush brush = new Brush(g, style);
    for (int i = 0; i < lanes.size(); i++) {
      Box box = new Box(room.left(), room.top() + i * height, room.width(), height);
      lane(brush, lanes.get(i), box, room.width() / longest, texts);
    }
    double axisTop = room.bottom() - axis;
    axis(brush, new Box(room.left(), axisTop, room.width(), axis), longest, texts);
    return texts;
  }

  private void lane(
      Brush brush, TripLane lane, Box box, double pixelsPerSecond, List<TextRun> texts) {
    ChartStyle style = brush.style();
    double line = style.leading();
    double top = box.top();
    if (lanes.size() > 1 && !style.isSmall()) {
      Face bold = new Face(style.type().label(), true, Palette.INK);
      texts.add(new TextRun(lane.name(), box.left(), top + 0.8 * line, Anchor.START, bold));
      top += line;
    }
    double words = style.isSmall() ? 0 : 1.3 * style.type().tick();
    Box track = new Box(box.left(), top + words, box.width(), box.bottom() - top - 2 * words);
    BasicStroke thin = style.solid(style.weights().thin());
    brush.line(track.left(), track.bottom(), track.right(), track.bottom(), thin, Palette.GRID);
    double soc = trip.startSoc();
    for (int k = 0; k < lane.drives().size(); k++) {
      TripLane.Drive drive = lane.drives().get(k);
      boolean last = k == lane.stops().size();
      double arrival = last ? arrival(lane) : lane.stops().get(k).arrivalSoc();
      Line2D driven = part(track, drive.from(), soc, drive.to(), arrival, pixelsPerSecond);
      brush.stroke(driven, style.solid(style.weights().mark() * 1.5), Palette.CURVE);
      if (!last) {
        TripLane.Stop stop = lane.stops().get(k);
        brush.stroke(
            part(track, stop.from(), arrival, stop.plugged(), arrival, pixelsPerSecond),
            style.dotted(),
            Palette.GREY);
        brush.stroke(
            part(track, stop.plugged(), arrival, stop.to(), stop.unplugSoc(), pixelsPerSecond),
            style.curve(),
            Palette.ACCENT);
        soc = stop.unplugSoc();
      }
    }
    if (!style.isSmall()) {
      labels(style, lane, track, pixelsPerSecond, texts);
    }
  }

  private double arrival(TripLane lane) {
    return lane.numbers().estimate("trip_arrival_soc").map(Estimate::value).orElse(0.0);
  }

  /** Returns the line between two times and charges. */
  private static Line2D part(
      Box track, double from, double low, double to, double high, double pixelsPerSecond) {
    return new Line2D.Double(
        track.left() + from * pixelsPerSecond,
        height(track, low),
        track.left() + to * pixelsPerSecond,
        height(track, high));
  }

  private static double height(Box track, double soc) {
    return track.bottom() - track.height() * soc / 100;
  }

  /**
   * Adds the target charge and duration above each rise, and the arrival charge below it, if they
   * fit.
   */
  private void labels(
      ChartStyle style, TripLane lane, Box track, double pixelsPerSecond, List<TextRun> texts) {
    double size = style.type().tick();
    Face face = new Face(size, false, Palette.INK);
    Face rise = new Face(size, true, Palette.ACCENT);
    double start = height(track, trip.startSoc()) - 0.4 * size;
    TextRun first = new TextRun(percent(trip.startSoc()), track.left(), start, Anchor.START, face);
    List<TextRun> placed = new ArrayList<>(List.of(first));
    double arrival = arrival(lane);
    double end = track.left() + lane.end() * pixelsPerSecond;
    placed.add(
        new TextRun(percent(arrival), end, height(track, arrival) + 1.1 * size, Anchor.END, face));
    for (TripLane.Stop stop : lane.stops()) {
      double x = track.left() + stop.to() * pixelsPerSecond;
      String minutes =
          Math.round((stop.to() - stop.plugged()) / SECONDS_PER_MINUTE)
              + "\u00a0"
              + NumberFormatter.name(Unit.MINUTE);
      String risen = Texts.of("mark.risen", percent(stop.unplugSoc()), minutes);
      double above = height(track, stop.unplugSoc()) - 0.45 * size;
      double below = height(track, stop.arrivalSoc()) + 1.1 * size;
      addIfFree(new TextRun(risen, x, above, Anchor.MIDDLE, rise), style, placed);
      TextRun low = new TextRun(percent(stop.arrivalSoc()), x, below, Anchor.MIDDLE, face);
      addIfFree(low, style, placed);
    }
    texts.addAll(placed);
  }

  private static void addIfFree(TextRun text, ChartStyle style, List<TextRun> placed) {
    Box roomy = text.box().grown(0.3 * text.font().size());
    boolean inside = text.left() + text.width() < style.width() - style.edges().across();
    if (inside && placed.stream().noneMatch(p -> p.box().overlaps(roomy))) {
      placed.add(text);
    }
  }

  private static void axis(Brush brush, Box box, double longest, List<TextRun> texts) {
    ChartStyle style = brush.style();
    BasicStroke thin = style.solid(style.weights().thin());
    double y = box.top() + style.type().tick() * 0.3;
    brush.line(box.left(), y, box.right(), y, thin, Palette.GREY);
    Face face = new Face(style.type().tick(), false, Palette.INK);
    int step = longest > 12 * SECONDS_PER_HOUR ? 2 : 1;
    for (int hour = 0; hour * SECONDS_PER_HOUR <= longest; hour += step) {
      double x = box.left() + box.width() * hour * SECONDS_PER_HOUR / longest;
      brush.line(x, y, x, y + style.type().tick() * 0.35, thin, Palette.GREY);
      Anchor anchor = hour == 0 ? Anchor.START : Anchor.MIDDLE;
      String words = hour == 0 ? "0\u00a0" + NumberFormatter.name(Unit.HOUR) : String.valueOf(hour);
      texts.add(new TextRun(words, x, y + style.type().tick() * 1.5, anchor, face));
    }
  }
}
