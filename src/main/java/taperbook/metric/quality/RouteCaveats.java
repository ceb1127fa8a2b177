package taperbook.metric.quality;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import taperbook.format.NumberFormatter;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.session.Caveat;
import taperbook.session.Caveat.Kind;
import taperbook.session.Leg;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;

/** Caveats where elevations and legs of a range test contradict the stated route. */
final class RouteCaveats {
  /** Tolerance of heights of the same place, m: common practice without a source. */
  private static final double SAME_HEIGHT_METRES = 10;

  /** Tolerance of the distances out and back, as a share: common practice without a source. */
  private static final double SAME_WAY_SHARE = 0.05;

  private final RangeTest test;
  private final NumberFormatter formatter;
  private final List<Caveat> caveats = new ArrayList<>();

  private RouteCaveats(RangeTest test, NumberFormatter formatter) {
    this.test = test;
    this.formatter = formatter;
  }

  static List<Caveat> of(RangeTest test, NumberFormatter formatter) {
    RouteCaveats all = new RouteCaveats(test, formatter);
    String route = test.facts().text(RangeItem.ROUTE).orElse("");
    switch (route) {
      case "loop" -> all.ends("loop");
      case "out and back" -> {
        all.ends(route);
        all.compareDirections();
      }
      case "one way" -> all.wayBack();
      default -> {
        // An unstated route cannot be contradicted.
      }
    }
    all.chargedBetween();
    return all.caveats;
  }

  private void add(String sentence) {
    caveats.add(new Caveat(Kind.DRIVE, sentence));
  }

  /** Checks that a route that returns to its start ends at the same height. */
  private void ends(String route) {
    Optional<Estimate> start = test.facts().amount(RangeItem.START_ELEVATION);
    Optional<Estimate> end = test.facts().amount(RangeItem.END_ELEVATION);
    if (start.isEmpty() || end.isEmpty()) {
      return;
    }
    Estimate rise = end.get().minus(start.get());
    boolean above = rise.value() > 0;
    Estimate apart = above ? rise : rise.times(-1);
    if (apart.bounds().low() > SAME_HEIGHT_METRES) {
      add(
          "The route is stated as "
              + route
              + ", but it ended "
              + formatter.value(apart, Unit.METRE)
              + (above ? " above" : " below")
              + " its start: one of the two is wrong, or the drive did not come back to where it"
              + " began.");
    }
  }

  private void compareDirections() {
    Optional<Estimate> out = distance("out");
    Optional<Estimate> back = distance("back");
    if (out.isEmpty() || back.isEmpty()) {
      return;
    }
    double shorter = Math.min(out.get().bounds().high(), back.get().bounds().high());
    double longer = Math.max(out.get().bounds().low(), back.get().bounds().low());
    if (longer > (1 + SAME_WAY_SHARE) * shorter) {
      add(
          "The route is stated as out and back, but the legs out add up to "
              + formatter.value(out.get(), Unit.KILOMETRE)
              + " and the legs back to "
              + formatter.value(back.get(), Unit.KILOMETRE)
              + ": it was not the same way.");
    }
  }

  private void wayBack() {
    if (distance("out").isPresent() && distance("back").isPresent()) {
      add("The route is stated as one way, but it has legs called out and legs called back.");
    }
  }

  /** Returns the distance of the legs whose name begins with a word, if there are any. */
  private Optional<Estimate> distance(String word) {
    return test.legs().stream()
        .filter(l -> l.name().strip().toLowerCase(Locale.ROOT).matches(word + "\\b.*"))
        .map(Leg::distance)
        .reduce((sum, next) -> sum.minus(next.times(-1)));
  }

  /** Checks for a leg that starts with more charge than the previous leg ended with. */
  private void chargedBetween() {
    for (int i = 1; i < test.legs().size(); i++) {
      Leg before = test.legs().get(i - 1);
      Leg leg = test.legs().get(i);
      if (before.soc().isEmpty() || leg.soc().isEmpty()) {
        continue;
      }
      Estimate end = before.soc().get().end();
      Estimate start = leg.soc().get().start();
      if (start.bounds().low() > end.bounds().high()) {
        add(
            "Leg "
                + leg.name()
                + " began at "
                + formatter.value(start, Unit.PERCENT)
                + ", and the leg before it ended at "
                + formatter.value(end, Unit.PERCENT)
                + ": the car was charged in between, or one of the two is wrong.");
      }
    }
  }
}
