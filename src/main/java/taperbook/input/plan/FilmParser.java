package taperbook.input.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
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
      refuse(
          written,
          "the time of the film at which elapsed time is 0, as h:mm:ss",
          "write it in that form, as in " + EXAMPLE);
    } else {
      refuse(
          written,
          "yes, no, or " + EXAMPLE,
          Suggestion.of(part, List.of("yes", "no"))
              .map(w -> "write " + w)
              .orElse("write one of these"));
    }
  }

  private void checkOnce(FrontMatterValue written, Optional<FrontMatterValue> before) {
    if (before.isPresent()) {
      log.add(
          ProblemCode.FACTS_CONTRADICT,
          written.line(),
          written.column(),
          Quoted.of(written.text()) + " beside " + Quoted.of(before.get().text()),
          "yes or no once, and one offset",
          "take one of the two away");
    }
  }

  private void refuse(FrontMatterValue written, String expected, String remedy) {
    log.add(
        ProblemCode.VALUE_NOT_UNDERSTOOD,
        written.line(),
        written.column(),
        Quoted.of(written.text()),
        expected,
        remedy);
  }
}
