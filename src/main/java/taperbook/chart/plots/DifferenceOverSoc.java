package taperbook.chart.plots;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.chart.model.Axis;
import taperbook.chart.model.Chart;
import taperbook.chart.model.FigureText;
import taperbook.chart.model.LeadStrip;
import taperbook.chart.model.Pen;
import taperbook.chart.model.PlotLine;
import taperbook.chart.model.Series;
import taperbook.chart.model.TextAlternative;
import taperbook.chart.plots.Lineup.Member;
import taperbook.chart.render.Figure;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Texts;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.result.Curve;
import taperbook.result.PairResult;
import taperbook.result.Stretch;

/** The chart of the difference in power between the reported session and another, over charge. */
final class DifferenceOverSoc {
  /** Margin below the lowest point, as a share of the curve's height. */
  private static final double FOOTROOM = 0.06;

  private static final double HEADROOM = 0.12;

  private final Lineup lineup;
  private final Member own;
  private final Member other;
  private final PairResult pair;
  private final PairCaption pairCaption;
  private final String id;

  private DifferenceOverSoc(Lineup lineup, int index) {
    this.lineup = lineup;
    this.own = lineup.members().get(0);
    this.other = lineup.members().get(index + 1);
    this.pair = lineup.pairs().get(index);
    this.pairCaption = new PairCaption(lineup.result(), pair, own, other);
    this.id = index == 0 ? "difference-over-soc" : "difference-over-soc-" + (index + 1);
  }

  /** Returns the chart of a pair, if the two share a stretch of charge. */
  static Optional<Figure> draw(Lineup lineup, int index) {
    DifferenceOverSoc difference = new DifferenceOverSoc(lineup, index);
    return difference.pair.difference().filter(c -> c.size() > 0).map(difference::draw);
  }

  private Figure draw(Curve curve) {
    PlotLine line = PlotLine.signed(curve);
    Axis y = axis(line);
    Chart chart =
        new Chart(
            id,
            lineup.heading(
                pairCaption.leadFinding().orElseGet(pairCaption::finding),
                Texts.of("chart.difference", less()),
                List.of(own, other)),
            Axis.stateOfCharge(10),
            y,
            List.of(new Series(line, Pen.COMPUTED, "")),
            Chart.Marks.leads(leads()));
    String caption =
        FigureText.sentences(
            List.of(
                pairCaption.overall(),
                pairCaption.leads(),
                pairCaption.crossings(),
                pairCaption.runs()));
    String description =
        new TextAlternative(
                Texts.of("figure.common.state_of_charge_in_from"),
                FigureText.range(Texts.of("figure.difference_over_soc.power_of_in_kw", less()), y))
            .add(own.label() + ", " + other.label() + ".")
            .line(chart.series().get(0), i -> point(curve, i))
            .add(Texts.of("figure.difference_over_soc.strip_below_axis_shows_who"))
            .add(pairCaption.all())
            .text();
    return Figure.of(chart, caption, description);
  }

  private String less() {
    return Texts.of("label.less", own.letter(), other.letter());
  }

  private Axis axis(PlotLine line) {
    double height = Math.max(line.top() - line.bottom(), 1);
    return Axis.between(
        Texts.of("axis.difference"),
        NumberFormatter.name(Unit.KILOWATT),
        line.bottom() - FOOTROOM * height,
        line.top() + HEADROOM * height,
        8);
  }

  private LeadStrip leads() {
    List<LeadStrip.Part> parts = pair.stretches().stream().map(this::part).toList();
    List<LeadStrip.Crossing> crossings = new ArrayList<>();
    for (String crossing : pair.crossings()) {
      pairCaption.texts().estimate(crossing).ifPresent(e -> crossings.add(crossing(crossing, e)));
    }
    return new LeadStrip(parts, crossings);
  }

  private LeadStrip.Part part(Stretch stretch) {
    return switch (stretch.order()) {
      case AHEAD -> part(stretch, names(own), LeadStrip.Fill.FULL, Optional.of(own.pen()));
      case BEHIND -> part(stretch, names(other), LeadStrip.Fill.HATCHED, Optional.of(other.pen()));
      case UNDECIDED ->
          part(
              stretch,
              List.of(pairCaption.name(stretch.order())),
              LeadStrip.Fill.OPEN,
              Optional.empty());
    };
  }

  private static List<String> names(Member member) {
    return List.of(
        Texts.of("mark.leads", member.words()),
        Texts.of("mark.leads", member.letter()),
        member.letter());
  }

  private static LeadStrip.Part part(
      Stretch stretch, List<String> names, LeadStrip.Fill fill, Optional<Pen> pen) {

    return new LeadStrip.Part(stretch.from(), stretch.to(), names, fill, pen);
  }

  private LeadStrip.Crossing crossing(String crossing, Estimate soc) {
    List<String> label = new ArrayList<>();
    label.add(Texts.of("mark.crossing", pairCaption.texts().value(crossing).orElseThrow()));
    pairCaption.texts().aside(crossing).ifPresent(label::add);
    return new LeadStrip.Crossing(soc.value(), soc.bounds().low(), soc.bounds().high(), label);
  }

  private static String point(Curve curve, int i) {
    return Texts.of(
        "figure.difference_over_soc.kw_to",
        FigureText.plain(curve.x(i)),
        FigureText.plain(curve.y(i)),
        FigureText.plain(curve.low(i)),
        FigureText.plain(curve.high(i)));
  }
}
