package taperbook.chart.plots;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import taperbook.chart.model.FigureText;
import taperbook.chart.plots.Lineup.Member;
import taperbook.format.PairText;
import taperbook.format.RunText;
import taperbook.i18n.Joined;
import taperbook.i18n.Texts;
import taperbook.quantity.Estimate;
import taperbook.quantity.SocWindow;
import taperbook.quantity.Unit;
import taperbook.result.PairResult;
import taperbook.result.ReportResult;
import taperbook.result.Role;
import taperbook.result.Stretch;
import taperbook.result.Stretch.Order;

/** Describes the comparison of a pair in sentences. */
final class PairCaption {
  /** Maximum number of leads that are described individually; more are only counted. */
  private static final int MOST_TOLD = 3;

  private final PairResult pair;
  private final FigureText texts;
  private final Member own;
  private final Member other;
  private final PairText findings;

  /**
   * Creates the caption of a pair.
   *
   * @param own the reported session
   */
  PairCaption(ReportResult result, PairResult pair, Member own, Member other) {
    this.pair = pair;
    this.texts = new FigureText(result, pair.numbers());
    this.own = own;
    this.other = other;
    this.findings = new PairText(pair, own.letter(), other.letter(), texts.formatter());
  }

  FigureText texts() {
    return texts;
  }

  /** Describes which session takes more power, by the longest stretch that each leads. */
  String finding() {
    List<String> led = new ArrayList<>();
    for (Order order : List.of(Order.AHEAD, Order.BEHIND)) {
      pair.stretches().stream()
          .filter(s -> s.order() == order)
          .max(Comparator.comparingDouble(s -> s.to() - s.from()))
          .ifPresent(
              s ->
                  led.add(
                      Texts.of(
                          led.isEmpty() ? "finding.takes_more" : "finding.other_more",
                          (order == Order.AHEAD ? own : other).words(),
                          FigureText.percent(inward(s, s.from(), Math::ceil)),
                          FigureText.percent(inward(s, s.to(), Math::floor)))));
    }
    return led.isEmpty()
        ? Texts.of("finding.cannot_tell")
        : FigureText.capital(String.join(", ", led));
  }

  /**
   * Rounds an edge so that the stretch does not grow: to whole numbers unless that is too coarse.
   */
  private static double inward(Stretch stretch, double edge, DoubleUnaryOperator rounding) {
    double step = stretch.to() - stretch.from() < 5 ? 0.1 : 1;
    double steps = edge / step;
    boolean even = Math.abs(steps - Math.rint(steps)) < 1e-6;
    return step * (even ? Math.rint(steps) : rounding.applyAsDouble(steps));
  }

  /** Describes the difference in mean power, if the readings resolve it. */
  Optional<String> leadFinding() {
    return decided("mean_lead_shared")
        .map(
            lead ->
                Texts.of(
                    "finding.lead", (lead > 0 ? own : other).words(), size("mean_lead_shared")))
        .map(FigureText::capital);
  }

  /**
   * Describes the difference in time over the common window, or that the readings do not resolve
   * it.
   */
  Optional<String> timeFinding(SocWindow shared) {
    return pair.numbers().with(Role.HEADLINE).stream()
        .filter(n -> n.estimate().isPresent())
        .findFirst()
        .map(
            n -> {
              String from = FigureText.percent(shared.from());
              String to = FigureText.percent(shared.to());
              Estimate less = n.estimate().orElseThrow();
              return less.bounds().contains(0)
                  ? Texts.of("finding.not_quicker", from, to)
                  : FigureText.capital(
                      Texts.of(
                          "finding.quicker",
                          (less.value() < 0 ? own : other).words(),
                          texts.formatter().about(n).replace("\u2212", ""),
                          from,
                          to));
            });
  }

  /** Returns the value of a difference whose sign is certain. */
  private Optional<Double> decided(String id) {
    return texts.estimate(id).filter(e -> !e.bounds().contains(0)).map(Estimate::value);
  }

  /** Formats the magnitude of a difference for running text. */
  private String size(String id) {
    return texts.about(id).orElseThrow().replace("\u2212", "");
  }

  /** Describes the mean lead and the time gained, as far as the readings resolve them. */
  Optional<String> overall() {
    return findings.overall();
  }

  /** Summarises which of the two leads: stretch by stretch only if there are few. */
  Optional<String> leads() {
    List<String> led = new ArrayList<>();
    for (Stretch stretch : pair.stretches()) {
      stretch.ids().ifPresent(ids -> led.add(span(stretch) + by(ids)));
    }
    if (pair.stretches().isEmpty()) {
      return Optional.empty();
    }
    boolean doubt = led.size() < pair.stretches().size();
    if (led.isEmpty()) {
      return Optional.of(Texts.of("figure.pair_caption.readings_cannot_tell_them_apart"));
    }
    String leads = led.size() <= MOST_TOLD ? String.join("; ", led) : counted();
    return Optional.of(
        leads
            + (doubt ? Texts.of("figure.pair_caption.elsewhere_readings_cannot_tell_them") : "."));
  }

  /** Describes the spread between runs, if it is known. */
  Optional<String> runs() {
    return Optional.of(RunText.inShort(texts.result().runs().spread()));
  }

  /** Describes all findings, stretch by stretch. */
  String all() {
    return String.join(" ", findings.sentences());
  }

  /** Describes the crossings of the curves. */
  Optional<String> crossings() {
    List<String> places = new ArrayList<>();
    for (String id : pair.crossings()) {
      texts.full(id).ifPresent(places::add);
    }
    return places.isEmpty()
        ? Optional.empty()
        : Optional.of(Texts.of("figure.pair_caption.curves_cross_at", Joined.all(places)));
  }

  /** Returns the name of a stretch in the plot. */
  String name(Order order) {
    return switch (order) {
      case AHEAD -> Texts.of("mark.leads", own.letter());
      case BEHIND -> Texts.of("mark.leads", other.letter());
      case UNDECIDED -> Texts.of("mark.undecided");
    };
  }

  private String counted() {
    List<String> leads = new ArrayList<>();
    for (Order order : List.of(Order.AHEAD, Order.BEHIND)) {
      long count = pair.stretches().stream().filter(s -> s.order() == order).count();
      if (count > 0) {
        leads.add(
            Texts.of(
                "figure.pair_caption.in",
                name(order),
                count,
                count == 1
                    ? Texts.of("figure.pair_caption.stretch")
                    : Texts.of("figure.pair_caption.stretches")));
      }
    }
    return Joined.all(leads);
  }

  private String span(Stretch stretch) {
    return Texts.of("figure.pair_caption.from", name(stretch.order()), PairText.edges(stretch));
  }

  private String by(Stretch.Ids ids) {
    return texts
        .estimate(ids.lead())
        .map(e -> findings.amount(e, Unit.KILOWATT))
        .map(b -> Texts.of("figure.pair_caption.by_on_mean", b))
        .orElse("");
  }
}
