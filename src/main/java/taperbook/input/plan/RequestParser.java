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
import taperbook.i18n.Texts;
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
          Texts.of("input.request_parser.whole_number_with_mi_or"),
          Texts.of("input.request_parser.write_distance_in_that_form"));
    }
    String unit = Optional.ofNullable(match.group(2)).orElse("");
    if (!DISTANCE_UNITS.contains(unit)) {
      return refuse(
          ProblemCode.UNIT_NOT_UNDERSTOOD,
          written,
          Texts.of("input.request_parser.one_of_units_mi_km"),
          UnitSpelling.suggest(unit, DISTANCE_UNITS)
              .map(u -> Texts.of("input.common.write", Quoted.of(match.group(1) + " " + u)))
              .orElse(
                  Texts.of(
                      "input.request_parser.write_unit_as_in",
                      Quoted.of(Texts.of("input.request_parser.km", match.group(1))))));
    }
    int amount = Integer.parseInt(match.group(1));
    if (amount == 0) {
      return refuse(
          ProblemCode.VALUE_OUT_OF_RANGE,
          written,
          Texts.of("input.request_parser.distance_from_1_to_9999", unit),
          Texts.of("input.request_parser.correct_distance"));
    }
    return Optional.of(new WantedDistance(amount, Unit.ofSymbol(unit).orElseThrow()));
  }

  private Optional<Integer> mark(FrontMatterValue written) {
    Matcher match = MARK.matcher(written.text());
    if (!match.matches()) {
      return refuse(
          ProblemCode.VALUE_NOT_UNDERSTOOD,
          written,
          Texts.of("input.request_parser.whole_number_of_per_cent"),
          Texts.of("input.request_parser.write_marks_in_that_form"));
    }
    int percent = Integer.parseInt(match.group(1));
    if (percent < 1 || percent > 100) {
      return refuse(
          ProblemCode.VALUE_OUT_OF_RANGE,
          written,
          Texts.of("input.request_parser.state_of_charge_from_1"),
          Texts.of("input.request_parser.correct_mark"));
    }
    return Optional.of(percent);
  }

  private Optional<SocWindow> window(FrontMatterValue written) {
    Matcher match = WINDOW.matcher(written.text());
    if (!match.matches()) {
      return refuse(
          ProblemCode.VALUE_NOT_UNDERSTOOD,
          written,
          Texts.of("input.request_parser.two_whole_numbers_of_per"),
          Texts.of("input.request_parser.write_window_in_that_form"));
    }
    int from = Integer.parseInt(match.group(1));
    int to = Integer.parseInt(match.group(2));
    if (from >= to || to > 100) {
      return refuse(
          ProblemCode.VALUE_OUT_OF_RANGE,
          written,
          Texts.of("input.request_parser.window_that_rises_within_0"),
          Texts.of("input.request_parser.write_two_different_states_of"));
    }
    return Optional.of(new SocWindow(from, to));
  }

  private <T> Optional<T> refuse(
      ProblemCode code, FrontMatterValue written, String expected, String remedy) {
    written.refuse(log, code, expected, remedy);
    return Optional.empty();
  }
}
