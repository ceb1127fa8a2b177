package taperbook.input.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import taperbook.diagnostics.ProblemLog;
import taperbook.i18n.Texts;
import taperbook.input.cell.Suggestion;
import taperbook.input.cell.UnitSpelling;
import taperbook.input.folder.FrontMatterValue;
import taperbook.input.folder.ReportFile;
import taperbook.plan.Basis;
import taperbook.plan.Paper;
import taperbook.plan.ReportPlan;
import taperbook.quantity.Unit;

/** Parses the parts of front matter that all kinds of report have: heading, style and article. */
final class PlanSections {
  private static final List<String> UNITS = List.of(Unit.MILE.symbol(), Unit.KILOMETRE.symbol());
  private static final List<String> BASES = List.of(Basis.DRIVEN.words(), Basis.RATED.words());

  private final ReportFile raw;
  private final FrontMatter frontMatter;
  private final ProblemLog log;

  PlanSections(ReportFile raw, FrontMatter frontMatter, ProblemLog log) {
    this.raw = raw;
    this.frontMatter = frontMatter;
    this.log = log;
  }

  /** Returns the heading of a kind of report without a history. */
  ReportPlan.Heading heading() {
    return heading(ReportPlan.History.DRAFT);
  }

  /** Returns the heading with its history. */
  ReportPlan.Heading headingWithHistory() {
    return heading(new HistoryParser(frontMatter, log).read());
  }

  private ReportPlan.Heading heading(ReportPlan.History history) {
    String title = frontMatter.required(ReportKey.TITLE).map(FrontMatterValue::text).orElse("");
    String author = frontMatter.value(ReportKey.AUTHOR).map(FrontMatterValue::text).orElse("");
    Optional<LocalDate> published = frontMatter.value(ReportKey.PUBLISHED).flatMap(this::day);
    Optional<ReportPlan.Article> answer =
        frontMatter
            .value(ReportKey.ANSWER)
            .map(a -> new ReportPlan.Article(a.text(), raw.file(), a.line()));
    return new ReportPlan.Heading(title, author, published, history, answer);
  }

  private Optional<LocalDate> day(FrontMatterValue written) {
    return DateParser.read(written, log);
  }

  /**
   * Returns how numbers are shown.
   *
   * @param knownTemplates names of the templates that a report of this kind can have
   * @param usualTemplate the default template
   */
  ReportPlan.Style style(Set<String> knownTemplates, String usualTemplate) {
    Unit units =
        frontMatter
            .value(ReportKey.UNITS)
            .flatMap(v -> choice(v, UNITS, UnitSpelling.suggest(v.text(), UNITS)))
            .flatMap(Unit::ofSymbol)
            .orElse(Unit.KILOMETRE);
    Basis basis =
        frontMatter
            .value(ReportKey.BASIS)
            .flatMap(v -> choice(v, BASES, Suggestion.of(v.text(), BASES)))
            .flatMap(Basis::ofWords)
            .orElse(Basis.DRIVEN);
    KnownNames templates =
        new KnownNames(
            Texts.of("input.plan_sections.template"), "", knownTemplates, name -> false, log);
    String template =
        frontMatter.value(ReportKey.TEMPLATE).flatMap(templates::find).orElse(usualTemplate);
    ReportPlan.Film film = new FilmParser(log).read(frontMatter.list(ReportKey.FILM));
    Paper paper =
        frontMatter
            .value(ReportKey.PAPER)
            .flatMap(v -> choice(v, Paper.words(), Suggestion.of(v.text(), Paper.words())))
            .flatMap(Paper::ofWord)
            .orElse(Paper.A4);
    return new ReportPlan.Style(units, basis, template, film, paper);
  }

  private Optional<String> choice(
      FrontMatterValue written, List<String> words, Optional<String> meant) {
    if (words.contains(written.text())) {
      return Optional.of(written.text());
    }
    FrontMatter.refuseWord(written, words, meant, log);
    return Optional.empty();
  }

  ReportPlan.Article article() {
    return new ReportPlan.Article(raw.body(), raw.file(), raw.bodyFirstLine());
  }
}
