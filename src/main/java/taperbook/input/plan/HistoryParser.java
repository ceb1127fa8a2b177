package taperbook.input.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.i18n.Texts;
import taperbook.input.cell.Suggestion;
import taperbook.input.folder.FrontMatterValue;
import taperbook.plan.ReportPlan;

/** Parses whether a version of a report is published, and its corrections since the first one. */
final class HistoryParser {
  private static final String DRAFT = "draft";
  private static final String PUBLISHED = "published";
  private static final List<String> STATES = List.of(DRAFT, PUBLISHED);

  private final FrontMatter frontMatter;
  private final ProblemLog log;

  HistoryParser(FrontMatter frontMatter, ProblemLog log) {
    this.frontMatter = frontMatter;
    this.log = log;
  }

  ReportPlan.History read() {
    boolean published = frontMatter.value(ReportKey.STATE).map(this::isPublished).orElse(false);
    Optional<FrontMatterValue> day = frontMatter.value(ReportKey.PUBLISHED);
    List<ReportPlan.Reason> corrections = corrections(day);
    if (day.isEmpty() && (published || !corrections.isEmpty())) {
      FrontMatterValue without =
          published
              ? frontMatter.value(ReportKey.STATE).orElseThrow()
              : frontMatter.items(ReportKey.CORRECTIONS).get(0);
      without.report(
          log,
          ProblemCode.KEY_MISSING,
          Texts.of("input.history_parser.no_day_of_publication"),
          Texts.of("input.history_parser.day_on_which_report_was"),
          Texts.of("input.history_parser.write_with_that_day", Quoted.of("published: 2026-03-14")));
    }
    return new ReportPlan.History(published, corrections);
  }

  private boolean isPublished(FrontMatterValue written) {
    if (!STATES.contains(written.text())) {
      FrontMatter.refuseWord(written, STATES, Suggestion.of(written.text(), STATES), log);
    }
    return written.text().equals(PUBLISHED);
  }

  private List<ReportPlan.Reason> corrections(Optional<FrontMatterValue> published) {
    List<ReportPlan.Reason> corrections = new ArrayList<>();
    Optional<LocalDate> last = published.flatMap(p -> DateParser.day(p.text()));
    for (FrontMatterValue item : frontMatter.items(ReportKey.CORRECTIONS)) {
      int colon = item.text().indexOf(':');
      String words = colon < 0 ? "" : item.text().substring(colon + 1).strip();
      if (words.isEmpty()) {
        item.refuse(
            log,
            ProblemCode.VALUE_NOT_UNDERSTOOD,
            Texts.of("input.history_parser.day_colon_and_reason"),
            Texts.of("input.common.write_it_as_in", Quoted.of(ReportKey.CORRECTIONS.example())));
        continue;
      }
      FrontMatterValue written =
          new FrontMatterValue(item.text().substring(0, colon).strip(), item.line(), item.column());
      Optional<LocalDate> day = DateParser.read(written, log);
      day.ifPresent(d -> corrections.add(new ReportPlan.Reason(d, words)));
      if (day.isPresent() && last.isPresent() && !day.get().isAfter(last.get())) {
        item.report(
            log,
            ProblemCode.FACTS_CONTRADICT,
            Quoted.of(written.text()),
            Texts.of("input.history_parser.day_after_one_before_it", last.get()),
            Texts.of("input.history_parser.write_corrections_in_their_order"));
      }
      last = day.or(() -> published.flatMap(p -> DateParser.day(p.text())));
    }
    return corrections;
  }
}
