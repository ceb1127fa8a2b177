package taperbook.draw.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.draw.chart.Axis;
import taperbook.draw.chart.Chart;
import taperbook.draw.chart.PlotLine;
import taperbook.draw.chart.Said;
import taperbook.draw.chart.Series;
import taperbook.draw.chart.Standings;
import taperbook.draw.chart.Telling;
import taperbook.draw.compare.Lineup.Member;
import taperbook.draw.picture.Draft;
import taperbook.draw.style.Pen;
import taperbook.model.Curve;
import taperbook.model.Estimate;
import taperbook.model.PairResult;
import taperbook.model.Stretch;
import taperbook.model.Unit;
import taperbook.words.Labels;
import taperbook.words.Wording;

/** The chart of how far the reported session's power lies above that of another, over charge. */
final class DifferenceOverSoc {
  /** Room below the lowest point, as a share of the curve's height. */
  private static final double FOOTROOM = 0.06;

  private static final double HEADROOM = 0.12;

  private final Lineup lineup;
  private final Member own;
  private final Member other;
  private final PairResult pair;
  private final PairWords words;
  private final String id;

  private DifferenceOverSoc(Lineup lineup, int index) {
    this.lineup = lineup;
    this.own = lineup.members().get(0);
    this.other = lineup.members().get(index + 1);
    this.pair = lineup.pairs().get(index);
    this.words = new PairWords(lineup.result(), pair, own.letter(), other.letter());
    this.id = index == 0 ? "difference-over-soc" : "difference-over-soc-" + (index + 1);
  }

  /** The chart of a pair, if the two share a stretch of charge. */
  static Optional<Draft> draft(Lineup lineup, int index) {
    DifferenceOverSoc difference = new DifferenceOverSoc(lineup, index);
    return difference.pair.difference().filter(c -> c.size() > 0).map(difference::draft);
  }

  private Draft draft(Curve curve) {
    PlotLine line = PlotLine.signed(curve);
    Axis y = axis(line);
    Chart chart =
        new Chart(
            id,
            lineup.heading(
                words
                    .leadFinding(own.words(), other.words())
                    .orElseGet(() -> words.finding(own.words(), other.words())),
                Labels.of("chart.difference", less()),
                List.of(own, other)),
            Axis.stateOfCharge(10),
            y,
            List.of(new Series(line, Pen.COMPUTED, "")),
            Chart.Marks.standings(standings()));
    String caption =
        Said.sentences(List.of(words.overall(), words.leads(), words.crossings(), words.runs()));
    String told =
        new Telling(
                "state of charge in %, from 0 to 100",
                Words.range("power of " + less() + " in kW", y))
            .add(own.label() + ", " + other.label() + ".")
            .line(chart.series().get(0), i -> point(curve, i))
            .add("A strip below the axis shows who leads where.")
            .add(words.all())
            .text();
    return new Draft(chart, caption, told);
  }

  private String less() {
    return Labels.of("label.less", own.letter(), other.letter());
  }

  private Axis axis(PlotLine line) {
    double height = Math.max(line.top() - line.bottom(), 1);
    return Axis.across(
        Labels.of("axis.difference"),
        Wording.name(Unit.KILOWATT),
        line.bottom() - FOOTROOM * height,
        line.top() + HEADROOM * height,
        8);
  }

  private Standings standings() {
    List<Standings.Part> parts = pair.stretches().stream().map(this::part).toList();
    List<Standings.Crossing> crossings = new ArrayList<>();
    for (String crossing : pair.crossings()) {
      words.said().estimate(crossing).ifPresent(e -> crossings.add(crossing(crossing, e)));
    }
    return new Standings(parts, crossings);
  }

  private Standings.Part part(Stretch stretch) {
    return switch (stretch.order()) {
      case AHEAD -> part(stretch, names(own), Standings.Fill.FULL, Optional.of(own.pen()));
      case BEHIND -> part(stretch, names(other), Standings.Fill.HATCHED, Optional.of(other.pen()));
      case UNDECIDED ->
          part(
              stretch, List.of(words.name(stretch.order())), Standings.Fill.OPEN, Optional.empty());
    };
  }

  private static List<String> names(Member member) {
    return List.of(
        Labels.of("mark.leads", member.words()),
        Labels.of("mark.leads", member.letter()),
        member.letter());
  }

  private static Standings.Part part(
      Stretch stretch, List<String> names, Standings.Fill fill, Optional<Pen> pen) {

    return new Standings.Part(stretch.from(), stretch.to(), names, fill, pen);
  }

  private Standings.Crossing crossing(String crossing, Estimate soc) {
    List<String> label = new ArrayList<>();
    label.add(Labels.of("mark.crossing", words.said().value(crossing).orElseThrow()));
    words.said().aside(crossing).ifPresent(label::add);
    return new Standings.Crossing(soc.value(), soc.bounds().low(), soc.bounds().high(), label);
  }

  private static String point(Curve curve, int i) {
    return Said.plain(curve.x(i))
        + " %: "
        + Said.plain(curve.y(i))
        + " kW ("
        + Said.plain(curve.low(i))
        + " to "
        + Said.plain(curve.high(i))
        + ")";
  }
}
