package taperbook.input.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
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
      log.add(
          ProblemCode.KEY_MISSING,
          without.line(),
          without.column(),
          "no day of publication",
          "the day on which the report was first published",
          "write " + Quoted.of("published: 2026-03-14") + " with that day");
    }
    return new ReportPlan.History(published, corrections);
  }

  private boolean isPublished(FrontMatterValue written) {
    if (!STATES.contains(written.text())) {
      log.add(
          ProblemCode.VALUE_NOT_UNDERSTOOD,
          written.line(),
          written.column(),
          Quoted.of(written.text()),
          "one of the words " + String.join(", ", STATES),
          Suggestion.of(written.text(), STATES)
              .map(w -> "write " + w)
              .orElse("write one of these words"));
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
        log.add(
            ProblemCode.VALUE_NOT_UNDERSTOOD,
            item.line(),
            item.column(),
            Quoted.of(item.text()),
            "a day, a colon and the reason",
            "write it as in " + Quoted.of(ReportKey.CORRECTIONS.example()));
        continue;
      }
      FrontMatterValue written =
          new FrontMatterValue(item.text().substring(0, colon).strip(), item.line(), item.column());
      Optional<LocalDate> day = DateParser.read(written, log);
      day.ifPresent(d -> corrections.add(new ReportPlan.Reason(d, words)));
      if (day.isPresent() && last.isPresent() && !day.get().isAfter(last.get())) {
        log.add(
            ProblemCode.FACTS_CONTRADICT,
            item.line(),
            item.column(),
            Quoted.of(written.text()),
            "a day after " + last.get() + ", the one before it",
            "write the corrections in their order, each with a day of its own");
      }
      last = day.or(() -> published.flatMap(p -> DateParser.day(p.text())));
    }
    return corrections;
  }
}
