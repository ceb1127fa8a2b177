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
            ReportKey.REPEATS, "name at least one more run, or take the line away")) {
      if (written.text().equals(session)) {
        refuse(written, "the session reported itself");
      } else if (names.contains(written.text())) {
        refuse(written, "which is named already");
      } else if (taken.contains(written.text())) {
        refuse(written, "which is compared as well");
      } else {
        sessions.find(written).ifPresent(names::add);
      }
    }
    return names;
  }

  private void refuse(FrontMatterValue written, String why) {
    log.add(
        ProblemCode.FACTS_CONTRADICT,
        written.line(),
        written.column(),
        Quoted.of(written.text()) + ", " + why,
        "further runs, each named once and not under compare",
        "take it away");
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
          "a standard deviation in %, a comma, and where it comes from",
          "write it as in " + Quoted.of(ReportKey.RUN_SPREAD.example()));
    }
    double percent = Double.parseDouble(match.group(1));
    if (percent == 0 || percent > MAX_PERCENT) {
      return refuse(
          ProblemCode.VALUE_OUT_OF_RANGE,
          written,
          "a standard deviation above 0 and up to " + Math.round(MAX_PERCENT) + " %",
          "correct it, or take the line away");
    }
    if (!frontMatter.list(ReportKey.REPEATS).isEmpty()) {
      log.add(
          ProblemCode.FACTS_CONTRADICT,
          written.line(),
          written.column(),
          Quoted.of(written.text()) + " beside repeats",
          "one source for the spread between runs",
          "take one of the two away");
      return Optional.empty();
    }
    return Optional.of(new ReportPlan.RunSpread(percent / 100, match.group(2)));
  }

  private Optional<ReportPlan.RunSpread> refuse(
      ProblemCode code, FrontMatterValue written, String expected, String remedy) {
    log.add(code, written.line(), written.column(), Quoted.of(written.text()), expected, remedy);
    return Optional.empty();
  }
}
