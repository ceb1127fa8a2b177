package taperbook.input.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.i18n.Texts;
import taperbook.input.folder.FrontMatterValue;
import taperbook.plan.ReportPlan;

/** Parses the repeats of the reported session, and a stated run-to-run spread. */
final class RepeatParser {
  private static final Pattern SPREAD =
      Pattern.compile("([0-9]{1,2}(?:\\.[0-9]{1,3})?) ?% ?, ?(\\S.*)");

  /** Maximum spread of runs of the same session, %. */
  private static final double MAX_PERCENT = 30;

  private final FrontMatter frontMatter;
  private final ProblemLog log;

  RepeatParser(FrontMatter frontMatter, ProblemLog log) {
    this.frontMatter = frontMatter;
    this.log = log;
  }

  /** Returns the names of the repeats, without duplicates. */
  List<String> names(String session, List<FrontMatterValue> compare, KnownNames sessions) {
    Set<String> taken = new HashSet<>(compare.stream().map(FrontMatterValue::text).toList());
    List<String> names = new ArrayList<>();
    for (FrontMatterValue written :
        frontMatter.listIfPresent(
            ReportKey.REPEATS, Texts.of("input.repeat_parser.name_at_least_one_more"))) {
      if (written.text().equals(session)) {
        refuse(written, Texts.of("input.repeat_parser.session_reported_itself"));
      } else if (names.contains(written.text())) {
        refuse(written, Texts.of("input.repeat_parser.which_is_named_already"));
      } else if (taken.contains(written.text())) {
        refuse(written, Texts.of("input.repeat_parser.which_is_compared_as_well"));
      } else {
        sessions.find(written).ifPresent(names::add);
      }
    }
    return names;
  }

  private void refuse(FrontMatterValue written, String why) {
    written.report(
        log,
        ProblemCode.FACTS_CONTRADICT,
        Quoted.of(written.text()) + ", " + why,
        Texts.of("input.repeat_parser.further_runs_each_named_once"),
        Texts.of("input.common.take_it_away"));
  }

  /** Returns the spread between runs that the tester states. */
  Optional<ReportPlan.RunSpread> spread() {
    return frontMatter.value(ReportKey.RUN_SPREAD).flatMap(this::spread);
  }

  private Optional<ReportPlan.RunSpread> spread(FrontMatterValue written) {
    Matcher match = SPREAD.matcher(written.text());
    if (!match.matches()) {
      return refuse(
          ProblemCode.VALUE_NOT_UNDERSTOOD,
          written,
          Texts.of("input.repeat_parser.standard_deviation_in_comma_and"),
          Texts.of("input.common.write_it_as_in", Quoted.of(ReportKey.RUN_SPREAD.example())));
    }
    double percent = Double.parseDouble(match.group(1));
    if (percent == 0 || percent > MAX_PERCENT) {
      return refuse(
          ProblemCode.VALUE_OUT_OF_RANGE,
          written,
          Texts.of("input.repeat_parser.standard_deviation_above_0_and", Math.round(MAX_PERCENT)),
          Texts.of("input.repeat_parser.correct_it_or_take_line"));
    }
    if (!frontMatter.list(ReportKey.REPEATS).isEmpty()) {
      written.report(
          log,
          ProblemCode.FACTS_CONTRADICT,
          Texts.of("input.repeat_parser.beside_repeats", Quoted.of(written.text())),
          Texts.of("input.repeat_parser.one_source_for_spread_between"),
          Texts.of("input.common.take_one_of_two_away"));
      return Optional.empty();
    }
    return Optional.of(new ReportPlan.RunSpread(percent / 100, match.group(2)));
  }

  private Optional<ReportPlan.RunSpread> refuse(
      ProblemCode code, FrontMatterValue written, String expected, String remedy) {
    written.refuse(log, code, expected, remedy);
    return Optional.empty();
  }
}
