package taperbook.output.view;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import taperbook.format.NumberFormatter;
import taperbook.format.PairText;
import taperbook.format.RunText;
import taperbook.format.SessionNames;
import taperbook.i18n.Joined;
import taperbook.i18n.Texts;
import taperbook.output.view.NumberTable.RowView;
import taperbook.plan.ReportPlan;
import taperbook.quantity.Estimate;
import taperbook.quantity.SocWindow;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.result.CommonGround;
import taperbook.result.Metric;
import taperbook.result.PairResult;
import taperbook.result.ReportNumber;
import taperbook.result.ReportResult;
import taperbook.result.Runs;
import taperbook.result.SessionResult;

/** Comparison of sessions: curve by curve, on common ground, and as recorded. */
final class ComparisonPart {
  private final ReportResult result;
  private final List<SessionResult> sessions;
  private final NumberViews views;
  private final NumberFormatter formatter;
  private final SessionNames names;
  private final ConditionDifferences apart;

  ComparisonPart(NumberViews views) {
    this.result = views.result();
    this.sessions = result.sessions();
    this.views = views;
    this.formatter = views.formatter();
    this.apart = new ConditionDifferences(result);
    this.names = SessionNames.of(sessions.stream().map(SessionResult::session).toList());
  }

  /**
   * The comparison.
   *
   * @param common the numbers on common ground; {@code ground} describes that
   * @param alike true if all sessions may have started at the same state of charge
   * @param runs how runs of one car differ; {@code inShort} the same in a sentence
   * @param mark the label of the best
   * @param unmarked what is not marked best, and why
   * @param notKnown a cell of the conditions without a value
   */
  record Comparison(
      boolean present,
      List<Compared> sessions,
      List<Pair> pairs,
      ComparedTable common,
      List<String> ground,
      ComparedTable recorded,
      boolean alike,
      String runs,
      String mark,
      String inShort,
      List<String> unmarked,
      String notKnown,
      List<ConditionDifferences.Condition> conditions,
      List<ConditionDifferences.Caveats> caveats) {}

  /** A compared session. */
  record Compared(
      String letter, String words, String name, String subject, NumberView start, NumberView end) {}

  /** Two sessions against each other. */
  record Pair(String one, String other, List<String> sentences, List<NumberView> numbers) {}

  /** A table with a column per session; with a column of differences if there are two. */
  record ComparedTable(List<ComparedRow> rows, boolean differences) {}

  /**
   * A row of a number.
   *
   * @param best index of the best session, or -1
   * @param complete true if all sessions have the number
   */
  record ComparedRow(
      @Unwrapped RowView row, int best, boolean complete, DifferenceView difference) {}

  /** The difference between two sessions, if there is one. */
  record DifferenceView(boolean present, String shown, String ends) {}

  Comparison view() {
    boolean present = !result.compared().isEmpty();
    boolean single = result.runs().spread().known() == Runs.Known.NOT_MEASURED;
    Set<String> common = result.common().ids(result.plan().wishes());
    ComparedTable none = new ComparedTable(List.of(), false);
    return new Comparison(
        present,
        present ? heads() : List.of(),
        result.pairs().stream().map(this::pair).toList(),
        present ? table(common, true) : none,
        present ? ground() : List.of(),
        present ? table(recorded(common), false) : none,
        sameStart(),
        present ? RunText.ofComparison(result.runs().spread()) : "",
        single ? Texts.of("page.comparison_part.best_run") : Texts.of("page.comparison_part.best"),
        present ? RunText.inShort(result.runs().spread()) : "",
        present ? apart.unmarked() : List.of(),
        Texts.of("page.common.not_known"),
        present ? apart.conditions() : List.of(),
        present ? apart.caveats() : List.of());
  }

  private List<Compared> heads() {
    return IntStream.range(0, sessions.size()).mapToObj(this::head).toList();
  }

  private Compared head(int index) {
    SessionResult session = sessions.get(index);
    return new Compared(
        SessionNames.letter(index),
        names.words(index),
        session.session().name(),
        FactTexts.subject(session.session()),
        views.view(session, "start_soc"),
        views.view(session, "end_soc"));
  }

  private Pair pair(PairResult pair) {
    String other = names.letterOf(pair.other());
    String one = SessionNames.letter(0);
    return new Pair(
        one,
        other,
        sentences(pair, one, other),
        pair.numbers().all().stream().map(views::view).toList());
  }

  /** Describes the findings and which of the two was interrupted. */
  private List<String> sentences(PairResult pair, String one, String other) {
    List<String> sentences = new ArrayList<>(new PairText(pair, one, other, formatter).sentences());
    pair.shared().ifPresent(s -> sentences.add(RunText.inShort(result.runs().spread())));
    for (int i = 0; i < sessions.size(); i++) {
      String letter = SessionNames.letter(i);
      Optional<ReportNumber> interruption = sessions.get(i).numbers().find("interruption_time");
      if (letter.equals(one) || letter.equals(other)) {
        interruption.ifPresent(
            n ->
                sentences.add(
                    Texts.of(
                        "page.comparison_part.times_here_include_for_which",
                        formatter.value(n),
                        letter)));
      }
    }
    return sentences;
  }

  private Set<String> recorded(Set<String> common) {
    Set<String> ids = new LinkedHashSet<>();
    result.main().numbers().headline().forEach(n -> ids.add(n.id()));
    ids.removeAll(common);
    ids.addAll(List.of("peak_c_rate", "energy_added", "session_time"));
    return ids;
  }

  /**
   * Returns a table. A number that includes an interruption gets a second row without it, and the
   * first then has no best.
   *
   * @param common true for numbers on common ground, which have marks and differences
   */
  private ComparedTable table(Set<String> ids, boolean common) {
    boolean likeForLike = common || sameStart();
    List<ComparedRow> rows = new ArrayList<>();
    for (String id : ids) {
      String without = Metric.withoutInterruptions(id);
      List<Optional<ReportNumber>> as = sessions.stream().map(s -> s.numbers().find(id)).toList();
      List<Optional<ReportNumber>> steady =
          sessions.stream()
              .map(s -> s.numbers().find(without).or(() -> s.numbers().find(id)))
              .toList();
      Optional<ReportNumber> interrupted =
          steady.stream().flatMap(Optional::stream).filter(n -> n.id().equals(without)).findFirst();
      as.stream()
          .flatMap(Optional::stream)
          .filter(n -> interrupted.isEmpty() || n.origin().session().equals(session(interrupted)))
          .findFirst()
          .ifPresent(n -> rows.add(row(n, as, likeForLike && interrupted.isEmpty())));
      interrupted.ifPresent(n -> rows.add(row(n, steady, likeForLike)));
    }
    return new ComparedTable(rows, common && result.pairs().size() == 1);
  }

  private static String session(Optional<ReportNumber> number) {
    return number.map(n -> n.origin().session()).orElse("");
  }

  /** Returns a row with the label of one of its numbers. */
  private ComparedRow row(
      ReportNumber named, List<Optional<ReportNumber>> numbers, boolean likeForLike) {
    boolean fair = likeForLike && apart.mayMark(numbers);
    OptionalInt best = fair ? Best.of(numbers, result.runs().spread()) : OptionalInt.empty();
    return new ComparedRow(
        views.row(new NumberTable.Row(named.label(), numbers)),
        best.orElse(-1),
        numbers.stream().allMatch(n -> n.flatMap(ReportNumber::estimate).isPresent()),
        difference(named.id()));
  }

  /** Returns which of two sessions is ahead, and by how much; empty for more than two. */
  private DifferenceView difference(String id) {
    Optional<ReportNumber> difference =
        result.pairs().size() == 1
            ? result.pairs().get(0).numbers().find(PairResult.differenceId(id))
            : Optional.empty();
    return difference
        .filter(d -> d.estimate().isPresent())
        .map(d -> formatter.difference(d, SessionNames.letter(0), SessionNames.letter(1)))
        .map(text -> new DifferenceView(true, text.words(), text.ends()))
        .orElse(new DifferenceView(false, "", ""));
  }

  /** Describes how the common ground was determined and its effect on the headline number. */
  private List<String> ground() {
    List<String> sentences = new ArrayList<>();
    CommonGround ground = result.common();
    if (ground.shared().isEmpty()) {
      sentences.add(Texts.of("page.comparison_part.no_window_of_state_of"));
      return sentences;
    }
    SocWindow shared = ground.shared().get();
    sentences.add(
        Texts.of("page.comparison_part.all_sessions_went_through_unequal", edges(shared)));
    ground
        .warmed()
        .ifPresent(
            w -> sentences.add(Texts.of("page.comparison_part.from_on_all_of_them", w.from())));
    ground.frozen().ifPresent(f -> sentences.add(frozen(ground, f)));
    for (int i = 0; i < sessions.size(); i++) {
      effect(i, shared.from()).ifPresent(sentences::add);
    }
    return sentences;
  }

  /** Describes windows kept from publication, and what they would otherwise be. */
  private static String frozen(CommonGround ground, CommonGround.Frozen frozen) {
    String sentence =
        Texts.of(
            "page.comparison_part.these_windows_are_those_of",
            NumberFormatter.date(frozen.since()));
    return frozen.current().equals(ground.windows())
        ? sentence + "."
        : Texts.of(
            "page.comparison_part.found_anew_they_would_be",
            sentence,
            Joined.and(frozen.current().stream().map(ComparisonPart::edges).toList()));
  }

  /** Describes the effect of the cut on a session's time for the first distance. */
  private Optional<String> effect(int index, int from) {
    List<WantedDistance> distances = result.plan().wishes().distances();
    SessionResult session = sessions.get(index);
    Optional<Estimate> start = session.numbers().estimate("start_soc");
    if (distances.isEmpty() || start.isEmpty() || start.get().value() >= from) {
      return Optional.empty();
    }
    ReportPlan plan = result.plan();
    Optional<ReportNumber> plugged = session.numbers().find(plan.timeToAddId(distances.get(0)));
    Optional<ReportNumber> cut =
        session.numbers().find(CommonGround.timeToAddId(distances.get(0), from));
    if (plugged.flatMap(ReportNumber::estimate).isEmpty()
        || cut.flatMap(ReportNumber::estimate).isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        Texts.of(
            "page.comparison_part.took_from_plugging_in_at",
            distances.get(0).words().replace(' ', '\u00a0'),
            SessionNames.letter(index),
            formatter.value(plugged.get()),
            formatter.value(start.get(), Unit.PERCENT),
            formatter.value(cut.get()),
            from));
  }

  private static String edges(SocWindow window) {
    return Texts.of("page.common.to", window.from(), window.to());
  }

  /** Returns true if all sessions may have started at the same state of charge. */
  private boolean sameStart() {
    List<Optional<Estimate>> starts =
        sessions.stream().map(s -> s.numbers().estimate("start_soc")).toList();
    return starts.stream().allMatch(Optional::isPresent)
        && starts.stream()
            .flatMap(Optional::stream)
            .allMatch(s -> s.bounds().overlaps(starts.get(0).orElseThrow().bounds()));
  }
}
