package taperbook.input.plan;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.input.cell.UnitSpelling;
import taperbook.input.folder.FrontMatterValue;
import taperbook.plan.ReportPlan;
import taperbook.quantity.SocWindow;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;

/** Parses the requested numbers of a report: distances, marks and windows of state of charge. */
final class RequestParser {
  private static final Pattern DISTANCE = Pattern.compile("([0-9]{1,4}) ?([^0-9\\s.].*)?");
  private static final Pattern MARK = Pattern.compile("([0-9]{1,3}) ?%?");
  private static final Pattern WINDOW =
      Pattern.compile("([0-9]{1,3}) ?%? ?(?:-|\u2013|\u2014|to) ?([0-9]{1,3}) ?%?");
  private static final List<String> DISTANCE_UNITS =
      List.of(Unit.MILE.symbol(), Unit.KILOMETRE.symbol());

  private final FrontMatter frontMatter;
  private final ProblemLog log;

  RequestParser(FrontMatter frontMatter, ProblemLog log) {
    this.frontMatter = frontMatter;
    this.log = log;
  }

  /** Returns the requests, with defaults for those that are missing. */
  ReportPlan.Wishes read(Unit units) {
    List<WantedDistance> distances = each(ReportKey.DISTANCES, this::distance);
    List<Integer> marks = List.copyOf(new TreeSet<>(each(ReportKey.SOC_MARKS, this::mark)));
    List<SocWindow> windows = each(ReportKey.WINDOW, this::window);
    return new ReportPlan.Wishes(
        distances.isEmpty() ? usualDistances(units) : distances,
        marks.isEmpty() ? IntStream.rangeClosed(1, 10).map(i -> 10 * i).boxed().toList() : marks,
        windows.isEmpty() ? List.of(new SocWindow(10, 80)) : windows,
        new RoadParser(frontMatter, log, this::distance).read());
  }

  private static List<WantedDistance> usualDistances(Unit units) {
    IntStream hundreds = units == Unit.MILE ? IntStream.of(100, 200) : IntStream.of(100, 200, 300);
    return hundreds.mapToObj(amount -> new WantedDistance(amount, units)).toList();
  }

  private <T> List<T> each(ReportKey key, Function<FrontMatterValue, Optional<T>> read) {
    return frontMatter.list(key).stream()
        .flatMap(text -> read.apply(text).stream())
        .distinct()
        .toList();
  }

  private Optional<WantedDistance> distance(FrontMatterValue written) {
    Matcher match = DISTANCE.matcher(written.text());
    if (!match.matches()) {
      return refuse(
          ProblemCode.VALUE_NOT_UNDERSTOOD,
          written,
          "a whole number with mi or km, as in 100 mi",
          "write the distance in that form, parted by commas");
    }
    String unit = Optional.ofNullable(match.group(2)).orElse("");
    if (!DISTANCE_UNITS.contains(unit)) {
      return refuse(
          ProblemCode.UNIT_NOT_UNDERSTOOD,
          written,
          "one of the units mi, km behind the number",
          UnitSpelling.suggest(unit, DISTANCE_UNITS)
              .map(u -> "write " + Quoted.of(match.group(1) + " " + u))
              .orElse("write the unit, as in " + Quoted.of(match.group(1) + " km")));
    }
    int amount = Integer.parseInt(match.group(1));
    if (amount == 0) {
      return refuse(
          ProblemCode.VALUE_OUT_OF_RANGE,
          written,
          "a distance from 1 to 9999 " + unit,
          "correct the distance");
    }
    return Optional.of(new WantedDistance(amount, Unit.ofSymbol(unit).orElseThrow()));
  }

  private Optional<Integer> mark(FrontMatterValue written) {
    Matcher match = MARK.matcher(written.text());
    if (!match.matches()) {
      return refuse(
          ProblemCode.VALUE_NOT_UNDERSTOOD,
          written,
          "a whole number of per cent, as in 80",
          "write the marks in that form, parted by commas");
    }
    int percent = Integer.parseInt(match.group(1));
    if (percent < 1 || percent > 100) {
      return refuse(
          ProblemCode.VALUE_OUT_OF_RANGE,
          written,
          "a state of charge from 1 to 100 %",
          "correct the mark");
    }
    return Optional.of(percent);
  }

  private Optional<SocWindow> window(FrontMatterValue written) {
    Matcher match = WINDOW.matcher(written.text());
    if (!match.matches()) {
      return refuse(
          ProblemCode.VALUE_NOT_UNDERSTOOD,
          written,
          "two whole numbers of per cent, as in 10-80 %",
          "write the window in that form");
    }
    int from = Integer.parseInt(match.group(1));
    int to = Integer.parseInt(match.group(2));
    if (from >= to || to > 100) {
      return refuse(
          ProblemCode.VALUE_OUT_OF_RANGE,
          written,
          "a window that rises, within 0 to 100 %",
          "write two different states of charge, none above 100, the lower one first");
    }
    return Optional.of(new SocWindow(from, to));
  }

  private <T> Optional<T> refuse(
      ProblemCode code, FrontMatterValue written, String expected, String remedy) {
    log.add(code, written.line(), written.column(), Quoted.of(written.text()), expected, remedy);
    return Optional.empty();
  }
}
