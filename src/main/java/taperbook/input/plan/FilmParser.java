package taperbook.input.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.i18n.Texts;
import taperbook.input.cell.NormalizedName;
import taperbook.input.cell.Suggestion;
import taperbook.input.folder.FrontMatterValue;
import taperbook.plan.ReportPlan;

/** Parses the film options: {@code yes} or {@code no}, and {@code offset h:mm:ss}. */
final class FilmParser {
  private static final Pattern OFFSET =
      Pattern.compile("offset ([0-9]{1,2}):([0-5][0-9]):([0-5][0-9])");

  private static final String EXAMPLE = "offset 0:03:20";

  private final ProblemLog log;
  private Optional<FrontMatterValue> charts = Optional.empty();
  private Optional<FrontMatterValue> offset = Optional.empty();
  private OptionalInt seconds = OptionalInt.empty();

  FilmParser(ProblemLog log) {
    this.log = log;
  }

  /** Parses all parts; an invalid part is reported and ignored. */
  ReportPlan.Film read(List<FrontMatterValue> written) {
    written.forEach(this::take);
    return new ReportPlan.Film(
        charts.filter(c -> NormalizedName.of(c.text()).equals("yes")).isPresent(), seconds);
  }

  private void take(FrontMatterValue written) {
    String part = NormalizedName.of(written.text());
    if (part.equals("yes") || part.equals("no")) {
      checkOnce(written, charts);
      charts = Optional.of(written);
      return;
    }
    Matcher match = OFFSET.matcher(part);
    if (match.matches()) {
      checkOnce(written, offset);
      offset = Optional.of(written);
      seconds =
          OptionalInt.of(
              3600 * Integer.parseInt(match.group(1))
                  + 60 * Integer.parseInt(match.group(2))
                  + Integer.parseInt(match.group(3)));
    } else if (part.startsWith("offset")) {
      written.refuse(
          log,
          ProblemCode.VALUE_NOT_UNDERSTOOD,
          Texts.of("input.film_parser.time_of_film_at_which"),
          Texts.of("input.film_parser.write_it_in_that_form", EXAMPLE));
    } else {
      written.refuse(
          log,
          ProblemCode.VALUE_NOT_UNDERSTOOD,
          Texts.of("input.film_parser.yes_no_or", EXAMPLE),
          Suggestion.of(part, List.of("yes", "no"))
              .map(w -> Texts.of("input.common.write", w))
              .orElse(Texts.of("input.film_parser.write_one_of_these")));
    }
  }

  private void checkOnce(FrontMatterValue written, Optional<FrontMatterValue> before) {
    if (before.isPresent()) {
      written.report(
          log,
          ProblemCode.FACTS_CONTRADICT,
          Texts.of(
              "input.film_parser.beside",
              Quoted.of(written.text()),
              Quoted.of(before.get().text())),
          Texts.of("input.film_parser.yes_or_no_once_and"),
          Texts.of("input.common.take_one_of_two_away"));
    }
  }
}
