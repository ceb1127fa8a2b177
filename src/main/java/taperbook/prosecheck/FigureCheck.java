package taperbook.prosecheck;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import taperbook.diagnostics.Problem;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.SourceLocation;
import taperbook.plan.ReportPlan;
import taperbook.prosecheck.TypedFigure.Verdict;
import taperbook.quantity.Quantity;
import taperbook.quantity.SocWindow;
import taperbook.result.ReportResult;

/** Compares the figures typed by hand in the article with the results. */
public final class FigureCheck {
  /** A sentence with more amounts is a kind of list, which is not checked. */
  private static final int MAX_AMOUNTS = 40;

  private final ReportPlan.Article article;
  private final Targets targets;
  private final Doubts doubts;
  private final ContradictionText words;
  private final PassageSplitter passages;
  private final ProblemLog log;
  private final List<TypedFigure> figures = new ArrayList<>();
  private final Set<Integer> neededMarks = new TreeSet<>();
  private boolean elsewhereBelowHeading;

  private FigureCheck(ReportResult result, ReportPlan.Article article) {
    this.article = article;
    this.targets = new Targets(result);
    this.doubts = new Doubts(result);
    this.words = new ContradictionText(result.plan().style().units());
    this.passages = new PassageSplitter(article.markdown(), article.firstLine());
    this.log = new ProblemLog(article.file());
  }

  /**
   * Returns the figures of the report's answer and article with their verdicts, and their problems.
   */
  public static ArticleFigures of(ReportResult result) {
    List<TypedFigure> figures = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    Stream.concat(result.plan().heading().answer().stream(), Stream.of(result.plan().article()))
        .map(text -> new FigureCheck(result, text).checked())
        .forEach(
            checked -> {
              figures.addAll(checked.figures());
              problems.addAll(checked.problems());
            });
    return new ArticleFigures(figures, problems);
  }

  private ArticleFigures checked() {
    passages.all().forEach(this::read);
    reportUnneededMarks();
    return new ArticleFigures(figures, log.list());
  }

  private void read(Passage passage) {
    if (passage.kind() == Passage.Kind.HEADING) {
      elsewhereBelowHeading = false;
    }
    boolean elsewhere = elsewhereBelowHeading;
    boolean reportedClaim = false;
    for (Sentence sentence : Sentence.of(passage)) {
      String text = sentence.text();
      boolean ownAction = doubts.namesOwn(text);
      elsewhere = doubts.refersElsewhere(text) || (elsewhere && !ownAction);
      reportedClaim =
          Doubts.isReportedClaim(text)
              || (reportedClaim && !ownAction && !Doubts.isOwnAction(text));
      boolean trusted =
          !elsewhere
              && !reportedClaim
              && passage.kind() != Passage.Kind.FOREIGN
              && sentence.amounts().size() <= MAX_AMOUNTS
              && !doubts.isNotAssertion(text);
      sentence.amounts().forEach(amount -> judge(sentence, amount, trusted));
    }
    elsewhereBelowHeading |= passage.kind() == Passage.Kind.HEADING && (elsewhere || reportedClaim);
  }

  private void judge(Sentence sentence, Amount amount, boolean trusted) {
    if (amount.is(Quantity.SHARE) && amount.isRange()) {
      judgeEdges(sentence, amount, trusted);
      return;
    }
    Optional<Meaning> meaning = trusted ? meaning(sentence, amount) : Optional.empty();
    boolean decided = meaning.filter(m -> m.certain() || m.agrees(amount)).isPresent();
    if (decided || !isRequest(amount)) {
      enter(sentence, amount, meaning);
    }
  }

  private void judgeEdges(Sentence sentence, Amount range, boolean trusted) {
    if (!trusted || isDoubted(sentence, range)) {
      enterUnlessRequest(sentence, range);
      return;
    }
    Statement statement = new Statement(sentence, range, targets);
    Optional<Meaning> from = SocMeaning.ofEdge(statement, true);
    if (from.isEmpty()) {
      enterUnlessRequest(sentence, range);
      return;
    }
    enter(sentence, range.endOfRange(true), from);
    enter(sentence, range.endOfRange(false), SocMeaning.ofEdge(statement, false));
  }

  private void enterUnlessRequest(Sentence sentence, Amount amount) {
    if (!isRequest(amount)) {
      enter(sentence, amount, Optional.empty());
    }
  }

  private Optional<Meaning> meaning(Sentence sentence, Amount amount) {
    if (isDoubted(sentence, amount)) {
      return Optional.empty();
    }
    Statement statement = new Statement(sentence, amount, targets);
    if (statement.follows(Cues.DIFFERENCE_BEFORE) || statement.precedes(Cues.DIFFERENCE_BEHIND)) {
      return Optional.empty();
    }
    return switch (amount.unit().quantity()) {
      case TIME -> TimeMeaning.of(statement);
      case POWER -> PowerMeaning.of(statement);
      case SHARE -> SocMeaning.of(statement);
      default -> OtherMeaning.of(statement);
    };
  }

  private static boolean isDoubted(Sentence sentence, Amount amount) {
    return sentence.isQuoted(amount) || Doubts.isNegated(sentence.left(amount));
  }

  /**
   * Returns true for a distance, a mark or a window that identifies a number of the report without
   * stating its value.
   */
  private boolean isRequest(Amount amount) {
    ReportPlan.Wishes wishes = targets.plan().wishes();
    if (amount.is(Quantity.DISTANCE)) {
      return targets.wanted(amount).isPresent();
    }
    if (amount.is(Quantity.SHARE) && amount.isRange()) {
      return wishes.windows().stream()
          .anyMatch((SocWindow w) -> w.from() == amount.low() && w.to() == amount.high());
    }
    return amount.wholePercent().filter(p -> wishes.socMarks().contains(p)).isPresent();
  }

  private void enter(Sentence sentence, Amount amount, Optional<Meaning> meaning) {
    int index = sentence.offset() + amount.start();
    SourceLocation place =
        new SourceLocation(
            article.file(), sentence.passage().line(index), sentence.passage().column(index));
    Optional<Target> agreeing =
        meaning.flatMap(m -> m.targets().stream().filter(t -> t.agrees(amount)).findFirst());
    Optional<Target> denied =
        agreeing.isPresent()
            ? Optional.empty()
            : meaning.filter(Meaning::certain).map(m -> m.targets().get(0));
    boolean marked = passages.markedLines().contains(place.line());
    Verdict verdict =
        agreeing.isPresent()
            ? Verdict.SUPPORTED
            : denied.isEmpty()
                ? Verdict.NOT_TRACEABLE
                : marked ? Verdict.DELIBERATE : Verdict.CONTRADICTED;
    figures.add(
        new TypedFigure(
            place, sentence.written(amount), verdict, agreeing.or(() -> denied).map(Target::id)));
    if (verdict == Verdict.DELIBERATE) {
      neededMarks.add(place.line());
    } else if (denied.isPresent()) {
      words.report(log, place, sentence, amount, denied.get());
    }
  }

  private void reportUnneededMarks() {
    for (int line : passages.markedLines()) {
      if (!neededMarks.contains(line)) {
        log.add(
            ProblemCode.MARK_NOT_NEEDED,
            line,
            0,
            "a mark <!-- deliberate --> on a line where nothing is contradicted",
            "the mark only on a line with a figure that differs from the results on purpose",
            "take the mark away");
      }
    }
  }
}
