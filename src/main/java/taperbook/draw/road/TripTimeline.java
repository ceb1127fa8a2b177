package taperbook.draw.road;

import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
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
import taperbook.draw.style.Typeface;
import taperbook.model.ReportResult;
import taperbook.model.SessionResult;
import taperbook.model.Trip;
import taperbook.model.Unit;
import taperbook.words.Labels;
import taperbook.words.SessionNames;
import taperbook.words.Wording;

/** The trip as a lane of time for each car: ways driven, and stops with the charge at both ends. */
final class TripTimeline implements Painting {
  private static final int MOST_LANES = 4;
  private static final int SECONDS_PER_HOUR = 3600;
  private static final int SECONDS_PER_MINUTE = 60;
  private static final String FOOT = Labels.of("note.trip");

  private final Trip trip;
  private final Said said;
  private final List<TripLane> lanes;

  private TripTimeline(ReportResult result, Trip trip, List<TripLane> lanes) {
    this.trip = trip;
    this.said = new Said(result);
    this.lanes = List.copyOf(lanes);
  }

  /** The figure; empty if no trip is asked for or none can be planned. */
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
        Figure.of(RoadFigures.TRIP, sheet.title(), sheet.caption(), sheet.inWords(), sheet));
  }

  private String title() {
    return Labels.of("chart.trip", trip.distance().words(), trip.spacing().words());
  }

  private String time(TripLane lane) {
    return lane.numbers()
        .find("trip_time")
        .map(said.wording()::value)
        .orElseGet(() -> said.minutes(lane.end()));
  }

  private static String stops(TripLane lane) {
    int count = lane.stops().size();
    return count == 0
        ? Labels.of("mark.no_stop")
        : count == 1 ? Labels.of("mark.one_stop") : Labels.of("mark.stops", count);
  }

  private String caption() {
    List<String> parts = new ArrayList<>();
    lanes.forEach(lane -> parts.add(lane.name() + ": " + time(lane) + ", " + stops(lane)));
    return String.join("; ", parts) + ". The plan of least time for each; a plan is not a promise.";
  }

  private String inWords() {
    StringBuilder words = new StringBuilder("Timeline of a trip of " + title() + ". ");
    for (TripLane lane : lanes) {
      words.append(lane.name()).append(": ").append(time(lane)).append(", ").append(stops(lane));
      for (TripLane.Stop stop : lane.stops()) {
        words.append("; after ").append(said.minutes(stop.from())).append(" from ");
        words.append(percent(stop.arrivalSoc())).append(" to ").append(percent(stop.unplugSoc()));
        words.append(" in ").append(said.minutes(stop.to() - stop.plugged()));
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
    List<TextRun> texts = new ArrayList<>(SheetHead.texts(title(), said.vehicle(), FOOT, style));
    Box room = SheetHead.room(FOOT, style);
    double axis = style.type().tick() * 2.2;
    double longest = lanes.stream().mapToDouble(TripLane::end).max().orElse(1);
    double height = Math.min((room.height() - axis) / lanes.size(), style.height() * 0.42);
    for (int i = 0; i < lanes.size(); i++) {
      Box box = new Box(room.left(), room.top() + i * height, room.width(), height);
      lane(g, style, lanes.get(i), box, room.width() / longest, texts);
    }
    double foot = room.top() + lanes.size() * height;
    axis(g, style, new Box(room.left(), foot, room.width(), axis), longest, texts);
    return texts;
  }

  private void lane(
      Graphics2D g,
      ChartStyle style,
      TripLane lane,
      Box box,
      double pixelsPerSecond,
      List<TextRun> texts) {
    double line = style.leading();
    double name = box.top() + line * 0.9;
    Face bold = new Face(style.type().label(), true, Palette.INK);
    texts.add(
        new TextRun(
            style.isSmall() ? time(lane) : lane.name() + ": " + time(lane) + ", " + stops(lane),
            box.left(),
            name,
            Anchor.START,
            bold));
    double top = name + line * 1.45;
    double height = Math.max(line, box.bottom() - top - line * 1.6);
    Box bar = new Box(box.left(), top, box.width(), height);
    g.setStroke(style.solid(style.weights().mark()));
    for (TripLane.Drive drive : lane.drives()) {
      Rectangle2D shape = part(bar, drive.from(), drive.to(), pixelsPerSecond);
      g.setColor(style.ground().of(Palette.BAND));
      g.fill(shape);
      g.setColor(style.ground().of(Palette.CURVE));
      g.draw(shape);
    }
    g.setColor(style.ground().of(Palette.ACCENT));
    for (TripLane.Stop stop : lane.stops()) {
      Rectangle2D shape = part(bar, stop.plugged(), stop.to(), pixelsPerSecond);
      Hatch.fill(
          g,
          new Box(shape.getX(), shape.getY(), shape.getWidth(), shape.getHeight()),
          style.weights().curve() * 2);
      g.draw(shape);
    }
    if (!style.isSmall()) {
      labels(style, lane, bar, pixelsPerSecond, texts);
    }
  }

  private static Rectangle2D part(Box bar, double from, double to, double pixelsPerSecond) {
    return new Rectangle2D.Double(
        bar.left() + from * pixelsPerSecond,
        bar.top(),
        (to - from) * pixelsPerSecond,
        bar.height());
  }

  /** Above each stop its charge, below it its minutes; what has no room is left to the table. */
  private void labels(
      ChartStyle style, TripLane lane, Box bar, double pixelsPerSecond, List<TextRun> texts) {
    Face face = new Face(style.type().tick(), false, Palette.INK);
    double above = bar.top() - style.type().tick() * 0.5;
    double below = bar.bottom() + style.type().tick() * 1.15;
    texts.add(new TextRun(percent(trip.startSoc()), bar.left(), above, Anchor.START, face));
    double last = bar.left() + Typeface.width(percent(trip.startSoc()), false, face.size());
    for (TripLane.Stop stop : lane.stops()) {
      double x = bar.left() + (stop.plugged() + stop.to()) / 2 * pixelsPerSecond;
      String charge =
          Labels.of("wording.range", Math.round(stop.arrivalSoc()), percent(stop.unplugSoc()));
      String minutes =
          Math.round((stop.to() - stop.plugged()) / SECONDS_PER_MINUTE)
              + "\u00a0"
              + Wording.name(Unit.MINUTE);
      double half = Typeface.width(charge, false, face.size()) * style.type().slack() / 2;
      if (x - half > last + style.type().tick() * 0.6) {
        texts.add(new TextRun(charge, x, above, Anchor.MIDDLE, face));
        texts.add(new TextRun(minutes, x, below, Anchor.MIDDLE, face));
        last = x + half;
      }
    }
    lane.numbers()
        .estimate("trip_arrival_soc")
        .ifPresent(
            soc ->
                texts.add(
                    new TextRun(
                        percent(soc.value()),
                        bar.left() + lane.end() * pixelsPerSecond,
                        below,
                        Anchor.END,
                        face)));
  }

  private void axis(Graphics2D g, ChartStyle style, Box box, double longest, List<TextRun> texts) {
    double y = box.top() + style.type().tick() * 0.3;
    g.setStroke(style.solid(style.weights().thin()));
    g.setColor(style.ground().of(Palette.GREY));
    g.draw(new Line2D.Double(box.left(), y, box.right(), y));
    Face face = new Face(style.type().tick(), false, Palette.INK);
    int step = longest > 12 * SECONDS_PER_HOUR ? 2 : 1;
    for (int hour = 0; hour * SECONDS_PER_HOUR <= longest; hour += step) {
      double x = box.left() + box.width() * hour * SECONDS_PER_HOUR / longest;
      g.draw(new Line2D.Double(x, y, x, y + style.type().tick() * 0.35));
      Anchor anchor = hour == 0 ? Anchor.START : Anchor.MIDDLE;
      String words = hour == 0 ? "0\u00a0" + Wording.name(Unit.HOUR) : String.valueOf(hour);
      texts.add(new TextRun(words, x, y + style.type().tick() * 1.5, anchor, face));
    }
  }
}
